// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What can hurt, said at the step where it can: for the window's forms, for what the verbs answer
// and for papers. Short; the last word is the label's, the local code's and the professional's.

#include "core/base/phrase.h"
#include "core/book/entry.h"

#include <string>
#include <vector>

namespace coneline::work {

namespace caution {
inline constexpr const char* poison = to_phrase(
    "All parts of cycads are poisonous, seed most of all: wear gloves, keep pets, livestock and "
    "children away; if any was eaten, see a vet or doctor at once.");
inline constexpr const char* drill =
    to_phrase("Eye guard with a brush on a drill; change the soaking water daily.");
inline constexpr const char* dust = to_phrase(
    "Potting mix can carry Legionella: wet it, wear mask and gloves, open bags away from the face, "
    "wash hands.");
inline constexpr const char* lifting =
    to_phrase("Mind your back: lift close to the body, and not above about 25 kg alone.");
inline constexpr const char* permit = to_phrase(
    "Many cycads are protected: check whether this needs a permit; the authority decides.");
inline constexpr const char* heat = to_phrase(
    "Bottom heat: a protected circuit, wired as the local code asks by who is licensed to, and the "
    "thermostat's probe in the medium.");
inline constexpr const char* spines =
    to_phrase("Mind the spines: eye guard, gloves and long sleeves at the crown.");
inline constexpr const char* whole_stalk = to_phrase(
    "Take the whole stalk: turn it out in the direction of the scales' spiral (common practice, no "
    "source).");
inline constexpr const char* powders = to_phrase(
    "Sulfur dust catches fire and irritates lungs and eyes: if you dust wounds with it or a "
    "fungicide, no sparks, mask and goggles; the label and local law decide, also who may.");
} // namespace caution

/// What goes with the work of a verb; none for what is done at the desk.
std::vector<const char*> cautions_of(book::Verb verb);
/// The same as they are said.
std::vector<std::string> cautions_told(book::Verb verb);

} // namespace coneline::work
