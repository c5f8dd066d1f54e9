// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/resolve.h"

#include "core/base/phrase.h"
#include "core/work/cautions.h"

#include <fmt/format.h>

namespace coneline::work {

namespace {
template <class Row>
std::string names_of(const std::vector<Row>& rows) {
  std::string names;
  for (const auto& row : rows)
    names += (names.empty() ? "" : ", ") + row.name;
  return names.empty() ? phrase("none yet") : names;
}
} // namespace

Result<book::PotId> pot_named(const book::Registers& registers, const std::string& name) {
  if (const auto* pot = book::named(registers.pots, name))
    return pot->id;
  return refuse(fault(phrase("there is no pot or tray called '{}'", name),
                      phrase("The book has: {}.", names_of(registers.pots))));
}

Result<std::optional<book::MixId>> mix_named(const book::Registers& registers,
                                             const std::optional<std::string>& name) {
  if (!name)
    return std::nullopt;
  if (const auto* mix = book::named(registers.mixes, *name))
    return mix->id;
  return refuse(fault(phrase("there is no mix called '{}'", *name),
                      phrase("The book has: {}.", names_of(registers.mixes))));
}

Result<std::optional<book::PlaceId>> place_coded(const book::Registers& registers,
                                                 const std::optional<Code>& code) {
  if (!code)
    return std::nullopt;
  if (code->series() != registers.title.series)
    return refuse(fault(phrase("{} is the label of another book", code->text()),
                        "Open the book it belongs to."));
  if (const auto* place = book::coded(registers.places, *code))
    return place->id;
  return refuse(fault(phrase("there is no place {}", code->text()),
                      phrase("The book has: {}.", names_of(registers.places))));
}

Result<void> not_ahead(Date day, Date today) {
  if (day <= today)
    return {};
  return refuse(fault(phrase_n(days_between(today, day), "{1} is {0} day from now",
                               "{1} is {0} days from now", day.said()),
                      "Check the day."));
}

Result<book::Lot> lot_of_kind(store::Reading& reading, const Code& code, Kind kind) {
  if (code.kind() != kind)
    return refuse(
        fault(phrase("{} is a {}, not a {}", code.text(), kind_said(code.kind()), kind_said(kind)),
              phrase("Give the code of a {}.", kind_said(kind))));
  return reading.lot(code);
}

std::int64_t held(store::Reading& reading, book::LotId lot, book::State state, Date day) {
  for (const auto& balance : reading.balances_of(lot, day))
    if (balance.account.state == state)
      return balance.count;
  return 0;
}

Result<book::State> state_meant(store::Reading& reading, const book::Lot& lot,
                                std::optional<book::State> given, Date day) {
  if (given) {
    if (book::standing(*given) == book::Standing::on_hand && book::holds(lot.code.kind(), *given))
      return *given;
    return refuse(fault(
        phrase("a {} holds nothing that is '{}'", kind_said(lot.code.kind()), book::said(*given))));
  }
  std::vector<book::State> there;
  std::string words;
  for (const auto& balance : reading.balances_of(lot.id, day))
    if (book::standing(balance.account.state) == book::Standing::on_hand) {
      there.push_back(balance.account.state);
      words += fmt::format("{}{} '{}'", words.empty() ? "" : ", ", balance.count,
                           book::said(balance.account.state));
    }
  if (there.empty())
    return refuse(fault(phrase("{} holds nothing on {}", lot.code.text(), day.said()),
                        "Check the code and the day."));
  if (there.size() > 1)
    return refuse(fault(phrase("{} holds {}", lot.code.text(), words),
                        "Say which is meant (on the command line: --state or --from)."));
  return there.front();
}

book::Entry entry_for(book::Verb verb, const Noted& noted) {
  book::Entry entry;
  entry.verb = verb;
  entry.date = noted.on;
  entry.who = noted.who;
  entry.note = noted.note;
  return entry;
}

std::string counted(std::int64_t count, std::string_view one, std::string_view many) {
  return fmt::format(fmt::runtime(language().counted(count, fmt::format("{{}} {}", one),
                                                     fmt::format("{{}} {}", many))),
                     count);
}

Result<book::Cone> cone_coded(const book::Registers& registers, const Code& code) {
  if (const auto* cone = book::coded(registers.cones, code))
    return *cone;
  return refuse(fault(phrase("there is no cone {}", code.text()), "Check the code."));
}

Result<Done> entered(store::Writing& writing, const book::Entry& entry, std::string told) {
  auto id = writing.enter(entry);
  if (!id)
    return refuse(id.error());
  Done done;
  done.entries = {*id};
  done.told = std::move(told);
  done.cautions = cautions_told(entry.verb);
  return done;
}

} // namespace coneline::work
