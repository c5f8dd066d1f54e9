// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What lists and the line of stations rest on, from one pass over all entries and one over all
// movements. Asked one by one the same sums take a pass each.

#include "core/store/reading.h"

#include <array>
#include <map>
#include <optional>
#include <unordered_map>
#include <vector>

namespace coneline::store {

/// How often something was done to a lot, and when last.
struct DoneToLot {
  int times = 0;
  std::optional<Date> last;
};

/// Verbs whose times are counted for each lot.
constexpr std::array counted_verbs{book::Verb::inspect, book::Verb::clean, book::Verb::store,
                                   book::Verb::want_label, book::Verb::print_label};

constexpr std::size_t states_of_a_lot = book::Words<book::State>::all.size();

/// One lot. Where nothing is said of reversals, entries that stand are meant.
struct LotSums {
  std::array<std::int64_t, states_of_a_lot> held{}; ///< by state, with all entries; below zero for
                                                    ///< beginnings
  std::int64_t came_in = 0;  ///< from its cone or purchase, or from other lots
  std::optional<Date> since; ///< the first day something came in
  std::optional<book::PlaceId> place;
  std::optional<Date>
      entered; ///< the last day of an entry about it or of a movement, up to the day
  std::optional<Date>
      seed_used; ///< the last day seed of it was judged, opened or sown, up to the day
  std::array<DoneToLot, counted_verbs.size()> done{}; ///< up to the day

  [[nodiscard]] std::int64_t of(book::State state) const {
    return held[static_cast<std::size_t>(state)];
  }
  /// One of the counted verbs.
  [[nodiscard]] const DoneToLot& times(book::Verb verb) const;
};

class Sweep {
 public:
  /// Keeps the entries of these verbs. What is counted up to a day is counted up to this one.
  Sweep(Reading& reading, Date day, const std::vector<book::Verb>& kept);

  [[nodiscard]] Date day() const { return day_; }
  /// A lot that nothing was entered about has empty sums.
  [[nodiscard]] const LotSums& of(book::LotId lot) const;
  /// All lots added up, by state.
  [[nodiscard]] std::int64_t total(book::State state) const {
    return total_[static_cast<std::size_t>(state)];
  }
  /// Of a verb that is kept: entries that stand, in the order of their days; and those that were
  /// reversed.
  [[nodiscard]] const std::vector<book::Entry>& standing(book::Verb verb) const;
  [[nodiscard]] const std::vector<book::Entry>& reversed(book::Verb verb) const;

 private:
  struct Passed;
  void pass_entries(Tables& tables, const std::vector<book::Verb>& kept, Passed& passed);
  void pass_movements(Tables& tables, Passed& passed);
  void sort_out(Passed& passed);
  Date day_;
  std::unordered_map<book::LotId, LotSums> lots_;
  std::array<std::int64_t, states_of_a_lot> total_{};
  std::map<book::Verb, std::vector<book::Entry>> standing_;
  std::map<book::Verb, std::vector<book::Entry>> reversed_;
};

} // namespace coneline::store
