// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/placing_options.h"

#include "core/commands/number_options.h"
#include "core/report/assumptions.h"
#include "core/report/placing_input.h"
#include "core/work/find_code.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct Known {
  book::PlanRecords records;
  std::map<book::LotId, Code> codes;
  std::map<Code, book::PlaceId> pins;
};

const book::Place* place_meant(const book::Registers& registers, const std::string& typed) {
  if (const auto* place = book::named(registers.places, typed))
    return place;
  const auto code = Code::parse(typed);
  return code ? book::coded(registers.places, *code) : nullptr;
}

Result<Known> known(store::Reading& reading, const std::vector<std::string>& pins) {
  Known known{reading.plan_records(), report::lot_codes(reading), {}};
  const auto registers = reading.registers();
  for (const auto& pin : pins) {
    const auto equals = pin.find('=');
    if (equals == std::string::npos)
      return refuse(usage_fault(fmt::format("--pin '{}' is not of the form CODE=PLACE", pin),
                                "Write it such as T1742Q='Bench 3'."));
    const auto code = work::find_code(reading, registers, pin.substr(0, equals));
    if (!code)
      return refuse(code.error());
    const auto* place = place_meant(registers, pin.substr(equals + 1));
    if (place == nullptr)
      return refuse(usage_fault(fmt::format("--pin '{}': there is no such place", pin),
                                "Give a place's name or code."));
    known.pins.insert_or_assign(*code, place->id);
  }
  return known;
}

} // namespace

void PlacingOptions::add_to(Command& command) {
  plan.add_to(command, 12);
  command.add_option("--assurance", assurance,
                     "Share of futures whose room is planned for; as the book has it, else 0.9");
  command.add_option("--pin", pins, "A lot that is to stand in a place, as CODE=PLACE");
  real_option(command, "--seconds", seconds, "To look for better, each light class; 20");
}

Result<Placed> PlacingOptions::placed(std::ostream& messages) const {
  // Before anything is read or drawn; one in the book is inside.
  if (assurance && !(*assurance > 0 && *assurance < 1))
    return refuse(usage_fault(fmt::format("an assurance of {:g}", *assurance),
                              "Give a share above 0 and below 1."));
  auto book = plan.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto asked = book->read([&](store::Reading& reading) { return known(reading, pins); });
  if (!asked)
    return refuse(asked.error());
  const auto input = plan.input();
  if (!input)
    return refuse(input.error());
  const double share = assurance.value_or(report::assurance_in(input->standing.registers));
  const auto forecast = plan::forecast_of(*input, plan.wanted(messages));
  if (!forecast)
    return refuse(forecast.error());
  Placed placed{
      report::placing_input(*input, *forecast, asked->records, asked->codes, share, plan.months),
      {}};
  for (const auto& [code, place] : asked->pins)
    placed.input.pins.insert_or_assign(code, place);
  auto placing = plan::place_lots(placed.input, {seconds, {}});
  if (!placing)
    return refuse(placing.error());
  placed.placing = *std::move(placing);
  return placed;
}

} // namespace coneline::commands
