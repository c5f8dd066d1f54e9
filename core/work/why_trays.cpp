// SPDX-License-Identifier: GPL-3.0-or-later
// What the book knows of each tray's conditions.
#include "core/base/phrase.h"
#include "core/work/coming.h"
#include "core/work/line_back.h"
#include "core/work/origin_said.h"
#include "core/work/why.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

constexpr double days_a_month = 30.4375;

std::size_t place_of(Condition condition) {
  return static_cast<std::size_t>(condition);
}

/// What is looked up for every tray, read once.
class Known {
 public:
  Known(store::Reading& reading, Date as_of)
      : registers_(reading.registers()),
        passes_(by_cone(reading.standing_entries(book::Verb::pollinate))) {
    for (const auto& lot : reading.lots())
      origins_[lot.id] = lot.origin;
    for (const auto& arrival : reading.arrivals()) {
      const auto& origin = origins_.at(arrival.lot);
      const auto [first, is_new] = first_in_.try_emplace(origin, arrival.date);
      if (!is_new)
        first->second = std::min(first->second, arrival.date);
    }
    for (const auto& entry : reading.standing_entries(book::Verb::sow))
      if (entry.lot && entry.date <= as_of && !entry.movements.empty())
        batches_[*entry.lot] = entry.movements.front().from.lot;
    for (const auto& entry : reading.standing_entries(book::Verb::test_pollen))
      if (const auto* test = std::get_if<book::PollenNote>(&entry.detail);
          test != nullptr && test->counted.value_or(0) > 0)
        pollen_tests_[test->lot].emplace(entry.date,
                                         100.0 * static_cast<double>(test->germinated.value_or(0)) /
                                             static_cast<double>(*test->counted));
    for (auto& entry : reading.standing_entries(book::Verb::store))
      if (entry.lot)
        keepings_[*entry.lot].push_back(std::move(entry));
  }

  void fill(ExplainedTray& tray, const WhyAsked& asked) const {
    const auto set = [&](Condition condition, std::optional<ConditionValue> value) {
      tray.values.at(place_of(condition)) = std::move(value);
    };
    const auto& lot = tray.seen.lot;
    if (const auto* cone = std::get_if<book::ConeId>(&lot.origin))
      parents(*cone, set);
    else
      set(Condition::seed_parent, ConditionValue{origin_said(tray.seen.origin.name)});
    set(Condition::judged, ConditionValue{judgement(lot)});
    if (const auto in = first_in_.find(lot.origin); in != first_in_.end()) {
      const double months = days_between(in->second, tray.seen.sown_on) / days_a_month;
      set(Condition::after_ripening, ConditionValue{phrase("{:.1f} months", months), months});
    }
    set(Condition::store, store_of(tray));
    set(Condition::sowing_month, ConditionValue{month(tray.seen.sown_on)});
    if (lot.mix)
      set(Condition::medium, ConditionValue{registers_.mix(*lot.mix).name});
    if (const auto measured = asked.celsius.find(lot.id); measured != asked.celsius.end())
      set(Condition::temperature,
          ConditionValue{coneline::measured(Quantity::celsius, measured->second, 1),
                         measured->second});
  }

 private:
  template <class Set>
  void parents(book::ConeId id, Set set) const {
    const auto& cone = registers_.cone(id);
    set(Condition::seed_parent, ConditionValue{book::plant_name(registers_.plant(cone.plant))});
    const auto passes = passes_.find(id);
    if (passes == passes_.end())
      return;
    const auto cross = book::cross_of(registers_, cone, passes->second);
    std::string fathers;
    for (const auto& father : cross.pollen_parents)
      fathers += (fathers.empty() ? "" : " + ") + book::plant_name(registers_.plant(father));
    if (cross.unknown_father)
      fathers += (fathers.empty() ? "" : " + ") + phrase("unknown");
    set(Condition::pollen_parents, ConditionValue{fathers});
    pollen(passes->second, set);
  }

