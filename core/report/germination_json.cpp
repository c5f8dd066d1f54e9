// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cross_chart.h"
#include "core/report/ranking.h"

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

Json json_of(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json json_of(const stats::FinalShare& share) {
  return {{"share", json_of(share.share)},
          {"low", share.range ? Json(share.range->low) : Json(nullptr)},
          {"high", share.range ? Json(share.range->high) : Json(nullptr)},
          {"method", share.method}};
}

Json json_of(const LeafFigures& leaf) {
  return {{"leaves", leaf.leaves},
          {"of_sown", json_of(leaf.share)},
          {"median_days_from_root", json_of(leaf.days_from_root)}};
}

Json json_of(const TrayReport& tray) {
  Json looks = Json::array();
  for (const auto& look : tray.seen.looks)
    looks.push_back({{"date", look.date.iso()},
                     {"day", look.day},
                     {"germinated", look.germinated},
                     {"leaves", look.leaves},
                     {"removed", look.removed}});
  const auto& until = tray.sprouts_until;
  return {{"tray", tray.seen.lot.code.text()},
          {"cone", tray.seen.origin.code.text()},
          {"sown_on", tray.seen.sown_on.iso()},
          {"season", tray.season},
          {"days_without_temperature", tray.days_lacking},
          {"sown", tray.seen.sown},
          {"germinated", tray.germinated},
          {"removed", tray.removed},
          {"waiting", tray.waiting},
          {"final", json_of(tray.figures.final)},
          {"mean_time", json_of(tray.figures.measures.mean_time)},
          {"t50", json_of(tray.figures.measures.t50_farooq)},
          {"first_leaf", json_of(tray.leaf)},
          {"sprouts_until", until ? Json(until->iso()) : Json(nullptr)},
          {"told", tray.told},
          {"looks", std::move(looks)}};
}

Json json_of(const std::optional<stats::CurveFit>& fit) {
  if (!fit)
    return nullptr;
  return {{"family", stats::family_word(fit->curve.family)},
          {"germinable", fit->curve.germinable},
          {"shape", fit->curve.shape},
          {"scale", fit->curve.scale},
          {"boundary", fit->boundary},
          {"standard_errors",
           {{"germinable", json_of(fit->germinable_error)},
            {"shape", json_of(fit->shape_error)},
            {"scale", json_of(fit->scale_error)}}}};
}

Json json_of(const CrossChart& chart) {
  Json band = Json::array();
  for (const auto& [day, low, high] : chart.band)
    band.push_back({{"day", day}, {"low", low}, {"high", high}});
  Json fitted = Json::array();
  for (const auto& [day, share] : chart.fitted)
    fitted.push_back({{"day", day}, {"share", share}});
  return {{"fitted", std::move(fitted)},
          {"band", chart.band.empty() ? Json(nullptr) : std::move(band)},
          {"may_end", chart.coming ? Json({{"low", chart.coming->low},
                                           {"likely", chart.coming->likely},
                                           {"high", chart.coming->high}})
                                   : Json(nullptr)}};
}

Json json_of(const GerminationReport& report, const stats::GroupComparison& pair) {
  const auto value = [&](double stats::Difference::*part) {
    return pair.difference ? Json((*pair.difference).*part) : Json(nullptr);
  };
  return {{"a", report.crosses[pair.a].name},
          {"b", report.crosses[pair.b].name},
          {"difference", value(&stats::Difference::difference)},
          {"low", value(&stats::Difference::low)},
          {"high", value(&stats::Difference::high)},
          {"p_value", value(&stats::Difference::p_value)},
          {"p_adjusted", json_of(pair.p_adjusted)},
          {"curve_p_value", json_of(pair.curve_p_value)}};
}

Json json_of(const std::optional<KnownToCome>& known) {
  if (!known)
    return nullptr;
  return {{"median", known->seeds.median},
          {"low", known->seeds.low},
          {"high", known->seeds.high},
          {"beforehand", known->beforehand}};
}

Json json_of(const CrossReport& cross) {
  const auto& expected = cross.figures.still_expected;
  Json trays = Json::array();
  for (const auto& tray : cross.trays)
    trays.push_back(json_of(tray));
  Json curve = Json::array();
  for (const auto& point : cross.curve)
    curve.push_back({{"day", point.day}, {"share", point.share}});
  return {{"cross", cross.name},
          {"taxon", cross.taxon},
          {"season", cross.season.empty() ? Json(nullptr) : Json(cross.season)},
          {"rank", cross.rank},
          {"alike", cross.alike},
          {"sown", cross.figures.sown},
          {"germinated", cross.figures.germinated},
          {"removed", cross.figures.removed},
          {"waiting", cross.waiting},
          {"final", json_of(cross.figures.final)},
          {"mean_time", json_of(cross.together.mean_time)},
          {"t50", json_of(cross.together.t50_farooq)},
          {"still_expected",
           {{"median", expected.median}, {"low", expected.low}, {"high", expected.high}}},
          {"known_to_come", json_of(cross.known)},
          {"first_leaf", json_of(cross.leaf)},
          {"trays_sprouting", cross.trays_sprouting},
          {"told", cross.told},
          {"curve", std::move(curve)},
          {"fitted_curve", json_of(cross.figures.curve)},
          {"chart", json_of(cross_chart(cross))},
          {"trays", std::move(trays)}};
}

} // namespace

Json germination_json(const GerminationReport& report) {
  Json crosses = Json::array();
  for (const auto& cross : report.crosses)
    crosses.push_back(json_of(cross));
  Json left_out = Json::array();
  for (const auto& tray : report.left_out)
    left_out.push_back({{"tray", tray.code.text()}, {"why", tray.why}});
  Json comparisons = Json::array();
  for (const auto& pair : report.comparisons)
    comparisons.push_back(json_of(report, pair));
  Json alike = Json::array();
  for (std::size_t set = 0; set < report.alike.size(); ++set) {
    Json names = Json::array();
    for (const auto place : report.alike[set])
      names.push_back(report.crosses[place].name);
    alike.push_back({{"letter", letters_of(set)}, {"crosses", std::move(names)}});
  }
  return {{"book", report.title.name},
          {"invented", report.title.invented},
          {"as_of", report.as_of.iso()},
          {"confidence", report.confidence},
          {"by", by_word(report.by)},
          {"time_unit", report.time_unit()},
          {"temperature", report.degree_days ? Json(lacking_told(report)) : Json(nullptr)},
          {"crosses", std::move(crosses)},
          {"cannot_be_told_apart", std::move(alike)},
          {"comparisons", std::move(comparisons)},
          {"left_out", std::move(left_out)}};
}

} // namespace coneline::report
