// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/order_options.h"

#include "core/base/number.h"
#include "core/report/assumptions.h"
#include "core/report/offers_csv.h"
#include "core/stats/probability.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::commands {

namespace {

/// "bark=300" for a part that the plan needs.
Result<void> set_each(const std::vector<std::string>& given, std::string_view option,
                      const plan::Forecast& forecast, std::vector<book::Good>& goods,
                      const std::function<void(book::Good&, double)>& set) {
  for (const auto& text : given) {
    const auto equals = text.rfind('=');
    const auto name = text.substr(0, equals);
    const auto amount =
        equals == std::string::npos ? Result<double>(0) : parse_real(text.substr(equals + 1));
    if (equals == std::string::npos || !amount || *amount < 0)
      return refuse(usage_fault(fmt::format("{} '{}' is no good with an amount", option, text),
                                "Write good=amount, such as peat=200."));
    if (!forecast.find({plan::Shown::part, name}))
      return refuse(
          usage_fault(fmt::format("{} '{}': no mix of this plan has that part", option, text),
                      "Take a part as the forecast shows it."));
    auto good = std::ranges::find(goods, name, &book::Good::name);
    if (good == goods.end())
      good = goods.insert(good, book::Good{{}, name, 0, {}, {}, {}, 0});
    set(*good, *amount);
    if (auto sound = book::is_sound(*good); !sound)
      return sound;
  }
  return {};
}

} // namespace

void OrderOptions::add_to(Command& command) {
  plan.add_to(command, 12);
  command.add_option("--offers", offers,
                     "CSV of offers, in place of the book's: good,supplier,form,litres,cents and, "
                     "where wanted, expansion, delivery_cents, lead_days, least, kilograms");
  command.add_option("--assurance", assurance,
                     "Share of futures in which nothing runs short; as the book has it, else 0.9");
  command.add_option("--on-hand", on_hand, "Litres in store today, as peat=200");
  command.add_option("--room", room, "Litres that can be stored, as peat=1500");
  command.add_option("--keeps", keeps, "Months a good keeps, as peat=12");
}

Result<OrderAsked> OrderOptions::asked(std::ostream& messages) const {
  // Before anything is read or drawn; one in the book is inside.
  if (assurance)
    if (const auto inside = stats::inside_0_and_1(*assurance, "the assurance"); !inside)
      return refuse(inside.error());
  auto opened = plan.book.open(store::Access::read);
  if (!opened)
    return refuse(opened.error());
  auto records = opened->read([](store::Reading& reading) { return reading.plan_records(); });
  if (!records)
    return refuse(records.error());
  auto from = offers.empty() ? Result<std::vector<book::Offer>>(std::move(records->offers))
                             : report::read_offers(offers);
  if (!from)
    return refuse(from.error());
  auto input = plan.input();
  if (!input)
    return refuse(input.error());
  auto forecast = plan::forecast_of(*input, plan.wanted(messages));
  if (!forecast)
    return refuse(forecast.error());
  auto goods = std::move(records->goods);
  if (auto set = set_each(on_hand, "--on-hand", *forecast, goods,
                          [](book::Good& good, double litres) { good.on_hand = litres; });
      !set)
    return refuse(set.error());
  if (auto set = set_each(room, "--room", *forecast, goods,
                          [](book::Good& good, double litres) { good.room = litres; });
      !set)
    return refuse(set.error());
  if (auto set = set_each(keeps, "--keeps", *forecast, goods,
                          [](book::Good& good, double months) {
                            constexpr double longest = 1200;
                            good.keeps = static_cast<int>(std::clamp(months, 1.0, longest));
                          });
      !set)
    return refuse(set.error());
  const double share = assurance.value_or(report::assurance_in(input->standing.registers));
  return OrderAsked{*std::move(input), *std::move(forecast), *std::move(from), std::move(goods),
                    share};
}

} // namespace coneline::commands
