// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A batch, a tray or a pot group: seed or plants of one cone (or one purchase) that are counted
// together.

#include "core/base/code.h"
#include "core/book/id.h"
#include "core/book/words.h"

#include <optional>
#include <variant>

namespace coneline::book {

/// Where a lot begins.
using Origin = std::variant<ConeId, PurchaseId>;

/// What a test said of the seed before it was sown; it stays with the lot through tray and pot.
enum class Judged { not_judged, filled, empty };

/// What judged it.
enum class SeedTest { none, eye, floating, shaking, cutting, xray };

struct Lot {
  LotId id;
  Code code; ///< kind batch, tray or pot group
  Origin origin;
  Judged judged = Judged::not_judged;
  SeedTest judged_by = SeedTest::none;
  std::optional<PotId> pot; ///< of a tray or pot group
  std::optional<MixId> mix;
  std::string note;
};

/// The kinds that a lot can be of.
template <>
struct Words<Kind> {
  static constexpr std::string_view what = "kind of lot";
  static constexpr std::array<std::pair<Kind, std::string_view>, 3> all{
      {{Kind::batch, "batch"}, {Kind::tray, "tray"}, {Kind::pot_group, "pot group"}}};
};
template <>
struct Words<Judged> {
  static constexpr std::string_view what = "judgement";
  static constexpr std::array<std::pair<Judged, std::string_view>, 3> all{
      {{Judged::not_judged, "not judged"}, {Judged::filled, "filled"}, {Judged::empty, "empty"}}};
};
template <>
struct Words<SeedTest> {
  static constexpr std::string_view what = "seed test";
  static constexpr std::array<std::pair<SeedTest, std::string_view>, 6> all{
      {{SeedTest::none, "none"},
       {SeedTest::eye, "eye"},
       {SeedTest::floating, "float"},
       {SeedTest::shaking, "shake"},
       {SeedTest::cutting, "cut"},
       {SeedTest::xray, "x-ray"}}};
};

} // namespace coneline::book
