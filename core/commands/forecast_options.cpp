// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/forecast_options.h"

#include "core/base/month.h"
#include "core/base/number.h"
#include "core/commands/number_options.h"
#include "core/plan/supposed.h"
#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/sowings_input.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

std::optional<int> month_number(std::string_view text) {
  const auto value = parse_whole(text);
  return value && *value >= 1 && *value <= 12 ? std::optional(static_cast<int>(*value))
                                              : std::nullopt;
}

/// "Cycas revoluta:2=0.8" into the route of that taxon; only for this plan.
Result<void> suppose_survival(book::Registers& registers, const std::string& given) {
  const auto equals = given.rfind('=');
  const auto colon = given.rfind(':', equals);
  const auto wrong = [&](const std::string& why) {
    return refuse(usage_fault(fmt::format("--survival '{}': {}", given, why),
                              "Write TAXON:STEP=SHARE, such as 'Cycas revoluta:2=0.8'; the tray "
                              "is step 1."));
  };
  if (equals == std::string::npos || colon == std::string::npos)
    return wrong("not of that form");
  const auto* taxon = book::named(registers.taxa, given.substr(0, colon));
  if (taxon == nullptr)
    return wrong("the book has no such taxon");
  const auto route = std::ranges::find(registers.routes, taxon->id, &book::Route::taxon);
  const auto step = parse_whole(given.substr(colon + 1, equals - colon - 1));
  const auto share = parse_real(given.substr(equals + 1));
  if (route == registers.routes.end() || !step || *step < 1 ||
      static_cast<std::size_t>(*step) > route->steps.size())
    return wrong("its route has no such step");
  if (!share || !(*share > 0 && *share <= 1))
    return wrong("the share is not above 0, at most 1");
  route->steps[static_cast<std::size_t>(*step) - 1].survival = *share;
  return {};
}

} // namespace

Result<std::array<bool, 12>> months_of_year(std::string_view text) {
  std::array<bool, 12> months{};
  for (const auto& piece : split_at_commas(text)) {
    const auto dash = piece.find('-');
    const auto first = month_number(std::string_view(piece).substr(0, dash));
    const auto last =
        dash == std::string::npos ? first : month_number(std::string_view(piece).substr(dash + 1));
    if (!first || !last)
      return refuse(usage_fault(fmt::format("'{}' is no month of the year", piece),
                                "Write numbers, such as 3-10 or 3,4,9-11."));
    for (int month = *first;; month = month % 12 + 1) {
      months.at(static_cast<std::size_t>(month) - 1) = true;
      if (month == *last)
        break;
    }
  }
  return months;
}

Result<SowingGiven> sowing_given(const std::string& text) {
  const auto last = text.rfind(':');
  const auto first = last == std::string::npos || last == 0 ? last : text.rfind(':', last - 1);
  if (first == std::string::npos || first == 0 || last == 0)
    return refuse(usage_fault(fmt::format("--sow '{}' is not of that form", text),
                              "Write CROSS:SEEDS:MONTH, such as 'Old Sentinel × Blue "
                              "Twin:200:2027-05'."));
  const auto seeds = parse_whole(text.substr(first + 1, last - first - 1));
  const auto month = Date::parse(text.substr(last + 1) + "-01");
  if (!seeds || !month)
    return refuse(usage_fault(
        fmt::format("--sow '{}': {}", text,
                    seeds ? "the month cannot be read" : "the seeds are no whole number"),
        "Write CROSS:SEEDS:MONTH, the month as 2027-05."));
  return SowingGiven{text.substr(0, first), *seeds, *month};
}

std::optional<StepGiven> step_given(const std::string& text) {
  const auto equals = text.rfind('=');
  const auto colon = equals == std::string::npos ? equals : text.rfind(':', equals);
  if (colon == std::string::npos)
    return std::nullopt;
  const auto step = parse_whole(text.substr(colon + 1, equals - colon - 1));
  if (!step || *step < 1 || *step > 1000)
    return std::nullopt;
  return StepGiven{text.substr(0, colon), static_cast<int>(*step), text.substr(equals + 1)};
}

