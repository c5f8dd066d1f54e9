// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/season.h"

#include "core/exchange/rows.h"

namespace coneline::exchange {

Season season_of(store::Reading& reading) {
  return {reading.registers(), reading.lots(),          reading.entries(),
          reading.rounds(),    reading.round_entries(), reading.sightings()};
}

std::vector<std::string> files_of_a_season() {
  std::vector<std::string> names;
  const Sheets none;
  each_sheet(none, [&](const auto& sheet) {
    using Row = typename std::remove_cvref_t<decltype(sheet)>::Row;
    names.emplace_back(file_of<Row>);
  });
  return names;
}

namespace {

template <class Row>
void add(Sheets& sheets, Row row) {
  std::get<Sheet<Row>>(sheets).rows.push_back({std::move(row)});
}

template <class Row>
void add_all(Sheets& sheets, const std::vector<Row>& rows) {
  for (const auto& row : rows)
    add(sheets, row);
}

struct AddDetail {
  Sheets& sheets;
  book::EntryId entry;

  void operator()(std::monostate) const {}
  void operator()(const book::Pollination& pass) const {
    for (const auto& pollen : pass.pollen)
      add(sheets, PollinationRow{entry, pass.method, pollen});
  }
  void operator()(const book::Cleaning& detail) const { add(sheets, CleaningRow{entry, detail}); }
  void operator()(const book::Sorting& detail) const { add(sheets, SortingRow{entry, detail}); }
  void operator()(const book::Keeping& detail) const { add(sheets, KeepingRow{entry, detail}); }
  void operator()(const book::Sale& detail) const { add(sheets, SaleRow{entry, detail}); }
};

} // namespace

Sheets sheets_of(const Season& season) {
  Sheets sheets;
  const auto& registers = season.registers;
  add(sheets, registers.title);
  add_all(sheets, registers.taxa);
  add_all(sheets, registers.places);
  add_all(sheets, registers.pots);
  add_all(sheets, registers.mixes);
  add_all(sheets, registers.routes);
  add_all(sheets, registers.plants);
  add_all(sheets, registers.pollen_lots);
  add_all(sheets, registers.cones);
  add_all(sheets, registers.purchases);
  add_all(sheets, season.lots);
  add_all(sheets, season.entries);
  for (const auto& mix : registers.mixes)
    for (const auto& part : mix.parts)
      add(sheets, PartRow{mix.id, part});
  for (const auto& route : registers.routes)
    for (int number = 0; const auto& step : route.steps)
      add(sheets, StepRow{route.taxon, ++number, step});
  for (const auto& plant : registers.plants)
    for (const auto& paper : plant.papers)
      add(sheets, PaperRow{plant.id, paper});
  for (const auto& entry : season.entries) {
    for (const auto& movement : entry.movements)
      add(sheets, MovementRow{entry.id, movement});
    std::visit(AddDetail{sheets, entry.id}, entry.detail);
  }
  for (const auto& round : season.rounds) {
    add(sheets, round);
    for (const auto& stop : round.stops)
      add(sheets, StopRow{round.id, stop});
  }
  add_all(sheets, season.round_entries);
  add_all(sheets, season.sightings);
  return sheets;
}

} // namespace coneline::exchange
