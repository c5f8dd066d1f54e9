// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/figure.h"

#include "core/base/phrase.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace coneline::book {

namespace {

enum class Ends { included, left_out, first_included };

struct FigureRange {
  const char* name;
  double least;
  double most;
  const char* expected; ///< the range with its unit, in words
  Ends ends = Ends::included;
  bool whole = false;
};

constexpr double most_money = 1e9;
constexpr const char* money = to_phrase("It is in your own money, from 0 to 1000000000.");

constexpr std::array ranges{
    FigureRange{figure::plant_worth, 0, most_money, money},
    FigureRange{figure::seed_cost, 0, most_money, money},
    FigureRange{figure::litre_price, 0, most_money, money},
    FigureRange{figure::bench_price, 0, most_money, money},
    FigureRange{figure::keep_cost, 0, most_money, money},
    FigureRange{figure::done_below, 0, 1,
                to_phrase("It is a chance above 0 and below 1, such as 0.05."), Ends::left_out},
    FigureRange{figure::potting_months, 1, 4095,
                to_phrase("Name at least one month, such as 3-10 or 2,3,9. A lone number has a bit "
                          "a month, January the lowest: 1 to 4095."),
                Ends::included, true},
    FigureRange{figure::ready_stands, 0, 1200, to_phrase("It is whole months, from 0 to 1200."),
                Ends::included, true},
    FigureRange{figure::settling, 0, 1, to_phrase("It is a share from 0 to below 1, such as 0.15."),
                Ends::first_included},
    FigureRange{figure::wet_kilograms, 0, 10, to_phrase("It is kg, above 0 and below 10."),
                Ends::left_out},
    FigureRange{figure::pot_gap, 0, 10'000, to_phrase("It is mm, from 0 to 10000.")},
    FigureRange{figure::staggered, 0, 1, to_phrase("It is 1 for staggered, 0 for in a square."),
                Ends::included, true},
    FigureRange{figure::plan_assurance, 0, 1,
                to_phrase("It is a share above 0 and below 1, such as 0.9."), Ends::left_out}};

bool within(const FigureRange& range, double value) {
  const bool from = range.ends == Ends::left_out ? value > range.least : value >= range.least;
  const bool to = range.ends == Ends::included ? value <= range.most : value < range.most;
  return from && to && (!range.whole || value == std::floor(value));
}

} // namespace

Result<void> is_sound(const Figure& figure) {
  const auto what = [&] { return phrase("the figure '{}' of {}", figure.name, figure.value); };
  if (figure.name.empty() || !std::isfinite(figure.value))
    return refuse(fault(what(), "Give a name and a number."));
  const auto* range = std::ranges::find(ranges, std::string_view(figure.name), &FigureRange::name);
  if (range != ranges.end() && !within(*range, figure.value))
    return refuse(fault(what(), range->expected));
  return {};
}

} // namespace coneline::book
