// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/trays.h"

#include "core/work/inspect.h"
#include "core/work/leave.h"
#include "core/work/line_back.h"
#include "core/work/pot.h"
#include "core/work/recount.h"
#include "core/work/relocate.h"
#include "core/work/reverse.h"
#include "core/work/sow.h"

namespace coneline::demo {

namespace {
using book::State;
constexpr int in_a_tray = 28;
constexpr int first_potting = 240; ///< days after sowing
constexpr int second_potting = 400;
constexpr int given_up = 450;
constexpr int in_first_pot = 365;
constexpr int in_second_pot = 400;

enum class Pots { first, later };

bool wants_sun(const std::string& taxon) {
  return taxon.starts_with("Encephalartos") || taxon.starts_with("Dioon");
}
const char* place_for(const std::string& taxon, Pots pots) {
  if (wants_sun(taxon))
    return "Sun bench";
  if (taxon.starts_with("Ceratozamia"))
    return "Fern corner";
  return pots == Pots::first ? "Bay one" : "Bay two";
}

const char* mix_for(const std::string& taxon) {
  return wants_sun(taxon) ? "Blue-leaf mix" : "Growing mix";
}

} // namespace

int Trays::held(const Code& code, State state, Date on) {
  return must(book_.read([&](store::Reading& reading) -> Result<int> {
    const auto lot = must(reading.lot(code));
    for (const auto& balance : reading.balances_of(lot.id, on))
      if (balance.account.state == state)
        return static_cast<int>(balance.count);
    return 0;
  }));
}

std::string Trays::taxon_of(const Code& code) {
  return must(book_.read([&](store::Reading& reading) -> Result<std::string> {
    const auto lot = must(reading.lot(code));
    return work::origin_names(reading, reading.registers()).at(lot.origin).taxon;
  }));
}

void Trays::sow(const Seed& seed, State from, Date on) {
  sow_some(seed, from, held(seed.batch, from, on), on);
}

void Trays::sow_some(const Seed& seed, State from, int most, Date on) {
  const int seeds = std::min(most, held(seed.batch, from, on));
  const int trays = (seeds + in_a_tray - 1) / in_a_tray;
  if (seeds == 0)
    return;
  const auto made = must(work::sow(book_, {seed.batch,
                                           from,
                                           Count::sure(seeds),
                                           trays,
                                           "Seed tray of 40",
                                           "Sowing mix",
                                           nursery_.places.at("Heated bench"),
                                           {on, "Tobias Renn", "on the side, half buried"}}))
                        .made;
  for (const auto& code : made) {
    const auto tray = tray_of(seed, code, held(code, State::sown, on), on);
    awkward(tray);
    diary_.plan(on.plus_days(tray->chance.between(14, 21)),
                [this, tray](Date then) { look(tray, then); });
    const bool shares = code != made.front() && tray->number % 2 == 1;
    diary_.plan(on.plus_days(first_potting + tray->number % 9),
                [this, tray, shares](Date then) { pot_first(tray, shares, then); });
    diary_.plan(on.plus_days(second_potting), [this, tray](Date then) { pot_rest(tray, then); });
  }
}

Trays::Kept Trays::tray_of(const Seed& seed, const Code& code, int seeds, Date on) {
  ++trays_;
  const auto number = static_cast<std::uint64_t>(trays_);
  const auto tray = std::make_shared<Tray>(
      Tray{code, seed, on, trays_, {}, {}, {}, 0, false, Chance(seed.stream * 100 + number)});
  auto& chance = tray->chance;
  const double share = chance.share_around(seed.germinable);
  for (int i = 0; i < seeds; ++i) {
    if (chance.happens(share)) {
      const int root = std::max(10, chance.days_around(seed.days, 0.35));
      tray->roots.push_back(root);
      if (chance.happens(0.96)) // the others never make a leaf
        tray->leaves.push_back(root + chance.days_around(38, 0.3));
    } else if (chance.happens(0.3)) {
      tray->dead.push_back(chance.days_around(200, 0.5));
    }
  }
  return tray;
}

void Trays::look(const Kept& tray, Date on) {
  if (tray->closed)
    return;
  const int now = days_between(tray->sown, on);
  const auto since = [&](const std::vector<int>& days) {
    return static_cast<int>(
        std::ranges::count_if(days, [&](int at) { return at > tray->looked && at <= now; }));
  };
  const int sown = held(tray->code, State::sown, on);
  const int roots = std::min(since(tray->roots), sown);
  const int leaves = std::min(since(tray->leaves), roots + held(tray->code, State::root, on));
  const int dead = std::min(since(tray->dead), sown - roots);
  must(work::inspect(book_, {tray->code,
                             Count::sure(roots),
                             Count::sure(leaves),
                             Count::sure(dead),
                             {on, tray->number % 3 == 0 ? "Wanda Okoro" : "Tobias Renn", ""}}));
  tray->looked = now;
  if (now > given_up) {
    discard(tray->code, State::sown, on);
    discard(tray->code, State::root, on);
    tray->closed = true;
  } else {
    diary_.plan(on.plus_days(tray->chance.between(14, 21)),
                [this, tray](Date then) { look(tray, then); });
  }
}

/// What goes wrong, or otherwise, in a real nursery.
void Trays::awkward(const Kept& tray) {
  if (tray->number == 7)
    diary_.plan(tray->sown.plus_days(64), [this, tray](Date on) {
      const int there = held(tray->code, State::sown, on);
      must(work::recount(
          book_, {tray->code, State::sown, Count::sure(there - 2), {on, "Ines Marlow", "mice?"}}));
    });
  if (tray->number == 11)
    diary_.plan(tray->sown.plus_days(70), [this, tray](Date on) {
      const auto wrong = must(work::inspect(
          book_, {tray->code, Count::sure(12), Count(), Count(), {on, "Tobias Renn", ""}}));
      must(work::reverse(book_,
                         {wrong.entries.front(), "Tobias Renn", "that was the tray beside it"}));
    });
  if (tray->number >= 3 && tray->number <= 5) {
    const auto move = [this, tray](const char* place, int after) {
      diary_.plan(tray->sown.plus_days(after), [this, tray, place](Date on) {
        must(work::relocate(
            book_,
            {{tray->code}, nursery_.places.at(place), {on, "Wanda Okoro", "room was wanted"}}));
      });
    };
    move("Cool bench", 130);
    move("Heated bench", 190);
  }
}

void Trays::put_into_pots(const Kept& tray, std::optional<State> state, std::optional<Code> into,
                          std::map<std::uint64_t, Code>& groups, Date on) {
  const auto taxon = taxon_of(tray->code);
  const auto done = must(work::pot_up(book_, {tray->code,
                                              state,
                                              std::nullopt,
                                              "Deep pot 1 L",
                                              mix_for(taxon),
                                              into,
                                              nursery_.places.at(place_for(taxon, Pots::first)),
                                              {on, "Ines Marlow", ""}}));
  if (done.made.empty())
    return;
  groups.insert_or_assign(tray->seed.stream, done.made.front());
  new_group(done.made.front(), on);
}

void Trays::pot_first(const Kept& tray, bool shares, Date on) {
  if (held(tray->code, State::leaf, on) == 0)
    return;
  const auto before = first_group_.find(tray->seed.stream);
  const bool joins = shares && before != first_group_.end();
  put_into_pots(tray, State::leaf, joins ? std::optional(before->second) : std::nullopt,
                first_group_, on);
}

void Trays::pot_rest(const Kept& tray, Date on) {
  if (held(tray->code, State::leaf, on) + held(tray->code, State::root, on) == 0)
    return;
  const auto before = second_group_.find(tray->seed.stream);
  put_into_pots(tray, std::nullopt,
                before != second_group_.end() ? std::optional(before->second) : std::nullopt,
                second_group_, on);
}

void Trays::new_group(const Code& group, Date on) {
  diary_.plan(on.plus_days(120), [this, group](Date then) {
    Chance chance(static_cast<std::uint64_t>(group.running()));
    const int dead = chance.of(held(group, State::plant, then), 0.05);
    if (dead > 0)
      must(work::leave(book_, {group,
                               work::WayOut::dead,
                               State::plant,
                               Count::sure(dead),
                               {},
                               {},
                               {then, "Wanda Okoro", "rotted at the neck"}}));
  });
  diary_.plan(on.plus_days(in_first_pot), [this, group](Date then) { pot_on(group, then); });
}

void Trays::pot_on(const Code& group, Date on) {
  if (held(group, State::plant, on) == 0)
    return;
  const auto taxon = taxon_of(group);
  const auto next = must(work::pot_up(book_, {group,
                                              {},
                                              {},
                                              "Pot 2.5 L",
                                              mix_for(taxon),
                                              {},
                                              nursery_.places.at(place_for(taxon, Pots::later)),
                                              {on, "Ines Marlow", ""}}))
                        .made.front();
  diary_.plan(on.plus_days(180), [this, next, number = ++groups_](Date then) {
    leaves_the_nursery(next, number, then);
  });
  diary_.plan(on.plus_days(in_second_pot), [this, next](Date then) { pot_on_again(next, then); });
}

void Trays::pot_on_again(const Code& group, Date on) {
  if (held(group, State::plant, on) == 0)
    return;
  const auto taxon = taxon_of(group);
  const bool large = taxon.starts_with("Cycas") || taxon.starts_with("Encephalartos");
  must(work::pot_up(book_, {group,
                            {},
                            {},
                            large ? "Pot 10 L" : "Pot 5 L",
                            mix_for(taxon),
                            {},
                            nursery_.places.at(place_for(taxon, Pots::later)),
                            {on, "Ines Marlow", "two to lift the big ones"}}));
}

void Trays::leaves_the_nursery(const Code& group, int number, Date on) {
  const int there = held(group, State::plant, on);
  if (there == 0)
    return;
  if (number == 5)
    must(work::leave(book_, {group,
                             work::WayOut::planted_out,
                             State::plant,
                             Count::sure(there),
                             {},
                             {},
                             {on, "Ines Marlow", "the slope behind the shade house"}}));
  else if (number == 3)
    sell(group, there, on);
  else if (number % 3 == 1)
    sell(group, (there + 2) / 3, on);
}

void Trays::sell(const Code& group, int plants, Date on) {
  constexpr std::int64_t each_in_cents = 2400;
  must(work::leave(book_, {group,
                           work::WayOut::sold,
                           State::plant,
                           Count::sure(plants),
                           plants > 8 ? "Fenwick Gardens (invented)" : "market day",
                           plants * each_in_cents,
                           {on, "Ines Marlow", ""}}));
}

void Trays::sell_out(const Code& group, Date on) {
  diary_.plan(on, [this, group](Date then) { sell(group, held(group, State::plant, then), then); });
}

void Trays::discard(const Code& lot, State state, Date on) {
  if (const int there = held(lot, state, on); there > 0)
    must(work::leave(book_, {lot,
                             work::WayOut::discarded,
                             state,
                             Count::sure(there),
                             {},
                             {},
                             {on, "Wanda Okoro", ""}}));
}

} // namespace coneline::demo
