// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/seasons.h"

#include "core/work/clean.h"
#include "core/work/cone_course.h"
#include "core/work/harvest.h"
#include "core/work/keep.h"
#include "core/work/pollen.h"
#include "core/work/pollinate.h"
#include "core/work/sort.h"
#include "demo/trays.h"

namespace coneline::demo {

namespace {

using book::State;

/// How the seed of a cone turns out. What is not told is not known to the grower either.
struct ConePlan {
  const char* mother;
  std::vector<const char*> fathers; ///< none: nobody knows
  const char* first_pass;
  const char* harvested; ///< empty: still on the plant
  int seeds;
  const char* sown;    ///< empty: still put by
  double filled;       ///< share of the seed
  double germinable;   ///< share of what was judged filled
  double days;         ///< to the root, the middle of them
  bool floats = false; ///< the good seed too
};

std::vector<ConePlan> cones() {
  return {
      {"Dorothea", {"Dominic"}, "2023-01-20", "2024-04-10", 140, "2024-05-08", 0.85, 0.65, 70},
      {"Little Fern", {"Little Finn"}, "2023-05-02", "2024-02-05", 60, "2024-02-27", 0.9, 0.62, 75},
      {"Old Sentinel",
       {"Tall Piet"},
       "2023-06-10",
       "2024-01-20",
       320,
       "2024-02-12",
       0.85,
       0.74,
       95},
      {"Rosamund", {"Roderick"}, "2023-06-20", "2024-04-02", 90, "2024-09-05", 0.8, 0.5, 110},
      {"Blue Ada", {"Blue Cato"}, "2023-07-15", "2024-03-02", 210, "2024-09-03", 0.75, 0.55, 60},
      {"Little Flo", {}, "2024-05-06", "2025-02-12", 30, "2025-03-04", 0.85, 0.5, 80},
      {"Harbour Girl",
       {"Harbour Boy"},
       "2024-05-12",
       "2025-02-10",
       180,
       "2025-03-06",
       0.85,
       0.66,
       80,
       true},
      {"Old Sentinel",
       {"Tall Piet", "Right Twin"},
       "2024-06-08",
       "2025-01-25",
       500,
       "2025-02-17",
       0.88,
       0.7,
       90},
      {"Blue Berta", {"Blue Cato"}, "2024-07-20", "2025-03-15", 260, "2025-09-16", 0.75, 0.42, 65},
      {"Dorothea", {"Dominic"}, "2025-01-25", "2026-04-20", 150, "2026-05-19", 0.85, 0.6, 75},
      {"Little Fern", {"Little Finn"}, "2025-05-04", "2026-02-08", 75, "2026-03-03", 0.9, 0.58, 75},
      {"Left Twin", {"Tall Piet"}, "2025-06-11", "2026-01-22", 280, "2026-02-16", 0.85, 0.66, 95},
      {"Rosamund", {"Little Finn"}, "2025-06-22", "2026-03-30", 45, "2026-04-28", 0.6, 0, 100},
      {"Blue Ada", {"Blue Cato"}, "2025-07-18", "2026-03-28", 230, "2026-09-08", 0.75, 0.57, 55},
      {"Blue Berta", {"Blue Cato"}, "2025-07-24", "2026-06-18", 190, "", 0.75, 0.4, 65},
      {"Old Sentinel", {"Tall Piet"}, "2026-06-09", "", 0, "", 0, 0, 0},
      {"Blue Ada", {"Blue Cato"}, "2026-07-15", "", 0, "", 0, 0, 0},
  };
}

class Seasons {
 public:
  Seasons(store::Book& book, const Nursery& nursery)
      : book_(book), nursery_(nursery), trays_(book, nursery, diary_) {}

  void live() {
    std::uint64_t stream = 0;
    for (const auto& cone : cones()) {
      diary_.plan(day(cone.first_pass),
                  [this, cone, stream](Date on) { first_pass(cone, stream, on); });
      stream += 1000;
    }
    diary_.plan(day("2024-06-03"), [this](Date on) { buy_plants(on); });
    diary_.plan(day("2025-10-20"), [this](Date on) { buy_seed(on); });
    diary_.live_until(as_of());
  }

