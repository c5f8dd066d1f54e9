// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What if: changes that are made to what a forecast starts from, and to nothing else. A supposition
// is a list of changes, made one after another; each says itself in a sentence.
//
//   const auto supposed = suppose(present, {OtherSurvival{"Cycas revoluta", 2, 0.95}});
//   supposed->input   what the forecast of the supposed plan starts from
//   supposed->told    "Of Cycas revoluta in 'Deep pot 1 L' (step 2) 95 % live instead of 90 %. ..."

#include "core/plan/forecast_input.h"

#include <variant>

namespace coneline::plan {

/// The route's share of a step. The book's own history weighs against it as it does against the
/// present one; the sentence says with what the plan then reckons.
struct OtherSurvival {
  std::string taxon;
  int step = 1; ///< the tray is 1
  double share = 1;
};

/// Seed comes up sooner or later: in all trays and sowings of a taxon, or in the trays that stand
/// in a place today. The share that comes up stays what it was.
struct OtherPace {
  std::string of;    ///< a taxon or a place, by its name
  double factor = 1; ///< of the time until it comes up, above 0 to 10; a hot bench below 1
};

struct PlaceMore {
  std::string name;
  book::Light light = book::Light::part_shade;
  double length_mm = 0; ///< both above 0, at most 1 000 000
  double width_mm = 0;
};

/// With all that is within it. What stands there needs another place.
struct PlaceLess {
  std::string name;
};

/// Of every step into a pot.
struct OtherMix {
  std::string pot;
  std::string mix;
};

struct OtherStepMix {
  std::string taxon;
  int step = 2;
  std::string mix;
};

/// A mix of other parts, or one more mix under a new name.
struct OtherRecipe {
  std::string mix;
  std::vector<book::MixPart> parts;
  std::optional<double> shrink; ///< as it was, or 0, where it is not said
};

/// Seed that cones were to bring is not sown.
struct NoCones {};

/// More seed sown, as `told_sowing` makes it.
struct MoreSeed {
  std::string cross; ///< or a taxon, for a cross of it that is not in the book yet
  std::int64_t seeds = 0;
  Date month;
};

struct OtherPotting {
  std::array<bool, 12> months{};
};

struct SoldAfter {
  std::optional<int> months; ///< none: they stay
};

using Change = std::variant<OtherSurvival, OtherPace, PlaceMore, PlaceLess, OtherMix, OtherStepMix,
                            OtherRecipe, NoCones, MoreSeed, OtherPotting, SoldAfter>;
using Supposition = std::vector<Change>;

struct Supposed {
  ForecastInput input;
  std::vector<std::string> told; ///< a sentence a change
};

/// Fails on the first change that cannot be made, and says what to change; then nothing is.
Result<Supposed> suppose(const ForecastInput& present, const Supposition& supposition);

/// A sowing in a month of the plan. Fails where the book knows neither a cross nor a taxon of that
/// name, the month is not planned, or the seeds are fewer than 1 or more than 1 000 000.
Result<Sowing> told_sowing(const ForecastInput& input, const std::string& cross, std::int64_t seeds,
                           Date month);

/// "March to October", "every month of the year", "March, May and June".
std::string potting_words(const std::array<bool, 12>& months);

} // namespace coneline::plan
