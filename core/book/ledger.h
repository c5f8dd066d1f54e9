// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Double entry over living things. The ledger holds, for each account it was told of, its balance
// over time, and has one gate, `admit`. What passes it is true:
//
//   - every count is above zero and goes between two different accounts, in a step the trade knows;
//   - both accounts belong to lots of one origin: one cone, or one purchase;
//   - no account on hand and no end is below zero on any day, also not on later days when the entry
//   is back-dated.
//     Only beginnings and `unexplained` may be.
//
// A harvest of 500 with 12 lost in cleaning:
//
//   ledger.know(b, cone);
//   ledger.admit(day1, {{{b, State::cone}, {b, State::unsorted}, 500}});
//   ledger.admit(day2, {{{b, State::unsorted}, {b, State::lost_in_cleaning}, 12}});
//   ledger.balance({b, State::unsorted}) == 488

#include "core/base/date.h"
#include "core/book/entry.h"

#include <functional>
#include <span>
#include <unordered_map>
#include <vector>

namespace coneline::book {

/// A change of one account's balance on a day.
struct Change {
  Date date;
  std::int64_t by = 0;
};

/// The balance of one account over time.
class Timeline {
 public:
  Timeline() = default;
  /// From changes in any order.
  explicit Timeline(std::vector<Change> changes);

  void add(Date date, std::int64_t by);
  [[nodiscard]] std::int64_t now() const { return steps_.empty() ? 0 : steps_.back().by; }
  [[nodiscard]] std::int64_t on(Date date) const; ///< at the end of that day

  /// The lowest balance on or after the day; of equal ones the first.
  [[nodiscard]] Change lowest_from(Date date) const;

 private:
  std::vector<Change> steps_; ///< by date, each with the balance after it
};

class Ledger {
 public:
  /// How an account not yet known is brought in: everything recorded of it so far.
  using Recall = std::function<Timeline(Account)>;
  /// What a lot is called in a message.
  using Name = std::function<std::string(LotId)>;

  Ledger(Recall recall, Name name);
  /// A ledger that starts empty.
  Ledger();

  /// Tells of a lot: its kind and where it begins. Of a new lot there is none to recall.
  enum class History { none, recall };
  void know(LotId lot, Kind kind, Origin origin, History history);
  [[nodiscard]] bool knows(LotId lot) const { return lots_.contains(lot); }

  /// Takes all movements in, or none. The fault says which account, by how much, and on which day;
  /// of several the one of the first lot.
  Result<void> admit(Date date, std::span<const Movement> movements);
  /// The same for the mirror of movements admitted before: they go back the way they came.
  Result<void> admit_reversal(Date date, std::span<const Movement> mirrored);

  [[nodiscard]] std::int64_t balance(Account account);

 private:
  struct Known {
    Kind kind;
    Origin origin;
    History history;
  };

  [[nodiscard]] Result<void> sound(const Movement& movement) const;
  [[nodiscard]] Result<void> in_the_trade(const Movement& movement) const;
  Result<void> take(Date date, std::span<const Movement> movements);
  [[nodiscard]] Fault below_zero(Account account, Date date, Change lowest,
                                 std::int64_t asked) const;
  Timeline& timeline(Account account);

  Recall recall_;
  Name name_;
  std::unordered_map<LotId, Known> lots_;
  std::unordered_map<Account, Timeline> timelines_;
};

} // namespace coneline::book
