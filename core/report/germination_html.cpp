// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/heading.h"
#include "core/base/phrase.h"
#include "core/report/cross_chart.h"
#include "core/report/cross_said.h"
#include "core/report/step_chart.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

constexpr std::string_view style = R"css(
:root { --paper: #FBFAF6; --ink: #20281F; --quiet: #5A6156; --line: #D8D6CC; --due: #8A4B16; --forecast: #5B4B8A;
  --c0: #000000; --c1: #0072B2; --c2: #D55E00; --c3: #009E73; --c4: #CC79A7; --c5: #56B4E9; --c6: #E69F00; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #171B18; --ink: #ECE9E0; --quiet: #A9AFA4; --line: #3A403B; --due: #E0A060; --forecast: #B9A8E8;
    --c0: #FFFFFF; --c1: #56B4E9; --c2: #E08040; --c3: #30BE93; --c4: #CC79A7; --c5: #8FD0F5; --c6: #E69F00; } }
@media print { :root { --paper: #FFFFFF; --ink: #000000; --quiet: #3A3A3A; }
  body { font-size: 11px; padding: 0; } th, td { padding: 2px 4px; } td.bar { min-width: 80px; width: 100px; }
  th, .quiet, .axis, .name { font-size: 10px; } .wide { overflow-x: visible; } svg, tr { break-inside: avoid; } }
body { background: var(--paper); color: var(--ink); font: 16px/1.5 "Noto Sans", sans-serif;
  font-variant-numeric: tabular-nums; margin: 0 auto; padding: 24px; max-width: 1160px; }
h1 { font-size: 28px; line-height: 1.2; margin: 0 0 4px; }
h2 { font-size: 20px; margin: 32px 0 4px; }
p { margin: 4px 0 12px; } .quiet { color: var(--quiet); font-size: 13px; }
.invented { color: var(--due); border: 1px solid var(--due); padding: 4px 12px; display: inline-block; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: right; padding: 4px 8px; border-bottom: 1px solid var(--line); vertical-align: middle; }
th { color: var(--quiet); font-weight: normal; font-size: 13px; }
th:first-child, td:first-child, .text { text-align: left; }
.whole { white-space: nowrap; } .cross { min-width: 180px; }
td.bar { width: 160px; min-width: 120px; }
code { font-family: "Noto Sans Mono", monospace; }
svg { display: block; width: 100%; height: auto; }
.grid, .track { stroke: var(--line); } .lead { stroke: var(--line); }
.axis { fill: var(--quiet); font-size: 13px; } .name { fill: var(--ink); font-size: 13px; }
.curve { fill: none; stroke-width: 2.2; }
.band { fill: var(--c1); opacity: .18; } .coming { fill: var(--forecast); opacity: .3; }
.likelycoming { stroke: var(--forecast); stroke-width: 2; }
ul { margin: 4px 0 12px; padding-left: 20px; }
.range { stroke: var(--ink); stroke-width: 6; } .likely { stroke: var(--paper); stroke-width: 2; }
.c0 { stroke: var(--c0); } .c1 { stroke: var(--c1); } .c2 { stroke: var(--c2); } .c3 { stroke: var(--c3); }
.c4 { stroke: var(--c4); } .c5 { stroke: var(--c5); } .c6 { stroke: var(--c6); }
)css";

/// "41.2–58.0 %, likely 50.0"
std::string share_text(const stats::FinalShare& share) {
  if (!share.share)
    return "–";
  if (!share.range)
    return phrase("{:.1f} %", 100 * *share.share);
  return phrase("{:.1f}–{:.1f} %, likely {:.1f}", 100 * share.range->low, 100 * share.range->high,
                100 * *share.share);
}

std::string days_text(const std::optional<double>& days) {
  return days ? phrase("{:.1f}", *days) : "–";
}

/// The range on a scale from 0 to 100 %, the likely value as a gap in it.
std::string bar(const stats::FinalShare& share) {
  if (!share.share || !share.range)
    return "";
  const auto x = [](double value) { return 2 + 196 * std::clamp(value, 0.0, 1.0); };
  // A range of hardly any width is drawn so wide that it is seen.
  const double low = std::min(x(share.range->low), 196.0);
  const double high = std::max(x(share.range->high), low + 2);
  return fmt::format(
      "<svg viewBox=\"0 0 200 16\" role=\"img\" aria-label=\"{}\">"
      "<line class=\"track\" x1=\"2\" x2=\"198\" y1=\"8\" y2=\"8\"/>"
      "<line class=\"track\" x1=\"2\" x2=\"2\" y1=\"2\" y2=\"14\"/>"
      "<line class=\"track\" x1=\"100\" x2=\"100\" y1=\"4\" y2=\"12\"/>"
      "<line class=\"track\" x1=\"198\" x2=\"198\" y1=\"2\" y2=\"14\"/>"
      "<line class=\"range\" x1=\"{:.1f}\" x2=\"{:.1f}\" y1=\"8\" y2=\"8\"/>"
      "<line class=\"likely\" x1=\"{:.1f}\" x2=\"{:.1f}\" y1=\"4\" y2=\"12\"/></svg>",
      share_text(share), low, high, x(*share.share), x(*share.share));
}

enum class Align { number, text };

struct Heading {
  std::string words;
  Align align = Align::number;
};

std::string heading_row(const std::vector<Heading>& headings) {
  std::string row = "<thead><tr>";
  for (const auto& [words, align] : headings)
    row +=
        fmt::format("<th{}>{}</th>", align == Align::text ? " class=\"text\"" : "", escaped(words));
  return row + "</tr></thead><tbody>\n";
}

std::string expected_text(const CrossReport& cross) {
  const auto more = cross.expected();
  if (cross.waiting == 0)
    return phrase("none");
  if (more.high == 0)
    return phrase("none expected");
  return phrase("{}–{}, likely {}", more.low, more.high, more.median);
}

std::string short_unit(const GerminationReport& report) {
  return report.degree_days ? phrase("degree-days") : phrase("days");
}

std::string alike(const GerminationReport& report) {
  if (report.crosses.size() < 2)
    return "";
  std::string html = fmt::format("<p class=\"quiet\">{} {}</p>\n", escaped(alike_method_told()),
                                 escaped(phrase("At {:g} %.", 100 * report.confidence)));
  const auto told = alike_told(report);
  if (told.empty())
    return html + "<p>" + escaped(phrase("Each differs from every other beyond chance.")) +
           "</p>\n";
  html += "<ul>\n";
  for (const auto& sentence : told)
    html += "<li>" + escaped(sentence) + "</li>\n";
  return html + "</ul>\n";
}

std::string summary(const GerminationReport& report) {
  std::string html =
      "<h2>" + escaped(phrase("Ranking")) + "</h2>\n<div class=\"wide\"><table>" +
      heading_row({{ranked_said(report)},
                   {as_heading("alike"), Align::text},
                   {as_heading("sown")},
                   {as_heading("up")},
                   {phrase("share of sown, {:g} % range", 100 * report.confidence), Align::text},
                   {phrase("0 to 100 %"), Align::text},
                   {as_heading("still to come")},
                   {phrase("mean {}", short_unit(report))},
                   {phrase("T50 {}", short_unit(report))}});
  for (const auto place : report.ranking) {
    const auto& cross = report.crosses[place];
    html +=
        fmt::format("<tr><td class=\"cross\">{}<br><span class=\"quiet\"><i>{}</i></span></td><td "
                    "class=\"text\">{}</td><td>{}</td><td>{}</td>"
                    "<td class=\"text whole\">{}</td><td "
                    "class=\"bar\">{}</td><td class=\"whole\">{}</td><td>{}</td><td>{}</td></tr>\n",
                    escaped(name_said(cross)), escaped(cross.taxon), cross.alike,
                    cross.figures.sown, cross.figures.germinated, share_text(cross.figures.final),
                    bar(cross.figures.final), expected_text(cross),
                    days_text(cross.together.mean_time), days_text(cross.together.t50_farooq));
  }
  return html + "</tbody></table></div>\n" + alike(report);
}

std::string charts(const GerminationReport& report) {
  double last_day = 0;
  for (const auto& cross : report.crosses)
    last_day = std::max(last_day, cross.curve.back().day);
  if (last_day <= 0)
    return "<p>" + escaped(phrase("No tray has been looked at yet.")) + "</p>\n";
  std::string html = fmt::format(
      "<h2>{}</h2>\n<p class=\"quiet\">{}</p>\n", escaped(phrase("How it came up")),
      escaped(phrase("Share of the seed sown. The trays of a cross are taken together, times "
                     "counted from each one's sowing; trays sown later count with what has come "
                     "up so far.")));
  for (std::size_t at = 0; at < report.crosses.size(); at += curves_in_chart) {
    const auto many = std::min(curves_in_chart, report.crosses.size() - at);
    html +=
        step_chart(std::span(report.crosses).subspan(at, many), last_day, report.time_unit_said());
  }
  return html;
}

std::string leaf_text(const LeafFigures& leaf) {
  if (leaf.leaves == 0)
    return phrase("No first leaf seen yet.");
  const auto days = leaf.days_from_root
                        ? phrase("; half of the roots had it {:.0f} days or less after they "
                                 "were seen, the earliest root taken to be the first to leaf",
                                 *leaf.days_from_root)
                        : phrase("; too few roots have theirs to say after how many days");
  return phrase("First leaf: {} seeds, {} of those sown{}.", leaf.leaves, share_text(leaf.share),
                days);
}

/// The curve in words: family, what never comes, and how steep.
std::string curve_text(const CrossReport& cross) {
  const auto& fit = cross.figures.curve;
  if (!fit)
    return cross.figures.germinated == 0
               ? phrase("No curve: nothing came up.")
               : phrase("No curve: all that came up was seen at one look.");
  const auto end = fit->boundary ? phrase("the counts do not yet tell of an end")
                                 : phrase("{:.0f} % of the seed germinates sooner or later by it",
                                          100 * fit->curve.germinable);
  return phrase("Curve: {}, {}.", phrase_of(stats::family_word(fit->curve.family)), end);
}

std::string chart(const GerminationReport& report, const CrossReport& cross) {
  if (cross.curve.back().day <= 0)
    return "";
  return cross_svg(cross_chart(cross), report.time_unit_said());
}

std::string details(const GerminationReport& report, const CrossReport& cross) {
  const auto leans =
      cross.known ? phrase(" Still to come leans on {}.", cross.known->beforehand) : std::string();
  std::string html = fmt::format(
      "<h2>{}</h2>\n<p>{}{} {} {}</p>\n{}<div class=\"wide\"><table>", escaped(name_said(cross)),
      cross.taxon.empty() ? "" : fmt::format("<i>{}</i>. ", escaped(cross.taxon)),
      escaped(cross.told + leans), escaped(leaf_text(cross.leaf)), escaped(curve_text(cross)),
      chart(report, cross));
  html += heading_row({{as_heading("tray")},
                       {as_heading("sown on"), Align::text},
                       {as_heading("sown")},
                       {as_heading("up")},
                       {as_heading("removed")},
                       {as_heading("share of sown"), Align::text},
                       {phrase("0 to 100 %"), Align::text},
                       {phrase("mean {}", short_unit(report))},
                       {phrase("T50 {}", short_unit(report))},
                       {as_heading("leaves")},
                       {as_heading("state"), Align::text}});
  for (const auto& tray : cross.trays)
    html += fmt::format(
        "<tr><td><code>{}</code></td><td class=\"text "
        "whole\">{}</td><td>{}</td><td>{}</td><td>{}</td>"
        "<td class=\"text whole\">{}</td><td class=\"bar\">{}</td><td>{}</td><td>{}</td><td>{}</td>"
        "<td class=\"text\">{}</td></tr>\n",
        tray.seen.lot.code.text(), tray.seen.sown_on.iso(), tray.seen.sown, tray.germinated,
        tray.removed, share_text(tray.figures.final), bar(tray.figures.final),
        days_text(tray.figures.measures.mean_time), days_text(tray.figures.measures.t50_farooq),
        tray.leaf.leaves, escaped(tray.told));
  return html + "</tbody></table></div>\n";
}

std::string left_out(const GerminationReport& report) {
  if (report.left_out.empty())
    return "";
  std::string html = "<h2>" + escaped(phrase("Left out")) + "</h2>\n<ul>\n";
  for (const auto& tray : report.left_out)
    html += fmt::format("<li><code>{}</code>: {}</li>\n", tray.code.text(), escaped(tray.why));
  return html + "</ul>\n";
}

std::string methods(const GerminationReport& report) {
  std::vector<std::string> named;
  for (const auto& cross : report.crosses)
    if (const auto method = phrase_of(cross.figures.final.method);
        std::ranges::find(named, method) == named.end())
      named.push_back(method);
  return fmt::format(
      "<p class=\"quiet\">{} {}</p>\n{}",
      escaped(phrase("Ranges at {:g} %: {}. Mean and T50 are times to the look at "
                     "which seed was seen, of the seed that came up.",
                     100 * report.confidence, fmt::format("{}", fmt::join(named, "; ")))),
      escaped(band_told()),
      report.degree_days ? "<p>" + escaped(lacking_told(report)) + "</p>\n" : "");
}

} // namespace

