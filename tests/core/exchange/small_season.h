// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A season with a little of everything, and folders as texts.

#include "core/exchange/export_season.h"
#include "core/exchange/rows.h"
#include "tests/core/day.h"
#include "tests/core/store/scratch.h"

#include <fstream>
#include <iterator>
#include <map>

namespace coneline::tests {

/// `text` gives every text field its content; called with what stands there otherwise.
template <class Text>
exchange::Season small_season(Text text) {
  using namespace book;
  exchange::Season season;
  auto& r = season.registers;
  const auto code = [](Kind kind, int number) { return Code::of(kind, 17, number).value(); };
  r.title = {text("Test nursery"), 17, true, day("2024-01-02"), Hemisphere::southern};
  Taxon first{{1}, "Cycas revoluta", {LeafColour::green, text("common practice")}, {}, {}, {}, {},
              {}};
  first.ripening = {Range{6, 9.5}, text("own experience")};
  first.float_test = {FloatTest::reliable, text("Dehgan & Yuen 1983")};
  r.taxa = {first, Taxon{{2}, "Dioon edule", {}, {Light::sun, ""}, {}, {}, {}, {}}};
  r.places = {{{1},
               code(Kind::place, 2),
               "Bench, left",
               PlaceKind::bench,
               PlaceId{2},
               3048,
               1200.5,
               Light::shade,
               2},
              {{2}, code(Kind::place, 1), "House", PlaceKind::house, {}, 0, 0, Light::sun, -1}};
  r.pots = {{{1}, "Tray", 6.5, Shape::rectangular, 540, 280, 40, text("measured")},
            {{2}, "=2.5 L", 2.5, Shape::round, 170, 170, 1, text("")}};
  r.mixes = {{{1},
              "Mineral \"4:3:3\"",
              0.15,
              0.05,
              text("common practice"),
              {{"perlite, coarse", 4}, {"peat", 3}}}};
  r.routes = {{{1},
               {2},
               0.6,
               {1, 12},
               text("common practice"),
               {{{1}, {1}, {3, 6}, 0.9, Light::shade, text("a")},
                {{2}, {1}, {12, 24}, 1, Light::sun, text("b")}}}};
  r.plants = {{{1},
               code(Kind::plant, 1),
               text("Old Sentinel"),
               {1},
               Certainty::likely,
               Sex::female,
               text("a garden"),
               day("1999-05-01"),
               PlaceId{1},
               text("a note"),
               {{text("receipt"), text("7"), day("1999-05-01"), text("office"), text("")},
                {text("permit"), text("-8"), {}, text(""), text("note")}}},
              {{2},
               code(Kind::plant, 2),
               text(""),
               {1},
               Certainty::certain,
               Sex::male,
               text(""),
               {},
               {},
               text(""),
               {},
               PlantId{3},
               {},
               {},
               text("a lost garden"),
               Certainty::unsure,
               StandsIn::ground},
              {{3},
               code(Kind::plant, 3),
               text("Grandmother"),
               {1},
               Certainty::certain,
               Sex::not_known,
               text(""),
               {},
               {},
               text(""),
               {}}};
  r.figures = {{"worth of a plant", 18.5}};
  r.pollen_stores = {{{1}, "refrigerator", {Range{2, 3}, text("common practice, no source")}},
                     {{2}, "freezer", {{}, text("sources disagree")}}};
  r.pollen_lots = {
      {{1}, code(Kind::pollen, 1), {2}, day("2024-05-01"), 2.5, text("refrigerator"), text("")}};
  r.cones = {{{1}, code(Kind::cone, 1), {1}, day("2024-05-03"), text("")}};
  r.purchases = {{{1},
                  code(Kind::purchase, 1),
                  {2},
                  text("a grower"),
                  day("2024-06-01"),
                  text("parents not known")}};
  const auto lot = [&](int id, Kind kind, int number, Origin origin) {
    Lot made{{id}, code(kind, number), origin, {}, {}, {}, {}, text("")};
    if (kind != Kind::batch) {
      made.judged = Judged::filled;
      made.judged_by = SeedTest::floating;
      made.pot = PotId{kind == Kind::tray ? 1 : 2};
      made.mix = MixId{1};
    }
    season.lots.push_back(made);
  };
  lot(1, Kind::batch, 1, ConeId{1});
  lot(2, Kind::batch, 2, PurchaseId{1});
  lot(3, Kind::tray, 1, ConeId{1});
  lot(4, Kind::pot_group, 1, ConeId{1});
  const auto enter = [&](Verb verb, std::string_view on, std::int64_t about, Detail detail,
                         std::vector<Movement> movements) -> Entry& {
    Entry entry;
    entry.id = {static_cast<std::int64_t>(season.entries.size()) + 1};
    entry.verb = verb;
    entry.date = day(on);
    if (about > 0)
      entry.lot = LotId{about};
    entry.who = text("Ana");
    entry.note = text("");
    entry.entered = "2026-01-01T10:00:00Z";
    entry.detail = std::move(detail);
    entry.movements = std::move(movements);
    season.entries.push_back(entry);
    return season.entries.back();
  };
  const auto move = [](int from_lot, State from, int to_lot, State to, int count) {
    return Movement{{{from_lot}, from}, {{to_lot}, to}, Count::sure(count)};
  };
  using enum State;
  enter(Verb::pollinate, "2024-05-04", 0,
        Pollination{PollinationMethod::wet, {{PollenLotId{1}, 0.5}, {{}, {}}}}, {})
      .cone = ConeId{1};
  enter(Verb::harvest, "2025-01-10", 1, Weighing{{15.2, 14.9}, 15.05},
        {move(1, State::cone, 1, unsorted, 100)});
  enter(Verb::clean, "2025-01-12", 1, Cleaning{2}, {move(1, unsorted, 1, lost_in_cleaning, 3)});
  enter(Verb::sort, "2025-01-13", 1, Sorting{SeedTest::floating},
        {move(1, unsorted, 1, judged_filled, 80), move(1, unsorted, 1, judged_empty, 17)});
  enter(Verb::open, "2025-01-13", 1, Sorting{SeedTest::cutting},
        {move(1, judged_empty, 1, opened_empty, 9), move(1, judged_empty, 1, opened_filled, 1)});
  enter(Verb::store, "2025-01-14", 1,
        Keeping{text("box"), -4.5, day("2025-03-01"), day("2025-05-01")}, {});
  enter(Verb::sow, "2025-03-02", 3, {}, {move(1, judged_filled, 3, sown, 40)}).place = PlaceId{1};
  enter(Verb::inspect, "2025-05-01", 3, {}, {move(3, sown, 3, root, 12)});
  enter(Verb::inspect, "2025-05-01", 3, {}, {move(3, sown, 3, dead, 5)});
  enter(Verb::reverse, "2025-05-01", 3, {}, {move(3, dead, 3, sown, 5)}).reverses = EntryId{9};
  enter(Verb::pot, "2025-06-01", 4, {}, {move(3, root, 4, plant, 10)});
  enter(Verb::recount, "2025-07-01", 4, {}, {move(4, plant, 4, unexplained, 1)});
  enter(Verb::sell, "2025-08-01", 4, Sale{text("a buyer"), 12550}, {move(4, plant, 4, sold, 4)});
  enter(Verb::check_scales, "2024-05-03", 0, ConeLook{Scales::loose, 60}, {}).cone = ConeId{1};
  enter(Verb::watch_male_cone, "2024-05-01", 0, PlantNote{{2}, MaleCone::removed, {}}, {});
  enter(Verb::plan_move, "2025-08-02", 0, PlantNote{{1}, {}, PlaceId{2}}, {});
  enter(Verb::collect_pollen, "2024-05-02", 0, PollenNote{{1}, 0.5, {}, {}, text("")}, {});
  enter(Verb::test_pollen, "2024-05-03", 0, PollenNote{{1}, {}, 50, 31, text("sugar")}, {});
  enter(Verb::correct, "2025-08-03", 0,
        Correction{{{{1}, "name", text("Sentinel"), text("Old Sentinel")},
                    {{1}, "sex", text("not known"), text("female")}}},
        {});
  enter(Verb::put_off, "2025-08-04", 0, DueAnswer{"inspect T171X 1", day("2025-08-09")}, {});
  enter(Verb::dismiss, "2025-08-05", 0, DueAnswer{"inspect T171X 1", {}}, {}).note = text("gone");
  enter(Verb::buy_in, "2024-06-01", 2, {}, {move(2, bought_in, 2, unsorted, 25)});
  season.temperatures = {{PlaceId{1}, Moment{day("2025-03-02"), 50700}, 22.75},
                         {PlaceId{2}, Moment{day("2025-03-01"), 0}, -0.1}};
  season.labels.stocks.push_back({{1}, "own sheet", 210, 297, 7.5, 10, 60, 35, 62.5, 36, 3, 7, 0});
  season.labels.layouts.push_back({{1}, "short", true, false, true, false, false});
  season.labels.scales.push_back({{1}, "office", "own sheet", 99.6, 100.25});
  season.labels.prints.push_back(
      {{1}, season.lots.front().code, day("2026-01-02"), "own sheet", 2});
  season.plan.offers = {{{1}, "bark", "the mill", Form::bag, 70, 1, 900, 0, 7, 1, 25.5},
                        {{2}, "peat", "the mill", Form::bale, 100, 2.5, 3000, 500, 14, 4, {}}};
  season.plan.goods = {{{1}, "bark", 300.5, day("2026-01-03"), 1500.0, 12, 0.25},
                       {{2}, "sand", 0, {}, {}, {}, 0}};
  season.plan.targets = {
      {{1}, "Sentinel × Twin", TaxonId{1}, PotId{1}, 200, day("2029-10-01"), 0.9}};
  season.plan.limits = {{PlaceId{1}, 60.5, Frost::light}, {PlaceId{2}, {}, Frost::none}};
  season.plan.pins = {{LotId{3}, PlaceId{1}}};
  season.rounds = {{RoundId{1},
                    day("2025-05-01"),
                    PlaceId{1},
                    text("Ines"),
                    PlaceId{1},
                    LotId{3},
                    {2, 0, 1},
                    {},
                    {{LotId{3}, PlaceId{1}}}}};
  season.round_entries = {{EntryId{7}, RoundId{1}}};
  season.sightings = {
      {{1}, LotId{3}, PlaceId{1}, day("2025-05-01"), SeenBy::scan, "", RoundId{1}},
      {{2}, LotId{3}, {}, day("2025-05-09"), SeenBy::picture, text("bench.jpg"), {}}};
  return season;
}
inline exchange::Season small_season() {
  return small_season([](std::string text) { return text; });
}

inline std::string content(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

inline std::map<std::string, std::string> contents(const std::filesystem::path& folder) {
  std::map<std::string, std::string> texts;
  for (const auto& each : std::filesystem::directory_iterator(folder))
    texts[each.path().filename().string()] = content(each.path());
  return texts;
}

inline void put(const std::filesystem::path& path, std::string_view text) {
  std::ofstream(path, std::ios::binary) << text;
}

} // namespace coneline::tests
