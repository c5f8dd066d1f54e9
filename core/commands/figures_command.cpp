// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct FiguresOptions {
  BookOption book;
  std::string name;
  std::optional<double> value;
};

const std::vector<std::string>& known_figures() {
  static const std::vector<std::string> names{
      book::figure::plant_worth,    book::figure::seed_cost,    book::figure::litre_price,
      book::figure::bench_price,    book::figure::keep_cost,    book::figure::done_below,
      book::figure::potting_months, book::figure::ready_stands, book::figure::settling,
      book::figure::wet_kilograms,  book::figure::pot_gap,      book::figure::staggered,
      book::figure::plan_assurance};
  return names;
}

Result<Answer> run(const FiguresOptions& options) {
  if (options.value && !(*options.value >= 0))
    return refuse(fault(fmt::format("a figure of {}", *options.value), "Give 0 or more."));
  auto book = options.book.open(options.value ? store::Access::write : store::Access::read);
  if (!book)
    return refuse(book.error());
  if (options.value)
    if (auto put = book->write([&](store::Writing& writing) {
          return writing.put(book::Figure{options.name, *options.value});
        });
        !put)
      return refuse(put.error());
  return book->read([](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    Answer answer;
    answer.json = Json::object();
    Table table({"figure", "value"});
    for (const auto& name : known_figures()) {
      const auto* found = book::named(registers.figures, name);
      answer.json[name] = found != nullptr ? Json(found->value) : Json(nullptr);
      table.row({name, found != nullptr ? fmt::format("{:g}", found->value) : "–"});
    }
    answer.table = table.text();
    return answer;
  });
}

} // namespace

void add_figures(CommandLine& line) {
  const auto options = std::make_shared<FiguresOptions>();
  auto& command =
      line.add("figures", "What the grower reckons with: worth of a plant, cost of a seed",
               [options] { return run(*options); });
  options->book.add_to(command);
  const auto name = command.add_option("name", options->name, "One of the figures, to set it")
                        .one_of(known_figures());
  command.add_option("value", options->value, "Its value: in your own money, a chance from 0 to 1")
      .needs(name);
}

} // namespace coneline::commands
