// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/store/copies.h"
#include "core/store/proof.h"
#include "core/work/resolve.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

Answer answer(const store::Proof& proof, const std::string& path) {
  Answer given;
  given.at_fault = !proof.holds();
  given.json = {{"book", path},
                {"proven", proof.holds()},
                {"lots", proof.lots},
                {"origins", proof.origins},
                {"entries", proof.entries},
                {"movements", proof.movements},
                {"accounts", proof.accounts},
                {"reversals", proof.reversals},
                {"links", proof.links},
                {"last_link", proof.last_link.empty() ? Json() : Json(proof.last_link)},
                {"seeds_in", proof.seeds_in},
                {"on_hand", proof.on_hand},
                {"ended", proof.ended},
                {"unexplained", proof.unexplained},
                {"faults", proof.faults},
                {"newest_good_copy", nullptr}};
  if (proof.holds()) {
    given.table = fmt::format(
        "{}: proven\n"
        "  the file is whole, with all its guards\n"
        "  {} in {} balance{}, {} of the entries reversals that mirror\n"
        "  {}{}\n"
        "  {}, none below zero on any day\n"
        "  {} seeds and plants in = {} on hand + {} ended ({} unexplained)\n"
        "  {} back to {}\n",
        path, work::counted(proof.movements, "movement", "movements"),
        work::counted(proof.entries, "entry", "entries"), proof.movements == 1 ? "s" : "",
        proof.reversals,
        work::counted(proof.links, "link of the chain holds", "links of the chain hold"),
        proof.last_link.empty() ? "" : ", the last is " + proof.last_link,
        work::counted(proof.accounts, "account", "accounts"), proof.seeds_in, proof.on_hand,
        proof.ended, proof.unexplained, work::counted(proof.lots, "lot leads", "lots lead"),
        work::counted(proof.origins, "cone or purchase", "cones and purchases"));
    return given;
  }
  if (const auto copy = store::newest_good_copy(path))
    given.json["newest_good_copy"] = copy->path.string();
  given.table =
      fmt::format("{}: {}\n", path, work::counted(std::ssize(proof.faults), "fault", "faults"));
  for (const auto& fault : proof.faults)
    given.table += "  " + fault + "\n";
  given.table += store::advice_for_damaged(path) + '\n';
  return given;
}

} // namespace

void add_check(CommandLine& line) {
  auto option = std::make_shared<BookOption>();
  auto printed = std::make_shared<std::string>();
  auto& command = line.add(
      "check", "Prove a book: every seed accounted for", [option, printed]() -> Result<Answer> {
        auto book = option->open(store::Access::read);
        if (!book)
          return refuse(book.error());
        return store::prove(*book, *printed).map([&](const store::Proof& proof) {
          return answer(proof, option->path);
        });
      });
  option->add_to(command);
  command.add_option("--link", *printed,
                     "A link printed on papers of this book; proves that it is in the chain still");
}

} // namespace coneline::commands
