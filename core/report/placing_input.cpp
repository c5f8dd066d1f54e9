// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/placing_input.h"

#include "core/plan/forecast_expected.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace coneline::report {

namespace {

using plan::Shown;

/// The smallest value with at least that share of the futures at or below it.
double quantile(const plan::Forecast& forecast, std::size_t series, std::size_t month,
                double share) {
  std::vector<float> values;
  for (int run = 0; run < forecast.runs(); ++run)
    values.push_back(forecast.value(series, run, month));
  const auto rank =
      static_cast<std::ptrdiff_t>(std::ceil(share * static_cast<double>(values.size())) - 1);
  const auto at = values.begin() + std::clamp<std::ptrdiff_t>(
                                       rank, 0, static_cast<std::ptrdiff_t>(values.size()) - 1);
  std::ranges::nth_element(values, at);
  return *at;
}

struct Standing {
  std::string cross;
  book::TaxonId taxon;
  book::PotId pot;
  std::int64_t count = 0; ///< plants; 1 for a tray
  bool tray = false;
};

class Gather {
 public:
  Gather(const plan::ForecastInput& input, const plan::Forecast& forecast, double assurance,
         std::size_t months)
      : input_(input), forecast_(forecast), registers_(input.standing.registers), months_(months) {
    for (const auto& tray : input.standing.trays)
      standing_[tray.code] = {tray.cross, tray.taxon, tray.pot, 1, true};
    for (const auto& group : input.standing.groups)
      standing_[group.code] = {group.cross, group.taxon, group.pot, group.plants, false};
    for (const auto& [light, word] : book::Words<book::Light>::all)
      know_factors(light, assurance);
  }

  void lot(const plan::LotExpected& lot) {
    const auto found = standing_.find(lot.code);
    if (found == standing_.end())
      return; // seed that is to be sown has no lot yet
    const auto& here = found->second;
    const auto* route = registers_.route(here.taxon);
    if (route == nullptr)
      return;
    std::vector<plan::Piece> own;
    plan::ByMonth tray(months_, 0);
    for (const auto& [light, word] : book::Words<book::Light>::all)
      if (const auto at = forecast_.find({Shown::square_metres, std::string(word)}))
        for (std::size_t month = 0; month < months_; ++month)
          tray[month] += lot.series[*at][month];
    std::set<book::PotId> seen;
    for (const auto& step : route->steps) {
      const auto& pot = registers_.pot(step.pot);
      const auto at = forecast_.find({Shown::standing, pot.name});
      if (!at || !seen.insert(step.pot).second || (here.tray && step.pot == here.pot))
        continue;
      auto piece = piece_of(lot.code, here, step.pot, step.light);
      for (std::size_t month = 0; month < months_; ++month) {
        piece.containers[month] = lot.series[*at][month] / pot.cells;
        tray[month] -= piece.containers[month] * pot.square_metres();
      }
      own.push_back(std::move(piece));
    }
    if (here.tray) {
      auto piece = piece_of(lot.code, here, here.pot, light_of_tray(*route));
      const double one = registers_.pot(here.pot).square_metres();
      for (std::size_t month = 0; month < months_; ++month)
        piece.containers[month] = std::max(0.0, tray[month] / one);
      own.insert(own.begin(), std::move(piece));
    }
    for (auto& piece : own)
      add(std::move(piece));
  }

  void left_out(const plan::LeftOut& lot) {
    const auto found = standing_.find(lot.code);
    if (found == standing_.end())
      return;
    const auto& here = found->second;
    auto piece = piece_of(lot.code, here, here.pot, registers_.taxon(here.taxon).light.value);
    const double containers =
        static_cast<double>(here.count) / (here.tray ? 1 : registers_.pot(here.pot).cells);
    piece.containers.assign(months_, containers);
    pieces_.push_back(std::move(piece));
  }

  std::vector<plan::Piece> done() { return std::move(pieces_); }

 private:
  void know_factors(book::Light light, double assurance) {
    auto& factors = factors_[light];
    factors.assign(months_, 1);
    const auto at = forecast_.find({Shown::square_metres, std::string(book::word(light))});
    if (!at || forecast_.runs() < 1)
      return;
    for (std::size_t month = 0; month < months_; ++month)
      if (const double mean = forecast_.mean(*at, month); mean > 0)
        factors[month] = std::max(1.0, quantile(forecast_, *at, month, assurance) / mean);
  }
  static book::Light light_of_tray(const book::Route& route) { return route.steps.front().light; }
  plan::Piece piece_of(const Code& code, const Standing& here, book::PotId pot,
                       book::Light light) const {
    plan::Piece piece{code, here.cross, here.taxon, light, pot, {}, plan::ByMonth(months_, 0)};
    if (pot == here.pot)
      if (const auto place = input_.places.find(code); place != input_.places.end())
        piece.place = place->second;
    return piece;
  }
  void add(plan::Piece piece) {
    const auto& factors = factors_.at(piece.light);
    bool any = false;
    for (std::size_t month = 0; month < months_; ++month) {
      // Whole pots; a tray as long as it is more likely than not still there.
      piece.containers[month] = std::round(piece.containers[month] * factors[month]);
      any = any || piece.containers[month] > 0.005;
    }
    if (any)
      pieces_.push_back(std::move(piece));
  }

  const plan::ForecastInput& input_;
  const plan::Forecast& forecast_;
  const book::Registers& registers_;
  std::size_t months_;
  std::map<Code, Standing> standing_;
  std::map<book::Light, plan::ByMonth> factors_;
  std::vector<plan::Piece> pieces_;
};

double figure_or(const book::Registers& registers, const char* name, double otherwise) {
  const auto* found = book::named(registers.figures, name);
  return found == nullptr ? otherwise : found->value;
}

} // namespace

plan::PlacingInput placing_input(const plan::ForecastInput& input, const plan::Forecast& forecast,
                                 const book::PlanRecords& records,
                                 const std::map<book::LotId, Code>& codes, double assurance,
                                 int months) {
  const auto& registers = input.standing.registers;
  const auto shown = std::min(months, static_cast<int>(forecast.months().size()));
  Gather gather(input, forecast, assurance, static_cast<std::size_t>(shown));
  for (const auto& lot : plan::expected_by_lot(forecast.ways(), input))
    gather.lot(lot);
  for (const auto& lot : forecast.ways().left_out)
    gather.left_out(lot);
  plan::PlacingInput placing;
  placing.today = input.standing.today;
  placing.registers = registers;
  placing.pieces = gather.done();
  placing.left_out = forecast.ways().left_out;
  placing.limits = records.limits;
  placing.gap_mm = figure_or(registers, book::figure::pot_gap, 0);
  placing.pattern = figure_or(registers, book::figure::staggered, 0) > 0 ? plan::Pattern::staggered
                                                                         : plan::Pattern::square;
  placing.wet_kilograms_a_litre = input.assumed.wet_kilograms_a_litre;
  placing.months = shown;
  for (const auto& pin : records.pins)
    if (const auto code = codes.find(pin.lot); code != codes.end())
      placing.pins.emplace(code->second, pin.place);
  return placing;
}

std::map<book::LotId, Code> lot_codes(store::Reading& reading) {
  std::map<book::LotId, Code> codes;
  for (const auto& lot : reading.lots())
    codes.emplace(lot.id, lot.code);
  return codes;
}

} // namespace coneline::report
