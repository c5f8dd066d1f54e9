// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on the book of the invented nursery, which has several seasons behind it: what they
// answer agrees with itself, with each other and with what was entered.
#include "tests/core/commands/with_demo_book.h"

#include <map>
#include <set>

namespace coneline::commands {
namespace {

constexpr const char* today = demo_day;

/// Throws where there is no number, since two of nothing compare as equal.
double number(const Json& value) {
  return value.get<double>();
}

TEST_F(DemoBook, FloatTestsAreToldByTaxonAndAcceptedOneByOne) {
  const auto all = json({"float-test", "--on", today});
  ASSERT_EQ(all.size(), 6U);
  std::string suggested;
  for (const auto& one : all) {
    for (const auto* part : {"sank", "floated"}) {
      EXPECT_LE(number(one[part]["filled_opened"]), number(one[part]["opened"]));
      EXPECT_LE(number(one[part]["came_up"]), number(one[part]["tried"]));
      const auto& share = one[std::string(part) + "_filled"];
      EXPECT_LT(number(share["low"]), number(share["middle"]));
      EXPECT_LT(number(share["middle"]), number(share["high"]));
    }
    EXPECT_EQ(json({"float-test", one["taxon"], "--on", today}), Json::array({one}));
    if (one["suggested"].is_null())
      expect_refused({"float-test", one["taxon"], "--accept", "--on", today}, 1, one["taxon"]);
    else if (suggested.empty())
      suggested = one["taxon"];
  }
  ASSERT_NE(suggested, "");
  const auto before = run({"float-test", "--on", today});
  EXPECT_NE(before.out.find("coneline float-test '" + suggested + "' --accept"), std::string::npos)
      << before.out;
  const auto told = json({"float-test", suggested, "--on", today})[0];
  ASSERT_EQ(run({"float-test", suggested, "--accept", "--on", today}).status, 0);
  const auto now = json({"float-test", suggested, "--on", today})[0];
  EXPECT_EQ(now["setting"], told["suggested"]);
  EXPECT_TRUE(now["suggested"].is_null()) << "it is so already";
  EXPECT_EQ(now["floated"], told["floated"]) << "no count changed";
  expect_refused({"float-test", "No such taxon", "--on", today}, 1, "No such taxon");
  expect_refused({"float-test", "--on", "yesterday"}, 1, "yesterday");
}

TEST_F(DemoBook, StoresStandSideBySide) {
  const auto stores = json({"stores", "--on", today});
  ASSERT_FALSE(stores.empty());
  const auto sure = json({"stores", "--on", today, "--confidence", "0.5"});
  ASSERT_EQ(sure.size(), stores.size());
  for (std::size_t at = 0; at < stores.size(); ++at) {
    const auto& one = stores[at];
    EXPECT_DOUBLE_EQ(number(one["share"]), number(one["came_up"]) / number(one["tried"]));
    EXPECT_LE(number(one["low"]), number(one["share"]));
    EXPECT_LE(number(one["share"]), number(one["high"]));
    EXPECT_LE(number(one["months_low"]), number(one["months_high"]));
    EXPECT_LT(number(one["low"]), number(sure[at]["low"])) << "less sure is narrower";
    EXPECT_GT(number(one["high"]), number(sure[at]["high"]));
  }
  expect_refused({"stores", "--on", today, "--confidence", "1"}, 2, "between 0 and 1");
  EXPECT_NE(run({"stores", "--on", "2023-01-02"}).out.find("No seed"), std::string::npos);
}

TEST_F(DemoBook, ATargetTakesMoreSeedTheSurerItIsToBe) {
  const auto asked = [](const std::string& plants, const std::string& assurance) {
    return std::vector<std::string>{
        "target", "--as-of",   today,  "--runs",  "200",      "--cross", "Dorothea × Dominic",
        "--pot",  "Pot 2.5 L", "--by", "2030-10", "--plants", plants,    "--assurance",
        assurance};
  };
  const auto half = json(asked("400", "0.5"));
  const auto nine = json(asked("400", "0.9"));
  EXPECT_EQ(nine["plants"], 400);
  std::size_t compared = 0;
  for (std::size_t at = 0; at < std::min(half["sowings"].size(), nine["sowings"].size()); ++at) {
    const auto& less = half["sowings"][at]["seeds"];
    const auto& more = nine["sowings"][at]["seeds"];
    if (less.is_null() || more.is_null())
      continue;
    EXPECT_GT(number(less), 200) << "what is in the line does not reach it";
    EXPECT_GT(number(more), number(less)) << half["sowings"][at]["month"];
    ++compared;
  }
  EXPECT_GT(compared, 3U);
  EXPECT_GT(number(nine["seed_lacking"]), 0) << "the seed of one cross does not lie about";
  EXPECT_GE(number(nine["cones_to_pollinate"]), number(nine["cones_with_seed"]));
  EXPECT_GE(number(nine["pollinations"]), number(nine["cones_to_pollinate"]));
  const auto told = run(asked("400", "0.9"));
  EXPECT_NE(told.out.find("seed is poisonous"), std::string::npos) << told.out;
  EXPECT_NE(told.out.find("400 plants of Dorothea × Dominic in 'Pot 2.5 L'"), std::string::npos);
  const auto never = run(asked("1000000", "0.9"));
  EXPECT_EQ(never.status, 0) << never.err;
  EXPECT_NE(never.out.find("that day is over"), std::string::npos) << never.out;
}

TEST_F(DemoBook, ATargetThatCannotBeReadIsRefused) {
  const auto with = [](const std::string& option, const std::string& value) {
    std::map<std::string, std::string> given{
        {"--as-of", today},     {"--cross", "Dorothea × Dominic"},
        {"--pot", "Pot 2.5 L"}, {"--by", "2030-10"},
        {"--plants", "40"},     {"--runs", "100"}};
    given[option] = value;
    std::vector<std::string> words{"target"};
    for (const auto& [name, word] : given)
      words.insert(words.end(), {name, word});
    return words;
  };
  expect_refused(with("--cross", "No one × Nobody"), 1,
                 "nothing of 'No one × Nobody' is in the line");
  expect_refused(with("--cross", "Dorothea x Dominik"), 1, "Is 'Dorothea × Dominic' meant?");
  EXPECT_EQ(json(with("--cross", "Dorothea x Dominic"))["cross"], "Dorothea × Dominic")
      << "typed with the letter";
  expect_refused(with("--taxon", "No such taxon"), 2, "no taxon 'No such taxon'");
  expect_refused(with("--pot", "bucket"), 2, "no pot 'bucket'");
  expect_refused(with("--by", "autumn"), 2, "'autumn' is no month");
  expect_refused(with("--as-of", "someday"), 1, "someday");
  // A cross that is not in the book yet is planned by its taxon, and by the seeds that are said.
  auto fresh = with("--cross", "A new one");
  fresh.insert(fresh.end(), {"--taxon", "Dioon edule", "--seeds-a-cone", "120"});
  const auto told = json(fresh);
  EXPECT_EQ(told["in_the_line"]["high"], 0);
  EXPECT_EQ(told["reached_without_sowing"], 0);
  EXPECT_GE(number(told["cones_with_seed"]), 1);
  const auto soon = run(with("--by", "2026-12"));
  EXPECT_NE(soon.out.find("Nothing has to be sown for it."), std::string::npos) << soon.out;
  auto too_many = with("--by", "2026-12");
  too_many.insert(too_many.end(), {"--assurance", "0.95"});
  *std::next(std::ranges::find(too_many, "--plants")) = "4000";
  const auto late = run(too_many);
  EXPECT_NE(late.out.find("No sowing from today on reaches it"), std::string::npos) << late.out;
}

TEST_F(DemoBook, TargetsAreKeptToldTogetherAndTakenOut) {
  EXPECT_NE(run({"targets", "--as-of", today}).out.find("No targets are kept"), std::string::npos);
  const std::vector<std::string> wanted{
      "enter", "target",    "--as-of", today,     "--cross",  "Dorothea × Dominic",
      "--pot", "Pot 2.5 L", "--by",    "2030-10", "--plants", "40"};
  const auto entered = run(wanted);
  ASSERT_EQ(entered.status, 0) << entered.err;
  const auto kept = json({"targets", "--as-of", today, "--runs", "100"});
  ASSERT_EQ(kept["targets"].size(), 1U);
  EXPECT_EQ(kept["targets"][0]["plants"], 40);
  EXPECT_EQ(kept["targets"][0]["cross"], "Dorothea × Dominic");
  const auto number = std::to_string(kept["targets"][0]["number"].get<std::int64_t>());
  EXPECT_NE(run({"targets", "--as-of", today, "--runs", "100"}).out.find("Dorothea"),
            std::string::npos);
  expect_refused({"strike-target", "999"}, 1, "no target 999");
  ASSERT_EQ(run({"strike-target", number}).status, 0);
  EXPECT_EQ(json({"targets", "--as-of", today})["targets"].size(), 0U);
}

/// Whatever has a code is told of by it, in the table as in JSON.
TEST_F(DemoBook, EveryCodeIsToldOf) {
  auto book = store::Book::open(own_.at("book.coneline"), store::Access::read).value();
  std::vector<Code> codes;
  const auto gathered = book.read([&](store::Reading& reading) {
    std::set<Kind> kinds;
    for (const auto& lot : reading.lots())
      if (lot.id.value % 7 == 0 || kinds.insert(lot.code.kind()).second)
        codes.push_back(lot.code);
    const auto registers = reading.registers();
    for (const auto& plant : registers.plants)
      codes.push_back(plant.code);
    for (const auto& cone : registers.cones)
      codes.push_back(cone.code);
    for (const auto& pollen : registers.pollen_lots)
      codes.push_back(pollen.code);
    for (const auto& place : registers.places)
      codes.push_back(place.code);
    return codes.size();
  });
  ASSERT_TRUE(gathered);
  ASSERT_GT(codes.size(), 60U);
  for (const auto& code : codes) {
    const auto told = run({"tell", code.text(), "--on", today});
    EXPECT_EQ(told.status, 0) << code.text() << '\n' << told.err;
    EXPECT_EQ(told.out.substr(0, code.text().size()), code.text());
    EXPECT_NE(json({"tell", code.text(), "--on", today}).dump().find(code.text()),
              std::string::npos);
  }
  expect_refused({"tell", "T379990", "--on", today}, 1, "T379990");
}

TEST_F(DemoBook, WhatIsDueIsPutOffAndDismissed) {
  const auto due = [&] { return json({"due", "--on", today})["due"]; };
  const auto list = due();
  ASSERT_GT(list.size(), 2U);
  std::set<std::string> keys;
  for (const auto& one : list)
    keys.insert(one["key"].get<std::string>());
  EXPECT_EQ(keys.size(), list.size()) << "one piece of work has one key";
  const auto key = *keys.begin();
  expect_refused({"put-off", key, "--until", "2026-11-19", "--on", today}, 1, "not after");
  const auto put_off = run({"put-off", key, "--until", "2026-11-25", "--on", today});
  ASSERT_EQ(put_off.status, 0) << put_off.err;
  EXPECT_EQ(due().size(), list.size() - 1);
  const auto next = *std::next(keys.begin());
  EXPECT_NE(run({"dismiss", next, "--on", today}).status, 0) << "without a reason";
  EXPECT_EQ(due().size(), list.size() - 1);
  const auto dismissed = run({"dismiss", next, "--note", "the bench was cleared", "--on", today});
  ASSERT_EQ(dismissed.status, 0) << dismissed.err;
  EXPECT_EQ(due().size(), list.size() - 2);
}

} // namespace
} // namespace coneline::commands
