// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One reading of a book from which several ask. Each part is read when it is first asked for, and
// once. Lives within the reading and sees nothing that is written meanwhile.
//
//   OneReading once(reading, registers, today);
//   const auto due = due_on(once); // both want the cones and the lots
//   const auto sums = on_hand(once);

#include "core/store/sweep.h"
#include "core/work/cone_course.h"
#include "core/work/due.h"
#include "core/work/labels_to_renew.h"
#include "core/work/overview.h"
#include "core/work/pollen.h"

#include <map>
#include <optional>
#include <vector>

namespace coneline::work {

class OneReading {
 public:
  /// What is counted up to a day is counted up to this one; without it nothing may ask for that.
  OneReading(store::Reading& reading, const book::Registers& registers,
             std::optional<Date> day = std::nullopt)
      : reading_(reading), registers_(registers), day_(day) {}

  /// Throws where none was given.
  [[nodiscard]] Date day() const { return day_.value(); }
  [[nodiscard]] store::Reading& reading() { return reading_; }
  [[nodiscard]] const book::Registers& registers() const { return registers_; }

  const std::vector<book::Lot>& lots();
  const store::Sweep& sweep();
  /// Entries of the verb that stand, in the order of their days.
  const std::vector<book::Entry>& standing(book::Verb verb);
  const std::map<book::Origin, OriginName>& origins();
  const std::vector<LotLine>& lot_lines();
  const std::vector<ConeCourse>& cone_courses();
  const std::vector<PollenLine>& pollen_lines();

  /// The last one to ask takes them along.
  std::vector<LotLine> take_lot_lines();
  std::vector<ConeCourse> take_cone_courses();
  std::vector<PollenLine> take_pollen_lines();

 private:
  store::Reading& reading_;
  const book::Registers& registers_;
  std::optional<Date> day_;
  std::optional<std::vector<book::Lot>> lots_;
  std::optional<store::Sweep> sweep_;
  std::map<book::Verb, std::vector<book::Entry>> standing_; ///< asked for before any sweep
  std::optional<std::map<book::Origin, OriginName>> origins_;
  std::optional<std::vector<LotLine>> lot_lines_;
  std::optional<std::vector<ConeCourse>> cone_courses_;
  std::optional<std::vector<PollenLine>> pollen_lines_;
};

/// As the functions of the same names, from what was read already.
std::vector<LotLine> lot_lines(OneReading& once);
std::vector<ConeLine> cone_lines(OneReading& once);
std::vector<ConeCourse> cone_courses(OneReading& once);
std::vector<PollenLine> pollen_lines(OneReading& once);
OnHand on_hand(OneReading& once);
std::vector<Due> due_on(OneReading& once, const DueHabits& habits = {});
std::vector<LabelToRenew> labels_to_renew(OneReading& once,
                                          const std::map<Code, LabelHistory>& histories,
                                          int days = usual_days_unseen);
LineBack line_back(OneReading& once, const book::Lot& lot);
/// With the pollinations that stand, in the order of their days.
std::map<book::Origin, OriginName> origin_names(const book::Registers& registers,
                                                const std::vector<book::Entry>& passes);

} // namespace coneline::work
