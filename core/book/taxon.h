// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A kind of plant, and what the grower holds to be true of it. Every value is the grower's to edit.

#include "core/book/id.h"
#include "core/book/sourced.h"
#include "core/book/words.h"

#include <optional>

namespace coneline::book {

enum class LeafColour { not_known, green, grey, blue };
/// Cloth over the plants: sun 0 to 30 %, part shade 30 to 70 %, shade more.
enum class Light { sun, part_shade, shade };
enum class Frost { not_known, none, light, hard };
enum class FloatTest { unknown, reliable, unreliable };

struct Taxon {
  TaxonId id;
  std::string name; ///< the botanical name, one of a kind in the book
  Sourced<LeafColour> leaf_colour;
  Sourced<Light> light{Light::part_shade, {}};
  Sourced<Frost> frost;
  Sourced<FloatTest> float_test;
  Sourced<std::optional<Range>> ripening;       ///< months from pollination to the ripe cone
  Sourced<std::optional<Range>> after_ripening; ///< months the seed ripens on after harvest
};

template <>
struct Words<LeafColour> {
  static constexpr std::string_view what = "leaf colour";
  static constexpr std::array<std::pair<LeafColour, std::string_view>, 4> all{
      {{LeafColour::not_known, "not known"},
       {LeafColour::green, "green"},
       {LeafColour::grey, "grey"},
       {LeafColour::blue, "blue"}}};
};
template <>
struct Words<Light> {
  static constexpr std::string_view what = "light class";
  static constexpr std::array<std::pair<Light, std::string_view>, 3> all{
      {{Light::sun, "sun"}, {Light::part_shade, "part shade"}, {Light::shade, "shade"}}};
};
template <>
struct Words<Frost> {
  static constexpr std::string_view what = "frost class";
  static constexpr std::array<std::pair<Frost, std::string_view>, 4> all{
      {{Frost::not_known, "not known"},
       {Frost::none, "no frost"},
       {Frost::light, "light frost"},
       {Frost::hard, "hard frost"}}};
};
template <>
struct Words<FloatTest> {
  static constexpr std::string_view what = "float test";
  static constexpr std::array<std::pair<FloatTest, std::string_view>, 3> all{
      {{FloatTest::unknown, "unknown"},
       {FloatTest::reliable, "reliable"},
       {FloatTest::unreliable, "unreliable"}}};
};

} // namespace coneline::book
