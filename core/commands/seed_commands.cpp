// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs from the cone to the tray: pollinate, harvest, buy-in, clean, sort, open, store, sow.
#include "core/base/number.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/verb_command.h"
#include "core/work/clean.h"
#include "core/work/harvest.h"
#include "core/work/keep.h"
#include "core/work/pollinate.h"
#include "core/work/recheck.h"
#include "core/work/sort.h"
#include "core/work/sow.h"

namespace coneline::commands {

namespace {

struct PollinateOptions {
  std::string target;
  std::string method = "dry";
  std::vector<std::string> pollen;
  bool unknown_father = false;

  void define(Command& command) {
    command.add_option("target", target, "The cone, or the female plant whose new cone it is")
        .required();
    command.add_option("--method", method, "dry or wet").told_default();
    command.add_option(
        "--pollen", pollen,
        "A pollen lot, with its millilitres: L171X or L171X=0.5; repeat for several");
    command.add_flag("--unknown-father", unknown_father,
                     "Some of the pollen came from nobody knows where");
  }

  static Result<work::PollenGiven> pollen_given(store::Book& book, const std::string& text) {
    const auto equals = text.find('=');
    auto lot = code_given(book, text.substr(0, equals));
    if (!lot)
      return refuse(lot.error());
    if (equals == std::string::npos)
      return work::PollenGiven{*lot, std::nullopt};
    auto amount = parse_real(text.substr(equals + 1));
    if (!amount)
      return refuse(amount.error());
    return work::PollenGiven{*lot, *amount};
  }

  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, target);
    auto way = book::read_word<book::PollinationMethod>(method);
    if (const auto wrong = first_fault(code, way))
      return refuse(*wrong);
    work::Pollinate wanted{*code, *way, {}, std::move(noted)};
    for (const auto& text : pollen) {
      auto given = pollen_given(book, text);
      if (!given)
        return refuse(given.error());
      wanted.pollen.push_back(*given);
    }
    if (unknown_father)
      wanted.pollen.push_back({});
    return work::pollinate(book, wanted);
  }
};

struct HarvestOptions {
  std::string cone;
  std::optional<std::int64_t> seeds;
  std::vector<double> hundreds;
  std::optional<double> grams;

  void define(Command& command) {
    command.add_option("cone", cone, "The ripe cone").required();
    const auto counted = command.add_option(
        "--seeds", seeds, "Seeds counted; 0 of a cone that gave none, --note says why");
    const auto weighed =
        command
            .add_option("--hundreds", hundreds,
                        "Grams of 100 seeds each, eight weighings, as 15.0,15.4,…: count by weight")
            .separated_by(',')
            .excludes(counted);
    command.add_option("--grams", grams, "Grams of all the seed").needs(weighed);
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, cone);
    auto count = Count::of(seeds.value_or(0));
    if (const auto wrong = first_fault(code, count))
      return refuse(*wrong);
    if (!seeds && hundreds.empty())
      return refuse(usage_fault("the count of the seeds is missing",
                                "Give --seeds, or --hundreds and --grams; of a cone that gave none "
                                "--seeds 0, and why in --note."));
    work::Harvest wanted{*code, *count, std::move(noted), std::nullopt};
    if (!hundreds.empty())
      wanted.weighed = book::Weighing{hundreds, grams.value_or(0)};
    return work::harvest(book, wanted);
  }
};

struct BuyInOptions {
  std::string taxon;
  std::string from;
  std::int64_t count = 0;
  std::optional<std::string> pot;
  std::optional<std::string> place;

  void define(Command& command) {
    command.add_option("taxon", taxon, "The taxon's name").required();
    command.add_option("--from", from, "The supplier").required();
    command.add_option("--count", count, "Seeds, or plants when --pot is given").required();
    command.add_option("--pot", pot, "The pot the plants stand in");
    command.add_option("--place", place, "Where they stand");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto number = Count::of(count);
    auto at = code_given(book, place);
    if (const auto wrong = first_fault(number, at))
      return refuse(*wrong);
    return work::buy_in(book, {taxon, from, *number, pot, *at, std::move(noted)});
  }
};

struct CleanOptions {
  std::string batch;
  int soak_days = 0;
  std::int64_t lost = 0;

  void define(Command& command) {
    command.add_option("batch", batch, "The batch").required();
    command.add_option("--soak-days", soak_days, "Days in water, changed daily");
    command.add_option("--lost", lost, "Seeds broken or lost on the way");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    auto count = Count::of(lost);
    if (const auto wrong = first_fault(code, count))
      return refuse(*wrong);
    return work::clean(book, {*code, soak_days, *count, std::move(noted)});
  }
};

struct SortOptions {
  std::string batch;
  std::string from = "unsorted";
  std::string test = "float";
  std::int64_t filled = 0;
  std::int64_t empty = 0;

  void define(Command& command) {
    command.add_option("batch", batch, "The batch").required();
    command.add_option("--test", test, "eye, float, shake or x-ray").told_default();
    command.add_option("--filled", filled, "Seeds judged filled: the sinkers of a float test");
    command.add_option("--empty", empty, "Seeds judged empty: the floaters");
    command
        .add_option("--from", from,
                    "unsorted, or 'judged filled' or 'judged empty' when tested again")
        .told_default();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    auto state = state_given(code, from, "--from");
    auto by = book::read_word<book::SeedTest>(test);
    auto good = Count::of(filled);
    auto bad = Count::of(empty);
    if (const auto wrong = first_fault(code, state, by, good, bad))
      return refuse(*wrong);
    return work::sort(
        book, {*code, state->value_or(book::State::unsorted), *by, *good, *bad, std::move(noted)});
  }
};

