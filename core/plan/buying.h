// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What to buy of one good, in which form, and by when to order it, at least cost: lot sizing with
// several offers, whole packs and a delivery charge, after Wagner & Whitin 1958, Management Science
// 5:89-96, as an integer program.
//
//   stock at a month's end = stock before + packs bought - need - thrown away, from 0 to what can
//   be stored; what is older than the good keeps is thrown away cost = price of the packs + a
//   charge for each delivery + keeping of what is left at month's ends
//
// A delivery comes at the beginning of the month it is for, or as soon as its lead time lets it
// within that month. What is used within a month needs no store.

#include "core/base/date.h"
#include "core/book/offer.h"
#include "core/plan/integer_program.h"

#include <string>

namespace coneline::plan {

using book::Form;
using book::Offer;

/// How a good is kept.
struct Store {
  double on_hand = 0;         ///< litres today
  std::optional<double> room; ///< litres that can be kept from month to month
  std::optional<int> keeps;   ///< months from delivery, 1 or more
  double cents_a_litre_and_month = 0;
};

/// An offer as the program needs it: costs by month, nothing where it cannot come in time.
struct Supply {
  double litres = 0;
  double price = 0;
  std::int64_t least = 1;
  std::vector<std::optional<double>> delivery; ///< by month
};

struct Purchase {
  std::size_t choice = 0;
  std::size_t month = 0;
  std::int64_t packs = 0;
};

struct Buying {
  std::vector<Purchase> purchases; ///< in the order of months
  std::vector<double> stock;       ///< litres at each month's end
  double cost = 0;
  double bound = 0;
  double gap = 0;
};

/// Needs by month, each 0 or more. Fails where no way of buying meets them, naming the month and
/// the litres that are missing, and where the solver does.
Result<Buying> buy(const std::vector<double>& need, const Store& store,
                   const std::vector<Supply>& choices, const std::string& good,
                   const std::vector<Date>& months);

/// One line of an order list.
struct OrderLine {
  std::string good;
  std::string supplier;
  Form form = Form::bag;
  std::int64_t packs = 0;
  double litres = 0; ///< loose
  std::int64_t cents = 0;
  std::optional<double> kilograms;
  Date order_by;
  Date for_month; ///< its first day
};

struct OrderList {
  std::vector<OrderLine> lines; ///< by the day to order
  double cents = 0;             ///< all of it, keeping included
  double bound = 0;
  double gap = 0; ///< of all goods together
};

/// What is needed of a good, by month, and how it is kept.
struct GoodNeeded {
  std::string good;
  std::vector<double> litres;
  Store store;
};

/// Refuses an offer without size or price, a good that is needed and not offered, and what `buy`
/// refuses.
Result<OrderList> order_list(const std::vector<GoodNeeded>& goods, const std::vector<Offer>& offers,
                             Date today, const std::vector<Date>& months);

} // namespace coneline::plan
