// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/placing_paper.h"

#include "core/base/month.h"
#include "core/base/phrase.h"
#include "core/plan/fit.h"
#include "core/report/forecast_report.h"
#include "core/work/origin_said.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

double rounded(double value, double parts = 100) {
  return std::round(value * parts) / parts;
}

std::string name_of(const plan::PlacingInput& input, const std::optional<book::PlaceId>& place) {
  return place ? input.registers.place(*place).name : std::string();
}

Name name_of(const std::string& cross) {
  return {cross, work::origin_said(cross, work::Days::iso)};
}

PlanTable to_do(const plan::PlacingInput& input, const plan::Placing& placing) {
  PlanTable table{phrase("to do"),
                  {Word{"month"}, Word{"lot"}, Word{"cross"}, Word{"pot"}, Word{"containers"},
                   Word{"from"}, Word{"to"}},
                  {}};
  for (const auto& move : placing.moves) {
    const auto& piece = input.pieces[move.piece];
    table.rows.push_back({iso_month(placing.months[move.month]), piece.code.text(),
                          name_of(piece.cross), input.registers.pot(piece.pot).name,
                          rounded(piece.containers[move.month], 10), name_of(input, move.from),
                          name_of(input, move.to)});
  }
  return table;
}

PlanTable benches(const plan::PlacingInput& input, const plan::Placing& placing) {
  PlanTable table{
      phrase("benches"),
      {Word{"month"}, Word{"place"}, Word{"lot"}, Word{"cross"}, Word{"pot"}, Word{"containers"}},
      {}};
  for (std::size_t month = 0; month < placing.months.size(); ++month)
    for (const auto& place : input.registers.places)
      for (const auto& placed : placing.placed) {
        if (placed.places[month] != place.id)
          continue;
        const auto& piece = input.pieces[placed.piece];
        table.rows.push_back({iso_month(placing.months[month]), place.name, piece.code.text(),
                              name_of(piece.cross), input.registers.pot(piece.pot).name,
                              rounded(piece.containers[month], 10)});
      }
  return table;
}

PlanTable room(const plan::PlacingInput& input, const plan::Placing& placing) {
  PlanTable table{phrase("room taken, %"), {Word{"place"}}, {}};
  for (const auto month : placing.months)
    table.header.emplace_back(iso_month(month));
  constexpr double per_cent = 100;
  for (const auto& [place, taken] : placing.taken) {
    std::vector<Cell> row{input.registers.place(place).name};
    for (const auto share : taken)
      row.emplace_back(std::round(per_cent * share));
    table.rows.push_back(std::move(row));
  }
  return table;
}

} // namespace

std::vector<std::string> no_room_told(const plan::PlacingInput& input,
                                      const plan::Placing& placing) {
  std::vector<std::string> told;
  for (const auto& one : placing.no_room) {
    std::string lots;
    for (const auto piece : one.pieces)
      lots += (lots.empty() ? "" : ", ") + input.pieces[piece].code.text();
    told.push_back(phrase(
        "{} of {} find no room in {}: {}.", measured(Quantity::square_metres, one.square_metres, 2),
        book::said(one.light), plan::month_name(placing.months[one.month]), lots));
  }
  told.insert(told.end(), placing.remarks.begin(), placing.remarks.end());
  return told;
}

std::string proof_told(const plan::Placing& placing) {
  auto told = phrase_n(placing.moved, "{} move", "{} moves");
  if (placing.proven)
    return phrase("{}; no placing is better.", told);
  if (placing.moves_bound > 0)
    told = phrase("{} (at least {})", told, placing.moves_bound);
  return told + phrase("; this placing costs {:.2f}, none costs less than {:.2f} (a move costs "
                       "1, a lot without a place 5 a month and more).",
                       placing.cost, placing.bound);
}

PlanPaper placing_paper(const plan::PlacingInput& input, const plan::Placing& placing) {
  PlanPaper paper{phrase("Bench list"), foot_of(input.registers.title, input.today), {}, {}, {}};
  paper.sentences.push_back(proof_told(placing));
  for (auto& told : no_room_told(input, placing))
    paper.sentences.push_back(std::move(told));
  if (placing.no_room.empty())
    paper.sentences.push_back(input.left_out.empty()
                                  ? phrase("Everything finds room.")
                                  : phrase("Everything finds room; lots that are left out are "
                                           "counted as they stand today."));
  for (auto& told : left_out_told(input.left_out))
    paper.sentences.push_back(std::move(told));
  paper.tables = {to_do(input, placing), room(input, placing), benches(input, placing)};
  paper.cautions = {
      phrase("Watered pots are heavy: lift 25 kg at most, close to the body, two for more."),
      phrase("A bench bears what its maker says; walk-ways stay free.")};
  return paper;
}

Json placing_json(const plan::PlacingInput& input, const plan::Placing& placing) {
  Json json{{"moves", placing.moved},
            {"cost", placing.cost},
            {"bound", placing.bound},
            {"proven", placing.proven},
            {"moves_bound", placing.moves_bound},
            {"gap", placing.cost > placing.bound + 1e-9
                        ? (placing.cost - placing.bound) / placing.cost
                        : 0},
            {"remarks", placing.remarks},
            {"left_out", left_out_json(input.left_out)},
            {"to_do", Json::array()},
            {"no_room", Json::array()},
            {"benches", Json::array()},
            {"taken", Json::object()}};
  for (const auto& move : placing.moves) {
    const auto from = name_of(input, move.from);
    json["to_do"].push_back({{"month", iso_month(placing.months[move.month])},
                             {"lot", input.pieces[move.piece].code.text()},
                             {"pot", input.registers.pot(input.pieces[move.piece].pot).name},
                             {"from", from.empty() ? Json(nullptr) : Json(from)},
                             {"to", name_of(input, move.to)}});
  }
  for (const auto& one : placing.no_room) {
    Json lots = Json::array();
    for (const auto piece : one.pieces)
      lots.push_back(input.pieces[piece].code.text());
    json["no_room"].push_back({{"month", iso_month(placing.months[one.month])},
                               {"light", book::word(one.light)},
                               {"square_metres", one.square_metres},
                               {"lots", lots}});
  }
  for (const auto& placed : placing.placed) {
    Json places = Json::array();
    for (const auto& place : placed.places)
      places.push_back(place ? Json(name_of(input, place)) : Json(nullptr));
    const auto& piece = input.pieces[placed.piece];
    json["benches"].push_back({{"lot", piece.code.text()},
                               {"pot", input.registers.pot(piece.pot).name},
                               {"places", places}});
  }
  for (const auto& [place, taken] : placing.taken)
    json["taken"][input.registers.place(place).name] = taken;
  return json;
}

} // namespace coneline::report
