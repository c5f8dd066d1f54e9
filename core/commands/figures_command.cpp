// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number.h"
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"
#include "core/plan/potting_months.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace coneline::commands {

namespace {

struct FiguresOptions {
  BookOption book;
  std::string name;
  std::optional<std::string> value;
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

/// "3-10", "10-2" over the new year, "2,3,9" or several of these, as the number that keeps them.
Result<double> months_read(const std::string& text) {
  constexpr std::int64_t year = 12;
  std::array<bool, 12> potted{};
  for (const auto& piece : split_at_commas(text)) {
    const auto dash = piece.find('-');
    auto first = parse_whole(piece.substr(0, dash));
    auto last = dash == std::string::npos ? first : parse_whole(piece.substr(dash + 1));
    if (first_fault(first, last) || std::min(*first, *last) < 1 || std::max(*first, *last) > year)
      return refuse(
          usage_fault(fmt::format("'{}' is no month and no months from one to another", piece),
                      "Months are 1 to 12: write 3-10, or 2,3,9."));
    for (auto month = *first;; month = month % year + 1) {
      potted.at(static_cast<std::size_t>(month - 1)) = true;
      if (month == *last)
        break;
    }
  }
  return plan::months_as_number(potted);
}

/// "3-10,12".
std::string months_told(double number) {
  const auto potted = plan::months_of_number(number);
  std::string text;
  for (std::size_t from = 0; from < potted.size(); ++from) {
    if (!potted.at(from))
      continue;
    auto to = from;
    while (to + 1 < potted.size() && potted.at(to + 1))
      ++to;
    text += fmt::format("{}{}", text.empty() ? "" : ",", from + 1);
    if (to > from)
      text += fmt::format("-{}", to + 1);
    from = to;
  }
  return text;
}

Result<book::Figure> figure_given(const std::string& name, const std::string& text) {
  const bool named_months = name == book::figure::potting_months && text.size() > 1 &&
                            text.find_first_of(",-", 1) != std::string::npos;
  auto value = named_months ? months_read(text) : parse_real(text);
  if (!value)
    return refuse(usage_fault(value.error().what, value.error().remedy));
  book::Figure figure{name, *value};
  if (auto is = book::is_sound(figure); !is)
    return refuse(is.error());
  return figure;
}

std::string shown(const book::Figure& figure) {
  return figure.name == book::figure::potting_months ? "months " + months_told(figure.value)
                                                     : fmt::format("{:g}", figure.value);
}

Result<Answer> run(const FiguresOptions& options) {
  std::optional<book::Figure> given;
  if (options.value) {
    auto figure = figure_given(options.name, *options.value);
    if (!figure)
      return refuse(figure.error());
    given = *figure;
  }
  auto book = options.book.open(given ? store::Access::write : store::Access::read);
  if (!book)
    return refuse(book.error());
  if (given)
    if (auto put = book->write([&](store::Writing& writing) { return writing.put(*given); }); !put)
      return refuse(put.error());
  return book->read([](store::Reading& reading) -> Result<Answer> {
    const auto registers = reading.registers();
    Answer answer;
    answer.json = Json::object();
    Table table({"figure", "value"});
    for (const auto& name : known_figures()) {
      const auto* found = book::named(registers.figures, name);
      answer.json[name] = found != nullptr ? Json(found->value) : Json(nullptr);
      table.row({name, found != nullptr ? shown(*found) : "–"});
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
  command
      .add_option("value", options->value,
                  "Its value: in your own money, a share such as 0.9, months such as 3-10 or 2,3,9")
      .needs(name);
}

} // namespace coneline::commands
