// SPDX-License-Identifier: GPL-3.0-or-later
// coneline round begin | scan | undo | show | end | log: a round through the trays, step by step.
// "round pictures" is with the labels.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/seen_answer.h"
#include "core/commands/table.h"
#include "core/exchange/scanner_log.h"
#include "core/work/round.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

std::string place_of(const book::Registers& registers, std::optional<book::PlaceId> place) {
  return place ? registers.place(*place).name : "no place";
}

/// "1 root, 2 dead"; what was not found is left out.
std::string counts(const book::Tapped& found) {
  std::string text;
  const auto say = [&](std::int64_t count, std::string_view one, std::string_view many) {
    if (count > 0)
      text += fmt::format("{}{} {}", text.empty() ? "" : ", ", count, count == 1 ? one : many);
  };
  say(found.roots, "root", "roots");
  say(found.leaves, "leaf", "leaves");
  say(found.dead, "dead", "dead");
  return text.empty() ? "nothing new" : text;
}

Json counts_json(const book::Tapped& found) {
  return {{"roots", found.roots}, {"leaves", found.leaves}, {"dead", found.dead}};
}

std::string state_of(const work::RoundView& view, const work::RoundTray& tray) {
  std::string text = tray.counted       ? counts(tray.found)
                     : tray.seen        ? "seen, not counted"
                     : !tray.holds      ? "ended since"
                     : view.round.ended ? "not found"
                                        : "to come";
  return text + (tray.moved ? ", moved" : "") + (tray.planned ? "" : ", not on the list");
}

Answer view_answer(const book::Registers& registers, const work::RoundView& view) {
  const auto code_or_null = [](const std::optional<Code>& code) {
    return code ? Json(code->text()) : Json();
  };
  Answer answer;
  answer.json = {{"round", view.round.id.value},
                 {"began", view.round.began.iso()},
                 {"ended", view.round.ended ? Json(view.round.ended->iso()) : Json()},
                 {"in_hand", code_or_null(view.in_hand)},
                 {"not_entered", view.in_hand ? counts_json(view.round.tapped) : Json()},
                 {"next", code_or_null(view.next)},
                 {"planned", view.planned},
                 {"seen", view.seen},
                 {"counted", view.counted},
                 {"moved", view.moved},
                 {"not_found", view.not_found},
                 {"found", counts_json(view.found)},
                 {"trays", Json::array()}};
  Table table({"tray", "where", "what", "on this round"});
  for (const auto& tray : view.trays) {
    answer.json["trays"].push_back({{"code", tray.code.text()},
                                    {"place", place_of(registers, tray.place)},
                                    {"planned", tray.planned},
                                    {"seen", tray.seen},
                                    {"counted", tray.counted},
                                    {"moved", tray.moved},
                                    {"roots", tray.found.roots},
                                    {"leaves", tray.found.leaves},
                                    {"dead", tray.found.dead}});
    table.row(
        {tray.code.text(), place_of(registers, tray.place), tray.origin, state_of(view, tray)});
  }
  answer.table = table.text();
  answer.table += fmt::format(
      "Round {} of {}{}: {} of {} seen, {} counted ({}), {} moved, {} {}.\n", view.round.id.value,
      view.round.began.iso(), view.round.ended ? ", ended " + view.round.ended->iso() : "",
      view.seen, view.planned, view.counted, counts(view.found), view.moved, view.not_found,
      view.round.ended ? "not found" : "to come");
  if (view.in_hand)
    answer.table += fmt::format(
        "In the hand: {}{}\n", view.in_hand->text(),
        view.round.tapped.none() ? "" : ", not entered yet: " + counts(view.round.tapped));
  if (view.next && !view.round.ended)
    answer.table += fmt::format("Next: {}\n", view.next->text());
  return answer;
}

/// The open round, or the last one.
Result<book::Round> last_round(store::Reading& reading) {
  auto rounds = reading.rounds();
  if (rounds.empty())
    return refuse(fault("no round was begun in this book", "Begin one: coneline round begin"));
  return rounds.back();
}

Result<Answer> show(store::Book& book) {
  return book.read([](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    const auto round = last_round(reading);
    if (!round)
      return refuse(round.error());
    return view_answer(registers, work::view_round(reading, registers, *round));
  });
}

/// The round as it ended, and what ending it entered.
Result<Answer> ended(store::Book& book, const work::Done& done) {
  return show(book).map([&](Answer shown) {
    const auto told = answer(done);
    for (const auto* key : {"told", "entries"})
      shown.json[key] = told.json[key];
    shown.table += told.table;
    return shown;
  });
}

Result<book::RoundId> open_round(store::Book& book) {
  return book.read([](store::Reading& reading) -> Result<book::RoundId> {
    const auto round = work::open_round(reading);
    if (!round)
      return refuse(fault("no round is open", "Begin one: coneline round begin"));
    return round->id;
  });
}

struct Common {
  BookOption book;
  NotedOptions noted;
};

/// Adds "round NAME", which runs `run(book, noted)`.
template <class Options, class Run>
void add_step(CommandLine& line, const std::string& name, const std::string& help, Run run) {
  const auto options = std::make_shared<Options>();
  auto& command = line.add("round", name, help, [options, run]() -> Result<Answer> {
    auto noted = options->noted.noted();
    if (!noted)
      return refuse(noted.error());
    auto book = options->book.open(store::Access::write);
    if (!book)
      return refuse(book.error());
    return run(*book, *noted, *options);
  });
  options->book.add_to(command);
  options->noted.add_to(command);
  options->define(command);
}