 private:
  /// Pollen of each male once a season, collected two days before it is first used and on that day.
  Code pollen_of(const std::string& male, Date on) {
    const auto season = std::pair(male, on.year());
    if (const auto found = pollen_.find(season); found != pollen_.end())
      return found->second;
    const auto& plant = nursery_.plants.at(male);
    const auto noted = [&](int days) { return work::Noted{on.plus_days(days), "Ines Marlow", ""}; };
    must(work::watch_male_cone(book_, {plant, book::MaleCone::shedding, noted(-3)}));
    must(work::watch_male_cone(book_, {plant, book::MaleCone::removed, noted(-3)}));
    const auto code =
        must(work::collect_pollen(
                 book_, {plant, 12, "refrigerator, dry, in a jar with silica gel", noted(-2)}))
            .made.front();
    must(work::collect_pollen(book_, {code, 8, "", noted(0)}));
    const auto germinated = 55 + 7 * static_cast<std::int64_t>(pollen_.size()) % 30;
    must(work::test_pollen(book_,
                           {code, 100, germinated, "10 % sugar, 48 hours at 25 °C", noted(0)}));
    diary_.plan(on.plus_days(2), [this, plant](Date then) {
      must(work::watch_male_cone(book_, {plant, book::MaleCone::spent, {then, "Ines Marlow", ""}}));
    });
    pollen_.emplace(season, code);
    return code;
  }

  std::vector<work::PollenGiven> pollen_for(const ConePlan& plan, Date on) {
    std::vector<work::PollenGiven> given;
    for (const auto* father : plan.fathers)
      given.push_back({pollen_of(father, on), 1.5});
    if (given.empty())
      given.push_back({std::nullopt, std::nullopt});
    return given;
  }

  void first_pass(const ConePlan& plan, std::uint64_t stream, Date on) {
    const auto method =
        on.month() < 6 ? book::PollinationMethod::wet : book::PollinationMethod::dry;
    const auto pass = work::pollinate(
        book_,
        {nursery_.plants.at(plan.mother), method, pollen_for(plan, on), {on, "Ines Marlow", ""}});
    const auto cone = must(pass).made.front();
    for (const int later : {2, 5})
      diary_.plan(on.plus_days(later), [this, plan, cone, method](Date then) {
        must(work::pollinate(book_,
                             {cone, method, pollen_for(plan, then), {then, "Tobias Renn", ""}}));
      });
    // Between half a seed and one and a half a scale; a cone that still stands was counted too.
    const auto fertile =
        plan.seeds > 0 ? plan.seeds * (5 + static_cast<int>(stream / 1000 % 4)) / 9 + 4 : 150;
    must(work::check_scales(book_, {cone, book::Scales::loose, fertile, {on, "Ines Marlow", ""}}));
    diary_.plan(on.plus_days(8), [this, cone](Date then) {
      must(work::check_scales(
          book_, {cone, book::Scales::closed, std::nullopt, {then, "Tobias Renn", ""}}));
    });
    if (plan.seeds > 0)
      diary_.plan(day(plan.harvested),
                  [this, plan, cone, stream](Date then) { harvest(plan, cone, stream, then); });
  }

  void harvest(const ConePlan& plan, const Code& cone, std::uint64_t stream, Date on) {
    const auto batch =
        must(work::harvest(book_, {cone, Count::sure(plan.seeds), {on, "Ines Marlow", ""}}))
            .made.front();
    const int lost = plan.seeds / 60 + 1;
    diary_.plan(on.plus_days(2), [this, batch, lost](Date then) {
      must(work::clean(book_, {batch,
                               2,
                               Count::sure(lost),
                               {then, "Wanda Okoro", "gloves on; waste in a closed bin"}}));
    });
    diary_.plan(on.plus_days(3), [this, plan, batch, stream, left = plan.seeds - lost](Date then) {
      sort(plan, batch, left, stream, then);
    });
  }

