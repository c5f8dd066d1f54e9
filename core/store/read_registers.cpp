// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reading.h"
#include "core/store/tables.h"

namespace coneline::store {

namespace {

template <class Set>
book::Sourced<Set> sourced(const Row& row, const std::string& column) {
  return {row.one_of<Set>(column), row.text(column + "_source")};
}

book::Sourced<std::optional<book::Range>> sourced_range(const Row& row, const std::string& column) {
  book::Sourced<std::optional<book::Range>> range{{}, row.text(column + "_source")};
  if (row.has(column + "_low"))
    range.value = book::Range{row.real(column + "_low"), row.real(column + "_high")};
  return range;
}

std::vector<book::Taxon> taxa(Tables& tables) {
  std::vector<book::Taxon> taxa;
  tables.ask("SELECT * FROM taxon ORDER BY id").each([&](const Row& row) {
    taxa.push_back({book::TaxonId{row.whole("id")}, row.text("name"),
                    sourced<book::LeafColour>(row, "leaf_colour"),
                    sourced<book::Light>(row, "light"), sourced<book::Frost>(row, "frost"),
                    sourced<book::FloatTest>(row, "float_test"), sourced_range(row, "ripening"),
                    sourced_range(row, "after_ripening")});
  });
  return taxa;
}

std::vector<book::Place> all_places(Tables& tables) {
  std::vector<book::Place> places;
  tables.ask("SELECT * FROM place ORDER BY id").each([&](const Row& row) {
    places.push_back({book::PlaceId{row.whole("id")}, tables.code(Kind::place, row.whole("number")),
                      row.text("name"), row.one_of<book::PlaceKind>("kind"),
                      row.maybe_id<book::PlaceId>("within_id"), row.real("length_mm"),
                      row.real("width_mm"), row.one_of<book::Light>("light"),
                      static_cast<int>(row.whole("walk"))});
  });
  return places;
}

std::vector<book::Pot> pots(Tables& tables) {
  std::vector<book::Pot> pots;
  tables.ask("SELECT * FROM pot ORDER BY id").each([&](const Row& row) {
    pots.push_back({book::PotId{row.whole("id")}, row.text("name"), row.real("litres"),
                    row.one_of<book::Shape>("shape"), row.real("length_mm"), row.real("width_mm"),
                    static_cast<int>(row.whole("cells")), row.text("source")});
  });
  return pots;
}

std::vector<book::Mix> mixes(Tables& tables) {
  std::vector<book::Mix> mixes;
  tables.ask("SELECT * FROM mix ORDER BY id").each([&](const Row& row) {
    mixes.push_back({book::MixId{row.whole("id")},
                     row.text("name"),
                     row.real("shrink"),
                     row.real("loss"),
                     row.text("source"),
                     {}});
  });
  for (auto& mix : mixes)
    tables.ask("SELECT name, share FROM mix_part WHERE mix_id = :mix ORDER BY position")
        .with(mix.id)
        .each([&](const Row& row) {
          mix.parts.push_back({row.text("name"), row.real("share")});
        });
  return mixes;
}

std::vector<book::Route> routes(Tables& tables) {
  std::vector<book::Route> routes;
  tables.ask("SELECT * FROM route ORDER BY id").each([&](const Row& row) {
    routes.push_back({book::RouteId{row.whole("id")},
                      book::TaxonId{row.whole("taxon_id")},
                      row.real("germination"),
                      book::Range{row.real("germination_low"), row.real("germination_high")},
                      row.text("source"),
                      {}});
  });
  for (auto& route : routes)
    tables.ask("SELECT * FROM route_step WHERE route_id = :route ORDER BY position")
        .with(route.id)
        .each([&](const Row& row) {
          route.steps.push_back({book::PotId{row.whole("pot_id")}, book::MixId{row.whole("mix_id")},
                                 book::Range{row.real("months_low"), row.real("months_high")},
                                 row.real("survival"), row.one_of<book::Light>("light"),
                                 row.text("source")});
        });
  return routes;
}

std::vector<book::Plant> plants(Tables& tables) {
  std::vector<book::Plant> plants;
  tables.ask("SELECT * FROM plant ORDER BY id").each([&](const Row& row) {
    plants.push_back({book::PlantId{row.whole("id")},
                      tables.code(Kind::plant, row.whole("number")),
                      row.text("name"),
                      book::TaxonId{row.whole("taxon_id")},
                      row.one_of<book::Certainty>("taxon_certainty"),
                      row.one_of<book::Sex>("sex"),
                      row.text("origin"),
                      row.maybe_date("acquired"),
                      row.maybe_id<book::PlaceId>("place_id"),
                      row.text("note"),
                      {},
                      row.maybe_id<book::PlantId>("seed_parent_id"),
                      row.maybe_id<book::PlantId>("pollen_parent_id"),
                      row.text("seed_parent_said"),
                      row.text("pollen_parent_said"),
                      row.one_of<book::Certainty>("parents_certainty"),
                      row.one_of<book::StandsIn>("stands_in")});
  });
  for (auto& plant : plants)
    tables.ask("SELECT * FROM paper WHERE plant_id = :plant ORDER BY id")
        .with(plant.id)
        .each([&](const Row& row) {
          plant.papers.push_back({row.text("kind"), row.text("number"), row.maybe_date("issued"),
                                  row.text("authority"), row.text("note")});
        });
  return plants;
}

std::vector<book::PollenLot> pollen_lots(Tables& tables) {
  std::vector<book::PollenLot> lots;
  tables.ask("SELECT * FROM pollen_lot ORDER BY id").each([&](const Row& row) {
    lots.push_back({book::PollenLotId{row.whole("id")},
                    tables.code(Kind::pollen, row.whole("number")),
                    book::PlantId{row.whole("plant_id")}, row.date("collected"),
                    row.maybe_real("millilitres"), row.text("store"), row.text("note")});
  });
  return lots;
}

std::vector<book::PollenStore> pollen_stores(Tables& tables) {
  std::vector<book::PollenStore> stores;
  tables.ask("SELECT * FROM pollen_store ORDER BY id").each([&](const Row& row) {
    stores.push_back({{row.whole("id")}, row.text("name"), sourced_range(row, "years")});
  });
  return stores;
}

std::vector<book::Cone> cones(Tables& tables) {
  std::vector<book::Cone> cones;
  tables.ask("SELECT * FROM cone ORDER BY id").each([&](const Row& row) {
    cones.push_back({book::ConeId{row.whole("id")}, tables.code(Kind::cone, row.whole("number")),
                     book::PlantId{row.whole("plant_id")}, row.maybe_date("first_seen"),
                     row.text("note")});
  });
  return cones;
}

std::vector<book::Purchase> purchases(Tables& tables) {
  std::vector<book::Purchase> purchases;
  tables.ask("SELECT * FROM purchase ORDER BY id").each([&](const Row& row) {
    purchases.push_back({book::PurchaseId{row.whole("id")},
                         tables.code(Kind::purchase, row.whole("number")),
                         book::TaxonId{row.whole("taxon_id")}, row.text("supplier"),
                         row.date("bought"), row.text("note")});
  });
  return purchases;
}

std::vector<book::Figure> figures(Tables& tables) {
  std::vector<book::Figure> figures;
  tables.ask("SELECT name, value FROM figure ORDER BY name").each([&](const Row& row) {
    figures.push_back({row.text("name"), row.real("value")});
  });
  return figures;
}

} // namespace

book::Registers Reading::registers() {
  return {title(),        taxa(tables_),      all_places(tables_), pots(tables_),
          mixes(tables_), routes(tables_),    plants(tables_),     pollen_lots(tables_),
          cones(tables_), purchases(tables_), figures(tables_),    pollen_stores(tables_)};
}

} // namespace coneline::store
