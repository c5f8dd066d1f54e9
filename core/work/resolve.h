// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// From what a person says (codes, names, "all of it") to what the book holds. Private to this room.

#include "core/book/registers.h"
#include "core/store/writing.h"
#include "core/work/verb_done.h"

namespace coneline::work {

Result<book::PotId> pot_named(const book::Registers& registers, const std::string& name);
Result<std::optional<book::MixId>> mix_named(const book::Registers& registers,
                                             const std::optional<std::string>& name);
Result<std::optional<book::PlaceId>> place_coded(const book::Registers& registers,
                                                 const std::optional<Code>& code);

/// A cone of the register.
Result<book::Cone> cone_coded(const book::Registers& registers, const Code& code);

/// Fails: a day after today.
Result<void> not_ahead(Date day, Date today);

/// The lot with this code, when it is of this kind.
Result<book::Lot> lot_of_kind(store::Reading& reading, const Code& code, Kind kind);

/// What the lot holds of one state on a day.
std::int64_t held(store::Reading& reading, book::LotId lot, book::State state, Date day);

/// The state meant: the one given, or the only one the lot holds on that day. Fails where it holds
/// none or several.
Result<book::State> state_meant(store::Reading& reading, const book::Lot& lot,
                                std::optional<book::State> given, Date day);

/// An entry with what the verb always notes.
book::Entry entry_for(book::Verb verb, const Noted& noted);

/// Enters it, with what is told of it and the cautions of its verb.
Result<Done> entered(store::Writing& writing, const book::Entry& entry, std::string told);

/// "1 seed", "40 seeds".
std::string counted(std::int64_t count, std::string_view one, std::string_view many);

} // namespace coneline::work
