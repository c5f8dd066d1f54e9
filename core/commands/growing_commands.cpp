// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs from the tray to the way out: inspect, pot, pot-on, move, lose, discard, sell,
// plant-out, recount, reverse.
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/verb_command.h"
#include "core/work/inspect.h"
#include "core/work/leave.h"
#include "core/work/pot.h"
#include "core/work/recount.h"
#include "core/work/relocate.h"
#include "core/work/reverse.h"

#include <fmt/format.h>

namespace coneline::commands {

namespace {

struct InspectOptions {
  std::string tray;
  std::int64_t roots = 0;
  std::int64_t leaves = 0;
  std::int64_t dead = 0;

  void define(Command& command) {
    command.add_option("tray", tray, "The tray").required();
    command.add_option("--roots", roots, "New roots since the look before");
    command.add_option("--leaves", leaves, "New first leaves");
    command.add_option("--dead", dead, "Ungerminated seeds taken out dead");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, tray);
    auto root = Count::of(roots);
    auto leaf = Count::of(leaves);
    auto out = Count::of(dead);
    if (const auto wrong = first_fault(code, root, leaf, out))
      return refuse(*wrong);
    return work::inspect(book, {*code, *root, *leaf, *out, std::move(noted)});
  }
};

/// "pot" takes trays, "pot-on" pot groups.
template <Kind From>
struct PotOptions {
  std::string from;
  std::string state;
  std::optional<std::int64_t> count;
  std::string pot;
  std::optional<std::string> mix;
  std::optional<std::string> into;
  std::optional<std::string> place;

  void define(Command& command) {
    command.add_option("from", from, From == Kind::tray ? "The tray" : "The pot group").required();
    command.add_option("--count", count, "How many; all when left out");
    if constexpr (From == Kind::tray)
      command.add_option("--state", state, "root or leaf; leaves first when left out");
    command.add_option("--pot", pot, "The pot they go into, by name").required();
    command.add_option("--mix", mix, "The mix, by name");
    command.add_option("--into", into, "A pot group of the same cone to add them to");
    command.add_option("--place", place, "Where they stand");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, from);
    auto which = state_given(code, state, "--state");
    auto group = code_given(book, into);
    auto at = code_given(book, place);
    auto number = Count::of(count.value_or(0));
    if (const auto wrong = first_fault(code, which, group, at, number))
      return refuse(*wrong);
    if (code->kind() != From)
      return refuse(fault(fmt::format("{} is a {}", code->text(), kind_word(code->kind())),
                          "Trays are potted with 'pot', pot groups with 'pot-on'."));
    return work::pot_up(book, {*code, *which, count ? std::optional(*number) : std::nullopt, pot,
                               mix, *group, *at, std::move(noted)});
  }
};

struct MoveOptions {
  std::vector<std::string> lots;
  std::string place;

  void define(Command& command) {
    command.add_option("lots", lots, "Batches, trays, pot groups").required();
    command.add_option("--to", place, "The place").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto to = code_given(book, place);
    if (!to)
      return refuse(to.error());
    work::Relocate wanted{{}, *to, std::move(noted)};
    for (const auto& typed : lots) {
      auto code = code_given(book, typed);
      if (!code)
        return refuse(code.error());
      wanted.lots.push_back(*code);
    }
    return work::relocate(book, wanted);
  }
};

template <work::WayOut Way>
struct LeaveOptions {
  std::string lot;
  std::string state;
  std::int64_t count = 0;
  std::string buyer;
  std::optional<std::int64_t> cents;
  bool sure = false;

  void define(Command& command) {
    command.add_option("lot", lot, "The lot").required();
    command.add_option("--count", count, "How many").required();
    if constexpr (Way == work::WayOut::discarded)
      command.add_flag("--sure", sure,
                       "Floaters may go though none was cut open and the float test is not known "
                       "to hold");
    command.add_option("--state", state,
                       "Which, where the lot holds several: sown, root, leaf, 'judged empty' …");
    if constexpr (Way == work::WayOut::sold) {
      command.add_option("--buyer", buyer, "To whom");
      command.add_option("--cents", cents, "The price of all of it, in whole cents");
    }
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, lot);
    auto which = state_given(code, state, "--state");
    auto number = Count::of(count);
    if (const auto wrong = first_fault(code, which, number))
      return refuse(*wrong);
    return work::leave(book,
                       {*code, Way, *which, *number, buyer, cents, std::move(noted),
                        sure ? work::Floaters::grower_is_sure : work::Floaters::ask_for_opened});
  }
};

struct RecountOptions {
  std::string lot;
  std::string state;
  std::int64_t counted = 0;

  void define(Command& command) {
    command.add_option("lot", lot, "The lot").required();
    command.add_option("--counted", counted, "How many there really are").required();
    command.add_option("--state", state, "Which, where the lot holds several");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, lot);
    auto which = state_given(code, state, "--state");
    auto number = Count::of(counted);
    if (const auto wrong = first_fault(code, which, number))
      return refuse(*wrong);
    return work::recount(book, {*code, *which, *number, std::move(noted)});
  }
};

struct ReverseOptions {
  std::int64_t entry = 0;

  void define(Command& command) {
    command.add_option("entry", entry, "The entry's number").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    return work::reverse(book, {{entry}, noted.who, noted.note});
  }
};

} // namespace

void add_growing_verbs(CommandLine& line) {
  add_verb<InspectOptions>(line, "inspect", "One look at a tray, also one that found nothing");
  add_verb<PotOptions<Kind::tray>>(line, "pot", "Pot seedlings of a tray");
  add_verb<PotOptions<Kind::pot_group>>(line, "pot-on", "Move plants into the next pot");
  add_verb<MoveOptions>(line, "move", "Give lots another place");
  add_verb<LeaveOptions<work::WayOut::dead>>(line, "lose", "Seed, seedlings or plants that died");
  add_verb<LeaveOptions<work::WayOut::discarded>>(line, "discard", "Throw away");
  add_verb<LeaveOptions<work::WayOut::sold>>(line, "sell", "Sell seed, seedlings or plants");
  add_verb<LeaveOptions<work::WayOut::planted_out>>(line, "plant-out", "Plant out for good");
  add_verb<RecountOptions>(line, "recount", "Count again; a difference is noted as unexplained");
  add_verb<ReverseOptions>(line, "reverse", "Take back a mistaken entry by one that names it");
}

} // namespace coneline::commands
