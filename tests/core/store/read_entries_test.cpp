// SPDX-License-Identifier: GPL-3.0-or-later
// What was noted with an entry comes back with that entry, also where others between were reversed.
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <functional>

namespace coneline::store {
namespace {

using book::Verb;

class ReadEntries : public testing::Test {
 protected:
  ReadEntries() : book_(tests::make_first_cone(scratch_.at("t.coneline"), first)) {
    rows = book_.read([](Reading& reading) { return reading.registers(); }).value();
  }

  /// Ten entries of a verb, each with the detail of its number; the fourth is reversed. The numbers
  /// that `number` reads from those that stand, as "0 1 2 4 …".
  template <class Detail>
  std::string numbers(Verb verb, const std::function<Detail(int)>& detail,
                      const std::function<int(const Detail&)>& number) {
    const auto written = book_.write([&](Writing& writing) -> Result<int> {
      for (int at = 0; at < 10; ++at) {
        book::Entry entry;
        entry.verb = verb;
        entry.date = tests::day("2026-03-01");
        entry.detail = detail(at);
        if (verb == Verb::pollinate || verb == Verb::check_scales)
          entry.cone = rows.cones[0].id;
        auto id = writing.enter(entry);
        if (!id)
          return refuse(id.error());
        if (at != 3)
          continue;
        entry.verb = Verb::reverse;
        entry.reverses = *id;
        entry.detail = {};
        if (auto back = writing.enter(entry); !back)
          return refuse(back.error());
      }
      return 0;
    });
    if (!written)
      return written.error().text();
    const auto standing =
        book_.read([&](Reading& reading) { return reading.standing_entries(verb); }).value();
    std::string all;
    for (const auto& entry : standing) {
      const auto* own = std::get_if<Detail>(&entry.detail);
      if (entry.id != first.harvest) // the cone's own harvest, of which nothing was weighed
        all += (all.empty() ? "" : " ") + (own ? std::to_string(number(*own)) : "none");
    }
    return all;
  }
  static constexpr const char* all_but_the_fourth = "0 1 2 4 5 6 7 8 9";

  tests::Scratch scratch_;
  tests::FirstCone first;
  Book book_;
  book::Registers rows;
};

TEST_F(ReadEntries, OfSeed) {
  EXPECT_EQ(
      numbers<book::Weighing>(
          Verb::harvest,
          [](int at) {
            return book::Weighing{{10.0 + at, 11}, 40};
          },
          [](const book::Weighing& own) { return static_cast<int>(own.hundreds.at(0)) - 10; }),
      all_but_the_fourth);
  EXPECT_EQ(numbers<book::Cleaning>(
                Verb::clean, [](int at) { return book::Cleaning{at}; },
                [](const book::Cleaning& own) { return own.soak_days; }),
            all_but_the_fourth);
  EXPECT_EQ(numbers<book::Keeping>(
                Verb::store,
                [](int at) {
                  return book::Keeping{std::to_string(at), {}, {}, {}};
                },
                [](const book::Keeping& own) { return std::stoi(own.store); }),
            all_but_the_fourth);
  EXPECT_EQ(
      numbers<book::Sorting>(
          Verb::sort,
          [](int at) {
            return book::Sorting{at % 2 == 0 ? book::SeedTest::floating : book::SeedTest::shaking};
          },
          [](const book::Sorting& own) { return own.test == book::SeedTest::floating ? 0 : 1; }),
      "0 1 0 0 1 0 1 0 1");
  EXPECT_EQ(numbers<book::Sale>(
                Verb::sell,
                [](int at) {
                  return book::Sale{"a buyer", at};
                },
                [](const book::Sale& own) { return static_cast<int>(own.cents.value()); }),
            all_but_the_fourth);
}

TEST_F(ReadEntries, OfConesPollenAndPlants) {
  EXPECT_EQ(numbers<book::Pollination>(
                Verb::pollinate,
                [&](int at) {
                  return book::Pollination{book::PollinationMethod::dry,
                                           {{rows.pollen_lots[0].id, 1.0 + at}}};
                },
                [](const book::Pollination& own) {
                  return own.pollen.size() == 1
                             ? static_cast<int>(own.pollen[0].millilitres.value()) - 1
                             : -1;
                }),
            all_but_the_fourth);
  EXPECT_EQ(numbers<book::ConeLook>(
                Verb::check_scales,
                [](int at) {
                  return book::ConeLook{book::Scales::loose, at + 1};
                },
                [](const book::ConeLook& own) {
                  return static_cast<int>(own.fertile_scales.value()) - 1;
                }),
            all_but_the_fourth);
  EXPECT_EQ(
      numbers<book::PollenNote>(
          Verb::test_pollen,
          [&](int at) {
            return book::PollenNote{rows.pollen_lots[0].id, {}, 50, at, "sugar"};
          },
          [](const book::PollenNote& own) { return static_cast<int>(own.germinated.value()); }),
      all_but_the_fourth);
  EXPECT_EQ(numbers<book::PlantNote>(
                Verb::watch_male_cone,
                [&](int at) {
                  return book::PlantNote{rows.plants[1].id,
                                         at % 2 == 0 ? book::MaleCone::tight
                                                     : book::MaleCone::shedding,
                                         {}};
                },
                [](const book::PlantNote& own) {
                  return own.male_cone == book::MaleCone::tight ? 0 : 1;
                }),
            "0 1 0 0 1 0 1 0 1");
}

TEST_F(ReadEntries, OfRegistersAndOfWhatWasDue) {
  EXPECT_EQ(numbers<book::Correction>(
                Verb::correct,
                [&](int at) {
                  return book::Correction{{{rows.plants[0].id, "name", "old", std::to_string(at)},
                                           {rows.plants[0].id, "note", "", "corrected"}}};
                },
                [](const book::Correction& own) {
                  return own.changes.size() == 2 ? std::stoi(own.changes[0].stands) : -1;
                }),
            all_but_the_fourth);
  EXPECT_EQ(numbers<book::DueAnswer>(
                Verb::put_off,
                [](int at) {
                  return book::DueAnswer{std::to_string(at), tests::day("2026-03-09")};
                },
                [](const book::DueAnswer& own) { return std::stoi(own.due); }),
            all_but_the_fourth);
}

TEST_F(ReadEntries, AnEntryThatIsNotThereIsSaidSo) {
  const auto said = book_.read([](Reading& reading) {
    const auto none = reading.entry(book::EntryId{99});
    return none ? std::string("there") : none.error().what;
  });
  EXPECT_EQ(said.value(), "there is no entry 99");
}

} // namespace
} // namespace coneline::store
