// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/germination.h"

#include "core/commands/germination_csv.h"
#include "core/commands/table.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

Json json_of(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json json_of(const stats::FinalShare& final) {
  Json json;
  json["share"] = json_of(final.share);
  json["low"] = final.range ? Json(final.range->low) : Json(nullptr);
  json["high"] = final.range ? Json(final.range->high) : Json(nullptr);
  json["method"] = final.method;
  return json;
}

Json json_of(const stats::Tray& tray, const stats::TrayFigures& figures) {
  Json json;
  json["group"] = tray.group;
  json["tray"] = tray.tray;
  json["sown"] = tray.sown;
  json["germinated"] = tray.germinated();
  json["removed"] = tray.removed();
  json["final"] = json_of(figures.final);
  const auto& measures = figures.measures;
  json["mean_time"] = json_of(measures.mean_time);
  json["variance"] = json_of(measures.variance);
  json["velocity"] = json_of(measures.velocity);
  json["uncertainty"] = json_of(measures.uncertainty);
  json["synchrony"] = json_of(measures.synchrony);
  json["t50_coolbear"] = json_of(measures.t50_coolbear);
  json["t50_farooq"] = json_of(measures.t50_farooq);
  json["speed"] = json_of(measures.speed);
  json["peak_value"] = json_of(measures.peak_value);
  json["germination_value"] = json_of(measures.germination_value);
  return json;
}

Json json_of(const std::optional<stats::Spread>& spread) {
  if (!spread)
    return nullptr;
  return {{"model", "beta-binomial"},
          {"mean", spread->mean},
          {"rho", spread->rho},
          {"log_likelihood", spread->log_likelihood}};
}

Json json_of(const std::optional<stats::CurveFit>& fit) {
  if (!fit)
    return nullptr;
  Json json;
  json["family"] = stats::family_word(fit->curve.family);
  json["germinable"] = fit->curve.germinable;
  json["shape"] = fit->curve.shape;
  json["scale"] = fit->curve.scale;
  json["standard_errors"] = {{"germinable", json_of(fit->germinable_error)},
                             {"shape", json_of(fit->shape_error)},
                             {"scale", json_of(fit->scale_error)}};
  json["log_likelihood"] = fit->log_likelihood;
  json["boundary"] = fit->boundary;
  return json;
}

Json json_of(const stats::Stepwise& stepwise) {
  Json json = Json::array();
  for (const auto& step : stepwise.steps)
    json.push_back({{"from", step.from}, {"to", step.to}, {"mass", step.mass}});
  return json;
}

Json json_of(const stats::GroupFigures& figures) {
  Json json;
  json["group"] = figures.group.name;
  json["trays"] = figures.group.trays.size();
  json["sown"] = figures.sown;
  json["germinated"] = figures.germinated;
  json["final"] = json_of(figures.final);
  json["between_trays"] = json_of(figures.spread);
  json["curve"] = json_of(figures.curve);
  json["stepwise"] = json_of(figures.stepwise);
  const auto& more = figures.still_expected;
  json["still_expected"] = {{"median", more.median}, {"low", more.low}, {"high", more.high}};
  json["share_in_end"] = {
      {"median", json_of(more.share)},
      {"low", more.share_range ? Json(more.share_range->low) : Json(nullptr)},
      {"high", more.share_range ? Json(more.share_range->high) : Json(nullptr)}};
  return json;
}

Json json_of(const stats::GroupComparison& pair, const stats::GerminationFigures& figures) {
  const auto& difference = pair.difference;
  Json json;
  json["a"] = figures.groups[pair.a].group.name;
  json["b"] = figures.groups[pair.b].group.name;
  json["difference"] = difference ? Json(difference->difference) : Json(nullptr);
  json["low"] = difference ? Json(difference->low) : Json(nullptr);
  json["high"] = difference ? Json(difference->high) : Json(nullptr);
  json["p_value"] = difference ? Json(difference->p_value) : Json(nullptr);
  json["p_adjusted"] = json_of(pair.p_adjusted);
  json["curve_p_value"] = json_of(pair.curve_p_value);
  return json;
}

std::string per_cent(double share) {
  return fmt::format("{:.1f}", 100 * share);
}

/// "71.2–80.4": the range in per cent.
std::string range_text(const std::optional<stats::Interval>& range) {
  return range ? per_cent(range->low) + "–" + per_cent(range->high) : "–";
}

std::string share_text(const std::optional<double>& share) {
  return share ? per_cent(*share) : "–";
}

std::string p_text(const std::optional<double>& p_value) {
  return p_value && *p_value < 0.0001 ? "below 0.0001" : shown(p_value, 4);
}

std::string count_range(const stats::StillExpected& more) {
  return more.low == more.high ? std::to_string(more.low)
                               : fmt::format("{}–{}", more.low, more.high);
}

std::string curve_text(const std::optional<stats::CurveFit>& fit) {
  if (!fit)
    return "no curve";
  const auto& curve = fit->curve;
  return fmt::format("{}: {} % germinable, half of them by day {:.1f}, nine tenths by day {:.1f}",
                     stats::family_word(curve.family), per_cent(curve.germinable),
                     curve.day_of_progress(0.5), curve.day_of_progress(0.9));
}

std::string counts_table(std::span<const stats::Tray> trays,
                         const stats::GerminationFigures& figures, double confidence) {
  const auto range = fmt::format("{:g} % range", 100 * confidence);
  Table table({"group / tray", "sown", "up", "% up, " + range, "% up", "still to come, " + range,
               "middle", "% in the end, " + range, "mean days", "T50 days"});
  for (const auto& group : figures.groups) {
    table.row({group.group.name, std::to_string(group.sown), std::to_string(group.germinated),
               range_text(group.final.range), share_text(group.final.share),
               count_range(group.still_expected), std::to_string(group.still_expected.median),
               range_text(group.still_expected.share_range), "", ""});
    for (const auto place : group.group.trays) {
      const auto& tray = figures.trays[place];
      table.row({"  " + trays[place].tray, std::to_string(trays[place].sown),
                 std::to_string(trays[place].germinated()), range_text(tray.final.range),
                 share_text(tray.final.share), "", "", "", shown(tray.measures.mean_time, 1),
                 shown(tray.measures.t50_farooq, 1)});
    }
  }
  return table.text();
}

std::string curves_table(const stats::GerminationFigures& figures) {
  Table table({"group", "curve over time", "spread between trays (rho)", ""});
  for (const auto& group : figures.groups)
    table.row({group.group.name, curve_text(group.curve),
               group.spread ? shown(group.spread->rho, 3) : std::string("one tray"),
               fmt::format("{}", fmt::join(group.told, "; "))});
  return table.text();
}

std::string comparisons_table(const stats::GerminationFigures& figures, double confidence) {
  Table table({"compared", fmt::format("difference in % up, {:g} % range", 100 * confidence),
               "difference", "p", "p for all pairs", "p of one curve"});
  for (const auto& pair : figures.comparisons) {
    const auto& found = pair.difference;
    table.row({figures.groups[pair.a].group.name + " – " + figures.groups[pair.b].group.name,
               found ? fmt::format("{:+.1f} to {:+.1f}", 100 * found->low, 100 * found->high) : "–",
               found ? fmt::format("{:+.1f}", 100 * found->difference) : "–",
               p_text(found ? std::optional(found->p_value) : std::nullopt),
               p_text(pair.p_adjusted), p_text(pair.curve_p_value)});
  }
  return table.text();
}

} // namespace

