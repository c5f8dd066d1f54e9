// SPDX-License-Identifier: GPL-3.0-or-later
// What the season plan reckons with: offers (one, or a file of them), goods in the shed, pins.
#include "core/base/money.h"
#include "core/base/number.h"
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/first_fault.h"
#include "core/commands/table.h"
#include "core/report/offers_csv.h"
#include "core/report/ordering.h"
#include "core/work/find_code.h"

#include <fmt/format.h>

#include <memory>

namespace coneline::commands {

namespace {

Answer said(const std::string& what, const std::string& as) {
  return {{{"entered", what}, {"as", as}}, fmt::format("Entered: {}\n", as)};
}

// --- offers ---

struct OfferOptions {
  BookOption book;
  book::Offer offer;
  std::string form = "bag";
  double price = 0;
  double delivery = 0;
};

Result<Answer> enter_offer(const OfferOptions& options) {
  auto offer = options.offer;
  const auto form = book::read_word<book::Form>(options.form);
  const auto price = cents_of(options.price);
  const auto delivery = cents_of(options.delivery);
  if (const auto wrong = first_fault(form, price, delivery))
    return refuse(*wrong);
  offer.form = *form;
  offer.cents = *price;
  offer.delivery_cents = *delivery;
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) { return writing.put(offer); });
  if (!put)
    return refuse(put.error());
  return said("offer", fmt::format("{} of {}, {} of {:g} L", offer.good, offer.supplier,
                                   options.form, offer.litres));
}

void add_enter_offer(CommandLine& line) {
  auto options = std::make_shared<OfferOptions>();
  auto& command = line.add("enter", "offer", "What a supplier offers of a part of a mix",
                           [options] { return enter_offer(*options); });
  options->book.add_to(command);
  auto& offer = options->offer;
  command.add_option("good", offer.good, "The part of a mix, as the mix names it").required();
  command.add_option("supplier", offer.supplier, "Who offers it").required();
  command.add_option("--form", options->form, "bag, bulk or bale").told_default();
  command.add_option("--litres", offer.litres, "Of one pack, as it is sold").required();
  command.add_option("--price", options->price, "Of one pack, such as 18.50").required();
  command.add_option("--expansion", offer.expansion, "Loose litres from one of a pressed bale");
  command.add_option("--delivery", options->delivery, "Charge of an order, however large");
  command.add_option("--lead-days", offer.lead_days, "Days from the order to the delivery");
  command.add_option("--least", offer.least, "Packs in an order at least");
  command.add_option("--kilograms", offer.kilograms, "Weight of a pack");
}

struct OffersOptions {
  BookOption book;
  std::string file;
};

Result<Answer> take_in_offers(const OffersOptions& options) {
  const auto offers = report::read_offers(options.file);
  if (!offers)
    return refuse(offers.error());
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) -> Result<void> {
    for (const auto& offer : *offers)
      if (auto one = writing.put(offer); !one)
        return refuse(one.error());
    return {};
  });
  if (!put)
    return refuse(put.error());
  return Answer{{{"taken_in", offers->size()}},
                fmt::format("{} offers taken in.\n", offers->size())};
}

