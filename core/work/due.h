// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is due for the whole nursery: scales to check, passes, cones that may be ripe, pollen to
// collect or to use first, seed to clean, to put by or whose after-ripening may be over, trays not
// looked at for a while, seedlings ready for a pot, pots to move on, plants to move, labels to
// print again, mix to have ready. Each kind has a file of its own in due/.

#include "core/base/code.h"
#include "core/base/date.h"
#include "core/store/reading.h"
#include "core/work/verb_done.h"

namespace coneline::work {

enum class DueKind {
  pollinate,
  harvest,
  clean,
  water,
  sow,
  inspect,
  pot,
  pot_on,
  check_scales,
  collect_pollen,
  test_pollen,
  move_plant,
  print_label,
  have_mix_ready,
  store,
};

struct Due {
  DueKind kind = DueKind::inspect;
  Code code;
  Date from;              ///< due from this day, or from the day it was put off to
  std::optional<Date> to; ///< the end of the range, where it is one
  std::string told;       ///< "second pass on C171K: dry pollen, every second or third day"
  int walk = 0;           ///< the place's turn when walking through; lots without a place come last
  std::string key{};      ///< the same for as long as it is the same piece of work:
                          ///< "inspect T171X 3" is the look after three looks
  std::string missed{};   ///< what is past: "late since 2026-03-16" of what is still to be done,
                          ///< "missed: ..." of what is over; else empty
  int times_put_off = 0;
  bool done_at_once = false; ///< nothing more to be said: the list makes the entry
};

/// Ten years: what lies beyond is not in sight.
inline constexpr int most_days_ahead = 3650;

/// The habits behind the dates: common practice without a source, the grower's to change.
struct DueHabits {
  int days_between_passes = 2;
  int days_between_passes_at_most = 3;
  int days_of_passes = 14; ///< no further pass is asked for after so long
  int days_between_looks = 14;
  int days_until_cleaned = 3;
  int days_until_put_by = 14;       ///< clean or judged seed lies no longer without a word
  int days_between_tight_looks = 7; ///< at the scales of a cone that is not loose yet
  int days_of_tight_looks = 120;
  int days_between_ripe_looks = 7; ///< from the early end of ripeness
  int days_of_shedding = 14;
  int days_before_old = 60; ///< pollen is named so long before the early end of its limit
  int days_of_mix = 30;     ///< mix is reckoned for what is to be potted so far ahead
  int days_until_late = 7;  ///< what has no range says it is late after so long
  int days_ahead = 0;       ///< what comes due within so many days after the day is listed too;
                            ///< at most most_days_ahead
};

/// Everything due on or before the day (and so many days ahead), in walking order, then by date.
/// What was dismissed, or put off to a later day, is not in it.
std::vector<Due> due_on(store::Reading& reading, const book::Registers& registers, Date day,
                        const DueHabits& habits = {});

/// In the order of days instead.
std::vector<Due> by_day(std::vector<Due> due);

/// Something that is no longer due: done, or dismissed.
struct Settled {
  std::string key;
  Date date;
  std::string told;
  bool dismissed = false;
  int times_put_off = 0;
};
/// What was settled in the days before and on the day.
std::vector<Settled> settled_since(store::Reading& reading, const book::Registers& registers,
                                   Date first, Date day);

struct AnswerDue {
  std::string key;           ///< Due::key
  std::optional<Date> until; ///< put off until then; dismissed when not given
  Noted noted;               ///< the note is the reason; a dismissal needs one
};
/// Fails: nothing of this key is due within the days ahead, a day that is not later, no reason.
Result<Done> answer_due(store::Book& book, const AnswerDue& wanted, const DueHabits& habits = {});

/// Makes the entry of what needs nothing more. Fails: not due, or more has to be said.
Result<Done> do_due(store::Book& book, const std::string& key, const Noted& noted,
                    const DueHabits& habits = {});

/// The one piece of work that a code, a code with a kind, or a whole key means.
Result<Due> due_meant(store::Reading& reading, const book::Registers& registers,
                      const std::string& typed, Date day, const DueHabits& habits = {});

/// Asks for a label to be printed again, of a lot or a cone. Fails: no such lot or cone.
Result<Done> want_label(store::Book& book, const Code& code, const Noted& noted);

/// Means to move a parent plant; the list says when. Fails: no such plant or place.
Result<Done> plan_move(store::Book& book, const Code& plant, const Code& place, const Noted& noted);

/// When plants in the ground are moved: shortly after winter, before new leaves (common practice,
/// no source): March and April in the north, September and October in the south. The window that
/// is open on the day or the next one; nothing where the book's hemisphere is not known.
struct Window {
  Date from;
  Date to;
};
std::optional<Window> moving_window(book::Hemisphere hemisphere, Date day);

} // namespace coneline::work

namespace coneline::book {
template <>
struct Words<work::DueKind> {
  static constexpr std::string_view what = "kind of work";
  static constexpr std::array<std::pair<work::DueKind, std::string_view>, 15> all{
      {{work::DueKind::pollinate, "pollinate"},
       {work::DueKind::harvest, "harvest"},
       {work::DueKind::clean, "clean"},
       {work::DueKind::water, "water"},
       {work::DueKind::sow, "sow"},
       {work::DueKind::inspect, "inspect"},
       {work::DueKind::pot, "pot"},
       {work::DueKind::pot_on, "pot on"},
       {work::DueKind::check_scales, "check scales"},
       {work::DueKind::collect_pollen, "collect pollen"},
       {work::DueKind::test_pollen, "test pollen"},
       {work::DueKind::move_plant, "move plant"},
       {work::DueKind::print_label, "print label"},
       {work::DueKind::have_mix_ready, "have mix ready"},
       {work::DueKind::store, "store"}}};
};
} // namespace coneline::book
