// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/buying.h"

#include "core/base/phrase.h"
#include "core/plan/fit.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace coneline::plan {

namespace {

constexpr double most_seconds = 3;
/// A list that costs at most a thousandth more than the best is not looked at further: whole packs
/// make many lists nearly alike, and proving the last cent takes minutes. The gap is told.
constexpr double near_enough = 1e-3;

constexpr double hair = 1e-6; // litres

/// Cents a litre and month that keeping is taken to cost where it is free, so that of lists that
/// cost the same the later one is taken. The bound is lowered by all that this can come to.
constexpr double later_is_better = 1e-5;

using Term = IntegerProgram::Term;

/// The program of one good: what it costs is made least, or what is missing.
class Lots {
 public:
  enum class Asks { least_cost, least_lacking };

  Lots(const std::vector<double>& need, const Store& store, const std::vector<Supply>& choices,
       Asks asks)
      : need_(need), store_(store), choices_(choices), asks_(asks) {
    for (std::size_t month = 0; month < need.size(); ++month)
      add_month(month);
    if (asks == Asks::least_cost)
      cover();
    if (store.keeps)
      for (std::size_t month = 0; month < need.size(); ++month)
        limit_age(month, static_cast<std::size_t>(std::max(1, *store.keeps)));
  }

  [[nodiscard]] Result<std::optional<Solved>> solve() const {
    return program_.least_cost(most_seconds, {.share = near_enough});
  }

  [[nodiscard]] Buying read(const Solved& solved) const {
    Buying buying{{}, {}, solved.cost, solved.bound, 0};
    for (std::size_t month = 0; month < need_.size(); ++month) {
      for (const auto& [choice, column] : bought_[month])
        if (const auto packs = std::llround(solved.values[column]); packs > 0)
          buying.purchases.push_back({choice, month, packs});
      buying.stock.push_back(solved.values[stock_[month]]);
    }
    if (keeping_is_free()) {
      double most = 0; // no list need ever have more in stock
      for (const auto& choice : choices_)
        most = std::max(most, static_cast<double>(choice.least) * choice.litres);
      most += std::accumulate(need_.begin(), need_.end(), store_.on_hand);
      buying.cost -=
          later_is_better * std::accumulate(buying.stock.begin(), buying.stock.end(), 0.0);
      buying.bound -= later_is_better * most * static_cast<double>(need_.size());
      buying.bound = std::clamp(buying.bound, 0.0, buying.cost);
    }
    buying.gap = buying.cost > buying.bound + hair ? (buying.cost - buying.bound) / buying.cost : 0;
    return buying;
  }
  /// Litres missing by month.
  [[nodiscard]] std::vector<double> lacking(const Solved& solved) const {
    std::vector<double> litres;
    for (const auto column : lacks_)
      litres.push_back(solved.values[column]);
    return litres;
  }

 private:
  [[nodiscard]] bool keeping_is_free() const { return store_.cents_a_litre_and_month <= 0; }
  void add_month(std::size_t month) {
    const bool costs = asks_ == Asks::least_cost;
    const double room = store_.room.value_or(IntegerProgram::endless);
    const double keeping = keeping_is_free() ? later_is_better : store_.cents_a_litre_and_month;
    // What is lacking is lacking in its own month rather than fetched earlier to be kept.
    stock_.push_back(program_.column(costs ? keeping : later_is_better, 0, room));
    const auto wasted = program_.column(0, 0, IntegerProgram::endless);
    std::vector<Term> balance{{stock_[month], -1}, {wasted, -1}};
    if (month > 0)
      balance.push_back({stock_[month - 1], 1});
    bought_.emplace_back();
    for (std::size_t at = 0; at < choices_.size(); ++at)
      if (choices_[at].delivery[month])
        balance.push_back({add_purchase(at, month), choices_[at].litres});
    if (!costs) {
      lacks_.push_back(program_.column(1, 0, IntegerProgram::endless));
      balance.push_back({lacks_.back(), 1});
    }
    const double needed = need_[month] - (month == 0 ? store_.on_hand : 0);
    program_.row(needed, needed, balance);
  }

