// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/cross.h"

#include <gtest/gtest.h>

namespace coneline::book {
namespace {

Registers parents() {
  Registers registers;
  registers.taxa = {{TaxonId{1}, "Dioon edule", {}, {}, {}, {}, {}, {}},
                    {TaxonId{2}, "Dioon spinulosum", {}, {}, {}, {}, {}, {}}};
  const auto plant = [](std::int64_t id, std::string name, TaxonId taxon) {
    Plant made;
    made.id = {id};
    made.code = Code::of(Kind::plant, 17, id).value();
    made.name = std::move(name);
    made.taxon = taxon;
    return made;
  };
  registers.plants = {plant(1, "Old Gate", TaxonId{1}), plant(2, "", TaxonId{1}),
                      plant(3, "Blue Twin", TaxonId{2})};
  const auto pollen = [](std::int64_t id, PlantId from) {
    return PollenLot{PollenLotId{id}, Code::of(Kind::pollen, 17, id).value(), from, {}, {}, {}, {}};
  };
  registers.pollen_lots = {pollen(1, PlantId{2}), pollen(2, PlantId{3}), pollen(3, PlantId{2})};
  return registers;
}

Entry pass(std::vector<PollenUsed> pollen) {
  Entry entry;
  entry.verb = Verb::pollinate;
  entry.detail = Pollination{PollinationMethod::dry, std::move(pollen)};
  return entry;
}

TEST(Cross, TwoPollenLotsOfOneFatherAreOneFather) {
  const auto registers = parents();
  const Cone cone{ConeId{1}, {}, PlantId{1}, {}, {}};
  const std::vector<Entry> passes{pass({{PollenLotId{1}, {}}}), pass({{PollenLotId{3}, 0.5}})};
  const auto cross = cross_of(registers, cone, passes);
  EXPECT_EQ(cross_name(registers, cross), "Old Gate × " + registers.plants[1].code.text());
  EXPECT_EQ(taxon_formula(registers, cross), "Dioon edule");
}

// ICN Art. H.2: the names of the parents joined by the multiplication sign.
TEST(Cross, SeveralAndUnknownFathersAreNamed) {
  const auto registers = parents();
  const Cone cone{ConeId{1}, {}, PlantId{1}, {}, {}};
  const std::vector<Entry> passes{pass({{PollenLotId{2}, {}}, {PollenLotId{1}, {}}}),
                                  pass({{std::nullopt, {}}})};
  const auto cross = cross_of(registers, cone, passes);
  EXPECT_EQ(cross_name(registers, cross),
            "Old Gate × " + registers.plants[1].code.text() + " + Blue Twin + unknown");
  EXPECT_EQ(taxon_formula(registers, cross), "Dioon edule × Dioon spinulosum");
}

TEST(Cross, AConeWithoutPollinationHasAnUnknownFather) {
  const auto registers = parents();
  const auto cross = cross_of(registers, Cone{ConeId{1}, {}, PlantId{3}, {}, {}}, {});
  EXPECT_EQ(cross_name(registers, cross), "Blue Twin × unknown");
}

} // namespace
} // namespace coneline::book
