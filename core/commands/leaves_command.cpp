// SPDX-License-Identifier: GPL-3.0-or-later
// leaves: root and first leaf, each with its own figures, and the time between.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/work/root_and_leaf.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  double confidence = 0.95;
};

Json number(const std::optional<double>& value) {
  return value ? Json(*value) : Json(nullptr);
}

Json event_json(const stats::GroupFigures& figures, const stats::GerminationMeasures& measures) {
  const auto& range = figures.final.range;
  Json json{{"seeds", figures.germinated},
            {"share", number(figures.final.share)},
            {"low", range ? Json(range->low) : Json(nullptr)},
            {"high", range ? Json(range->high) : Json(nullptr)},
            {"mean_time", number(measures.mean_time)},
            {"t50_farooq", number(measures.t50_farooq)},
            {"curve", nullptr},
            {"told", figures.told}};
  if (figures.curve) {
    const auto& curve = figures.curve->curve;
    json["curve"] = {{"family", stats::family_word(curve.family)},
                     {"germinable", curve.germinable},
                     {"shape", curve.shape},
                     {"scale", curve.scale},
                     {"half_by_day", curve.day_of_progress(0.5)},
                     {"nine_tenths_by_day", curve.day_of_progress(0.9)}};
  }
  return json;
}

Json json_of(const work::RootAndLeaf& cross) {
  return {{"cross", cross.name},
          {"taxon", cross.taxon},
          {"trays", cross.trays},
          {"sown", cross.root.sown},
          {"root", event_json(cross.root, cross.root_measures)},
          {"leaf", event_json(cross.leaf, cross.leaf_measures)},
          {"from_root_to_leaf",
           {{"roots", cross.wait.roots},
            {"leafed", cross.wait.leafed},
            {"straight_to_leaf", cross.wait.straight_to_leaf},
            {"half_by_days", number(cross.wait.half)},
            {"low", number(cross.wait.half_range.low)},
            {"high", number(cross.wait.half_range.high)},
            {"nine_tenths_by_days", number(cross.wait.nine_tenths)}}}};
}

std::string share_range(const stats::GroupFigures& figures) {
  const auto& range = figures.final.range;
  return range ? fmt::format("{:.1f}–{:.1f}", 100 * range->low, 100 * range->high) : "–";
}

std::string wait_text(const work::LeafWait& wait) {
  if (wait.roots == 0)
    return "no root seen before its leaf";
  if (wait.leafed == 0)
    return fmt::format("none of {} roots has a leaf yet", wait.roots);
  const auto text = [](const std::optional<double>& days) {
    return days ? fmt::format("{:g}", *days) : std::string("not in sight");
  };
  if (!wait.half)
    return fmt::format("from {} days; half not in sight yet", text(wait.half_range.low));
  return fmt::format("{} – {} days", text(wait.half_range.low), text(wait.half_range.high));
}

std::string p_text(const std::optional<double>& p) {
  return p && *p < 0.0001 ? "below 0.0001" : shown(p, 4);
}

Answer answer_of(const work::RootAndLeafBook& book) {
  Answer answer;
  answer.json = {{"as_of", book.as_of.iso()},
                 {"confidence", book.confidence},
                 {"crosses", Json::array()},
                 {"comparisons", Json::array()}};
  const auto range = fmt::format("{:g} % range", 100 * book.confidence);
  Table table({"cross", "sown", "roots", "% with root, " + range, "T50 days", "leaves",
               "% in leaf, " + range, "T50 days", "half of the roots in leaf after, " + range,
               "middle", "nine tenths"});
  for (const auto& cross : book.crosses) {
    answer.json["crosses"].push_back(json_of(cross));
    table.row({cross.name, std::to_string(cross.root.sown), std::to_string(cross.root.germinated),
               share_range(cross.root), shown(cross.root_measures.t50_farooq, 1),
               std::to_string(cross.leaf.germinated), share_range(cross.leaf),
               shown(cross.leaf_measures.t50_farooq, 1), wait_text(cross.wait),
               shown(cross.wait.half, 0), shown(cross.wait.nine_tenths, 0)});
  }
  Table pairs({"compared", "time from root to leaf: p", "p for all pairs"});
  for (const auto& pair : book.comparisons) {
    const auto& a = book.crosses[pair.a].name;
    const auto& b = book.crosses[pair.b].name;
    const auto p = pair.test ? std::optional(pair.test->p_value) : std::nullopt;
    answer.json["comparisons"].push_back(
        {{"a", a},
         {"b", b},
         {"log_rank", pair.test ? Json(pair.test->chi_square) : Json(nullptr)},
         {"p_value", number(p)},
         {"p_adjusted", number(pair.p_adjusted)}});
    if (pair.test)
      pairs.row({a + " – " + b, p_text(p), p_text(pair.p_adjusted)});
  }
  answer.table = book.crosses.empty() ? "No tray had been sown by then.\n" : table.text();
  if (!book.comparisons.empty())
    answer.table += "\n" + pairs.text();
  return answer;
}

Result<Answer> run(const Asked& asked) {
  const auto as_of = date_or_today(asked.as_of, "--as-of");
  if (!as_of)
    return refuse(as_of.error());
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    return work::root_and_leaf(reading, *as_of, asked.confidence).map(answer_of);
  });
}

} // namespace

void add_leaves(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("leaves", "Root and first leaf per cross, and the time between",
                           [asked] { return run(*asked); });
  asked->book.add_to(command);
  command.add_option("--as-of", asked->as_of, "As it was known on that day; today when left out");
  real_option(command, "--confidence", asked->confidence,
              "Confidence of every range; 0.95 unless said");
}

} // namespace coneline::commands