  /// What was bought by a month covers what was needed by then, where of a pack no more counts than
  /// that need. It follows from whole packs, and tells the solver that part of a load is none.
  void cover() {
    double by_now = -store_.on_hand;
    for (std::size_t month = 0; month < need_.size(); ++month) {
      by_now += need_[month];
      if (by_now <= hair)
        continue;
      std::vector<Term> terms;
      for (std::size_t since = 0; since <= month; ++since)
        for (const auto& [choice, column] : bought_[since])
          terms.push_back({column, std::min(choices_[choice].litres, by_now) / by_now});
      program_.row(1 - hair, IntegerProgram::endless, terms);
    }
  }

  std::size_t add_purchase(std::size_t at, std::size_t month) {
    const auto& choice = choices_[at];
    const double ahead =
        std::accumulate(need_.begin() + static_cast<std::ptrdiff_t>(month), need_.end(), 0.0);
    const double least = static_cast<double>(choice.least);
    // More than all that is still needed is never worth its price.
    const double most = std::max(least, std::ceil(ahead / choice.litres - hair));
    const bool costs = asks_ == Asks::least_cost;
    const auto packs =
        program_.column(costs ? choice.price : 0, 0, most, IntegerProgram::Takes::whole);
    bought_[month].emplace_back(at, packs);
    if (*choice.delivery[month] <= 0 && choice.least <= 1)
      return packs; // an order is nothing of its own
    const auto ordered =
        program_.column(costs ? *choice.delivery[month] : 0, 0, 1, IntegerProgram::Takes::whole);
    program_.row(-IntegerProgram::endless, 0, {{packs, 1}, {ordered, -most}});
    program_.row(0, IntegerProgram::endless, {{packs, 1}, {ordered, -least}});
    return packs;
  }

  /// The oldest is used first, so that what is left came in the last months.
  void limit_age(std::size_t month, std::size_t keeps) {
    std::vector<Term> terms{{stock_[month], 1}};
    // What comes at the beginning of a month and keeps one is used up by its end.
    const auto first = month + 2 > keeps ? month + 2 - keeps : 0;
    for (auto since = first; since <= month; ++since)
      for (const auto& [choice, column] : bought_[since])
        terms.push_back({column, -choices_[choice].litres});
    program_.row(-IntegerProgram::endless, month + 1 < keeps ? store_.on_hand : 0, terms);
  }

  const std::vector<double>& need_;
  const Store& store_;
  const std::vector<Supply>& choices_;
  Asks asks_;
  IntegerProgram program_;
  std::vector<std::size_t> stock_;
  std::vector<std::size_t> lacks_;
  std::vector<std::vector<std::pair<std::size_t, std::size_t>>> bought_; ///< choice, column
};

/// Litres that no way of buying brings in time, by month.
Result<std::vector<double>> lacking(const std::vector<double>& need, const Store& store,
                                    const std::vector<Supply>& choices, const std::string& good) {
  const Lots lots(need, store, choices, Lots::Asks::least_lacking);
  const auto solved = lots.solve();
  if (!solved)
    return refuse(solved.error());
  if (!*solved)
    return refuse(program_fault(phrase("'{}' cannot even be lacking", good)));
  return lots.lacking(**solved);
}

/// Why nothing does: what is missing, when.
Result<Buying> infeasible(const std::vector<double>& need, const Store& store,
                          const std::vector<Supply>& choices, const std::string& good,
                          const std::vector<Date>& months) {
  const auto missing = lacking(need, store, choices, good);
  if (!missing)
    return refuse(missing.error());
  std::string text;
  for (std::size_t month = 0; const auto litres : *missing) {
    if (litres > hair)
      text += phrase("{}{} in {}", text.empty() ? "" : ", ", measured(Quantity::litres, litres, 1),
                     month_name(months[month]));
    ++month;
  }
  return refuse(fault(phrase("'{}' cannot be had in time: {} are missing", good, text),
                      "Find an offer with a shorter lead time or more room to store it, say what "
                      "is on hand, or pot later."));
}

/// Litres that are needed besides those on hand, of which age and want of room may take some.
Result<double> beyond_what_is_on_hand(const GoodNeeded& good) {
  const auto sum = [](const std::vector<double>& litres) {
    return std::accumulate(litres.begin(), litres.end(), 0.0);
  };
  if (!good.store.keeps && !good.store.room)
    return std::max(0.0, sum(good.litres) - good.store.on_hand);
  return lacking(good.litres, good.store, {}, good.good).map(sum);
}

std::vector<Supply> choices_of(const std::vector<const Offer*>& offers, Date today,
                               const std::vector<Date>& months) {
  std::vector<Supply> choices;
  for (const auto* offer : offers) {
    Supply choice{offer->loose_litres(), static_cast<double>(offer->cents), offer->least, {}};
    for (const auto month : months) {
      const bool in_time = today.plus_days(offer->lead_days) < month.plus_months(1);
      choice.delivery.push_back(in_time ? std::optional(static_cast<double>(offer->delivery_cents))
                                        : std::nullopt);
    }
    choices.push_back(std::move(choice));
  }
  return choices;
}

Result<void> can_be_offered(const Offer& offer) {
  const bool sized =
      offer.litres > 0 && offer.expansion >= 1 && std::isfinite(offer.loose_litres());
  if (!sized)
    return refuse(fault(phrase("'{}' of {} has {:g} litres, expanding {:g} times", offer.good,
                               offer.supplier, offer.litres, offer.expansion),
                        "Give the litres of a pack, above 0, and an expansion of 1 or more."));
  if (offer.cents < 0 || offer.delivery_cents < 0 || offer.least < 1 || offer.lead_days < 0 ||
      offer.lead_days > 3650)
    return refuse(fault(phrase("the offer of '{}' by {} has a price, least order or lead time "
                               "that cannot be",
                               offer.good, offer.supplier),
                        "Prices are 0 or more, a least order is 1 or more, a lead time 0 to 3650 "
                        "days."));
  return {};
}

} // namespace

