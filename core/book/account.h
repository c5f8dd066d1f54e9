// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An account is a lot in a state. Beginnings give, ends take, what lies between is on hand.
//
//   cone -> unsorted -> judged filled -> sown -> root -> leaf -> plant -> sold
//                    \-> judged empty -> opened, empty

#include "core/base/code.h"
#include "core/book/id.h"
#include "core/book/words.h"

namespace coneline::book {

enum class State {
  // beginnings: what they have given is their negative balance
  cone,
  bought_in,
  // on hand
  unsorted,
  judged_filled,
  judged_empty,
  sown,
  root, ///< the root is out, no leaf yet
  leaf, ///< the first leaf is out
  plant,
  // ends
  opened_filled,
  opened_empty,
  lost_in_cleaning,
  dead,
  discarded,
  sold,
  planted_out,
  unexplained, ///< what a recount found missing; below zero when it found more
};

enum class Standing { beginning, on_hand, end };

Standing standing(State state);

/// Whether a lot of this kind can hold something in this state: a batch holds seed, a tray what was
/// sown, a pot group plants. Beginnings and ends go with any lot.
bool holds(Kind lot, State state);

/// Whether seed or plants can go from one state to another in the trade: sown seed becomes a root,
/// never a sale of a plant. Going back is what reversals are for.
bool leads_to(State from, State to);

struct Account {
  LotId lot;
  State state = State::unsorted;

  auto operator<=>(const Account&) const = default;
};

template <>
struct Words<State> {
  static constexpr std::string_view what = "state";
  static constexpr std::array<std::pair<State, std::string_view>, 17> all{
      {{State::cone, "cone"},
       {State::bought_in, "bought in"},
       {State::unsorted, "unsorted"},
       {State::judged_filled, "judged filled"},
       {State::judged_empty, "judged empty"},
       {State::sown, "sown"},
       {State::root, "root"},
       {State::leaf, "leaf"},
       {State::plant, "plant"},
       {State::opened_filled, "opened and filled"},
       {State::opened_empty, "opened and empty"},
       {State::lost_in_cleaning, "lost in cleaning"},
       {State::dead, "dead"},
       {State::discarded, "discarded"},
       {State::sold, "sold"},
       {State::planted_out, "planted out"},
       {State::unexplained, "unexplained"}}};
};

} // namespace coneline::book

template <>
struct std::hash<coneline::book::Account> {
  std::size_t operator()(const coneline::book::Account& account) const noexcept {
    return std::hash<std::int64_t>{}(account.lot.value * 32 + static_cast<int>(account.state));
  }
};
