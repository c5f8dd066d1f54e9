// SPDX-License-Identifier: GPL-3.0-or-later
// trays done: which trays can be emptied, what another month would bring, what their room costs.
#include "core/base/money.h"
#include "core/commands/book_options.h"
#include "core/commands/coming_json.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/work/trays_done.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  double confidence = work::DoneHabits{}.confidence;
  std::optional<double> below;
  std::optional<double> price;
  bool only_done = false;
};

std::string money(const std::optional<double>& cents) {
  return cents ? money_said(*cents) : "–";
}

std::string place_name(const work::TrayDone& tray, const book::Registers& registers) {
  return tray.place ? registers.place(*tray.place).name : "–";
}

Json json_of(const work::TrayDone& tray, const book::Registers& registers, Date as_of) {
  const auto number = [](const std::optional<double>& value) {
    return value ? Json(*value) : Json(nullptr);
  };
  return {{"tray", tray.tray.seen.lot.code.text()},
          {"cross", tray.cross},
          {"place", tray.place ? Json(registers.place(*tray.place).name) : Json(nullptr)},
          {"done", tray.done},
          {"sown_on", tray.tray.seen.sown_on.iso()},
          {"sown", tray.tray.seen.sown},
          {"germinated", tray.tray.germinated},
          {"seedlings", tray.seedlings},
          {"coming", commands::json_of(tray.tray.coming, as_of)},
          {"square_metres", tray.square_metres > 0 ? Json(tray.square_metres) : Json(nullptr)},
          {"cents_a_month", number(tray.cents_a_month)},
          {"cents_a_seedling", number(tray.cents_a_seedling)},
          {"told", tray.told}};
}

std::vector<std::string> row_of(const work::TrayDone& tray, const book::Registers& registers) {
  const auto& coming = tray.tray.coming;
  const auto& month = coming.within.front();
  return {tray.tray.seen.lot.code.text(),
          tray.cross,
          place_name(tray, registers),
          std::to_string(coming.waiting),
          fmt::format("{:.1f}", 100 * coming.chance_of_one),
          month.seeds.low == month.seeds.high
              ? std::to_string(month.seeds.low)
              : fmt::format("{}–{}", month.seeds.low, month.seeds.high),
          fmt::format("{:.1f}", month.seeds.mean),
          tray.square_metres > 0 ? fmt::format("{:.2f}", tray.square_metres) : "–",
          money(tray.cents_a_month),
          money(tray.cents_a_seedling),
          tray.done ? (tray.seedlings > 0 ? "done; pot its seedlings" : "done") : "waits"};
}

Answer answer_of(const std::vector<work::TrayDone>& trays, const book::Registers& registers,
                 const work::DoneHabits& habits, bool only_done, Date as_of) {
  Answer answer;
  const auto& cents = habits.cents_a_square_metre_month;
  answer.json = {{"as_of", as_of.iso()},
                 {"done_below", habits.done_below},
                 {"confidence", habits.confidence},
                 {"cents_a_square_metre_month", cents ? Json(*cents) : Json(nullptr)},
                 {"trays", Json::array()}};
  Table table({"tray", "cross", "on", "waiting", "% chance of one more",
               fmt::format("another month brings, {:g} % range", 100 * habits.confidence),
               "on average", "m²", "bench a month", "bench a seedling", ""});
  std::size_t done = 0;
  for (const auto& tray : trays) {
    done += tray.done ? 1 : 0;
    if (only_done && !tray.done)
      continue;
    answer.json["trays"].push_back(json_of(tray, registers, as_of));
    table.row(row_of(tray, registers));
  }
  if (!answer.json["trays"].empty())
    answer.table = table.text();
  answer.table += fmt::format("{} of {} trays with waiting seed are done: the chance of even one "
                              "more is below {:g} in 100.\n",
                              done, trays.size(), 100 * habits.done_below);
  return answer;
}

Result<Answer> run(const Asked& asked) {
  const auto as_of = date_or_today(asked.as_of, "--as-of");
  if (!as_of)
    return refuse(as_of.error());
  const auto price = cents_of(asked.price.value_or(0));
  if (!price)
    return refuse(usage_fault(fmt::format("--price {}", *asked.price),
                              "Write what a square metre of bench costs a month, as in 4.50."));
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  return book->read([&](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    auto habits = work::done_habits(registers);
    habits.confidence = asked.confidence;
    habits.done_below = asked.below.value_or(habits.done_below);
    if (asked.price)
      habits.cents_a_square_metre_month = *price;
    return work::trays_done(reading, *as_of, habits).map([&](const auto& trays) {
      return answer_of(trays, registers, habits, asked.only_done, *as_of);
    });
  });
}

} // namespace

void add_trays(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("trays", "done", "Which trays can be emptied, and what waiting costs",
                           [asked] { return run(*asked); });
  asked->book.add_to(command);
  command.add_option("--as-of", asked->as_of, "As it was known on that day; today when left out");
  real_option(
      command, "--below", asked->below,
      "Done when the chance of even one more seed is below this; the book's figure, or 0.05");
  real_option(command, "--price", asked->price,
              "What a square metre of bench costs a month; the book's figure where not given");
  real_option(command, "--confidence", asked->confidence,
              "Confidence of what another month would bring; 0.8 unless said");
  command.add_flag("--only-done", asked->only_done, "Leave out those that still wait");
}

} // namespace coneline::commands