Result<Buying> buy(const std::vector<double>& need, const Store& store,
                   const std::vector<Supply>& choices, const std::string& good,
                   const std::vector<Date>& months) {
  const Lots lots(need, store, choices, Lots::Asks::least_cost);
  const auto solved = lots.solve();
  if (!solved)
    return refuse(solved.error());
  if (!*solved)
    return infeasible(need, store, choices, good, months);
  return lots.read(**solved);
}

Result<OrderList> order_list(const std::vector<GoodNeeded>& goods, const std::vector<Offer>& offers,
                             Date today, const std::vector<Date>& months) {
  for (const auto& offer : offers)
    if (auto can = can_be_offered(offer); !can)
      return refuse(can.error());
  OrderList list;
  for (const auto& good : goods) {
    std::vector<const Offer*> of_it;
    for (const auto& offer : offers)
      if (offer.good == good.good)
        of_it.push_back(&offer);
    const auto more = beyond_what_is_on_hand(good);
    if (!more)
      return refuse(more.error());
    if (*more <= hair)
      continue;
    if (of_it.empty())
      return refuse(fault(phrase("nobody offers '{}', of which {} are needed", good.good,
                                 measured(Quantity::litres, *more, 1)),
                          "Enter an offer for it."));
    const auto bought =
        buy(good.litres, good.store, choices_of(of_it, today, months), good.good, months);
    if (!bought)
      return refuse(bought.error());
    for (const auto& [choice, month, packs] : bought->purchases) {
      const auto& offer = *of_it[choice];
      const auto count = static_cast<double>(packs);
      list.lines.push_back(
          {good.good, offer.supplier, offer.form, packs, count * offer.loose_litres(),
           packs * offer.cents + offer.delivery_cents,
           offer.kilograms ? std::optional(count * *offer.kilograms) : std::nullopt,
           std::max(today, months[month].plus_days(-offer.lead_days)), months[month]});
    }
    list.cents += bought->cost;
    list.bound += bought->bound;
  }
  // Prices are whole cents; the solver's sums leave a trace beside them.
  for (auto* cents : {&list.cents, &list.bound})
    if (const double whole = std::round(*cents); std::abs(*cents - whole) <= hair)
      *cents = whole;
  std::ranges::stable_sort(list.lines, {}, &OrderLine::order_by);
  list.gap = list.cents > list.bound + hair ? (list.cents - list.bound) / list.cents : 0;
  return list;
}

} // namespace coneline::plan
