// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// An entry is one use of a verb on one day, with the movements it caused and what else was noted.
// An entry is never changed or deleted; a mistake is reversed by an entry that names it.

#include "core/base/count.h"
#include "core/base/date.h"
#include "core/book/account.h"
#include "core/book/diary.h"
#include "core/book/lot.h"
#include "core/book/sourced.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace coneline::book {

enum class Verb {
  pollinate,
  harvest,
  buy_in,
  clean,
  sort,
  open, ///< cut seeds open to see
  store,
  sow,
  inspect,
  pot,
  pot_on,
  move,
  lose,
  discard,
  sell,
  plant_out,
  recount,
  check_scales,
  watch_male_cone,
  collect_pollen,
  test_pollen,
  discard_pollen,
  plan_move, ///< of a parent plant
  correct,   ///< a row of a register; of a plant's with its fields, of another's in the note
  put_off,
  dismiss,
  want_label,
  print_label,
  reverse,
};

/// A count above zero going from one account to another.
struct Movement {
  Account from;
  Account to;
  Count count;

  bool operator==(const Movement&) const = default;
};

enum class PollinationMethod { dry, wet };

/// One share of the pollen used in a pass; no lot where the father is not known.
struct PollenUsed {
  std::optional<PollenLotId> lot;
  std::optional<double> millilitres;
};

struct Pollination {
  PollinationMethod method = PollinationMethod::dry;
  std::vector<PollenUsed> pollen; ///< at least one
};
/// Small seed counted by weight: the count of the entry follows from these.
struct Weighing {
  std::vector<double> hundreds; ///< grams of 100 seeds each, above 0
  double grams = 0;             ///< of all the seed, above 0
};
struct Cleaning {
  int soak_days = 0; ///< 0 or more
};
struct Sorting {
  SeedTest test = SeedTest::floating; ///< cutting for seed that was opened
};
/// Seed put by, to ripen on or to wait.
struct Keeping {
  std::string store; ///< "refrigerator", "box of dry perlite"
  std::optional<double> celsius;
  std::optional<Date> until_from; ///< when it may be ready
  std::optional<Date> until_to;
};
struct Sale {
  std::string buyer;
  std::optional<std::int64_t> cents; ///< for all of it, whole cents, 0 or more
};

using Detail = std::variant<std::monostate, Pollination, Weighing, Cleaning, Sorting, Keeping, Sale,
                            ConeLook, PlantNote, PollenNote, Correction, DueAnswer>;

struct Entry {
  EntryId id;
  Verb verb = Verb::inspect;
  Date date;
  std::optional<LotId> lot;     ///< the lot it is about, or that it made
  std::optional<ConeId> cone;   ///< for a pollination
  std::optional<PlaceId> place; ///< where the lot stands from this day on
  std::string who;
  std::string note;
  std::optional<EntryId> reverses;
  std::string entered; ///< when it was written, ISO 8601 with UTC; given by the store
  Detail detail;
  std::vector<Movement> movements;
};

template <>
struct Words<Verb> {
  static constexpr std::string_view what = "verb";
  static constexpr std::array<std::pair<Verb, std::string_view>, 29> all{
      {{Verb::pollinate, "pollinate"},
       {Verb::harvest, "harvest"},
       {Verb::buy_in, "buy in"},
       {Verb::clean, "clean"},
       {Verb::sort, "sort"},
       {Verb::open, "open"},
       {Verb::store, "store"},
       {Verb::sow, "sow"},
       {Verb::inspect, "inspect"},
       {Verb::pot, "pot"},
       {Verb::pot_on, "pot on"},
       {Verb::move, "move"},
       {Verb::lose, "lose"},
       {Verb::discard, "discard"},
       {Verb::sell, "sell"},
       {Verb::plant_out, "plant out"},
       {Verb::recount, "recount"},
       {Verb::check_scales, "check scales"},
       {Verb::watch_male_cone, "watch male cone"},
       {Verb::collect_pollen, "collect pollen"},
       {Verb::test_pollen, "test pollen"},
       {Verb::discard_pollen, "discard pollen"},
       {Verb::plan_move, "plan move"},
       {Verb::correct, "correct"},
       {Verb::put_off, "put off"},
       {Verb::dismiss, "dismiss"},
       {Verb::want_label, "want label"},
       {Verb::print_label, "print label"},
       {Verb::reverse, "reverse"}}};
};
template <>
struct Words<PollinationMethod> {
  static constexpr std::string_view what = "method";
  static constexpr std::array<std::pair<PollinationMethod, std::string_view>, 2> all{
      {{PollinationMethod::dry, "dry"}, {PollinationMethod::wet, "wet"}}};
};

} // namespace coneline::book
