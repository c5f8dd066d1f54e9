// SPDX-License-Identifier: GPL-3.0-or-later
// Looking without writing: line (what is on hand), show (one lot and its line back).
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/report/title_said.h"
#include "core/work/overview.h"
#include "core/work/tell.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

template <class Ask>
Result<Answer> ask(const BookOption& option, Ask answer) {
  auto book = option.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    return answer(reading, reading.registers());
  });
}

Answer line_answer(store::Reading& reading, const book::Registers& registers) {
  const auto sums = work::on_hand(reading, registers);
  Answer given;
  given.json = {{"book", registers.title.name},
                {"invented", registers.title.invented},
                {"pollen_lots", sums.pollen_lots},
                {"cones", sums.cones},
                {"seeds", sums.seeds},
                {"in_trays", sums.in_trays},
                {"in_pots", sums.in_pots},
                {"out", sums.out}};
  Table table({"pollen lots", "cones", "seeds", "in trays", "in pots", "out"});
  const auto text = [](std::int64_t n) { return fmt::format("{}", n); };
  table.row({text(sums.pollen_lots), text(sums.cones), text(sums.seeds), text(sums.in_trays),
             text(sums.in_pots), text(sums.out)});
  given.table = report::title_said(registers.title) + "\n" + table.text();
  return given;
}

std::string ends_of(const work::LineStep& step) {
  std::string text;
  for (const auto& [state, count] : step.ended)
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", count, book::word(state));
  return text;
}

Json json_of(const work::LineStep& step) {
  Json ended = Json::object();
  for (const auto& [state, count] : step.ended)
    ended[std::string(book::word(state))] = count;
  return {{"code", step.code.text()},
          {"what", step.what},
          {"first", step.first ? Json(step.first->iso()) : Json()},
          {"in", step.in},
          {"on_hand", step.on_hand},
          {"passed_on", step.passed_on},
          {"to_this_line", step.to_this_line},
          {"ended", ended}};
}

Answer lot_answer(store::Reading& reading, const book::Registers& registers, const book::Lot& lot) {
  const auto back = work::line_back(reading, registers, lot);
  const auto places = reading.places();
  const auto place = places.find(lot.id);
  Answer given;
  given.json = {
      {"code", lot.code.text()},
      {"kind", kind_word(lot.code.kind())},
      {"origin", back.origin},
      {"taxon", back.taxon},
      {"judged", book::word(lot.judged)},
      {"judged_by", book::word(lot.judged_by)},
      {"place", place == places.end() ? Json() : Json(registers.place(place->second).name)},
      {"on_hand", Json::object()},
      {"line", Json::array()},
      {"history", Json::array()}};
  given.table = fmt::format("{} · {} · {} · {}\n", lot.code.text(), kind_word(lot.code.kind()),
                            back.taxon, back.origin);
  for (const auto& balance : reading.balances_of(lot.id))
    if (book::standing(balance.account.state) == book::Standing::on_hand) {
      given.json["on_hand"][std::string(book::word(balance.account.state))] = balance.count;
      given.table += fmt::format("  {} {}\n", balance.count, book::word(balance.account.state));
    }
  if (place != places.end())
    given.table += fmt::format("  on {}\n", registers.place(place->second).name);
  Table line({"the line", "", "since", "in", "on hand", "passed on", "ended"});
  for (const auto& step : back.steps) {
    given.json["line"].push_back(json_of(step));
    line.row({step.code.text(), step.what, step.first ? step.first->iso() : "",
              fmt::format("{}", step.in), fmt::format("{}", step.on_hand),
              fmt::format("{}", step.passed_on), ends_of(step)});
  }
  Table history({"entry", "day", "what", "note"});
  for (const auto& entry : reading.entries_of(lot.id)) {
    const auto told = work::tell(reading, entry);
    const auto by = reading.reversed_by(entry.id);
    given.json["history"].push_back({{"entry", entry.id.value},
                                     {"date", entry.date.iso()},
                                     {"verb", book::word(entry.verb)},
                                     {"told", told},
                                     {"who", entry.who},
                                     {"note", entry.note},
                                     {"reversed_by", by ? Json(by->value) : Json()}});
    history.row({fmt::format("{}", entry.id.value), entry.date.iso(),
                 told + (by ? " (reversed)" : ""), entry.note});
  }
  given.table += "\n" + line.text() + "\n" + history.text();
  return given;
}

Result<Answer> show(store::Reading& reading, const book::Registers& registers, const Code& code) {
  if (code.kind() == Kind::batch || code.kind() == Kind::tray || code.kind() == Kind::pot_group) {
    auto lot = reading.lot(code);
    if (!lot)
      return refuse(lot.error());
    return lot_answer(reading, registers, *lot);
  }
  return refuse(fault(fmt::format("{} is a {}; 'show' answers for batches, trays and pot groups",
                                  code.text(), kind_word(code.kind())),
                      fmt::format("'coneline tell {}' tells of it.", code.text())));
}

} // namespace

void add_looks(CommandLine& line) {
  auto line_option = std::make_shared<BookOption>();
  line_option->add_to(line.add("line", "What is on hand from pollen to out", [line_option] {
    return ask(*line_option,
               [](store::Reading& reading, const book::Registers& registers) -> Result<Answer> {
                 return line_answer(reading, registers);
               });
  }));

  struct Show {
    BookOption book;
    std::string code;
  };
  auto shown = std::make_shared<Show>();
  auto& show_command = line.add("show", "One lot: what, how many, where, its line back to the cone",
                                [shown]() -> Result<Answer> {
                                  auto book = shown->book.open(store::Access::read);
                                  if (!book)
                                    return refuse(book.error());
                                  auto code = code_given(*book, shown->code);
                                  if (!code)
                                    return refuse(code.error());
                                  return book->read([&](store::Reading& reading) {
                                    return show(reading, reading.registers(), *code);
                                  });
                                });
  shown->book.add_to(show_command);
  show_command.add_option("code", shown->code, "The code on its label").required();
}

} // namespace coneline::commands
