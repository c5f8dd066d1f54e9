// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever a person reads in a report or paper is said in the language of who asks. A language that
// puts marks around every text it is asked for shows what was never asked: of the demo's season,
// what is left outside the marks must be names that the grower gave, codes and figures.
#include "core/base/heading.h"
#include "core/exchange/import_season.h"
#include "core/plan/crossing.h"
#include "core/report/assumptions.h"
#include "core/report/crossing_input.h"
#include "core/report/crossing_report.h"
#include "core/report/forecast_input.h"
#include "core/report/forecast_paper.h"
#include "core/report/label_words.h"
#include "core/report/ordering.h"
#include "core/report/placing_input.h"
#include "core/report/placing_paper.h"
#include "core/report/sowings_input.h"
#include "core/report/spreadsheet.h"
#include "core/work/origin_said.h"
#include "core/work/trays_done.h"
#include "tests/core/store/scratch.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <regex>

namespace coneline::report {
namespace {

constexpr std::string_view opened = "⟦";
constexpr std::string_view closed = "⟧";

/// Marks what it says, and writes decimals with a comma.
class Marking : public Language {
 public:
  [[nodiscard]] std::string text(std::string_view english) const override {
    return fmt::format("{}{}{}", opened, english, closed);
  }
  [[nodiscard]] std::string counted(std::int64_t count, std::string_view one,
                                    std::string_view many) const override {
    return text(Language::counted(count, one, many));
  }
  [[nodiscard]] std::string decimal(std::string written) const override {
    std::ranges::replace(written, '.', ',');
    return written;
  }
};

/// The text outside all marks.
std::string unmarked(std::string_view text) {
  std::string left;
  int depth = 0;
  for (std::size_t at = 0; at < text.size();) {
    if (text.substr(at).starts_with(opened)) {
      ++depth;
      at += opened.size();
    } else if (text.substr(at).starts_with(closed)) {
      --depth;
      at += closed.size();
    } else {
      if (depth == 0)
        left += text[at];
      ++at;
    }
  }
  return left;
}

void take_out(std::string& text, const std::string& part) {
  for (std::size_t at = 0; (at = text.find(part, at)) != std::string::npos;)
    text.replace(at, part.size(), " ");
}

/// What the grower wrote himself, longest first.
std::vector<std::string> given_names(store::Reading& reading) {
  const auto registers = reading.registers();
  std::vector<std::string> names{registers.title.name};
  const auto add = [&](const std::string& name) { names.push_back(name); };
  for (const auto& taxon : registers.taxa)
    add(taxon.name);
  for (const auto& place : registers.places)
    add(place.name);
  for (const auto& pot : registers.pots)
    add(pot.name);
  for (const auto& mix : registers.mixes) {
    add(mix.name);
    for (const auto& part : mix.parts)
      add(part.name);
  }
  for (const auto& plant : registers.plants) {
    for (const auto& text : {plant.name, plant.origin, plant.note})
      add(text);
    for (const auto& paper : plant.papers)
      for (const auto& text : {paper.kind, paper.number, paper.authority, paper.note})
        add(text);
  }
  for (const auto& purchase : registers.purchases)
    for (const auto& text : {purchase.supplier, purchase.note})
      add(text);
  for (const auto& offer : reading.plan_records().offers)
    for (const auto& text : {offer.supplier, offer.good})
      add(text);
  for (const auto& entry : reading.standing_entries(book::Verb::sell))
    add(std::get<book::Sale>(entry.detail).buyer);
  for (const auto verb : {book::Verb::sell, book::Verb::pollinate})
    for (const auto& entry : reading.standing_entries(verb))
      add(entry.who);
  std::erase(names, "");
  std::ranges::sort(names, std::ranges::greater(), &std::string::size);
  return names;
}

/// A sheet that keeps what people read on it.
struct Kept : Sheet {
  explicit Kept(std::vector<std::string>& all) : texts(all) {}
  void row(const std::vector<Cell>& cells) override {
    ++count;
    for (const auto& cell : cells)
      if (const auto* text = std::get_if<std::string>(&cell))
        texts.push_back(*text);
      else if (const auto* name = std::get_if<Name>(&cell))
        texts.push_back(name->said);
  }
  void chart(const Chart& chart, int) override {
    for (const auto& text : {chart.title, chart.across, chart.up})
      texts.push_back(text);
    for (const auto& line : chart.lines)
      texts.push_back(line.name);
  }
  [[nodiscard]] int rows() const override { return count; }
  std::vector<std::string>& texts;
  int count = 0;
};

struct KeptBook : Spreadsheet {
  Sheet& sheet(const std::string& name, const std::vector<Cell>&) override {
    texts.push_back(name);
    return sheets.emplace(name, texts).first->second;
  }
  std::vector<std::string> texts;
  std::map<std::string, Kept> sheets;
};

class SaidTest : public testing::Test {
 protected:
  SaidTest() {
    const auto came = exchange::import_season(CONELINE_DEMO_SEASON, book, exchange::Import::write);
    if (!came || !came->faults.none())
      throw std::runtime_error("the demo's season does not come in");
    names = book.read([](store::Reading& reading) { return given_names(reading); }).value();
    speak(&marking);
  }
  SaidTest(const SaidTest&) = delete;
  SaidTest& operator=(const SaidTest&) = delete;
  ~SaidTest() override { speak(nullptr); }

