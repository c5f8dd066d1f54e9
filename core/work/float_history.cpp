// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/float_history.h"

#include "core/base/phrase.h"
#include "core/book/names.h"
#include "core/work/germination.h"
#include "core/work/harvest_table.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

using stats::FloatVerdict;
using stats::PartRecord;

/// The beginning of a sentence.
std::string counts_told(const FloatHistory& history) {
  const auto& of = history.floated;
  const auto filled = phrase_n(of.opened_filled, "{} was filled", "{} were filled");
  const auto came_up = phrase_n(of.came_up, "{} came up", "{} came up");
  if (of.opened == 0 && of.tried == 0)
    return phrase("No floater was cut open or sown to its end");
  const auto opened =
      phrase_n(of.opened, "Of {} floater cut open {}", "Of {} floaters cut open {}", filled);
  if (of.tried == 0)
    return opened;
  if (of.opened == 0)
    return phrase_n(of.tried, "Of {} floater sown {}", "Of {} floaters sown {}", came_up);
  return opened +
         phrase_n(of.tried, ", of {} floater sown {}", ", of {} floaters sown {}", came_up);
}

std::string told_of(const FloatHistory& history) {
  const auto counts = counts_told(history);
  const auto& range = history.learned.floated_filled.range;
  const auto filled = phrase("{:.0f} to {:.0f} % of its floaters are filled ({:.0f} % range)",
                             100 * range.low, 100 * range.high, 100 * float_confidence);
  switch (history.verdict) {
  case FloatVerdict::trusted:
    return phrase("{} in your book; the float test can be trusted for this taxon: {}.", counts,
                  filled);
  case FloatVerdict::not_trusted:
    return phrase("{} in your book; good seed of this taxon floats too: {}.", counts, filled);
  case FloatVerdict::not_known:
    break;
  }
  return phrase("{} in your book; that does not say yet whether the float test can be trusted "
                "for this taxon: {}.",
                counts, filled);
}

/// What stands in the book is a record: the same words in every language.
std::string source_of(const FloatHistory& history, Date as_of) {
  const auto& of = history.floated;
  auto source = fmt::format("this book as of {}:", as_of.iso());
  if (of.opened > 0)
    source += fmt::format(" of {} floaters cut open {} filled", of.opened, of.opened_filled);
  if (of.tried > 0)
    source += fmt::format("{} of {} floaters sown {} came up", of.opened > 0 ? "," : "", of.tried,
                          of.came_up);
  return source;
}

void judge(FloatHistory& history) {
  history.learned = stats::learn_float(history.seasons, float_confidence);
  history.verdict = stats::verdict(history.learned);
  if (history.verdict == FloatVerdict::trusted && history.now.value != book::FloatTest::reliable)
    history.suggested = book::FloatTest::reliable;
  if (history.verdict == FloatVerdict::not_trusted &&
      history.now.value != book::FloatTest::unreliable)
    history.suggested = book::FloatTest::unreliable;
  history.told = told_of(history);
}

void add(PartRecord& sum, const PartRecord& part) {
  sum.opened += part.opened;
  sum.opened_filled += part.opened_filled;
  sum.tried += part.tried;
  sum.came_up += part.came_up;
}

/// What one batch tells: its opened seed, and its trays of one judgement each.
struct BatchTells {
  stats::SeasonRecord record;
  std::int64_t floated_waiting = 0;
};

class Histories {
 public:
  /// Of all taxa, or of one.
  Histories(store::Reading& reading, const book::Registers& registers, Date as_of,
            std::optional<book::TaxonId> only) {
    const auto origins = origin_names(reading, registers);
    const auto wanted = [&](const book::Origin& origin) {
      return !only || origins.at(origin).taxon_id == *only;
    };
    for (auto& tray : observed_trays(reading, registers, as_of))
      if (tray.lot.judged_by == book::SeedTest::floating && wanted(tray.lot.origin))
        trays_[tray.lot.origin].push_back(std::move(tray));
    for (const auto& lot : reading.lots()) {
      if (lot.code.kind() != Kind::batch || !wanted(lot.origin))
        continue;
      auto table = harvest_table(reading, lot, origins.at(lot.origin), as_of);
      if (!table.floated.empty())
        by_taxon_[table.origin.taxon_id][lot.origin].push_back(std::move(table));
    }
  }

  FloatHistory of(const book::Taxon& taxon) const {
    FloatHistory history;
    history.taxon = taxon.id;
    history.name = taxon.name;
    history.now = taxon.float_test;
    if (const auto found = by_taxon_.find(taxon.id); found != by_taxon_.end())
      for (const auto& [origin, tables] : found->second) {
        const auto tells = season(origin, tables);
        history.seasons.push_back(tells.record);
        history.floated_waiting += tells.floated_waiting;
        add(history.sank, tells.record.sank);
        add(history.floated, tells.record.floated);
      }
    judge(history);
    return history;
  }

  [[nodiscard]] bool has(book::TaxonId taxon) const { return by_taxon_.contains(taxon); }

 private:
  BatchTells season(const book::Origin& origin, const std::vector<HarvestTable>& tables) const {
    BatchTells tells;
    for (const auto& table : tables) {
      add(tells.record.sank, {table.filled.opened, table.filled.opened_filled, 0, 0});
      add(tells.record.floated, {table.empty.opened, table.empty.opened_filled, 0, 0});
    }
    const auto sown = trays_.find(origin);
    if (sown == trays_.end())
      return tells;
    for (const auto& tray : sown->second) {
      std::int64_t up = 0;
      std::int64_t removed = 0;
      for (const auto& look : tray.looks) {
        up += look.germinated;
        removed += look.removed;
      }
      const PartRecord part{0, 0, up + removed, up};
      const bool floaters = tray.lot.judged == book::Judged::empty;
      add(floaters ? tells.record.floated : tells.record.sank, part);
      if (floaters)
        tells.floated_waiting += tray.sown - up - removed;
    }
    return tells;
  }

  std::map<book::Origin, std::vector<ObservedTray>> trays_;
  std::map<book::TaxonId, std::map<book::Origin, std::vector<HarvestTable>>> by_taxon_;
};

} // namespace

std::vector<FloatHistory> float_histories(store::Reading& reading, const book::Registers& registers,
                                          Date as_of) {
  const Histories all(reading, registers, as_of, std::nullopt);
  std::vector<FloatHistory> found;
  for (const auto& taxon : registers.taxa)
    if (all.has(taxon.id))
      found.push_back(all.of(taxon));
  return found;
}

Result<FloatHistory> float_history(store::Reading& reading, const book::Registers& registers,
                                   const std::string& taxon, Date as_of) {
  const auto found = book::row_said(registers.taxa, taxon, "taxon");
  if (!found)
    return refuse(found.error());
  return Histories(reading, registers, as_of, (*found)->id).of(**found);
}

Result<Done> accept_float_test(store::Book& book, const std::string& taxon, Date as_of) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    auto history = float_history(writing, registers, taxon, as_of);
    if (!history)
      return refuse(history.error());
    if (!history->suggested)
      return refuse(fault(phrase("nothing to accept for {}: {}", taxon, history->told),
                          "Cut floaters open, or sow some, and ask again."));
    auto changed = registers.taxon(history->taxon);
    changed.float_test = {*history->suggested, source_of(*history, as_of)};
    if (auto put = writing.put(changed); !put)
      return refuse(put.error());
    Done done;
    done.told = phrase("{}: the float test is {} from now on. {}", taxon,
                       book::said(*history->suggested), history->told);
    return done;
  });
}

} // namespace coneline::work
