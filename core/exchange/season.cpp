// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/season.h"

#include "core/exchange/rows.h"

namespace coneline::exchange {

Season season_of(store::Reading& reading) {
  return {reading.registers(),    reading.lots(),   reading.entries(),
          reading.temperatures(), reading.links(),  reading.label_records(),
          reading.plan_records(), reading.rounds(), reading.round_entries(),
          reading.sightings()};
}

namespace {

class NamesOfSeason : public book::NamesInChain {
 public:
  explicit NamesOfSeason(const Season& season) : season_(season) {}
  std::string lot(book::LotId id) override {
    const auto& lot = book::row_of(season_.lots, id);
    const auto* cone = std::get_if<book::ConeId>(&lot.origin);
    return book::lot_in_chain(lot.code.kind(), lot.code.number_in_series(), cone != nullptr,
                              cone != nullptr ? this->cone(*cone)
                                              : book::row_of(season_.registers.purchases,
                                                             std::get<book::PurchaseId>(lot.origin))
                                                    .code.number_in_series(),
                              lot.judged, lot.judged_by);
  }
  std::int64_t cone(book::ConeId id) override {
    return season_.registers.cone(id).code.number_in_series();
  }
  std::int64_t place(book::PlaceId id) override {
    return season_.registers.place(id).code.number_in_series();
  }
  std::int64_t plant(book::PlantId id) override {
    return season_.registers.plant(id).code.number_in_series();
  }
  std::int64_t pollen_lot(book::PollenLotId id) override {
    return season_.registers.pollen_lot(id).code.number_in_series();
  }

 private:
  const Season& season_;
};

} // namespace

std::vector<book::Link> chain_of(const Season& season) {
  NamesOfSeason names(season);
  std::vector<book::Link> links;
  std::string last;
  for (const auto& entry : season.entries) {
    last = book::next_link(last, book::form_in_chain(entry, names));
    links.push_back({entry.id, last});
  }
  return links;
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
  void operator()(const book::Weighing& weighed) const {
    for (const double hundred : weighed.hundreds)
      add(sheets, WeighingRow{entry, weighed.grams, hundred});
  }
  void operator()(const book::Cleaning& detail) const { add(sheets, CleaningRow{entry, detail}); }
  void operator()(const book::Sorting& detail) const { add(sheets, SortingRow{entry, detail}); }
  void operator()(const book::Keeping& detail) const { add(sheets, KeepingRow{entry, detail}); }
  void operator()(const book::Sale& detail) const { add(sheets, SaleRow{entry, detail}); }
  void operator()(const book::ConeLook& detail) const { add(sheets, ConeLookRow{entry, detail}); }
  void operator()(const book::PlantNote& detail) const { add(sheets, PlantNoteRow{entry, detail}); }
  void operator()(const book::PollenNote& detail) const {
    add(sheets, PollenNoteRow{entry, detail});
  }
  void operator()(const book::Correction& detail) const {
    for (const auto& change : detail.changes)
      add(sheets, CorrectionRow{entry, change});
  }
  void operator()(const book::DueAnswer& detail) const { add(sheets, DueAnswerRow{entry, detail}); }
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
  add_all(sheets, registers.figures);
  add_all(sheets, registers.pollen_stores);
  add_all(sheets, season.lots);
  add_all(sheets, season.entries);
  add_all(sheets, season.temperatures);
  add_all(sheets, season.links);
  add_all(sheets, season.labels.stocks);
  add_all(sheets, season.labels.layouts);
  add_all(sheets, season.labels.scales);
  add_all(sheets, season.labels.prints);
  add_all(sheets, season.plan.offers);
  add_all(sheets, season.plan.goods);
  add_all(sheets, season.plan.targets);
  add_all(sheets, season.plan.pins);
  add_all(sheets, season.plan.limits);
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