struct OpenOptions {
  std::string batch;
  std::string from = "judged filled";
  std::int64_t opened = 0;
  std::int64_t filled = 0;

  void define(Command& command) {
    command.add_option("batch", batch, "The batch").required();
    command.add_option("--from", from, "unsorted, 'judged filled' or 'judged empty'")
        .told_default();
    command.add_option("--opened", opened, "Seeds cut open; they are gone").required();
    command.add_option("--filled", filled, "How many of them were filled").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    auto state = state_given(code, from, "--from");
    auto cut = Count::of(opened);
    auto good = Count::of(filled);
    if (const auto wrong = first_fault(code, state, cut, good))
      return refuse(*wrong);
    return work::open(
        book, {*code, state->value_or(book::State::judged_filled), *cut, *good, std::move(noted)});
  }
};

struct StoreOptions {
  std::string batch;
  std::string in;
  std::optional<double> celsius;
  std::string from;
  std::string to;
  std::optional<std::string> place;

  void define(Command& command) {
    command.add_option("batch", batch, "The batch").required();
    command.add_option("--in", in, "How it is kept: 'refrigerator', 'box of dry perlite'")
        .required();
    command.add_option("--celsius", celsius, "The temperature, °C");
    command.add_option("--ready-from", from,
                       "When it may be ready; from the taxon's after-ripening when left out");
    command.add_option("--ready-to", to, "The end of that range");
    command.add_option("--place", place, "Where it is kept");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    auto ready_from = some_date(from, "--ready-from");
    auto ready_to = some_date(to, "--ready-to");
    auto at = code_given(book, place);
    if (const auto wrong = first_fault(code, ready_from, ready_to, at))
      return refuse(*wrong);
    return work::keep(book, {*code, in, celsius, *ready_from, *ready_to, *at, std::move(noted)});
  }
};

struct WaterOptions {
  std::string batch;

  void define(Command& command) {
    command.add_option("batch", batch, "The batch that soaks").required();
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    if (!code)
      return refuse(code.error());
    return work::change_water(book, {*code, std::move(noted)});
  }
};

struct RecheckOptions {
  std::string batch;
  std::int64_t dead = 0;
  std::string state;
  std::string next;

  void define(Command& command) {
    command.add_option("batch", batch, "The stored batch").required();
    command.add_option("--dead", dead, "Seeds found rotten, dried out or eaten");
    command.add_option("--state", state, "Which died, where the batch holds several");
    command.add_option("--next", next, "The day of the next look");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    auto count = Count::of(dead);
    auto which = state_given(code, state, "--state");
    auto day = some_date(next, "--next");
    if (const auto wrong = first_fault(code, count, which, day))
      return refuse(*wrong);
    return work::recheck(book, {*code, *count, *which, *day, std::move(noted)});
  }
};

struct SowOptions {
  std::string batch;
  std::string from;
  std::int64_t seeds = 0;
  int trays = 1;
  std::string pot;
  std::optional<std::string> mix;
  std::optional<std::string> place;

  void define(Command& command) {
    command.add_option("batch", batch, "The batch").required();
    command.add_option("--seeds", seeds, "Seeds, all trays together").required();
    command.add_option("--trays", trays, "Into how many trays they are shared out").told_default();
    command.add_option("--tray", pot, "The kind of tray or pot, by name").required();
    command.add_option(
        "--from", from,
        "unsorted, 'judged filled' or 'judged empty'; the judged filled when left out");
    command.add_option("--mix", mix, "The mix, by name");
    command.add_option("--place", place, "Where they stand");
  }
  Result<work::Done> run(store::Book& book, work::Noted noted) const {
    auto code = code_given(book, batch);
    auto state = state_given(code, from, "--from");
    auto count = Count::of(seeds);
    auto at = code_given(book, place);
    if (const auto wrong = first_fault(code, state, count, at))
      return refuse(*wrong);
    return work::sow(book, {*code, *state, *count, trays, pot, mix, *at, std::move(noted)});
  }
};

} // namespace

void add_seed_verbs(CommandLine& line) {
  add_verb<PollinateOptions>(line, "pollinate", "One pass over a receptive cone");
  add_verb<HarvestOptions>(line, "harvest", "Count the seeds of a ripe cone into a batch");
  add_verb<BuyInOptions>(line, "buy-in", "Seed or plants that come from elsewhere");
  add_verb<CleanOptions>(line, "clean", "Clean a batch and count what was lost");
  add_verb<SortOptions>(line, "sort", "Tell filled seed from empty by a test that leaves it whole");
  add_verb<OpenOptions>(line, "open", "Cut seeds open to see whether they are filled");
  add_verb<StoreOptions>(line, "store", "Put seed by, to ripen on or to wait");
  add_verb<WaterOptions>(line, "water", "Change the water of soaking seed");
  add_verb<RecheckOptions>(line, "recheck", "Look at stored seed again and take the dead out");
  add_verb<SowOptions>(line, "sow", "Sow seed of a batch into trays");
}

} // namespace coneline::commands
