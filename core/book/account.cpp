// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/account.h"

namespace coneline::book {

Standing standing(State state) {
  switch (state) {
  case State::cone:
  case State::bought_in:
    return Standing::beginning;
  case State::unsorted:
  case State::judged_filled:
  case State::judged_empty:
  case State::sown:
  case State::root:
  case State::leaf:
  case State::plant:
    return Standing::on_hand;
  case State::opened_filled:
  case State::opened_empty:
  case State::lost_in_cleaning:
  case State::dead:
  case State::discarded:
  case State::sold:
  case State::planted_out:
  case State::unexplained:
    return Standing::end;
  }
  return Standing::end;
}

bool holds(Kind lot, State state) {
  if (standing(state) != Standing::on_hand)
    return true;
  switch (state) {
  case State::unsorted:
  case State::judged_filled:
  case State::judged_empty:
    return lot == Kind::batch;
  case State::sown:
  case State::root:
  case State::leaf:
    return lot == Kind::tray;
  default:
    return lot == Kind::pot_group;
  }
}

namespace {
bool is_seed(State state) {
  return state == State::unsorted || state == State::judged_filled || state == State::judged_empty;
}
bool is_opened(State state) {
  return state == State::opened_filled || state == State::opened_empty;
}
} // namespace

bool leads_to(State from, State to) {
  if (from == State::unexplained)
    return standing(to) == Standing::on_hand;
  if (standing(from) == Standing::end || standing(to) == Standing::beginning)
    return false;
  if (from == State::cone)
    return to == State::unsorted;
  if (from == State::bought_in)
    return to == State::unsorted || to == State::plant;
  if (to == State::dead || to == State::discarded || to == State::sold || to == State::unexplained)
    return true;
  switch (from) {
  case State::unsorted:
  case State::judged_filled:
  case State::judged_empty:
    return is_seed(to) || is_opened(to) || to == State::lost_in_cleaning || to == State::sown;
  case State::sown:
    return to == State::root || to == State::leaf || is_opened(to);
  case State::root:
    return to == State::leaf || to == State::plant;
  case State::leaf:
    return to == State::plant || to == State::planted_out;
  default: // plant
    return to == State::plant || to == State::planted_out;
  }
}

} // namespace coneline::book
