// SPDX-License-Identifier: GPL-3.0-or-later
// A book has 999 999 codes of a kind. Where the last is taken, whatever makes one more says so, and
// leaves nothing half done.
#include "core/store/proof.h"
#include "core/work/bring_in.h"
#include "core/work/first_cone.h"
#include "core/work/harvest.h"
#include "core/work/inspect.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/pot.h"
#include "core/work/sow.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

namespace coneline::work {
namespace {

using tests::day;

class LastCode : public testing::TestWithParam<Kind> {
 protected:
  LastCode() : book(tests::make_first_cone(scratch.at("t.coneline"), first)) {
    tray = sow(book, {first.batch, book::State::unsorted, Count::sure(10), 1, "seed tray",
                      std::nullopt, std::nullopt, on("2026-02-10")})
               ->made.at(0);
    EXPECT_TRUE(inspect(book, {tray, Count::sure(2), {}, {}, on("2026-03-10")}));
  }
  static Noted on(std::string_view iso) { return {day(iso), "", ""}; }

  /// Takes the last code of this kind.
  void take_last(Kind kind) {
    static_cast<void>(
        book.write([&](store::Writing& writing) -> Result<bool> {
              const auto registers = writing.registers();
              const auto last = Code::of(kind, registers.title.series, 999'999).value();
              const auto mother = book::coded(registers.plants, first.mother)->id;
              book::Lot lot{{}, last, registers.cones.front().id, {}, {}, {}, {}, {}};
              if (kind != Kind::batch)
                lot.pot = registers.pots.front().id;
              switch (kind) {
              case Kind::plant: {
                auto plant = registers.plants.front();
                plant.id = {};
                plant.code = last;
                plant.name = "the last one";
                return writing.put(plant).map([](auto) { return true; });
              }
              case Kind::pollen: {
                auto pollen = registers.pollen_lots.front();
                pollen.id = {};
                pollen.code = last;
                return writing.put(pollen).map([](auto) { return true; });
              }
              case Kind::cone:
                return writing.put(book::Cone{{}, last, mother, {}, ""}).map([](auto) {
                  return true;
                });
              case Kind::purchase:
                return writing
                    .put(book::Purchase{
                        {}, last, registers.taxa.front().id, "", day("2026-01-01"), ""})
                    .map([](auto) { return true; });
              case Kind::place: {
                auto place = registers.places.front();
                place.id = {};
                place.code = last;
                place.name = "the last one";
                return writing.put(place).map([](auto) { return true; });
              }
              default:
                return writing.add(lot).map([](auto) { return true; });
              }
            })
            .value());
  }

  struct Tried {
    Kind makes; ///< of this kind
    std::string what;
    std::function<std::optional<Fault>()> run;
  };
  template <class Given>
  static std::optional<Fault> fault_of(const Result<Given>& given) {
    return given ? std::nullopt : std::optional(given.error());
  }
  std::optional<Fault> bring(const BroughtIn& line) {
    return fault_of(book.write([&](store::Writing& writing) -> Result<void> {
      auto all = bring_in(writing, std::vector{line}, day("2026-03-10"));
      return all.lines.at(0) ? Result<void>() : refuse(all.lines.at(0).error());
    }));
  }
  std::vector<Tried> all_that_make() {
    BroughtIn seed;
    seed.taxon = "Cycas revoluta";
    seed.count = Count::sure(5);
    seed.since = seed.harvested = day("2025-03-01");
    auto cross = seed;
    cross.seed_parent = "Mother";
    cross.pollen_parent = "Father";
    cross.pollinated = day("2024-03-01");
    auto sown = cross;
    sown.kind = Kind::tray;
    sown.pot = "seed tray";
    auto pots = seed;
    pots.kind = Kind::pot_group;
    pots.pot = "10 L";
    auto parent = seed;
    parent.kind = Kind::plant;
    parent.name = "Newcomer";
    auto stranger = cross;
    stranger.seed_parent = "Stranger";
    auto foreign = cross;
    foreign.pollen_parent = "Foreigner";
    auto elsewhere = pots;
    elsewhere.place = "Elsewhere";
    const auto brings = [this](Kind kind, const std::string& what, const BroughtIn& line) {
      return Tried{kind, what, [this, line] { return bring(line); }};
    };
    FirstCone newborn{"Old Sentinel", "Cycas revoluta", "", day("2026-01-01"), {},
                      std::nullopt,   day("2026-03-10")};
    auto passed = newborn;
    passed.pass = FirstCone::Pass{"Father", day("2025-02-01"), day("2026-03-01"), {}};
    return {
        {Kind::cone, "pollinate",
         [this] {
           return fault_of(pollinate(
               book, {first.mother, {}, {{first.pollen, std::nullopt}}, on("2026-03-10")}));
         }},
        {Kind::batch, "harvest",
         [this] {
           return fault_of(harvest(book, {first.cone, Count::sure(9), on("2026-03-10")}));
         }},
        {Kind::tray, "sow",
         [this] {
           return fault_of(sow(book, {first.batch, std::nullopt, Count::sure(9), 1, "seed tray",
                                      std::nullopt, std::nullopt, on("2026-03-10")}));
         }},
        {Kind::pot_group, "pot",
         [this] {
           return fault_of(pot_up(book, {tray, std::nullopt, std::nullopt, "1 L deep", std::nullopt,
                                         std::nullopt, std::nullopt, on("2026-03-10")}));
         }},
        {Kind::pollen, "collect pollen",
         [this] {
           return fault_of(
               collect_pollen(book, {first.father, std::nullopt, "", on("2026-03-10")}));
         }},
        {Kind::purchase, "buy in seed",
         [this] {
           return fault_of(buy_in(book, {"Cycas revoluta", "Kiln", Count::sure(9), std::nullopt,
                                         std::nullopt, on("2026-03-10")}));
         }},
        {Kind::pot_group, "buy in plants",
         [this] {
           return fault_of(buy_in(book, {"Cycas revoluta", "Kiln", Count::sure(9), "10 L",
                                         std::nullopt, on("2026-03-10")}));
         }},
        {Kind::plant, "first cone",
         [this, newborn] { return fault_of(first_cone(book, newborn)); }},
        {Kind::cone, "first cone", [this, newborn] { return fault_of(first_cone(book, newborn)); }},
        {Kind::pollen, "first cone", [this, passed] { return fault_of(first_cone(book, passed)); }},
        brings(Kind::cone, "bring in seed of a cross", cross),
        brings(Kind::batch, "bring in seed of a cross", cross),
        brings(Kind::pollen, "bring in seed of a cross", cross),
        brings(Kind::tray, "bring in a tray", sown),
        brings(Kind::purchase, "bring in seed", seed),
        brings(Kind::pot_group, "bring in pots", pots),
        brings(Kind::purchase, "bring in pots", pots),
        brings(Kind::plant, "bring in a plant", parent),
        brings(Kind::plant, "bring in seed of a new mother", stranger),
        brings(Kind::plant, "bring in seed of a new father", foreign),
        brings(Kind::place, "bring in pots at a new place", elsewhere),
    };
  }
  struct Stock {
    std::size_t plants, cones, pollen, purchases, places;
    std::int64_t entries;
    bool operator==(const Stock&) const = default;
  };
  Stock stock() {
    const auto proof = store::prove(book).value();
    EXPECT_TRUE(proof.holds()) << proof.faults.front();
    const auto now = book.read([](store::Reading& reading) { return reading.registers(); }).value();
    return {now.plants.size(),    now.cones.size(),  now.pollen_lots.size(),
            now.purchases.size(), now.places.size(), proof.entries};
  }

  tests::Scratch scratch;
  tests::FirstCone first;
  store::Book book;
  Code tray;
};

TEST_P(LastCode, IsSaidToBeTakenAndNothingIsHalfMade) {
  take_last(GetParam());
  const auto before = stock();
  int tried = 0;
  for (const auto& each : all_that_make()) {
    if (each.makes != GetParam())
      continue;
    ++tried;
    const auto fault = each.run();
    ASSERT_TRUE(fault) << each.what;
    EXPECT_NE(fault->text().find("1000000 make no code"), std::string::npos)
        << each.what << ": " << fault->text();
    EXPECT_TRUE(stock() == before) << each.what;
  }
  EXPECT_GE(tried, 1);
}

INSTANTIATE_TEST_SUITE_P(OfEveryKind, LastCode, testing::ValuesIn(all_kinds), [](const auto& kind) {
  std::string name(kind_word(kind.param));
  std::erase(name, ' ');
  return name;
});

} // namespace
} // namespace coneline::work