  /// Means over all that was used. The test is known where every lot was tested before.
  template <class Set>
  void pollen(const std::vector<book::Entry>& passes, Set set) const {
    double days = 0;
    double germinated = 0;
    int lots = 0;
    int tested = 0;
    for (const auto& pass : passes)
      if (const auto* pollination = std::get_if<book::Pollination>(&pass.detail))
        for (const auto& used : pollination->pollen)
          if (used.lot) {
            days += days_between(registers_.pollen_lot(*used.lot).collected, pass.date);
            ++lots;
            if (const auto test = last_test(*used.lot, pass.date)) {
              germinated += *test;
              ++tested;
            }
          }
    if (lots > 0)
      set(Condition::pollen_age, ConditionValue{phrase("{:.0f} days", days / lots), days / lots});
    if (lots > 0 && tested == lots)
      set(Condition::pollen_test,
          ConditionValue{phrase("{:.0f} % of grains", germinated / lots), germinated / lots});
  }

  [[nodiscard]] std::optional<double> last_test(book::PollenLotId lot, Date day) const {
    const auto tests = pollen_tests_.find(lot);
    if (tests == pollen_tests_.end())
      return std::nullopt;
    const auto after = tests->second.upper_bound(day);
    return after == tests->second.begin() ? std::nullopt : std::optional(std::prev(after)->second);
  }

  static std::string judgement(const book::Lot& lot) {
    auto text = book::said(lot.judged);
    if (lot.judged != book::Judged::not_judged && lot.judged_by != book::SeedTest::none)
      text += fmt::format(" ({})", book::said(lot.judged_by));
    return text;
  }

  [[nodiscard]] std::optional<ConditionValue> store_of(const ExplainedTray& tray) const {
    const auto batch = batches_.find(tray.seen.lot.id);
    if (batch == batches_.end())
      return std::nullopt;
    const auto kept = keepings_.find(batch->second);
    if (kept == keepings_.end())
      return std::nullopt;
    std::optional<ConditionValue> last;
    for (const auto& entry : kept->second)
      if (const auto* keeping = std::get_if<book::Keeping>(&entry.detail);
          keeping != nullptr && entry.date <= tray.seen.sown_on && !keeping->store.empty())
        last = ConditionValue{keeping->store};
    return last;
  }

  static std::string month(Date date) { return month_said(date.month()); }

  book::Registers registers_;
  std::map<book::ConeId, std::vector<book::Entry>> passes_;
  std::map<book::PollenLotId, std::multimap<Date, double>> pollen_tests_; ///< %, by day
  std::map<book::LotId, book::Origin> origins_;
  std::map<book::Origin, Date> first_in_;
  std::map<book::LotId, book::LotId> batches_;
  std::map<book::LotId, std::vector<book::Entry>> keepings_;
};

std::int64_t germinated_by(const ObservedTray& tray, const std::optional<double>& day) {
  std::int64_t germinated = 0;
  for (const auto& look : tray.looks)
    if (!day || look.day <= *day)
      germinated += look.germinated;
  return germinated;
}

} // namespace

std::vector<ExplainedTray> explained_trays(store::Reading& reading, const WhyAsked& asked) {
  const auto registers = reading.registers();
  const Known known(reading, asked.as_of);
  std::vector<ExplainedTray> trays;
  for (auto& seen : observed_trays(reading, registers, asked.as_of)) {
    const auto counts = counts_of(seen);
    const bool reached = !asked.by_day || counts.last_day() >= *asked.by_day;
    if (seen.sown == 0 || seen.looks.empty() || !reached || !stats::faults_of(counts).empty() ||
        (asked.taxon && seen.origin.taxon_id != *asked.taxon))
      continue;
    ExplainedTray tray;
    tray.germinated = germinated_by(seen, asked.by_day);
    tray.waiting = counts.waiting();
    tray.seen = std::move(seen);
    known.fill(tray, asked);
    trays.push_back(std::move(tray));
  }
  return trays;
}

} // namespace coneline::work