  void sort(const ConePlan& plan, const Code& batch, int left, std::uint64_t stream, Date on) {
    Chance chance(stream);
    const int filled = chance.of(left, plan.filled);
    // What sinks: nearly all the filled seed, except where good seed floats; and some empty seed.
    const int good_sank = chance.of(filled, plan.floats ? 0.15 : 0.96);
    const int sank = good_sank + chance.of(left - filled, 0.1);
    const int floated = left - sank;
    must(work::sort(book_, {batch,
                            State::unsorted,
                            book::SeedTest::floating,
                            Count::sure(sank),
                            Count::sure(floated),
                            {on, "Wanda Okoro", ""}}));
    const int opened = std::min(floated, 8);
    const double good = floated == 0 ? 0 : static_cast<double>(filled - good_sank) / floated;
    if (opened > 0)
      must(work::open(book_, {batch,
                              State::judged_empty,
                              Count::sure(opened),
                              Count::sure(chance.of(opened, good)),
                              {on, "Wanda Okoro", ""}}));
    const int cut = std::min(sank, plan.seeds / 60);
    if (cut > 0)
      must(work::open(book_, {batch,
                              State::judged_filled,
                              Count::sure(cut),
                              Count::sure(chance.of(cut, 0.95)),
                              {on, "Wanda Okoro", ""}}));
    const Seed seed{batch, plan.germinable, plan.days, stream};
    const bool waits = *plan.sown == 0 || days_between(on, day(plan.sown)) > 60;
    if (waits)
      diary_.plan(on.plus_days(4), [this, batch](Date then) {
        must(work::keep(book_, {batch,
                                "box of dry perlite",
                                18,
                                {},
                                {},
                                nursery_.places.at("Cool bench"),
                                {then, "Wanda Okoro", ""}}));
      });
    if (*plan.sown == 0)
      return;
    diary_.plan(day(plan.sown), [this, seed, plan, left_over = floated - opened](Date then) {
      trays_.sow(seed, State::judged_filled, then);
      if (plan.floats)
        trays_.sow({seed.batch, seed.germinable, seed.days, seed.stream + 500}, State::judged_empty,
                   then);
      else if (plan.seeds == 500)
        trays_.sow_some({seed.batch, 0.06, seed.days, seed.stream + 500}, State::judged_empty, 28,
                        then);
      else if (left_over > 0)
        trays_.discard(seed.batch, State::judged_empty, then);
    });
  }

  void buy_plants(Date on) {
    const auto group =
        must(work::buy_in(book_,
                          {"Dioon edule",
                           "Quillbrook Plants (invented)",
                           Count::sure(20),
                           "Pot 2.5 L",
                           nursery_.places.at("Sun bench"),
                           {on, "Ines Marlow", "parents said to be Dioon edule; invoice kept"}}))
            .made.front();
    trays_.sell_out(group, day("2025-05-12"));
  }

  void buy_seed(Date on) {
    const auto batch = must(work::buy_in(book_, {"Cycas revoluta",
                                                 "Seed house Lark (invented)",
                                                 Count::sure(60),
                                                 std::nullopt,
                                                 std::nullopt,
                                                 {on, "Ines Marlow", "parents not known"}}))
                           .made.front();
    diary_.plan(on.plus_days(9), [this, batch](Date then) {
      trays_.sow({batch, 0.45, 90, 90'000}, State::unsorted, then);
    });
  }

  store::Book& book_;
  const Nursery& nursery_;
  Diary diary_;
  Trays trays_;
  std::map<std::pair<std::string, int>, Code> pollen_;
};

} // namespace

Date as_of() {
  return day("2026-11-20");
}

void live_through(store::Book& book, const Nursery& nursery) {
  Seasons(book, nursery).live();
}

} // namespace coneline::demo