  /// No word of English is left in it. Codes and months are no words.
  void expect_said(std::string_view text, std::string_view where) const {
    auto left = unmarked(text);
    for (const auto& name : names)
      take_out(left, name);
    left = std::regex_replace(left, std::regex("\\b([0-9a-f]{64}|ml|kg)\\b"), " "); // links, units
    static const std::regex word("[A-Za-z]*[a-z]{2,}[A-Za-z]*");
    std::smatch found;
    EXPECT_FALSE(std::regex_search(left, found, word))
        << where << ": '" << found.str() << "' in '" << text.substr(0, 300) << "'";
  }
  void expect_said(const PlanPaper& paper) const {
    expect_said(paper.title, "title");
    expect_said(paper.foot, "foot");
    for (const auto& section : sections_of(paper))
      expect_said(section, paper.title);
    for (const auto& table : paper.tables)
      expect_said(tabbed(table), table.name);
  }
  void expect_said(const PapersSection& section, const std::string& where) const {
    expect_said(section.title, where);
    for (const auto& [label, words] : section.lines) {
      expect_said(label, section.title);
      expect_said(words, section.title);
    }
    for (const auto& cell : section.header)
      expect_said(cell, section.title);
    for (const auto& row : section.rows)
      for (const auto& cell : row)
        expect_said(cell, section.title);
  }
  /// The words of a page, with those that are read out instead of a drawing.
  void expect_page_said(std::string page) const {
    EXPECT_NE(page.find(fmt::format("lang=\"{}\"", language().code())), std::string::npos);
    take_out(page, fmt::format("lang=\"{}\"", language().code()));
    page = unmarked(page);
    page = std::regex_replace(page, std::regex("<style>[^<]*</style>"), " ");
    page = std::regex_replace(page, std::regex("aria-label=\"([^\"]*)\""), ">$1<");
    page = std::regex_replace(page, std::regex("<[^>]*>"), " ");
    expect_said(page, "page");
  }

  static Date today() { return Date::parse("2026-11-20").value(); }
  plan::ForecastInput standing() {
    return book
        .read([](store::Reading& reading) {
          auto input = forecast_input(reading, today(), 24, assumptions_in(reading.registers()));
          add_sowings(input, reading, {true, true});
          return input;
        })
        .value();
  }