struct Nothing : Common {
  void define(Command&) {}
};

struct BeginOptions : Common {
  std::optional<std::string> place;
  void define(Command& command) {
    command.add_option("--place", place,
                       "A house, bench or bay; all trays due for a look when left out");
  }
};

struct ScanOptions : Common {
  std::string code;
  std::int64_t roots = 0;
  std::int64_t leaves = 0;
  std::int64_t dead = 0;
  bool look = false;
  void define(Command& command) {
    command.add_option("code", code, "What was scanned: a tray, another lot, a place").required();
    command.add_option("--roots", roots, "New roots since the look before");
    command.add_option("--leaves", leaves, "New first leaves");
    command.add_option("--dead", dead, "Ungerminated seeds taken out dead");
    command.add_flag("--nothing-new", look, "The tray was looked at and nothing was new");
  }
};

Result<Answer> scan(store::Book& book, const work::Noted& noted, const ScanOptions& options) {
  const auto round = open_round(book);
  if (!round)
    return refuse(round.error());
  if (options.roots < 0 || options.leaves < 0 || options.dead < 0)
    return refuse(fault("a count below 0", "Give 0 or more."));
  const book::Tapped found{options.roots, options.leaves, options.dead};
  const auto scanned = options.look || !found.none()
                           ? work::scan_and_look(book, *round, options.code, found, noted)
                           : work::scan_in_round(book, *round, options.code, noted);
  if (!scanned)
    return refuse(scanned.error());
  auto told = scanned->done;
  if (told.told.empty())
    told.told = fmt::format("{} is in the hand", scanned->code.text());
  return answer(told);
}

struct LogOptions : Common {
  std::string file;
  std::optional<std::string> place;
  bool accept = false;
  bool leave_bad = false;
  void define(Command& command) {
    command.add_option("file", file, "The scanner's log").required();
    command.add_option("--place", place, "Where it begins; a place scanned later takes over");
    command.add_flag("--accept", accept, "Enter the moves, after a look at them");
    command.add_flag("--leave-bad-lines", leave_bad,
                     "Take the other lines though some cannot be read");
  }
};

Result<Answer> take_log(store::Book& book, const work::Noted& noted, const LogOptions& options) {
  const auto place = code_given(book, options.place);
  if (!place)
    return refuse(place.error());
  const auto log = exchange::read_scanner_log_file(options.file);
  if (!log)
    return refuse(log.error());
  auto bad = Json::array();
  std::string told_bad;
  for (const auto& each : log->bad) {
    bad.push_back({{"line", each.where->line}, {"why", each.text()}});
    told_bad += "\n" + each.text();
  }
  if (!log->bad.empty() && !options.leave_bad)
    return refuse(
        fault(fmt::format("{} of {} lines of the log cannot be read, and nothing was written",
                          log->bad.size(), log->bad.size() + log->scans.size()),
              "Correct them, or take the others with --leave-bad-lines." + told_bad));
  std::vector<work::ReadLabel> labels;
  for (const auto& scan : log->scans)
    labels.push_back({scan.code.text(), log->file, scan.date.value_or(noted.on)});
  const auto found = book.read([&](store::Reading& reading) {
    return work::seen_in_log(reading, reading.registers(), *place, labels);
  });
  if (!found)
    return refuse(found.error());
  auto answer = seen_answer(book, *found, book::SeenBy::log,
                            options.accept ? Moves::accept : Moves::propose, noted.who);
  if (!answer)
    return answer;
  answer->json["bad_lines"] = bad;
  answer->json["repeated"] = log->repeated;
  answer->at_fault = !log->bad.empty();
  if (!told_bad.empty())
    answer->table += told_bad.substr(1) + "\n";
  return answer;
}

} // namespace

void add_round(CommandLine& line) {
  add_step<BeginOptions>(
      line, "begin", "Begin a round: all trays due for a look, or a house",
      [](store::Book& book, const work::Noted& noted, const BeginOptions& options) {
        const auto place = code_given(book, options.place);
        if (!place)
          return Result<Answer>(tl::unexpect, place.error());
        return work::begin_round(book, {*place, noted}).and_then([&](book::RoundId) {
          return show(book);
        });
      });
  add_step<ScanOptions>(line, "scan", "One scan of the round, and what was found in the tray",
                        scan);
  add_step<Nothing>(line, "undo", "Take back the last look or move of the round",
                    [](store::Book& book, const work::Noted& noted, const Nothing&) {
                      return open_round(book).and_then([&](book::RoundId round) {
                        // The next command sees nothing of a hand: what is taken back here stays
                        // taken back.
                        return work::undo_in_round(book, round, noted, work::TakenBack::for_good)
                            .map([](const work::Done& done) { return answer(done); });
                      });
                    });
  add_step<Nothing>(
      line, "show", "What the round has counted, moved and not found",
      [](store::Book& book, const work::Noted&, const Nothing&) { return show(book); });
  add_step<Nothing>(
      line, "end", "End the round",
      [](store::Book& book, const work::Noted& noted, const Nothing&) {
        return open_round(book)
            .and_then([&](book::RoundId round) { return work::end_round(book, round, noted); })
            .and_then([&](const work::Done& done) { return ended(book, done); });
      });
  add_step<LogOptions>(line, "log", "Take a scanner's log: what was seen where, moves proposed",
                       take_log);
}

} // namespace coneline::commands
