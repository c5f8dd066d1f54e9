// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/due.h"

#include "core/work/overview.h"

#include <climits>
#include <fmt/format.h>

namespace coneline::work {

namespace {

/// Collects what is due; knows the day and the places.
class List {
 public:
  List(store::Reading& reading, const book::Registers& registers, Date day, const DueHabits& habits)
      : reading_(reading), registers_(registers), day_(day), habits_(habits) {}

  std::vector<Due> all() {
    for (const auto& cone : cone_lines(reading_, registers_))
      cone_due(cone);
    const auto lines = lot_lines(reading_, registers_);
    read_history();
    for (const auto& line : lines) {
      if (line.total() == 0)
        continue;
      switch (line.lot.code.kind()) {
      case Kind::batch:
        batch_due(line);
        break;
      case Kind::tray:
        tray_due(line);
        break;
      default:
        pots_due(line);
        break;
      }
    }
    std::ranges::stable_sort(due_, [](const Due& a, const Due& b) {
      return std::tie(a.walk, a.from, a.code) < std::tie(b.walk, b.from, b.code);
    });
    return std::move(due_);
  }

 private:
  struct History {
    std::optional<Date> looked;
    std::optional<Date> cleaned;
    std::optional<Date> soaks_until;
    std::optional<book::Keeping> kept;
  };

  void read_history() {
    const auto note = [&](book::Verb verb, auto&& take) {
      for (const auto& entry : reading_.standing_entries(verb))
        if (entry.lot && entry.date <= day_)
          take(history_[*entry.lot], entry);
    };
    note(book::Verb::inspect,
         [](History& of, const book::Entry& entry) { of.looked = entry.date; });
    note(book::Verb::clean, [](History& of, const book::Entry& entry) {
      of.cleaned = entry.date;
      if (const int days = std::get<book::Cleaning>(entry.detail).soak_days; days > 0)
        of.soaks_until = entry.date.plus_days(days);
    });
    note(book::Verb::store, [](History& of, const book::Entry& entry) {
      of.kept = std::get<book::Keeping>(entry.detail);
    });
  }

  void add(DueKind kind, const Code& code, Date from, std::optional<Date> to, std::string told,
           std::optional<book::PlaceId> place) {
    if (from > day_)
      return;
    due_.push_back(
        {kind, code, from, to, std::move(told), place ? registers_.place(*place).walk : INT_MAX});
  }

  void cone_due(const ConeLine& line) {
    if (line.harvested > 0 || line.passes.empty())
      return;
    const auto& plant = registers_.plant(line.cone.plant);
    const auto first = line.passes.front();
    const auto next = line.passes.back().plus_days(habits_.days_between_passes);
    if (day_ <= first.plus_days(habits_.days_of_passes))
      add(DueKind::pollinate, line.cone.code, next, std::nullopt,
          fmt::format("pass {} on {}, if the cone is still loose", line.passes.size() + 1,
                      line.origin.name),
          plant.place);
    if (const auto& ripening = registers_.taxon(plant.taxon).ripening.value)
      add(DueKind::harvest, line.cone.code, first.plus_part_months(ripening->low),
          first.plus_part_months(ripening->high),
          fmt::format("{} may be ripe: look whether it comes loose", line.origin.name),
          plant.place);
  }

  void batch_due(const LotLine& line) {
    const auto& history = history_[line.lot.id];
    if (!history.cleaned && line.since)
      add(DueKind::clean, line.lot.code, line.since->plus_days(habits_.days_until_cleaned),
          std::nullopt,
          fmt::format("{} seeds of {} are not cleaned yet", line.total(), line.origin.name),
          line.place);
    if (history.soaks_until && history.cleaned && *history.cleaned < day_ &&
        *history.cleaned < *history.soaks_until && day_ <= history.soaks_until->plus_days(2))
      add(DueKind::water, line.lot.code, history.cleaned->plus_days(1), history.soaks_until,
          day_ < *history.soaks_until
              ? fmt::format("{} seeds of {} are soaking: change the water", line.total(),
                            line.origin.name)
              : fmt::format("{} seeds of {} have soaked: take them out, float them", line.total(),
                            line.origin.name),
          line.place);
    if (history.kept && history.kept->until_from)
      add(DueKind::sow, line.lot.code, *history.kept->until_from, history.kept->until_to,
          fmt::format("{} seeds of {} may have ripened on: look at them, sow", line.total(),
                      line.origin.name),
          line.place);
  }

  void tray_due(const LotLine& line) {
    const auto& history = history_[line.lot.id];
    const auto last = history.looked ? *history.looked : line.since.value_or(day_);
    const auto sown = line.on_hand.find(book::State::sown);
    if (sown != line.on_hand.end())
      add(DueKind::inspect, line.lot.code, last.plus_days(habits_.days_between_looks), std::nullopt,
          fmt::format("{} seeds of {}: look for roots and leaves", sown->second, line.origin.name),
          line.place);
    const auto leaves = line.on_hand.find(book::State::leaf);
    const auto* route = registers_.route(line.origin.taxon_id);
    if (leaves == line.on_hand.end() || route == nullptr || !line.since)
      return;
    add(DueKind::pot, line.lot.code, line.since->plus_part_months(route->steps.front().months.low),
        line.since->plus_part_months(route->steps.front().months.high),
        fmt::format("{} seedlings of {} can go into pots", leaves->second, line.origin.name),
        line.place);
  }

  void pots_due(const LotLine& line) {
    const auto* route = registers_.route(line.origin.taxon_id);
    if (route == nullptr || !line.since)
      return;
    const auto step = std::ranges::find_if(
        route->steps, [&](const auto& each) { return each.pot == line.lot.pot; });
    if (step == route->steps.end() || std::next(step) == route->steps.end())
      return;
    add(DueKind::pot_on, line.lot.code, line.since->plus_part_months(step->months.low),
        line.since->plus_part_months(step->months.high),
        fmt::format("{} plants of {} into '{}'", line.total(), line.origin.name,
                    registers_.pot(std::next(step)->pot).name),
        line.place);
  }

  store::Reading& reading_;
  const book::Registers& registers_;
  Date day_;
  DueHabits habits_;
  std::map<book::LotId, History> history_;
  std::vector<Due> due_;
};

} // namespace

std::vector<Due> due_on(store::Reading& reading, const book::Registers& registers, Date day,
                        const DueHabits& habits) {
  return List(reading, registers, day, habits).all();
}

} // namespace coneline::work
