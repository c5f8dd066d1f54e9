// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What happens to seed once it is sown: looks every two to three weeks, pots, losses, sales.

#include "demo/chance.h"
#include "demo/diary.h"
#include "demo/nursery.h"

#include <memory>
#include <vector>

namespace coneline::demo {

struct Seed {
  Code batch;
  double germinable = 0;
  double days = 0; ///< to the root, the middle of them
  std::uint64_t stream = 0;
};

class Trays {
 public:
  Trays(store::Book& book, const Nursery& nursery, Diary& diary)
      : book_(book), nursery_(nursery), diary_(diary) {}

  /// All of that state, 28 a tray at most.
  void sow(const Seed& seed, book::State from, Date on);
  void sow_some(const Seed& seed, book::State from, int most, Date on);
  /// All of that state.
  void discard(const Code& lot, book::State state, Date on);
  void sell_out(const Code& group, Date on);

 private:
  /// What a tray will do, known to chance alone.
  struct Tray {
    Code code;
    Seed seed;
    Date sown;
    int number = 0; ///< of all trays, from 1
    std::vector<int> roots;
    std::vector<int> leaves;
    std::vector<int> dead;
    int looked = 0; ///< days after sowing
    bool closed = false;
    Chance chance;
  };
  using Kept = std::shared_ptr<Tray>;

  Kept tray_of(const Seed& seed, const Code& code, int seeds, Date on);
  void look(const Kept& tray, Date on);
  void awkward(const Kept& tray);
  void pot_first(const Kept& tray, bool shares, Date on);
  void pot_rest(const Kept& tray, Date on);
  void put_into_pots(const Kept& tray, std::optional<book::State> state, std::optional<Code> into,
                     std::map<std::uint64_t, Code>& groups, Date on);
  void new_group(const Code& group, Date on);
  void pot_on(const Code& group, Date on);
  void pot_on_again(const Code& group, Date on);
  void leaves_the_nursery(const Code& group, int number, Date on);
  void sell(const Code& group, int plants, Date on);
  int held(const Code& lot, book::State state, Date on);
  std::string taxon_of(const Code& lot);

  store::Book& book_;
  const Nursery& nursery_;
  Diary& diary_;
  int trays_ = 0;
  int groups_ = 0;
  /// Groups that the next tray of the same seed may be put to: of the first potting, of the second.
  std::map<std::uint64_t, Code> first_group_;
  std::map<std::uint64_t, Code> second_group_;
};

} // namespace coneline::demo