Result<Answer> show_offers(const OffersOptions& options) {
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  const auto records = book->read([](store::Reading& reading) { return reading.plan_records(); });
  if (!records)
    return refuse(records.error());
  Answer answer;
  answer.json = {{"offers", Json::array()}, {"goods", Json::array()}};
  Table offers(
      {"good", "supplier", "form", "litres", "loose", "price", "delivery", "days", "least"});
  for (const auto& offer : records->offers) {
    answer.json["offers"].push_back({{"good", offer.good},
                                     {"supplier", offer.supplier},
                                     {"form", book::word(offer.form)},
                                     {"litres", offer.litres},
                                     {"expansion", offer.expansion},
                                     {"cents", offer.cents},
                                     {"delivery_cents", offer.delivery_cents},
                                     {"lead_days", offer.lead_days},
                                     {"least", offer.least}});
    offers.row({offer.good, offer.supplier, std::string(book::word(offer.form)),
                shown(offer.litres, 0), shown(offer.loose_litres(), 0),
                money_said(static_cast<double>(offer.cents)),
                money_said(static_cast<double>(offer.delivery_cents)),
                std::to_string(offer.lead_days), std::to_string(offer.least)});
  }
  Table goods({"good", "on hand", "counted", "room", "keeps, months"});
  for (const auto& good : records->goods) {
    answer.json["goods"].push_back(
        {{"name", good.name},
         {"on_hand", good.on_hand},
         {"counted", good.counted ? Json(good.counted->iso()) : Json(nullptr)},
         {"room", good.room ? Json(*good.room) : Json(nullptr)},
         {"keeps", good.keeps ? Json(*good.keeps) : Json(nullptr)}});
    goods.row({good.name, shown(good.on_hand, 0), good.counted ? good.counted->iso() : "–",
               shown(good.room, 0), good.keeps ? std::to_string(*good.keeps) : "–"});
  }
  answer.table = records->offers.empty() ? "No offers are entered.\n" : offers.text();
  if (!records->goods.empty())
    answer.table += "\n" + goods.text();
  return answer;
}

struct StrikeOptions {
  BookOption book;
  std::string good;
  std::string supplier;
};

Result<Answer> strike_offers(const StrikeOptions& options) {
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto struck = book->write([&](store::Writing& writing) -> Result<int> {
    int gone = 0;
    for (const auto& offer : writing.plan_records().offers)
      if (offer.good == options.good && offer.supplier == options.supplier) {
        writing.take_out(offer.id);
        ++gone;
      }
    if (gone == 0)
      return refuse(fault(fmt::format("'{}' offers no '{}'", options.supplier, options.good),
                          "See `coneline offers`."));
    return gone;
  });
  if (!struck)
    return refuse(struck.error());
  return Answer{{{"taken_out", *struck}}, fmt::format("{} offers taken out.\n", *struck)};
}

// --- goods ---

struct GoodOptions {
  BookOption book;
  std::string name;
  std::optional<double> on_hand;
  std::optional<double> room;
  std::optional<int> keeps;
  std::optional<double> cents;
};

Result<Answer> enter_good(const GoodOptions& options) {
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) {
    book::Good good;
    for (const auto& known : writing.plan_records().goods)
      if (known.name == options.name)
        good = known;
    good.name = options.name;
    if (options.on_hand) {
      good.on_hand = *options.on_hand;
      good.counted = Date::today();
    }
    if (options.room)
      good.room = options.room;
    if (options.keeps)
      good.keeps = options.keeps;
    good.cents_a_litre_and_month = options.cents.value_or(good.cents_a_litre_and_month);
    return writing.put(good);
  });
  if (!put)
    return refuse(put.error());
  return said("good", options.name);
}

void add_enter_good(CommandLine& line) {
  auto options = std::make_shared<GoodOptions>();
  auto& command = line.add("enter", "good", "What lies in the shed of a part of a mix",
                           [options] { return enter_good(*options); });
  options->book.add_to(command);
  command.add_option("name", options->name, "The part of a mix, as the mix names it").required();
  command.add_option("--on-hand", options->on_hand, "Litres there today");
  command.add_option("--room", options->room, "Litres that can be kept");
  command.add_option("--keeps", options->keeps, "Months it keeps from delivery");
  command.add_option("--keeping-cents", options->cents, "What a litre costs a month to keep");
}

// --- pins ---

struct PinOptions {
  BookOption book;
  std::string lot;
  std::string place;
};

Result<book::LotId> lot_of(store::Reading& reading, const std::string& typed) {
  const auto code = work::find_code(reading, reading.registers(), typed);
  if (!code)
    return refuse(code.error());
  return reading.lot(*code).map([](const book::Lot& lot) { return lot.id; });
}

Result<Answer> pin(const PinOptions& options) {
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) -> Result<void> {
    const auto lot = lot_of(writing, options.lot);
    if (!lot)
      return refuse(lot.error());
    const auto registers = writing.registers();
    const auto* place = book::named(registers.places, options.place);
    if (place == nullptr)
      if (const auto code = Code::parse(options.place))
        place = book::coded(registers.places, *code);
    if (place == nullptr)
      return refuse(fault(fmt::format("there is no place '{}'", options.place),
                          "Give a place's name or code, as `coneline line` shows them."));
    return writing.put(book::Pin{*lot, place->id});
  });
  if (!put)
    return refuse(put.error());
  return said("pin", options.lot + " in " + options.place);
}