Answer germination_answer(std::span<const stats::Tray> trays,
                          const stats::GerminationFigures& figures,
                          const stats::GerminationOptions& options) {
  Answer answer;
  answer.json["trays"] = Json::array();
  answer.json["groups"] = Json::array();
  answer.json["comparisons"] = Json::array();
  for (const auto& tray : figures.trays)
    answer.json["trays"].push_back(json_of(trays[tray.tray], tray));
  for (const auto& group : figures.groups)
    answer.json["groups"].push_back(json_of(group));
  for (const auto& pair : figures.comparisons)
    answer.json["comparisons"].push_back(json_of(pair, figures));
  answer.table = counts_table(trays, figures, options.confidence) + '\n' + curves_table(figures);
  if (!figures.comparisons.empty())
    answer.table += '\n' + comparisons_table(figures, options.confidence);
  return answer;
}

void add_germination(CommandLine& line) {
  struct Options {
    std::string file;
    std::string family = "best";
    stats::GerminationOptions figures;
  };
  auto given = std::make_shared<Options>();
  auto& command =
      line.add("germination", "What germination counts tell", [given]() -> Result<Answer> {
        if (!(given->figures.confidence > 0 && given->figures.confidence < 1))
          return refuse(usage_fault(
              fmt::format("--confidence {} is not between 0 and 1", given->figures.confidence),
              "Write a share such as 0.95."));
        given->figures.family = stats::family_named(given->family);
        const auto table = read_csv_file(given->file);
        if (!table)
          return refuse(table.error());
        const auto trays = read_germination(*table);
        if (!trays)
          return refuse(trays.error());
        return stats::germination_figures(*trays, given->figures).map([&](const auto& figures) {
          return germination_answer(*trays, figures, given->figures);
        });
      });
  command.add_option("file", given->file, "Counts: group,tray,sown,day,germinated[,removed]")
      .required();
  command.add_option("--family", given->family, "Shape of the curve; best is the one of lowest AIC")
      .one_of({"best", "log-logistic", "weibull", "log-normal"})
      .told_default();
  command.add_option("--confidence", given->figures.confidence, "Confidence of every range")
      .told_default();
}

} // namespace coneline::commands
