// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/germination_report.h"

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
          {"sown", cross.figures.sown},
          {"germinated", cross.figures.germinated},
          {"removed", cross.figures.removed},
          {"waiting", cross.waiting},
          {"final", json_of(cross.figures.final)},
          {"mean_time", json_of(cross.together.mean_time)},
          {"t50", json_of(cross.together.t50_farooq)},
          {"still_expected",
           {{"median", expected.median}, {"low", expected.low}, {"high", expected.high}}},
          {"first_leaf", json_of(cross.leaf)},
          {"trays_sprouting", cross.trays_sprouting},
          {"told", cross.told},
          {"curve", std::move(curve)},
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
  return {{"book", report.title.name},     {"invented", report.title.invented},
          {"as_of", report.as_of.iso()},   {"confidence", report.confidence},
          {"crosses", std::move(crosses)}, {"left_out", std::move(left_out)}};
}

} // namespace coneline::report