Result<Answer> unpin(const PinOptions& options) {
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto gone = book->write([&](store::Writing& writing) -> Result<void> {
    const auto lot = lot_of(writing, options.lot);
    if (!lot)
      return refuse(lot.error());
    if (!writing.take_out_pin(*lot))
      return refuse(fault(fmt::format("{} is not pinned", options.lot), "Nothing is to be done."));
    return {};
  });
  if (!gone)
    return refuse(gone.error());
  return Answer{{{"unpinned", options.lot}}, fmt::format("{} is free to move.\n", options.lot)};
}

// --- limits of places ---

struct LimitsOptions {
  BookOption book;
  std::string place;
  std::optional<double> bears;
  std::string frost;
};

Result<Answer> enter_limits(const LimitsOptions& options) {
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto put = book->write([&](store::Writing& writing) -> Result<void> {
    const auto registers = writing.registers();
    const auto* place = book::named(registers.places, options.place);
    if (place == nullptr)
      return refuse(fault(fmt::format("there is no place '{}'", options.place),
                          "Give a place's name, as `coneline line` shows them."));
    book::PlaceLimits limits{place->id, {}, book::Frost::not_known};
    for (const auto& known : writing.plan_records().limits)
      if (known.place == place->id)
        limits = known;
    if (options.bears)
      limits.kilograms_a_square_metre = options.bears;
    if (!options.frost.empty()) {
      const auto frost = book::read_word<book::Frost>(options.frost);
      if (!frost)
        return refuse(frost.error());
      limits.frost = *frost;
    }
    return writing.put(limits);
  });
  if (!put)
    return refuse(put.error());
  return said("limits", options.place);
}

void add_enter_limits(CommandLine& line) {
  auto options = std::make_shared<LimitsOptions>();
  auto& command = line.add("enter", "limits", "The load a place bears, and what cold comes there",
                           [options] { return enter_limits(*options); });
  options->book.add_to(command);
  command.add_option("place", options->place, "Its name").required();
  command.add_option("--bears", options->bears, "kg a square metre, as its maker says");
  command.add_option("--frost", options->frost,
                     "'no frost' where it is kept free of it, 'light frost' or 'hard frost'");
}

} // namespace

void add_plan_records(CommandLine& line) {
  add_enter_offer(line);
  add_enter_good(line);
  add_enter_limits(line);
  auto taken = std::make_shared<OffersOptions>();
  auto& take = line.add("take-in-offers", "Take in a CSV of suppliers' offers",
                        [taken] { return take_in_offers(*taken); });
  taken->book.add_to(take);
  take.add_option("file", taken->file, "good,supplier,form,litres,cents and so on").required();
  auto seen = std::make_shared<OffersOptions>();
  seen->book.add_to(line.add("offers", "What suppliers offer, and what lies in the shed",
                             [seen] { return show_offers(*seen); }));
  auto struck = std::make_shared<StrikeOptions>();
  auto& strike = line.add("strike-offer", "Take out what a supplier offers of a good",
                          [struck] { return strike_offers(*struck); });
  struck->book.add_to(strike);
  strike.add_option("good", struck->good, "What is bought: peat, 'round pot 3 l'").required();
  strike.add_option("supplier", struck->supplier, "Whose offer is taken out").required();
  auto pinned = std::make_shared<PinOptions>();
  auto& set = line.add("pin", "Have a lot stand in a place, whatever the plan would rather",
                       [pinned] { return pin(*pinned); });
  pinned->book.add_to(set);
  set.add_option("lot", pinned->lot, "Its code").required();
  set.add_option("place", pinned->place, "The place's name or code").required();
  auto freed = std::make_shared<PinOptions>();
  auto& free =
      line.add("unpin", "Let the plan move a lot again", [freed] { return unpin(*freed); });
  freed->book.add_to(free);
  free.add_option("lot", freed->lot, "Its code").required();
}

} // namespace coneline::commands
