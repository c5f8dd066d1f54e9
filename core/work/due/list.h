// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the kinds of due work share: the book as it is read once, and the list they add to. Each
// kind is one function in a file of its own. Private to this room.

#include "core/work/due.h"
#include "core/work/one_reading.h"

#include <climits>

#include <functional>

namespace coneline::work {

struct DueGround {
  DueGround(OneReading& all, const DueHabits& wanted);

  OneReading& once;
  const store::Sweep& sweep;
  const book::Registers& registers;
  Date day;
  DueHabits habits;
  const std::vector<ConeCourse>& cones;
  std::vector<std::reference_wrapper<const LotLine>> lots; ///< only those that hold something

  [[nodiscard]] Date horizon() const { return day.plus_days(habits.days_ahead); }
  /// Up to the day.
  [[nodiscard]] const store::DoneToLot& done(book::Verb verb, book::LotId lot) const {
    return sweep.of(lot).times(verb);
  }
};

class DueList {
 public:
  explicit DueList(const DueGround& ground) : ground_(ground) {}

  struct Item {
    DueKind kind;
    Code code;
    int times = 0; ///< done before: tells this piece of work from the last one
    Date from;
    std::optional<Date> to{};
    std::string told{};
    std::optional<book::PlaceId> place{};
    bool done_at_once = false;
  };
  /// Leaves out what comes after the days ahead.
  void add(const Item& item);
  void add(Due due);
  std::vector<Due> take() { return std::move(due_); }

 private:
  const DueGround& ground_;
  std::vector<Due> due_;
};

void cones_due(const DueGround& ground, DueList& list);
void labels_due(const DueGround& ground, DueList& list);
void mix_due(const DueGround& ground, DueList& list);
void plants_due(const DueGround& ground, DueList& list);
void pollen_due(const DueGround& ground, DueList& list);
void pots_due(const DueGround& ground, DueList& list);
void seed_due(const DueGround& ground, DueList& list);
void seedlings_due(const DueGround& ground, DueList& list); ///< of trays, to be potted
void trays_due(const DueGround& ground, DueList& list);     ///< looks, and seedlings

std::string due_key(DueKind kind, const Code& code, int times);

/// The answers that stand, by key.
struct Answered {
  std::optional<Date> until;
  bool dismissed = false;
  int times_put_off = 0;
};
std::map<std::string, Answered> due_answers(OneReading& once);

} // namespace coneline::work
