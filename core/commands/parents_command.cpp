// SPDX-License-Identifier: GPL-3.0-or-later
// parents: who a plant of the register comes from.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/work/parents.h"

#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string plant;
  std::optional<std::string> seed_parent;
  std::optional<std::string> pollen_parent;
};

Result<Answer> run_parents(const Asked& asked) {
  auto book = asked.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto plant = code_given(*book, asked.plant);
  if (!plant)
    return refuse(plant.error());
  const auto seed_parent = code_given(*book, asked.seed_parent);
  if (!seed_parent)
    return refuse(seed_parent.error().at({"", 0, "--seed-parent"}));
  const auto pollen_parent = code_given(*book, asked.pollen_parent);
  if (!pollen_parent)
    return refuse(pollen_parent.error().at({"", 0, "--pollen-parent"}));
  return work::give_parents(*book, {*plant, *seed_parent, *pollen_parent})
      .map([](const work::Done& done) { return answer(done); });
}

} // namespace

void add_parents(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("parents", "Enter or correct who a plant comes from",
                           [asked] { return run_parents(*asked); });
  asked->book.add_to(command);
  command.add_option("plant", asked->plant, "The plant")->required();
  command.add_option("--seed-parent", asked->seed_parent,
                     "Its seed parent, a plant of the register; not known when left out");
  command.add_option("--pollen-parent", asked->pollen_parent,
                     "Its pollen parent, a plant of the register; not known when left out");
}

} // namespace coneline::commands