std::string title_of(const GerminationReport& report) {
  switch (report.by) {
  case By::season:
    return phrase("Germination per season");
  case By::cross:
    return phrase("Germination per cross");
  case By::cross_and_season:
    return phrase("Germination per cross and season");
  }
  return {};
}

std::string ranked_said(const GerminationReport& report) {
  return report.by == By::season ? as_heading("season") : as_heading("cross");
}

std::string germination_html(const GerminationReport& report) {
  std::string html =
      fmt::format("<!DOCTYPE html>\n<html lang=\"{}\"><head><meta charset=\"utf-8\">"
                  "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
                  "<meta name=\"color-scheme\" content=\"light dark\">"
                  "<title>{}</title><style>{}</style></head>\n<body>\n<h1>{}</h1>\n<p>{}</p>\n",
                  language().code(),
                  escaped(phrase("Germination, {}, {}", report.title.name, report.as_of.iso())),
                  style, escaped(title_of(report)),
                  escaped(phrase("{}, as of {}", report.title.name, report.as_of.iso())));
  if (report.title.invented)
    html += fmt::format("<p class=\"invented\">{}</p>\n",
                        escaped(phrase("Invented data: this nursery and its counts are made up.")));
  if (report.crosses.empty())
    html += "<p>" + escaped(no_cross_told(report)) + "</p>\n";
  else
    html += summary(report) + methods(report) + charts(report);
  for (const auto& cross : report.crosses)
    html += details(report, cross);
  return html + left_out(report) + "</body></html>\n";
}

} // namespace coneline::report
