// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/stores.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace coneline::work {

namespace {

/// A batch's days, and the store it was last in.
struct BatchDays {
  Code code;
  std::optional<Date> harvested;
  std::string store;
};

std::map<book::LotId, BatchDays> days_of_batches(store::Reading& reading, Date as_of) {
  std::map<book::LotId, BatchDays> days;
  for (const auto& lot : reading.lots())
    if (lot.code.kind() == Kind::batch)
      days[lot.id].code = lot.code;
  const auto each = [&](book::Verb verb, auto&& take) {
    for (const auto& entry : reading.standing_entries(verb))
      if (entry.lot && entry.date <= as_of)
        if (const auto found = days.find(*entry.lot); found != days.end())
          take(found->second, entry);
  };
  each(book::Verb::harvest,
       [](BatchDays& of, const book::Entry& entry) { of.harvested = entry.date; });
  each(book::Verb::store, [](BatchDays& of, const book::Entry& entry) {
    of.store = std::get<book::Keeping>(entry.detail).store;
  });
  return days;
}

/// Batch that each tray was filled from, and the day.
std::map<book::LotId, std::pair<book::LotId, Date>> sources_of_trays(store::Reading& reading,
                                                                     Date as_of) {
  std::map<book::LotId, std::pair<book::LotId, Date>> sources;
  for (const auto& entry : reading.standing_entries(book::Verb::sow))
    for (const auto& movement : entry.movements)
      if (entry.date <= as_of && movement.from.lot != movement.to.lot)
        sources.try_emplace(movement.to.lot, movement.from.lot, entry.date);
  return sources;
}

double months_from(Date from, Date to) {
  return days_between(from, to) / (365.25 / 12);
}

StoreFigures figures_of(std::vector<const KeptBatch*> batches, double confidence) {
  StoreFigures figures;
  std::vector<stats::Outcome> outcomes;
  figures.batches = batches.size();
  figures.months_low = figures.months_high = batches.front()->months;
  for (const auto* batch : batches) {
    figures.waiting += batch->waiting;
    figures.months_low = std::min(figures.months_low, batch->months);
    figures.months_high = std::max(figures.months_high, batch->months);
    for (const auto& tray : batch->trays) {
      figures.tried += tray.trials;
      figures.came_up += tray.successes;
      if (tray.trials > 0)
        outcomes.push_back(tray);
    }
  }
  figures.trays = outcomes.size();
  if (!outcomes.empty())
    figures.share = stats::share_of_cross(stats::GroupShare(outcomes), confidence);
  return figures;
}

} // namespace

std::vector<KeptBatch> kept_batches(store::Reading& reading, const book::Registers& registers,
                                    Date as_of) {
  const auto days = days_of_batches(reading, as_of);
  const auto sources = sources_of_trays(reading, as_of);
  std::map<book::LotId, KeptBatch> found;
  for (const auto& tray : observed_trays(reading, registers, as_of)) {
    const auto source = sources.find(tray.lot.id);
    if (source == sources.end())
      continue;
    const auto& [batch, sown_on] = source->second;
    const auto of = days.find(batch);
    if (of == days.end() || of->second.store.empty() || !of->second.harvested)
      continue;
    const auto [at, fresh] = found.try_emplace(batch);
    auto& kept = at->second;
    const double months = months_from(*of->second.harvested, sown_on);
    if (fresh)
      kept = {of->second.code, tray.origin.taxon_id, of->second.store, months, {}, 0};
    kept.months = std::min(kept.months, months);
    std::int64_t up = 0;
    std::int64_t removed = 0;
    for (const auto& look : tray.looks) {
      up += look.germinated;
      removed += look.removed;
    }
    kept.trays.push_back({up + removed, up});
    kept.waiting += tray.sown - up - removed;
  }
  std::vector<KeptBatch> batches;
  for (auto& [id, batch] : found)
    batches.push_back(std::move(batch));
  return batches;
}

std::vector<StoreFigures> compare_stores(std::span<const KeptBatch> batches,
                                         const book::Registers& registers, double confidence) {
  std::map<std::pair<std::string, std::string>, std::vector<const KeptBatch*>> by_store;
  for (const auto& batch : batches)
    by_store[{registers.taxon(batch.taxon).name, batch.store}].push_back(&batch);
  std::vector<StoreFigures> all;
  for (const auto& [of, kept] : by_store) {
    auto figures = figures_of(kept, confidence);
    figures.taxon = of.first;
    figures.store = of.second;
    if (figures.trays > 0)
      all.push_back(std::move(figures));
  }
  return all;
}

std::optional<book::Range> own_after_ripening(std::span<const KeptBatch> batches,
                                              book::TaxonId taxon) {
  std::vector<std::pair<double, double>> months; // months, seeds that came up
  double seeds = 0;
  for (const auto& batch : batches) {
    const double up = std::accumulate(
        batch.trays.begin(), batch.trays.end(), 0.0,
        [](double sum, const auto& tray) { return sum + static_cast<double>(tray.successes); });
    if (batch.taxon == taxon && up > 0) {
      months.emplace_back(batch.months, up);
      seeds += up;
    }
  }
  constexpr std::size_t enough = 3;
  if (months.size() < enough)
    return std::nullopt;
  std::ranges::sort(months);
  const auto at = [&](double share) {
    double below = 0;
    for (const auto& [month, up] : months)
      if ((below += up) >= share * seeds)
        return month;
    return months.back().first;
  };
  return book::Range{at(0.1), at(0.9)};
}

} // namespace coneline::work
