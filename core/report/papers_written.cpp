// SPDX-License-Identifier: GPL-3.0-or-later
// The papers as text, as a page and as JSON.
#include "core/base/heading.h"
#include "core/base/phrase.h"
#include "core/report/papers.h"
#include "core/report/step_chart.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view style = R"css(
body { background: #FBFAF6; color: #20281F; font: 16px/1.5 "Noto Sans", sans-serif;
  font-variant-numeric: tabular-nums; margin: 0 auto; padding: 24px; max-width: 1000px; }
h1 { font-size: 28px; margin: 0 0 8px; } h2 { font-size: 20px; margin: 28px 0 4px; }
p { margin: 2px 0; } .label { color: #5A6156; } .warns { color: #8A4B16; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; padding: 4px 8px; border-bottom: 1px solid #D8D6CC; vertical-align: top; }
th { color: #5A6156; font-weight: normal; font-size: 13px; }
@media print { body { background: #FFFFFF; color: #000000; } }
)css";

/// Columns a text takes: its code points.
std::size_t width(std::string_view text) {
  return static_cast<std::size_t>(std::ranges::count_if(
      text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string table_text(const PapersSection& section) {
  std::vector<std::size_t> widths(section.header.size(), 0);
  const auto widen = [&](const std::vector<std::string>& row) {
    for (std::size_t at = 0; at < widths.size(); ++at)
      widths[at] = std::max(widths[at], width(row[at]));
  };
  widen(section.header);
  std::ranges::for_each(section.rows, widen);
  const auto line = [&](const std::vector<std::string>& row) {
    std::string text = " ";
    for (std::size_t at = 0; at < widths.size(); ++at)
      text += " " + row[at] + std::string(widths[at] - width(row[at]) + 1, ' ');
    text.erase(text.find_last_not_of(' ') + 1);
    return text + "\n";
  };
  std::string text = line(section.header);
  for (const auto& row : section.rows)
    text += line(row);
  return text;
}

Json entry_number(book::EntryId id) {
  return id.value;
}

Json day(const std::optional<Date>& date) {
  return date ? Json(date->iso()) : Json();
}

Json plants_json(const Papers& papers) {
  Json plants = Json::array();
  for (const auto& [role, plant, taxon] : papers.plants) {
    Json documents = Json::array();
    for (const auto& paper : plant.papers)
      documents.push_back({{"kind", paper.kind},
                           {"number", paper.number},
                           {"issued", day(paper.issued)},
                           {"authority", paper.authority},
                           {"note", paper.note}});
    plants.push_back({{"role", role},
                      {"code", plant.code.text()},
                      {"name", plant.name},
                      {"taxon", taxon},
                      {"taxon_certainty", book::word(plant.taxon_certainty)},
                      {"sex", book::word(plant.sex)},
                      {"origin", plant.origin},
                      {"acquired", day(plant.acquired)},
                      {"papers", documents}});
  }
  return plants;
}

Json rules_json(const std::vector<TradeRule>& rules) {
  Json json = Json::array();
  for (const auto& rule : rules)
    json.push_back({{"name", rule.name},
                    {"says", rule.says},
                    {"source", rule.source},
                    {"as_of", rule.as_of.iso()}});
  return json;
}

Json passes_json(const Papers& papers) {
  Json json = Json::array();
  for (const auto& pass : papers.passes)
    json.push_back({{"entry", entry_number(pass.entry)},
                    {"date", pass.date.iso()},
                    {"cone", pass.cone.text()},
                    {"method", pass.method},
                    {"pollen", pass.pollen},
                    {"millilitres", pass.millilitres ? Json(*pass.millilitres) : Json()},
                    {"who", pass.who}});
  return json;
}

Json steps_json(const Papers& papers) {
  Json json = Json::array();
  for (const auto& step : papers.steps) {
    Json ended = Json::object();
    for (const auto& [state, count] : step.ended)
      ended[std::string(book::word(state))] = count;
    json.push_back({{"code", step.code.text()},
                    {"what", step.what},
                    {"first", day(step.first)},
                    {"in", step.in},
                    {"ended", ended},
                    {"passed_on", step.passed_on},
                    {"on_hand", step.on_hand}});
  }
  return json;
}

Json disposals_json(const Papers& papers) {
  Json json = Json::array();
  for (const auto& each : papers.disposals)
    json.push_back({{"entry", entry_number(each.entry)},
                    {"date", each.date.iso()},
                    {"lot", each.lot.text()},
                    {"count", each.count},
                    {"as", book::word(each.as)},
                    {"buyer", each.buyer},
                    {"on_this_line", each.on_this_line}});
  return json;
}

Json harvests_json(const Papers& papers) {
  Json json = Json::array();
  for (const auto& harvest : papers.harvests)
    json.push_back(
        {{"code", harvest.code.text()}, {"date", day(harvest.date)}, {"count", harvest.seeds}});
  return json;
}

} // namespace

std::string papers_text(const Papers& papers) {
  std::string text;
  for (const auto& section : papers_sections(papers)) {
    text += (text.empty() ? "" : "\n") + section.title + "\n";
    for (const auto& [label, words] : section.lines)
      text +=
          label.empty() ? fmt::format("  {}\n", words) : fmt::format("  {}: {}\n", label, words);
    if (!section.rows.empty())
      text += table_text(section);
  }
  return text;
}

std::string papers_html(const Papers& papers) {
  std::string page = fmt::format(
      "<!doctype html>\n<html lang=\"{}\"><head><meta charset=\"utf-8\">\n<meta name=\"viewport\" "
      "content=\"width=device-width\">\n<title>{}</title>\n<style>{}</style></head><body>\n",
      language().code(), escaped(phrase("Papers: {}", papers.subject)), style);
  bool first = true;
  for (const auto& section : papers_sections(papers)) {
    page += fmt::format("<{0}{1}>{2}</{0}>\n", first ? "h1" : "h2",
                        section.warns ? " class=\"warns\"" : "",
                        escaped(first ? phrase("Papers: {}", section.title) : section.title));
    first = false;
    for (const auto& [label, words] : section.lines)
      page += fmt::format(
          "<p>{}{}</p>\n",
          label.empty() ? "" : fmt::format("<span class=\"label\">{}:</span> ", escaped(label)),
          escaped(words));
    if (section.rows.empty())
      continue;
    page += "<div class=\"wide\"><table><tr>";
    for (const auto& cell : section.header)
      page += fmt::format("<th>{}</th>", escaped(cell));
    page += "</tr>\n";
    for (const auto& row : section.rows) {
      page += "<tr>";
      for (const auto& cell : row)
        page += fmt::format("<td>{}</td>", escaped(cell));
      page += "</tr>\n";
    }
    page += "</table></div>\n";
  }
  return page + "</body></html>\n";
}

Json papers_json(const Papers& papers) {
  return {{"subject", papers.subject},
          {"nursery", papers.title.name},
          {"invented", papers.title.invented},
          {"printed", papers.printed.iso()},
          {"what", papers.what},
          {"taxon", papers.taxon},
          {"count", papers.count},
          {"missing", papers.missing},
          {"listings", rules_json(papers.listings)},
          {"rules", rules_json(papers.rules)},
          {"advice", "No legal advice; the authority decides."},
          {"plants", plants_json(papers)},
          {"purchase", papers.purchase ? Json({{"code", papers.purchase->code.text()},
                                               {"supplier", papers.purchase->supplier},
                                               {"bought", papers.purchase->bought.iso()},
                                               {"note", papers.purchase->note}})
                                       : Json()},
          {"pollinations", passes_json(papers)},
          {"harvests", harvests_json(papers)},
          {"in", papers.in},
          {"on_hand", papers.on_hand},
          {"ended", papers.ended},
          {"line", steps_json(papers)},
          {"disposals", disposals_json(papers)},
          {"record",
           {{"proven", papers.chain_holds},
            {"entries", papers.entries},
            {"last_link", papers.last_link.empty() ? Json() : Json(papers.last_link)}}}};
}

} // namespace coneline::report
