// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/report/papers.h"

#include <fmt/format.h>

namespace coneline::report {

namespace {

std::string or_not_recorded(const std::string& text) {
  return text.empty() ? "not recorded" : text;
}

std::string day(const std::optional<Date>& date) {
  return date ? date->iso() : "not recorded";
}

PapersSection heading(const Papers& papers) {
  PapersSection section{papers.subject, {}, {}, {}, false};
  section.lines = {
      {"nursery", papers.title.name + (papers.title.invented ? " (invented data)" : "")},
      {"what", papers.what},
      {"taxon", papers.taxon},
      {papers.sold ? "sold" : "on hand", std::to_string(papers.count)},
      {"printed", papers.printed.iso()}};
  return section;
}

PapersSection plant_section(const PaperedPlant& of) {
  const auto& plant = of.plant;
  PapersSection section{
      fmt::format("{}: {} ({})", of.role, plant.code.text(), book::plant_name(plant)),
      {},
      {"paper", "number", "issued", "authority", "note"},
      {},
      false};
  section.title[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(section.title[0])));
  section.lines = {{"taxon", fmt::format("{}, {}", of.taxon, book::word(plant.taxon_certainty))},
                   {"sex", std::string(book::word(plant.sex))},
                   {"origin", or_not_recorded(plant.origin)},
                   {"came", day(plant.acquired)}};
  if (!plant.note.empty())
    section.lines.emplace_back("note", plant.note);
  if (plant.papers.empty())
    section.lines.emplace_back("papers", "none recorded");
  for (const auto& paper : plant.papers)
    section.rows.push_back({or_not_recorded(paper.kind), or_not_recorded(paper.number),
                            day(paper.issued), or_not_recorded(paper.authority), paper.note});
  return section;
}

PapersSection listings(const Papers& papers) {
  PapersSection section{
      "Listings and rules", {}, {"taxon", "CITES appendix", "source", "looked up"}, {}, false};
  for (const auto& rule : papers.listings)
    section.rows.push_back({rule.name, rule.says, rule.source, rule.as_of.iso()});
  for (const auto& rule : papers.rules)
    section.lines.emplace_back(
        rule.name, fmt::format("{} ({}; {})", rule.says, rule.source, rule.as_of.iso()));
  section.lines.emplace_back(
      "",
      "This is no legal advice. Listings change; the data above have the day on which they were "
      "looked up. The authority decides.");
  return section;
}

PapersSection purchase_section(const book::Purchase& purchase) {
  PapersSection section{"Bought in: " + purchase.code.text(), {}, {}, {}, false};
  section.lines = {{"supplier", or_not_recorded(purchase.supplier)},
                   {"bought", purchase.bought.iso()},
                   {"said of parents and papers", or_not_recorded(purchase.note)}};
  return section;
}

PapersSection passes(const Papers& papers) {
  PapersSection section{
      "Pollinations", {}, {"day", "cone", "method", "pollen", "ml", "by", "entry"}, {}, false};
  for (const auto& pass : papers.passes)
    section.rows.push_back({pass.date.iso(), pass.cone.text(), pass.method, pass.pollen,
                            pass.millilitres ? write_real(*pass.millilitres) : "–", pass.who,
                            std::to_string(pass.entry.value)});
  if (section.rows.empty())
    section.lines.emplace_back("", "none recorded");
  return section;
}

PapersSection harvests(const Papers& papers) {
  PapersSection section{
      "Harvest and counts", {}, {"from", "first day", "seeds or plants"}, {}, false};
  for (const auto& harvest : papers.harvests)
    section.rows.push_back(
        {fmt::format("{} {}", kind_word(harvest.code.kind()), harvest.code.text()),
         day(harvest.date), std::to_string(harvest.seeds)});
  section.lines = {
      {"", phrase("{} in = {} on hand + {} ended", papers.in, papers.on_hand, papers.ended)}};
  return section;
}

std::string ends_text(const work::LineStep& step) {
  std::string text;
  for (const auto& [state, count] : step.ended)
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", count, book::word(state));
  return text;
}

PapersSection line(const Papers& papers) {
  PapersSection section{"The line from parent to plant",
                        {},
                        {"step", "what", "from", "came in", "ended here", "went on", "on hand"},
                        {},
                        false};
  for (const auto& step : papers.steps)
    section.rows.push_back({step.code.text(), step.what, day(step.first), std::to_string(step.in),
                            ends_text(step), std::to_string(step.passed_on),
                            std::to_string(step.on_hand)});
  return section;
}

PapersSection disposals(const Papers& papers) {
  PapersSection section{"Every disposal of the same origin",
                        {},
                        {"day", "lot", "count", "as", "buyer", "this line", "entry"},
                        {},
                        false};
  for (const auto& each : papers.disposals)
    section.rows.push_back({each.date.iso(), each.lot.text(), std::to_string(each.count),
                            std::string(book::word(each.as)), each.buyer,
                            each.on_this_line ? "yes" : "", std::to_string(each.entry.value)});
  if (section.rows.empty())
    section.lines.emplace_back("", "none recorded");
  return section;
}

PapersSection missing(const Papers& papers) {
  PapersSection section{"What is missing", {}, {}, {}, !papers.missing.empty()};
  for (const auto& what : papers.missing)
    section.lines.emplace_back("", what);
  if (papers.missing.empty())
    section.lines.emplace_back("", "nothing that the program asks for");
  return section;
}

PapersSection chain(const Papers& papers) {
  PapersSection section{"The record", {}, {}, {}, !papers.chain_holds};
  section.lines = {
      {"", papers.chain_holds
               ? phrase("The book was proven when this was printed: {} entries, each linked to the "
                        "one before it by SHA-256.",
                        papers.entries)
               : "The book did NOT prove when this was printed: see what is missing."},
      {"last link", papers.last_link.empty() ? "none" : papers.last_link},
      {"", "Whoever holds this paper can have it shown later that the entries behind it were not "
           "changed: 'coneline check --link' with the link above."}};
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
