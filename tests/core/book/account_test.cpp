// SPDX-License-Identifier: GPL-3.0-or-later
// What may stand where and become what, said once more as a table. The ways are common
// practice, no source.
#include "core/book/account.h"
#include "core/book/words.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace coneline::book {
namespace {

using Ways = std::set<State>;
using enum State;

constexpr std::array all_states{
    cone, bought_in, unsorted, judged_filled, judged_empty, sown,
    root, leaf,      plant,    opened_filled, opened_empty, lost_in_cleaning,
    dead, discarded, sold,     planted_out,   unexplained};

/// Anything alive can die, be thrown away, be sold or not be found.
Ways and_gone(Ways ways) {
  ways.insert({dead, discarded, sold, unexplained});
  return ways;
}

const Ways from_seed = and_gone(
    {unsorted, judged_filled, judged_empty, opened_filled, opened_empty, lost_in_cleaning, sown});
const std::map<State, Ways> ways{
    {cone, {unsorted}},
    {bought_in, {unsorted, plant}},
    {unsorted, from_seed},
    {judged_filled, from_seed},
    {judged_empty, from_seed},
    {sown, and_gone({root, leaf, opened_filled, opened_empty})},
    {root, and_gone({leaf, plant})},
    {leaf, and_gone({plant, planted_out})},
    {plant, and_gone({plant, planted_out})},
    {unexplained, {unsorted, judged_filled, judged_empty, sown, root, leaf, plant}},
};

TEST(Account, BecomesWhatTheTableSaysAndNothingElse) {
  for (const auto from : all_states)
    for (const auto to : all_states) {
      const auto found = ways.find(from);
      EXPECT_EQ(leads_to(from, to), found != ways.end() && found->second.contains(to))
          << word(from) << " to " << word(to);
    }
}

TEST(Account, IsHeldByItsOwnKindOfLot) {
  const std::map<Kind, Ways> held{{Kind::batch, {unsorted, judged_filled, judged_empty}},
                                  {Kind::tray, {sown, root, leaf}},
                                  {Kind::pot_group, {plant}}};
  const Ways on_hand{unsorted, judged_filled, judged_empty, sown, root, leaf, plant};
  for (const auto& [kind, own] : held)
    for (const auto state : all_states)
      EXPECT_EQ(holds(kind, state), own.contains(state) || !on_hand.contains(state))
          << kind_word(kind) << ", " << word(state);
}

TEST(Account, StandsAtTheBeginningOnHandOrAtTheEnd) {
  for (const auto state : all_states) {
    const bool begins = state == cone || state == bought_in;
    const bool lives = state >= unsorted && state <= plant;
    EXPECT_EQ(standing(state), begins  ? Standing::beginning
                               : lives ? Standing::on_hand
                                       : Standing::end)
        << word(state);
  }
}

} // namespace
} // namespace coneline::book
