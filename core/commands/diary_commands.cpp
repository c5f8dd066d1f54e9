// SPDX-License-Identifier: GPL-3.0-or-later
// The diary's verbs: check-scales, watch-male-cone, collect-pollen, test-pollen, discard-pollen,
// correct, plan-move, want-label.
#include "core/book/names.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/parent_options.h"
#include "core/commands/verb_command.h"
#include "core/work/cone_course.h"
#include "core/work/correct.h"
#include "core/work/due.h"
#include "core/work/pollen.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct CheckScalesOptions {
  std::string cone;
  std::string scales;
  std::optional<std::int64_t> fertile;

  void define(Command& command) {
    command.add_option("cone", cone, "The female cone").required();
    command.add_option("scales", scales, "tight, loose, closed or 'coming apart'").required();
    command.add_option("--fertile-scales", fertile, "How many fertile scales were counted");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, cone);
    auto seen = book::read_word<book::Scales>(scales);
    if (const auto wrong = first_fault(code, seen))
      return refuse(*wrong);
    return work::check_scales(book, {*code, *seen, fertile, std::move(noted)});
  }
};

struct WatchMaleConeOptions {
  std::string plant;
  std::string state;

  void define(Command& command) {
    command.add_option("plant", plant, "The male plant").required();
    command.add_option("state", state, "tight, shedding, removed or spent").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, plant);
    auto seen = book::read_word<book::MaleCone>(state);
    if (const auto wrong = first_fault(code, seen))
      return refuse(*wrong);
    return work::watch_male_cone(book, {*code, *seen, std::move(noted)});
  }
};

struct CollectPollenOptions {
  std::string source;
  std::optional<double> millilitres;
  std::string store;

  void define(Command& command) {
    command
        .add_option("source", source, "The male plant, for a new lot, or the lot that takes more")
        .required();
    command.add_option("--ml", millilitres, "Millilitres");
    command.add_option("--store", store, "How a new lot is kept: 'refrigerator, dry'");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, source);
    if (!code)
      return refuse(code.error());
    return work::collect_pollen(book, {*code, millilitres, store, std::move(noted)});
  }
};

struct TestPollenOptions {
  std::string lot;
  std::int64_t counted = 0;
  std::int64_t germinated = 0;
  std::string conditions;

  void define(Command& command) {
    command.add_option("lot", lot, "The pollen lot").required();
    command.add_option("--counted", counted, "Grains looked at").required();
    command.add_option("--germinated", germinated, "How many of them germinated").required();
    command.add_option("--conditions", conditions, "Medium, hours and temperature");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, lot);
    if (!code)
      return refuse(code.error());
    return work::test_pollen(book, {*code, counted, germinated, conditions, std::move(noted)});
  }
};

struct DiscardPollenOptions {
  std::string lot;
  std::optional<double> millilitres;

  void define(Command& command) {
    command.add_option("lot", lot, "The pollen lot").required();
    command.add_option("--ml", millilitres, "Millilitres; all that is left when not given");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, lot);
    if (!code)
      return refuse(code.error());
    return work::discard_pollen(book, {*code, millilitres, std::move(noted)});
  }
};

struct CorrectOptions {
  std::string plant;
  std::optional<std::string> name, taxon, certainty, sex, origin, acquired, place, remark;
  std::vector<std::string> add_papers;
  std::vector<std::size_t> remove_papers;
  ParentOptions parents;

  void define(Command& command) {
    command.add_option("plant", plant, "The plant's code").required();
    command.add_option("--name", name, "What you call it");
    command.add_option("--taxon", taxon, "The taxon's name");
    command.add_option("--certainty", certainty, "Of the taxon: certain, likely or unsure");
    command.add_option("--sex", sex, "male, female or 'not known'");
    command.add_option("--origin", origin, "Where it came from");
    command.add_option("--acquired", acquired, "The day");
    command.add_option("--place", place, "Where it stands, by name");
    command.add_option("--remark", remark, "What stands in the register's note");
    command.add_option("--add-paper", add_papers,
                       "kind=number, with the day and who issued it: "
                       "'import permit=12/345,2019-05-02,the authority'; repeat");
    command.add_option("--remove-paper", remove_papers, "Its turn in the list, from 1");
    parents.define(command);
  }

