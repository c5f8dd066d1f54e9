// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/coming.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::work {

namespace {

using Key = std::pair<std::string, std::string>; ///< cross and taxon, as they are called

struct Seen {
  book::TaxonId taxon;
  std::vector<const ObservedTray*> trays;
  [[nodiscard]] std::vector<stats::Tray> counts() const {
    std::vector<stats::Tray> made;
    for (const auto* tray : trays)
      made.push_back(counts_of(*tray));
    return made;
  }
  [[nodiscard]] bool looked_at() const {
    return std::ranges::any_of(trays, [](const auto* tray) { return !tray->looks.empty(); });
  }
  [[nodiscard]] bool waits() const {
    return std::ranges::any_of(trays,
                               [](const auto* tray) { return counts_of(*tray).waiting() > 0; });
  }
  [[nodiscard]] bool holds(const Code& code) const {
    return std::ranges::any_of(trays, [&](const auto* tray) { return tray->lot.code == code; });
  }
};

std::map<Key, Seen> sound_crosses(const std::vector<ObservedTray>& trays,
                                  std::vector<TrayNotReckoned>& left_out) {
  std::map<Key, Seen> crosses;
  for (const auto& tray : trays) {
    const auto faults = stats::faults_of(counts_of(tray));
    if (!faults.empty() || tray.sown == 0) {
      left_out.push_back(
          {tray.lot.code, faults.empty() ? phrase("nothing is sown in it") : faults.front().what});
      continue;
    }
    auto& cross = crosses[{tray.origin.name, tray.origin.taxon}];
    cross.taxon = tray.origin.taxon_id;
    cross.trays.push_back(&tray);
  }
  return crosses;
}

/// What each cross of a taxon says by itself, worked out once.
class Taxon {
 public:
  explicit Taxon(double usual_day) : usual_day_(usual_day), weak_(stats::weak_prior(usual_day)) {}

  void add(const Key& key, const Seen& cross) {
    if (cross.looked_at())
      said_.emplace_back(
          key, stats::as_earlier_cross(stats::germination_posterior(cross.counts(), weak_), weak_));
  }

  /// From all but the cross itself.
  [[nodiscard]] stats::GerminationPrior prior_of(const Key& key) const {
    std::vector<stats::EarlierCross> others;
    for (const auto& [other, said] : said_)
      if (other != key)
        others.push_back(said);
    return stats::prior_from(others, usual_day_);
  }

 private:
  double usual_day_;
  stats::GerminationPrior weak_;
  std::vector<std::pair<Key, stats::EarlierCross>> said_;
};

ComingCross coming_of(const Key& key, const Seen& seen, const stats::GerminationPrior& prior,
                      Date as_of, const stats::ComingAsked& asked) {
  ComingCross cross{key.first, key.second, prior, {}, {}};
  const auto posterior = stats::germination_posterior(seen.counts(), prior);
  std::vector<stats::TrayNow> all;
  for (const auto* tray : seen.trays) {
    const stats::TrayNow now{counts_of(*tray),
                             static_cast<double>(days_between(tray->sown_on, as_of))};
    if (now.counts.waiting() == 0)
      continue;
    all.push_back(now);
    cross.trays.push_back(
        {*tray, now.counts.germinated(), stats::coming(std::span(&now, 1), posterior, asked)});
  }
  cross.coming = stats::coming(all, posterior, asked);
  return cross;
}

Result<void> sound(const stats::ComingAsked& asked) {
  if (!(asked.confidence > 0 && asked.confidence < 1))
    return refuse(usage_fault(phrase("a confidence of {}", asked.confidence),
                              "Write a share between 0 and 1, such as 0.8."));
  for (const double days : asked.within)
    if (!(days > 0 && days <= stats::Coming::furthest))
      return refuse(usage_fault(phrase("within {} days", days),
                                "Write days from now, above 0 and at most 3650."));
  return {};
}

} // namespace

std::string told(const stats::GerminationPrior& prior, double confidence) {
  const auto share = stats::share_range(prior.share, confidence);
  const auto days = stats::exponential_range(prior.half, confidence);
  const auto known = prior.crosses == 0   ? std::string(phrase("no other cross of the taxon"))
                     : prior.crosses == 1 ? std::string(phrase("1 other cross of the taxon"))
                                          : phrase("{} other crosses of the taxon", prior.crosses);
  return phrase("{}: {:.0f}–{:.0f} % germinable, half of it up by day {:.0f}–{:.0f}", known,
                100 * share.low, 100 * share.high, days.low, days.high);
}

double usual_day(const book::Route* route) {
  constexpr double half_a_year = 182;
  constexpr double days_a_month = 30.44;
  if (route == nullptr || route->germination_months.high <= 0)
    return half_a_year;
  return (route->germination_months.low + route->germination_months.high) / 2 * days_a_month;
}

Result<ComingBook> coming(store::Reading& reading, Date as_of, const stats::ComingAsked& asked,
                          const std::optional<Code>& only) {
  if (const auto good = sound(asked); !good)
    return refuse(good.error());
  const auto registers = reading.registers();
  ComingBook book{as_of, asked, {}, {}};
  const auto trays = observed_trays(reading, registers, as_of);
  const auto crosses = sound_crosses(trays, book.left_out);
  const auto wanted = [&](const Seen& cross) {
    return cross.waits() && (!only || cross.holds(*only));
  };
  std::set<book::TaxonId> taxa;
  for (const auto& [key, cross] : crosses)
    if (wanted(cross))
      taxa.insert(cross.taxon);
  std::map<book::TaxonId, Taxon> said;
  for (const auto id : taxa)
    said.emplace(id, Taxon(usual_day(registers.route(id))));
  for (const auto& [key, cross] : crosses)
    if (const auto taxon = said.find(cross.taxon); taxon != said.end())
      taxon->second.add(key, cross);
  for (const auto& [key, cross] : crosses)
    if (wanted(cross))
      book.crosses.push_back(
          coming_of(key, cross, said.at(cross.taxon).prior_of(key), as_of, asked));
  return book;
}

GerminationKnown germination_known(store::Reading& reading, const book::Registers& registers,
                                   Date as_of) {
  GerminationKnown known;
  const auto trays = observed_trays(reading, registers, as_of);
  const auto crosses = sound_crosses(trays, known.left_out);
  std::map<book::TaxonId, Taxon> said;
  for (const auto& [key, cross] : crosses)
    said.try_emplace(cross.taxon, usual_day(registers.route(cross.taxon)))
        .first->second.add(key, cross);
  for (const auto& [key, cross] : crosses) {
    CrossKnown& made = known.crosses.emplace_back();
    made.name = key.first;
    made.taxon = cross.taxon;
    for (const auto* tray : cross.trays)
      made.trays.push_back(*tray);
    made.posterior =
        stats::germination_posterior(cross.counts(), said.at(cross.taxon).prior_of(key));
  }
  for (const auto& [taxon, of_taxon] : said)
    known.next.emplace(taxon, of_taxon.prior_of({}));
  return known;
}

} // namespace coneline::work
