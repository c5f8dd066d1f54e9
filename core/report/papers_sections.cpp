// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/heading.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/report/papers.h"
#include "core/report/title_said.h"

#include <fmt/format.h>

namespace coneline::report {

namespace {

std::string or_not_recorded(const std::string& text) {
  return text.empty() ? phrase("not recorded") : text;
}

std::string day(const std::optional<Date>& date) {
  return date ? date->iso() : phrase("not recorded");
}

PapersSection heading(const Papers& papers) {
  PapersSection section{papers.subject, {}, {}, {}, false};
  section.lines = {
      {as_heading("nursery"), title_said(papers.title)},
      {as_heading("what"), papers.what},
      {as_heading("taxon"), papers.taxon},
      {papers.sold ? as_heading("sold") : as_heading("on hand"), std::to_string(papers.count)},
      {as_heading("printed"), papers.printed.iso()}};
  return section;
}

PapersSection plant_section(const PaperedPlant& of) {
  const auto& plant = of.plant;
  PapersSection section{
      fmt::format("{}: {} ({})", of.role, plant.code.text(), book::plant_name(plant)),
      {},
      {as_heading("paper"), as_heading("number"), as_heading("issued"), as_heading("authority"),
       as_heading("note")},
      {},
      false};
  section.title[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(section.title[0])));
  section.lines = {
      {as_heading("taxon"), fmt::format("{}, {}", of.taxon, book::said(plant.taxon_certainty))},
      {as_heading("sex"), book::said(plant.sex)},
      {as_heading("origin"), or_not_recorded(plant.origin)},
      {as_heading("came"), day(plant.acquired)}};
  if (!plant.note.empty())
    section.lines.emplace_back(as_heading("note"), plant.note);
  if (plant.papers.empty())
    section.lines.emplace_back(as_heading("papers"), phrase("none recorded"));
  for (const auto& paper : plant.papers)
    section.rows.push_back({or_not_recorded(paper.kind), or_not_recorded(paper.number),
                            day(paper.issued), or_not_recorded(paper.authority), paper.note});
  return section;
}

/// The words of the table that comes with the program are in the catalogues; those of a newer one
/// stay as they are.
PapersSection listings(const Papers& papers) {
  PapersSection section{phrase("Listings and rules"),
                        {},
                        {as_heading("taxon"), as_heading("CITES appendix"), as_heading("source"),
                         as_heading("looked up")},
                        {},
                        false};
  for (const auto& rule : papers.listings)
    section.rows.push_back({rule.name, rule.says, phrase_of(rule.source), rule.as_of.iso()});
  for (const auto& rule : papers.rules)
    section.lines.emplace_back(
        phrase_of(rule.name),
        fmt::format("{} ({}; {})", phrase_of(rule.says), phrase_of(rule.source), rule.as_of.iso()));
  section.lines.emplace_back(
      "",
      phrase("This is no legal advice. Listings change; the data above have the day on which they "
             "were looked up. The authority decides."));
  return section;
}

PapersSection purchase_section(const book::Purchase& purchase) {
  PapersSection section{phrase("Bought in: {}", purchase.code.text()), {}, {}, {}, false};
  section.lines = {{as_heading("supplier"), or_not_recorded(purchase.supplier)},
                   {as_heading("bought"), purchase.bought.iso()},
                   {as_heading("said of parents and papers"), or_not_recorded(purchase.note)}};
  return section;
}

PapersSection passes(const Papers& papers) {
  PapersSection section{phrase("Pollinations"),
                        {},
                        {as_heading("day"), as_heading("cone"), as_heading("method"),
                         as_heading("pollen"), "ml", as_heading("by"), as_heading("entry")},
                        {},
                        false};
  for (const auto& pass : papers.passes)
    section.rows.push_back(
        {pass.date.iso(), pass.cone.text(), phrase_of(pass.method), pass.pollen,
         pass.millilitres ? language().decimal(write_real(*pass.millilitres)) : "–", pass.who,
         std::to_string(pass.entry.value)});
  if (section.rows.empty())
    section.lines.emplace_back("", phrase("none recorded"));
  return section;
}

PapersSection harvests(const Papers& papers) {
  PapersSection section{
      phrase("Harvest and counts"),
      {},
      {as_heading("from"), as_heading("first day"), as_heading("seeds or plants")},
      {},
      false};
  for (const auto& harvest : papers.harvests)
    section.rows.push_back(
        {fmt::format("{} {}", kind_said(harvest.code.kind()), harvest.code.text()),
         day(harvest.date), std::to_string(harvest.seeds)});
  section.lines = {
      {"", phrase("{} in = {} on hand + {} ended", papers.in, papers.on_hand, papers.ended)}};
  return section;
}

std::string ends_text(const work::LineStep& step) {
  std::string text;
  for (const auto& [state, count] : step.ended)
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", count, book::said(state));
  return text;
}

PapersSection line(const Papers& papers) {
  PapersSection section{phrase("The line from parent to plant"),
                        {},
                        {as_heading("step"), as_heading("what"), as_heading("from"),
                         as_heading("came in"), as_heading("ended here"), as_heading("went on"),
                         as_heading("on hand")},
                        {},
                        false};
  for (const auto& step : papers.steps)
    section.rows.push_back({step.code.text(), step.what, day(step.first), std::to_string(step.in),
                            ends_text(step), std::to_string(step.passed_on),
                            std::to_string(step.on_hand)});
  return section;
}

PapersSection disposals(const Papers& papers) {
  PapersSection section{phrase("Every disposal of the same origin"),
                        {},
                        {as_heading("day"), as_heading("lot"), as_heading("count"),
                         as_heading("as"), as_heading("buyer"), as_heading("this line"),
                         as_heading("entry")},
                        {},
                        false};
  for (const auto& each : papers.disposals)
    section.rows.push_back(
        {each.date.iso(), each.lot.text(), std::to_string(each.count), book::said(each.as),
         each.buyer, each.on_this_line ? as_heading("yes") : "", std::to_string(each.entry.value)});
  if (section.rows.empty())
    section.lines.emplace_back("", phrase("none recorded"));
  return section;
}

PapersSection missing(const Papers& papers) {
  PapersSection section{phrase("What is missing"), {}, {}, {}, !papers.missing.empty()};
  for (const auto& what : papers.missing)
    section.lines.emplace_back("", what);
  if (papers.missing.empty())
    section.lines.emplace_back("", phrase("nothing that the program asks for"));
  return section;
}

PapersSection chain(const Papers& papers) {
  PapersSection section{phrase("The record"), {}, {}, {}, !papers.chain_holds};
  section.lines = {
      {"", papers.chain_holds
               ? phrase("The book was proven when this was printed: {} entries, each linked to the "
                        "one before it by SHA-256.",
                        papers.entries)
               : phrase("The book did NOT prove when this was printed: see what is missing.")},
      {as_heading("last link"), papers.last_link.empty() ? phrase("none") : papers.last_link},
      {"",
       phrase("Whoever holds this paper can have it shown later that the entries behind it were "
              "not changed: 'coneline check --link' with the link above.")}};
  return section;
}

} // namespace

std::vector<PapersSection> papers_sections(const Papers& papers) {
  std::vector<PapersSection> sections{heading(papers), missing(papers), listings(papers)};
  for (const auto& plant : papers.plants)
    sections.push_back(plant_section(plant));
  if (papers.purchase)
    sections.push_back(purchase_section(*papers.purchase));
  else
    sections.push_back(passes(papers));
  sections.push_back(harvests(papers));
  if (!papers.steps.empty())
    sections.push_back(line(papers));
  sections.push_back(disposals(papers));
  sections.push_back(chain(papers));
  return sections;
}

} // namespace coneline::report