  static Result<book::Paper> paper(const std::string& text) {
    const auto equals = text.find('=');
    if (equals == std::string::npos)
      return refuse(usage_fault(fmt::format("'{}' is not of the form kind=number", text),
                                "Write it such as 'import permit=12/345'."));
    book::Paper paper;
    paper.kind = text.substr(0, equals);
    const auto first = text.find(',', equals);
    paper.number = text.substr(equals + 1, first == std::string::npos ? first : first - equals - 1);
    if (first == std::string::npos)
      return paper;
    const auto second = text.find(',', first + 1);
    auto day = Date::parse(
        text.substr(first + 1, second == std::string::npos ? second : second - first - 1));
    if (!day)
      return refuse(day.error());
    paper.issued = *day;
    if (second != std::string::npos)
      paper.authority = text.substr(second + 1);
    return paper;
  }

  Result<void> edit_papers(book::Plant& row) const {
    for (const auto turn : remove_papers)
      if (turn < 1 || turn > row.papers.size())
        return refuse(fault(fmt::format("there is no paper {} of {}", turn, row.papers.size()),
                            "Give its turn in the list, from 1."));
    std::vector<book::Paper> kept;
    for (std::size_t i = 0; i < row.papers.size(); ++i)
      if (std::ranges::find(remove_papers, i + 1) == remove_papers.end())
        kept.push_back(row.papers[i]);
    for (const auto& text : add_papers) {
      auto read = paper(text);
      if (!read)
        return refuse(read.error());
      kept.push_back(*read);
    }
    row.papers = std::move(kept);
    return {};
  }

  Result<void> edit(book::Plant& row, const book::Registers& registers) const {
    row.name = name.value_or(row.name);
    row.origin = origin.value_or(row.origin);
    row.note = remark.value_or(row.note);
    auto sure = word_given<book::Certainty>(certainty.value_or(""));
    auto gender = word_given<book::Sex>(sex.value_or(""));
    if (const auto wrong = first_fault(sure, gender))
      return refuse(*wrong);
    row.taxon_certainty = sure->value_or(row.taxon_certainty);
    row.sex = gender->value_or(row.sex);
    if (taxon) {
      const auto found = book::row_said(registers.taxa, *taxon, "taxon");
      if (!found)
        return refuse(found.error());
      row.taxon = (*found)->id;
    }
    if (place) {
      const auto found = book::row_said(registers.places, *place, "place");
      if (!found)
        return refuse(found.error());
      row.place = (*found)->id;
    }
    if (acquired) {
      auto day = Date::parse(*acquired);
      if (!day)
        return refuse(day.error());
      row.acquired = *day;
    }
    if (auto done = edit_papers(row); !done)
      return done;
    return parents.write_to(row, registers);
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, plant);
    if (!code)
      return refuse(code.error());
    return work::correct(
        book,
        {*code, [this](book::Plant& row, const book::Registers& all) { return edit(row, all); },
         std::move(noted)});
  }
};

struct PlanMoveOptions {
  std::string plant;
  std::string place;

  void define(Command& command) {
    command.add_option("plant", plant, "The plant's code").required();
    command.add_option("--to", place, "The place's code").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, plant);
    auto to = code_given(book, place);
    if (const auto wrong = first_fault(code, to))
      return refuse(*wrong);
    return work::plan_move(book, *code, *to, noted);
  }
};

struct WantLabelOptions {
  std::string code;

  void define(Command& command) {
    command.add_option("code", code, "The lot or cone whose label is lost or cannot be read")
        .required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto given = code_given(book, code);
    if (!given)
      return refuse(given.error());
    return work::want_label(book, *given, noted);
  }
};

} // namespace

void add_diary_verbs(CommandLine& line) {
  add_verb<CheckScalesOptions>(line, "check-scales", "A look at the scales of a female cone");
  add_verb<WatchMaleConeOptions>(line, "watch-male-cone",
                                 "A male cone comes loose, is taken off, is spent");
  add_verb<CollectPollenOptions>(line, "collect-pollen", "Pollen shed by a male cone");
  add_verb<TestPollenOptions>(line, "test-pollen", "How many of the grains germinate");
  add_verb<DiscardPollenOptions>(line, "discard-pollen", "Throw pollen away");
  add_verb<CorrectOptions>(line, "correct",
                           "Correct a plant's register row; what stood before is kept");
  add_verb<PlanMoveOptions>(line, "plan-move", "Mean to move a parent plant");
  add_verb<WantLabelOptions>(line, "want-label", "Ask for a label to be printed again");
}

} // namespace coneline::commands
