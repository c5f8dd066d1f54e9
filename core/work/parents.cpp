// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/parents.h"

#include "core/book/cross.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {

Result<std::optional<book::PlantId>> plant_meant(const book::Registers& registers,
                                                 const std::optional<Code>& code) {
  if (!code)
    return std::nullopt;
  if (const auto* plant = book::coded(registers.plants, *code))
    return plant->id;
  return refuse(fault(fmt::format("{} is no plant of this book", code->text()),
                      "Give a plant of the register."));
}

} // namespace

Result<Done> give_parents(store::Book& book, const GiveParents& wanted) {
  return book.write([&](store::Writing& writing) -> Result<Done> {
    const auto registers = writing.registers();
    const auto* found = book::coded(registers.plants, wanted.plant);
    if (found == nullptr)
      return refuse(fault(fmt::format("{} is no plant of this book", wanted.plant.text()),
                          "Give a plant of the register."));
    auto seed_parent = plant_meant(registers, wanted.seed_parent);
    if (!seed_parent)
      return refuse(seed_parent.error());
    auto pollen_parent = plant_meant(registers, wanted.pollen_parent);
    if (!pollen_parent)
      return refuse(pollen_parent.error());
    auto plant = *found;
    plant.seed_parent = *seed_parent;
    plant.pollen_parent = *pollen_parent;
    if (auto put = writing.put(plant); !put)
      return refuse(put.error());
    const auto name = [&](const std::optional<book::PlantId>& id) {
      return id ? book::plant_name(registers.plant(*id)) : std::string("not known");
    };
    Done done;
    done.told = fmt::format("{}: seed parent {}, pollen parent {}", plant.code.text(),
                            name(plant.seed_parent), name(plant.pollen_parent));
    return done;
  });
}

} // namespace coneline::work
