// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/writing.h"

#include "core/base/phrase.h"
#include "core/store/chain.h"

#include <fmt/format.h>

namespace coneline::store {

std::string_view table_of(Kind kind) {
  switch (kind) {
  case Kind::plant:
    return "plant";
  case Kind::pollen:
    return "pollen_lot";
  case Kind::cone:
    return "cone";
  case Kind::purchase:
    return "purchase";
  case Kind::place:
    return "place";
  case Kind::batch:
  case Kind::tray:
  case Kind::pot_group:
    break;
  }
  return "lot";
}

Writing::Writing(Tables& tables)
    : Reading(tables), ledger_([this](book::Account account) { return timeline(account); },
                               [this](book::LotId id) { return lot(id).code.text(); }),
      chain_(std::make_unique<Chain>(tables)) {}

Writing::~Writing() = default;

Result<Code> Writing::next_code(Kind kind) {
  const auto table = table_of(kind);
  auto asked = tables().ask(fmt::format("SELECT coalesce(max(number), 0) + 1 AS next FROM {}{}",
                                        table, table == "lot" ? " WHERE kind = :kind" : ""));
  if (table == "lot")
    asked.with(kind_word(kind));
  return Code::of(kind, tables().series(), asked.number().value_or(1));
}

namespace {

/// Of a lot that has a pot and may not, or has none and must.
std::string stands_otherwise(Kind kind) {
  if (kind == Kind::batch)
    return phrase("a batch has not a pot or tray it stands in");
  return kind == Kind::tray ? phrase("a tray needs a pot or tray it stands in")
                            : phrase("a pot group needs a pot or tray it stands in");
}

} // namespace

Result<book::LotId> Writing::add(const book::Lot& lot) {
  const auto kind = lot.code.kind();
  const bool is_lot = kind == Kind::batch || kind == Kind::tray || kind == Kind::pot_group;
  if (!is_lot)
    return refuse(
        fault(phrase("{} is the code of a {}, not of a lot", lot.code.text(), kind_said(kind))));
  if (auto ours = of_this_book(lot.code, tables().series()); !ours)
    return refuse(ours.error());
  if ((kind == Kind::batch) == lot.pot.has_value())
    return refuse(fault(stands_otherwise(kind)));
  const auto number = lot.code.number_in_series();
  if (tables()
          .ask("SELECT id FROM lot WHERE kind = :kind AND number = :number")
          .with(kind_word(kind))
          .with(number)
          .number())
    return refuse(
        fault(phrase("the code {} stands on another {} already", lot.code.text(), kind_said(kind)),
              "Use the next free code."));
  const auto* cone = std::get_if<book::ConeId>(&lot.origin);
  const auto* purchase = std::get_if<book::PurchaseId>(&lot.origin);
  const auto id = tables()
                      .ask("INSERT INTO lot (kind, number, cone_id, purchase_id, judged, "
                           "judged_by, pot_id, mix_id, note) VALUES "
                           "(:kind, :number, :cone, :purchase, :judged, :judged_by, :pot, :mix, "
                           ":note) RETURNING id")
                      .with(kind_word(kind))
                      .with(number)
                      .with(cone != nullptr ? std::optional(*cone) : std::nullopt)
                      .with(purchase != nullptr ? std::optional(*purchase) : std::nullopt)
                      .with(book::word(lot.judged))
                      .with(book::word(lot.judged_by))
                      .with(lot.pot)
                      .with(lot.mix)
                      .with(lot.note)
                      .number();
  ledger_.know({*id}, kind, lot.origin, book::Ledger::History::none);
  return book::LotId{*id};
}

} // namespace coneline::store
