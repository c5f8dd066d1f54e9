// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/parent_options.h"

#include "core/work/correct.h"

namespace coneline::commands {

namespace {

Result<void> parent(const std::optional<std::string>& given, const book::Registers& registers,
                    std::optional<book::PlantId>& id, std::string& said) {
  return given ? work::give_parent(*given, registers, id, said) : Result<void>();
}

template <class Set>
Result<void> member(const std::optional<std::string>& given, Set& to) {
  if (!given)
    return {};
  auto read = book::read_word<Set>(*given);
  if (!read)
    return refuse(read.error());
  to = *read;
  return {};
}

} // namespace

void ParentOptions::define(Command& command) {
  command.add_option("--seed-parent", seed_parent,
                     "Its own seed parent: a plant's code, or words where it is not in the book");
  command.add_option("--pollen-parent", pollen_parent, "Its own pollen parent, likewise");
  command.add_option("--parents-certainty", certainty, "certain, likely or unsure");
  command.add_option("--stands-in", stands_in,
                     "container or ground: one in the ground is moved after winter only");
}

Result<void> ParentOptions::write_to(book::Plant& plant, const book::Registers& registers) const {
  if (auto is = parent(seed_parent, registers, plant.seed_parent, plant.seed_parent_said); !is)
    return is;
  if (auto is = parent(pollen_parent, registers, plant.pollen_parent, plant.pollen_parent_said);
      !is)
    return is;
  if (auto is = member(certainty, plant.parents_certainty); !is)
    return is;
  return member(stands_in, plant.stands_in);
}

} // namespace coneline::commands