  tests::Scratch scratch;
  store::Book book = store::Book::make(scratch.at("demo.coneline"),
                                       {"Amberfold", 17, true, Date::parse("2024-01-01").value()})
                         .value();
  std::vector<std::string> names;
  Marking marking;
};

TEST_F(SaidTest, ThePageOfGerminationInEveryGrouping) {
  for (const auto by : {By::cross, By::season, By::cross_and_season}) {
    const auto report = book.read([&](store::Reading& reading) {
      return germination_report(reading, {today(), 0.95, by, 7});
    });
    ASSERT_TRUE(report) << report.error().text();
    expect_page_said(germination_html(*report));
    EXPECT_FALSE(std::regex_search(germination_html(*report), std::regex("[0-9]\\.[0-9] %")))
        << "decimals are said";
  }
}

TEST_F(SaidTest, WhichTraysCanBeEmptied) {
  const auto trays = book.read([](store::Reading& reading) {
    return work::trays_done(reading, today(), work::done_habits(reading.registers()));
  });
  ASSERT_TRUE(trays) << trays.error().text();
  EXPECT_GT(std::ranges::count(*trays, true, &work::TrayDone::done), 0);
  for (const auto& tray : *trays) {
    expect_said(tray.told, tray.cross);
    // One sentence, which begins inside its marks, where `unmarked` does not look.
    EXPECT_EQ(tray.told.starts_with(std::string(opened) + "Done. "), tray.done) << tray.told;
    expect_said(work::origin_said(tray.cross), "cross");
  }
}

TEST_F(SaidTest, TheSpreadsheetOfGerminationButItsColumnsNames) {
  const auto report =
      book.read([](store::Reading& reading) { return germination_report(reading, {today()}); });
  ASSERT_TRUE(report) << report.error().text();
  KeptBook sheets;
  add_germination(sheets, *report);
  for (const auto& text : sheets.texts)
    if (std::ranges::find(columns(), text, &Column::name) == columns().end())
      expect_said(text, "spreadsheet");
}

TEST_F(SaidTest, CsvKeepsTheNamesOfItsColumns) {
  const auto report =
      book.read([](store::Reading& reading) { return germination_report(reading, {today()}); });
  ASSERT_TRUE(report) << report.error().text();
  EXPECT_TRUE(germination_csv(*report).starts_with("level,rank,alike,cross,taxon,season,"));
  EXPECT_NE(germination_csv(*report).find("\ncross,1,"), std::string::npos);
  EXPECT_NE(germination_csv(*report).find(",days,"), std::string::npos);
}

TEST_F(SaidTest, ThePapersOfEveryLotAndPlant) {
  auto codes = book.read([](store::Reading& reading) {
                     const auto registers = reading.registers();
                     std::vector<Code> all;
                     for (const auto kind :
                          {Kind::plant, Kind::purchase, Kind::batch, Kind::tray, Kind::pot_group}) {
                       auto some = codes_on_hand(reading, registers, kind);
                       some.resize(std::min<std::size_t>(some.size(), 4));
                       all.insert(all.end(), some.begin(), some.end());
                     }
                     return all;
                   })
                   .value();
  ASSERT_GT(codes.size(), 10U);
  for (const auto& code : codes) {
    const auto told = book.read([&](store::Reading& reading) {
      return papers(reading, {code, {}, today()});
    });
    ASSERT_TRUE(told) << told.error().text();
    for (const auto& section : papers_sections(*told))
      expect_said(section, code.text());
    expect_page_said(papers_html(*told));
  }
}

TEST_F(SaidTest, ThePapersOfASale) {
  const auto told = book.read([](store::Reading& reading) -> Result<Papers> {
    return papers(reading, {{}, reading.standing_entries(book::Verb::sell).front().id, today()});
  });
  ASSERT_TRUE(told) << told.error().text();
  for (const auto& section : papers_sections(*told))
    expect_said(section, "sale");
}

TEST_F(SaidTest, TheLabelsOfEveryKind) {
  for (const auto kind : all_kinds) {
    const auto words = book.read([&](store::Reading& reading) {
      const auto registers = reading.registers();
      return label_words(reading, registers, codes_on_hand(reading, registers, kind));
    });
    ASSERT_TRUE(words) << words.error().text();
    for (const auto& label : *words)
      for (const auto& line : {label.cross, label.cone, label.sown, label.count})
        expect_said(line, label.code.text());
  }
}

TEST_F(SaidTest, TheSeasonPlanAndWhatItOrders) {
  const auto input = standing();
  const auto forecast = plan::forecast_of(input, {60, 1, 1, {}});
  ASSERT_TRUE(forecast) << forecast.error().text();
  expect_said(forecast_paper(*forecast, input));
  expect_said(forecast_sheets(*forecast, input));
  ASSERT_TRUE(book.write([&](store::Writing& writing) -> Result<void> {
    for (const auto& series : forecast->series())
      if (series.shown == plan::Shown::part)
        if (auto put = writing.put(book::Offer{
                {}, series.name, "Mill", book::Form::bale, 100, 2, 1250, 500, 3, 1, 25.0});
            !put)
          return refuse(put.error());
    return {};
  }));
  names = book.read([](store::Reading& reading) { return given_names(reading); }).value();
  const auto records =
      book.read([](store::Reading& reading) { return reading.plan_records(); }).value();
  const auto list = ordered(*forecast, records.offers, records.goods, today(), 0.9);
  ASSERT_TRUE(list) << list.error().text();
  expect_said(order_paper(*list, input.standing.registers.title, today(), forecast->months()));
}

TEST_F(SaidTest, TheBenchList) {
  const auto input = standing();
  const auto forecast = plan::forecast_of(input, {60, 1, 1, {}});
  ASSERT_TRUE(forecast) << forecast.error().text();
  const auto placing_in = book.read([&](store::Reading& reading) {
                                return placing_input(input, *forecast, reading.plan_records(),
                                                     lot_codes(reading), 0.9, 6);
                              })
                              .value();
  const auto placing = plan::place_lots(placing_in, {0.5, {}});
  ASSERT_TRUE(placing) << placing.error().text();
  expect_said(placing_paper(placing_in, *placing));
}

TEST_F(SaidTest, WhatIsSaidOfPossibleCrosses) {
  CrossingAsked asked;
  asked.today = today();
  asked.every_female = true;
  const auto input =
      book.read([&](store::Reading& reading) { return crossing_input(reading, asked); });
  ASSERT_TRUE(input) << input.error().text();
  const auto possible = plan::possible_crosses(*input);
  ASSERT_TRUE(possible) << possible.error().text();
  ASSERT_FALSE(input->females.empty());
  ASSERT_FALSE(crossing_rules().empty());
  for (const auto& remark : input->remarks)
    expect_said(remark, "remark");
  for (const auto& rule : crossing_rules())
    expect_said(rule, "rule");
  for (const auto& [code, why] : input->left_out)
    expect_said(why, code.text());
  for (const auto& female : input->females)
    expect_said(female.when, female.code.text());
  for (const auto& cross : *possible) {
    expect_said(estimate_text(cross.plants), cross.name);
    if (cross.plants)
      expect_said(cross.plants->source, cross.name);
    expect_said(plan::why_not(cross, {}), cross.name);
    for (const auto& texts : {cross.missing, cross.remarks})
      for (const auto& text : texts)
        expect_said(text, cross.name);
  }
  const auto proposal = plan::propose(*input, *possible, {});
  ASSERT_TRUE(proposal) << proposal.error().text();
  expect_said(bound_text(*proposal), "proposal");
}

} // namespace
} // namespace coneline::report
