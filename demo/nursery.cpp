// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/nursery.h"

#include <fmt/format.h>

namespace coneline::demo {

namespace {

using namespace book;

constexpr const char* practice = "common practice, no source";
constexpr const char* grower_pages = "grower pages";
constexpr const char* society_page = "grower society page";
constexpr const char* float_paper = "Dehgan & Yuen 1983, Bot. Gazette 144:412-418";
constexpr const char* invented = "invented for the demonstration";

Sourced<std::optional<Range>> months(double low, double high, const char* source) {
  return {Range{low, high}, source};
}

std::vector<Taxon> taxa() {
  const auto taxon = [](const char* name, LeafColour colour, Light light, Frost frost) {
    return Taxon{{}, name, {colour, practice}, {light, practice}, {frost, practice}, {}, {}, {}};
  };
  auto revoluta = taxon("Cycas revoluta", LeafColour::green, Light::part_shade, Frost::light);
  revoluta.float_test = {FloatTest::reliable, float_paper};
  revoluta.ripening = months(6, 9, practice);
  revoluta.after_ripening = months(0, 24, society_page);
  auto thouarsii = taxon("Cycas thouarsii", LeafColour::green, Light::part_shade, Frost::none);
  thouarsii.float_test = {FloatTest::unreliable, float_paper};
  thouarsii.ripening = months(8, 11, practice);
  thouarsii.after_ripening = months(0, 24, society_page);
  auto lehmannii = taxon("Encephalartos lehmannii", LeafColour::blue, Light::sun, Frost::light);
  lehmannii.ripening = months(6, 12, grower_pages);
  lehmannii.after_ripening = months(6, 6, grower_pages);
  auto edule = taxon("Dioon edule", LeafColour::grey, Light::sun, Frost::light);
  edule.ripening = months(12, 24, grower_pages);
  edule.after_ripening = months(0, 2, society_page);
  auto integrifolia =
      taxon("Zamia integrifolia", LeafColour::green, Light::part_shade, Frost::light);
  integrifolia.ripening = months(9, 9, grower_pages);
  auto mexicana = taxon("Ceratozamia mexicana", LeafColour::green, Light::shade, Frost::none);
  mexicana.after_ripening = months(3, 6, society_page);
  return {revoluta, thouarsii, lehmannii, edule, integrifolia, mexicana};
}

void put_taxa(store::Writing& writing) {
  for (const auto& each : taxa())
    must(writing.put(each));
}

void put_places(store::Writing& writing, Nursery& nursery) {
  int walk = 0;
  const auto put = [&](const char* name, PlaceKind kind, std::optional<PlaceId> within,
                       double length, double width, Light light) {
    const Place place{
        {}, must(writing.next_code(Kind::place)), name, kind, within, length, width, light, ++walk};
    nursery.places[name] = place.code;
    return must(writing.put(place));
  };
  const auto glass = put("Glasshouse", PlaceKind::house, {}, 0, 0, Light::part_shade);
  put("Heated bench", PlaceKind::bench, glass, 7200, 1000, Light::part_shade);
  put("Cool bench", PlaceKind::bench, glass, 5400, 900, Light::part_shade);
  const auto shade = put("Shade house", PlaceKind::house, {}, 0, 0, Light::shade);
  const auto bench = put("Long bench", PlaceKind::bench, shade, 0, 0, Light::part_shade);
  put("Bay one", PlaceKind::bay, bench, 3600, 1500, Light::part_shade);
  put("Bay two", PlaceKind::bay, bench, 12'000, 1800, Light::part_shade);
  put("Fern corner", PlaceKind::bay, bench, 2400, 1200, Light::shade);
  put("Sun bench", PlaceKind::bench, {}, 5000, 1200, Light::sun);
}

void put_pots_and_mixes(store::Writing& writing) {
  using enum Shape;
  for (const auto& pot : {Pot{{}, "Seed tray of 40", 7, rectangular, 540, 280, 40, invented},
                          Pot{{}, "Plug tray of 28", 5.6, rectangular, 540, 280, 28, invented},
                          Pot{{}, "Deep pot 1 L", 1.05, rectangular, 95, 95, 1, invented},
                          Pot{{}, "Pot 2.5 L", 2.4, round, 170, 170, 1, invented},
                          Pot{{}, "Pot 5 L", 4.8, round, 220, 220, 1, invented},
                          Pot{{}, "Pot 10 L", 9.4, round, 280, 280, 1, invented}})
    must(writing.put(pot));
  for (const auto& mix :
       {Mix{{}, "Sowing mix", 0.05, 0.05, practice, {{"coarse perlite", 1}, {"coarse sand", 1}}},
        Mix{{},
            "Growing mix",
            0.15,
            0.05,
            practice,
            {{"coarse perlite", 4}, {"peat", 3}, {"coarse sand", 3}}},
        Mix{{},
            "Blue-leaf mix",
            0.12,
            0.05,
            practice,
            {{"coarse perlite", 4}, {"peat", 2}, {"coarse sand", 4}}}})
    must(writing.put(mix));
}

struct RoutePlan {
  const char* taxon;
  const char* mix;
  double germination;
  Range comes_up;   ///< months
  Range in_tray;    ///< months
  const char* last; ///< the pot a plant is sold from
  Light light;
};

void put_routes(store::Writing& writing) {
  const auto registers = writing.registers();
  const auto pot = [&](const char* name) { return named(registers.pots, name)->id; };
  const auto mix = [&](const char* name) { return named(registers.mixes, name)->id; };
  for (const auto& plan :
       {RoutePlan{
            "Cycas revoluta", "Growing mix", 0.7, {2, 9}, {7, 10}, "Pot 10 L", Light::part_shade},
        RoutePlan{
            "Cycas thouarsii", "Growing mix", 0.6, {2, 8}, {7, 10}, "Pot 10 L", Light::part_shade},
        RoutePlan{"Encephalartos lehmannii",
                  "Blue-leaf mix",
                  0.55,
                  {1, 8},
                  {7, 10},
                  "Pot 10 L",
                  Light::sun},
        RoutePlan{"Dioon edule", "Blue-leaf mix", 0.6, {1, 8}, {7, 10}, "Pot 5 L", Light::sun},
        RoutePlan{"Zamia integrifolia",
                  "Growing mix",
                  0.6,
                  {1, 12},
                  {7, 10},
                  "Pot 5 L",
                  Light::part_shade},
        RoutePlan{"Ceratozamia mexicana",
                  "Growing mix",
                  0.5,
                  {2, 12},
                  {8, 12},
                  "Pot 5 L",
                  Light::shade}}) {
    Route route{
        {}, named(registers.taxa, plan.taxon)->id, plan.germination, plan.comes_up, practice, {}};
    route.steps = {{pot("Seed tray of 40"), mix("Sowing mix"), plan.in_tray, 0.95,
                    Light::part_shade, practice},
                   {pot("Deep pot 1 L"), mix(plan.mix), {10, 14}, 0.93, plan.light, practice},
                   {pot("Pot 2.5 L"), mix(plan.mix), {12, 18}, 0.96, plan.light, practice},
                   {pot(plan.last), mix(plan.mix), {18, 24}, 0.98, plan.light, practice}};
    must(writing.put(route));
  }
}

struct PlantPlan {
  const char* name;
  const char* taxon;
  Sex sex;
  const char* acquired;
  const char* origin;
  Certainty certainty = Certainty::certain;
};

std::vector<Paper> papers_of(const PlantPlan& plan, int number) {
  std::vector<Paper> papers{{"receipt", fmt::format("R-{:03}", number), day(plan.acquired),
                             "Amberfold accounts", "invented"}};
  const std::string_view taxon = plan.taxon;
  if (taxon.starts_with("Encephalartos") || taxon.starts_with("Ceratozamia"))
    papers.push_back({"permit", fmt::format("INVENTED-{:03}", number), day(plan.acquired),
                      "an invented authority", "invented; the real authority decides"});
  return papers;
}

void put_plants(store::Writing& writing, Nursery& nursery) {
  const auto registers = writing.registers();
  const auto place = coded(registers.places, nursery.places.at("Shade house"))->id;
  int number = 0;
  using enum Sex;
  for (const auto& plan :
       {PlantPlan{"Old Sentinel", "Cycas revoluta", female, "1988-04-11", "a town garden"},
        PlantPlan{"Left Twin", "Cycas revoluta", female, "1996-09-02", "a town garden"},
        PlantPlan{"Tall Piet", "Cycas revoluta", male, "1988-04-11", "a town garden"},
        PlantPlan{"Right Twin", "Cycas revoluta", male, "1996-09-02", "a town garden"},
        PlantPlan{"Harbour Girl", "Cycas thouarsii", female, "2001-05-20", "a park"},
        PlantPlan{"Harbour Boy", "Cycas thouarsii", male, "2001-05-20", "a park"},
        PlantPlan{"Blue Ada", "Encephalartos lehmannii", female, "1992-10-08", "a collection"},
        PlantPlan{"Blue Berta", "Encephalartos lehmannii", female, "1994-03-30", "a collection",
                  Certainty::likely},
        PlantPlan{"Blue Cato", "Encephalartos lehmannii", male, "1992-10-08", "a collection"},
        PlantPlan{"Dorothea", "Dioon edule", female, "1999-06-15", "own seed of 1979"},
        PlantPlan{"Dominic", "Dioon edule", male, "1999-06-15", "own seed of 1979"},
        PlantPlan{"Little Fern", "Zamia integrifolia", female, "2009-02-14", "own seed"},
        PlantPlan{"Little Flo", "Zamia integrifolia", female, "2009-02-14", "own seed"},
        PlantPlan{"Little Finn", "Zamia integrifolia", male, "2009-02-14", "own seed"},
        PlantPlan{"Rosamund", "Ceratozamia mexicana", female, "2003-11-01", "a collection"},
        PlantPlan{"Roderick", "Ceratozamia mexicana", male, "2003-11-01", "a collection",
                  Certainty::unsure},
        PlantPlan{"", "Dioon edule", not_known, "2015-08-08", "never coned yet"}}) {
    Plant plant;
    plant.code = must(writing.next_code(Kind::plant));
    plant.name = plan.name;
    plant.taxon = named(registers.taxa, plan.taxon)->id;
    plant.taxon_certainty = plan.certainty;
    plant.sex = plan.sex;
    plant.origin = plan.origin;
    plant.acquired = day(plan.acquired);
    plant.place = place;
    plant.papers = papers_of(plan, ++number);
    if (plan.origin == std::string("own seed"))
      plant.seed_parent_said = plant.pollen_parent_said = "the first pair, long gone";
    nursery.plants[plant.name] = plant.code;
    must(writing.put(plant));
  }
}

/// The twins are of one sowing of the two older plants; of the father nobody is certain.
void put_parents_of_twins(store::Writing& writing, const Nursery& nursery) {
  const auto registers = writing.registers();
  const auto id = [&](const char* name) {
    return coded(registers.plants, nursery.plants.at(name))->id;
  };
  for (const auto* twin : {"Left Twin", "Right Twin"}) {
    auto plant = registers.plant(id(twin));
    plant.seed_parent = id("Old Sentinel");
    plant.pollen_parent = id("Tall Piet");
    plant.parents_certainty = Certainty::likely;
    must(writing.put(plant));
  }
}

} // namespace

Date day(std::string_view iso) {
  return must(Date::parse(iso));
}

book::Title invented_title() {
  return {"Amberfold Nursery (invented)", 37, true, day("2024-01-05"), Hemisphere::northern};
}

Nursery found_nursery(store::Book& book) {
  Nursery nursery;
  must(book.write([&](store::Writing& writing) -> Result<void> {
    put_taxa(writing);
    put_places(writing, nursery);
    put_pots_and_mixes(writing);
    put_routes(writing);
    put_plants(writing, nursery);
    put_parents_of_twins(writing, nursery);
    return {};
  }));
  return nursery;
}

} // namespace coneline::demo
