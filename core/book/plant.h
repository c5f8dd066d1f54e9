// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A parent plant with its origin and papers.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/book/id.h"
#include "core/book/words.h"

#include <optional>
#include <vector>

namespace coneline::book {

/// Only a coning plant shows which.
enum class Sex { not_known, male, female };
enum class Certainty { certain, likely, unsure };
/// A plant in a container can be moved at any time, one in the ground after winter.
enum class StandsIn { not_known, container, ground };

/// A document that goes with a plant: a permit, a receipt, a letter. Not legal advice: the
/// authority decides.
struct Paper {
  std::string kind;
  std::string number;
  std::optional<Date> issued;
  std::string authority;
  std::string note;
};

struct Plant {
  PlantId id;
  Code code;
  std::string name; ///< what the grower calls it; may be empty
  TaxonId taxon;
  Certainty taxon_certainty = Certainty::certain;
  Sex sex = Sex::not_known;
  std::string origin; ///< where it came from, in the grower's words
  std::optional<Date> acquired;
  std::optional<PlaceId> place;
  std::string note;
  std::vector<Paper> papers;
  std::optional<PlantId> seed_parent{};   ///< where known and in the register
  std::optional<PlantId> pollen_parent{}; ///< where known and in the register
  std::string seed_parent_said{};   ///< in words, where the seed parent is not in the register
  std::string pollen_parent_said{}; ///< in words, where the pollen parent is not in the register
  Certainty parents_certainty = Certainty::certain; ///< of whichever parent is given
  StandsIn stands_in = StandsIn::not_known;
};

template <>
struct Words<Sex> {
  static constexpr std::string_view what = "sex";
  static constexpr std::array<std::pair<Sex, std::string_view>, 3> all{
      {{Sex::not_known, "not known"}, {Sex::male, "male"}, {Sex::female, "female"}}};
};
template <>
struct Words<StandsIn> {
  static constexpr std::string_view what = "way of standing";
  static constexpr std::array<std::pair<StandsIn, std::string_view>, 3> all{
      {{StandsIn::not_known, "not known"},
       {StandsIn::container, "container"},
       {StandsIn::ground, "ground"}}};
};
template <>
struct Words<Certainty> {
  static constexpr std::string_view what = "certainty";
  static constexpr std::array<std::pair<Certainty, std::string_view>, 3> all{
      {{Certainty::certain, "certain"},
       {Certainty::likely, "likely"},
       {Certainty::unsure, "unsure"}}};
};

} // namespace coneline::book