Result<std::size_t> month_given(std::string_view text, const std::vector<Date>& months) {
  for (std::size_t at = 0; at < months.size(); ++at)
    if (iso_month(months[at]) == text)
      return at;
  return refuse(usage_fault(
      fmt::format("'{}' is no month of this plan", text),
      fmt::format("It runs from {} to {}.", iso_month(months.front()), iso_month(months.back()))));
}

void ForecastOptions::add_to(Command& command, int default_months) {
  add_present_to(command, default_months);
  command.add_option("--potting-months", potting,
                     "Months in which you pot, as 3-10; as the book has it, else all");
  command.add_option("--survival", survival,
                     "Suppose another survival, as 'Cycas revoluta:2=0.8'; nothing is written");
  command.add_option("--sold-after", sold_after,
                     "Months a ready plant stands before it is sold or planted out");
  command.add_option("--sow", sow,
                     "Seed that you will sow, as 'CROSS:SEEDS:2027-05'; a taxon for a cross that "
                     "is not in the book; repeat");
}

void ForecastOptions::add_present_to(Command& command, int default_months) {
  months = default_months;
  book.add_to(command);
  command.add_option("--as-of", as_of, "The day to plan from; today when left out");
  command.add_option("--months", months, "How many months, today's being the first").told_default();
  whole_option(command, "--runs", runs, "How many futures to draw; 4000 unless said");
  command.add_option("--seed", seed, "The same seed gives the same futures").told_default();
  command.add_option("--settling", settling,
                     "Share of the mix that settles in the pot; as the book has it, else 0");
  command.add_option("--wet-kilograms", kilograms,
                     "Weight of a watered litre of pot; as the book has it, else 0.9");
  real_option(command, "--survival-weight", survival_weight,
              "Plants that a route's survival weighs against the book's history; 20");
  real_option(command, "--season-weight", season_weight,
              "Plants that would stray as seasons do; 60");
  command.add_flag("--sow-seed", sow_seed,
                   "Count in the seed at hand that is judged filled, sown when it has ripened on");
  command.add_flag("--sow-cones", sow_cones,
                   "Count in the seed of ripening cones; how much and when is drawn");
}

Result<plan::ForecastInput> ForecastOptions::input() const {
  if (auto are = plan::are_months_to_plan(months); !are)
    return refuse(are.error());
  const auto today = date_or_today(as_of, "--as-of");
  if (!today)
    return refuse(today.error());
  const auto potted =
      !potting ? Result<std::array<bool, 12>>(std::array<bool, 12>{}) : months_of_year(*potting);
  if (!potted)
    return refuse(potted.error());
  auto opened = book.open(store::Access::read);
  if (!opened)
    return refuse(opened.error());
  auto input = opened->read([&](store::Reading& reading) {
    auto assumed = report::assumptions_in(reading.registers());
    if (potting)
      assumed.potting = *potted;
    assumed.survival_weight = survival_weight;
    assumed.season_weight = season_weight;
    if (sold_after)
      assumed.sold_after = sold_after;
    assumed.settling = settling.value_or(assumed.settling);
    assumed.wet_kilograms_a_litre = kilograms.value_or(assumed.wet_kilograms_a_litre);
    auto read = report::forecast_input(reading, *today, months, assumed);
    report::add_sowings(read, reading, {sow_seed, sow_cones});
    return read;
  });
  if (!input)
    return refuse(input.error());
  for (const auto& given : survival)
    if (auto supposed = suppose_survival(input->standing.registers, given); !supposed)
      return refuse(supposed.error());
  for (const auto& text : sow) {
    const auto given = sowing_given(text);
    if (!given)
      return refuse(given.error());
    auto sowing = plan::told_sowing(*input, given->cross, given->seeds, given->month);
    if (!sowing)
      return refuse(sowing.error());
    input->sowings.push_back(std::move(*sowing));
  }
  return input;
}

plan::ForecastRuns ForecastOptions::wanted(std::ostream& messages) const {
  constexpr std::int64_t most = 2'000'000; // refused further on, with a reason
  const int number = static_cast<int>(std::clamp<std::int64_t>(runs, -1, most));
  return {number, seed, 0, [&messages, number, told = 0](int done) mutable {
            constexpr int parts = 4;
            const int part = done * parts / std::max(1, number);
            if (part > told && part < parts) {
              told = part;
              messages << fmt::format("{} of {} futures drawn\n", done, number);
            }
            return true;
          }};
}

} // namespace coneline::commands
