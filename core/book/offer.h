// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is bought for the mixes: what suppliers offer, and how much of each good is kept.

#include "core/base/date.h"
#include "core/base/fault.h"
#include "core/book/id.h"
#include "core/book/words.h"

#include <optional>
#include <string>
#include <vector>

namespace coneline::book {

using OfferId = Id<struct OfferTag>;
using GoodId = Id<struct GoodTag>;

enum class Form { bag, bulk, bale };

template <>
struct Words<Form> {
  static constexpr std::string_view what = "form of goods";
  static constexpr std::array<std::pair<Form, std::string_view>, 3> all{
      {{Form::bag, "bag"}, {Form::bulk, "bulk"}, {Form::bale, "bale"}}};
};

/// As a supplier offers it. One pack is a bag, a load or a bale. One of a good, supplier, form and
/// size in the book.
struct Offer {
  OfferId id;
  std::string good; ///< the part of a mix
  std::string supplier;
  Form form = Form::bag;
  double litres = 0;    ///< of a pack as it is sold
  double expansion = 1; ///< loose litres from a litre of bale; 1 unless compressed
  std::int64_t cents = 0;
  std::int64_t delivery_cents = 0; ///< for each order, however large
  int lead_days = 0;
  std::int64_t least = 1;          ///< packs in an order
  std::optional<double> kilograms; ///< of one pack

  [[nodiscard]] double loose_litres() const { return litres * expansion; }
};

/// Fails on an offer without good, supplier, size, or with a price, charge or time below 0.
Result<void> is_sound(const Offer& offer);

/// A part of the mixes as it lies in the shed. One of a name in the book.
struct Good {
  GoodId id;
  std::string name;
  double on_hand = 0; ///< litres
  std::optional<Date> counted;
  std::optional<double> room; ///< litres that can be kept from month to month
  std::optional<int> keeps;   ///< months from delivery, 1 or more
  double cents_a_litre_and_month = 0;
};

/// Fails on a good without a name or with an amount that is none.
Result<void> is_sound(const Good& good);

} // namespace coneline::book
