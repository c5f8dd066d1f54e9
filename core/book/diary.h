// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What entries note of cones, male cones and pollen, of corrections in the register of plants, and
// of answers to what is due.

#include "core/base/date.h"
#include "core/book/id.h"
#include "core/book/words.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace coneline::book {

/// What the scales of a female cone are like. Loose ones let pollen in; when they are closed it is
/// too late; a cone that comes apart is ripe.
enum class Scales { tight, loose, closed, coming_apart };

struct ConeLook {
  Scales scales = Scales::tight;
  std::optional<std::int64_t> fertile_scales; ///< counted; two seeds a scale is the ceiling
};

enum class MaleCone { tight, shedding, removed, spent };

/// Something seen of a plant, or meant for it: exactly one of the two.
struct PlantNote {
  PlantId plant;
  std::optional<MaleCone> male_cone;
  std::optional<PlaceId> to; ///< where it shall be moved
};

/// Pollen collected into a lot, tested or thrown away.
struct PollenNote {
  PollenLotId lot;
  std::optional<double> millilitres; ///< collected or thrown away; a lot's first collection stands
                                     ///< in its register row
  std::optional<std::int64_t> counted;    ///< grains looked at in a viability test
  std::optional<std::int64_t> germinated; ///< of those
  std::string conditions;                 ///< "10 % sugar, 24 hours at 25 °C"
};

/// A field of a plant's register row: what stood there and what stands there now, in words.
struct FieldChange {
  PlantId plant;
  std::string field;
  std::string stood;
  std::string stands;
};
struct Correction {
  std::vector<FieldChange> changes; ///< at least one
};

/// Put off until a day, or dismissed; the reason is the entry's note.
struct DueAnswer {
  std::string due; ///< the key of what was due
  std::optional<Date> until;
};

template <>
struct Words<Scales> {
  static constexpr std::string_view what = "state of the scales";
  static constexpr std::array<std::pair<Scales, std::string_view>, 4> all{
      {{Scales::tight, "tight"},
       {Scales::loose, "loose"},
       {Scales::closed, "closed"},
       {Scales::coming_apart, "coming apart"}}};
};
template <>
struct Words<MaleCone> {
  static constexpr std::string_view what = "state of a male cone";
  static constexpr std::array<std::pair<MaleCone, std::string_view>, 4> all{
      {{MaleCone::tight, "tight"},
       {MaleCone::shedding, "shedding"},
       {MaleCone::removed, "removed"},
       {MaleCone::spent, "spent"}}};
};

} // namespace coneline::book
