// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers.h"

#include "../wording.h"
#include "core/base/money.h"
#include "core/base/number.h"

#include <QRegularExpression>

namespace coneline::window {

std::int64_t Subject::held(book::State state) const {
  const auto* line = lot();
  if (!line)
    return 0;
  const auto found = line->on_hand.find(state);
  return found == line->on_hand.end() ? 0 : found->second;
}

void Answers::blame(const QString& field, const Fault& fault) {
  if (!fault_)
    fault_ = fault.at({{}, 0, plain(field)});
}

bool Answers::changed(const QString& field) const {
  return words(field) != plain(stood_.value(field).toString());
}

std::string Answers::words(const QString& field) const {
  return plain(values_.value(field).toString());
}

std::string Answers::named(const QString& field) {
  auto given = words(field);
  if (given.empty())
    blame(field, coneline::fault("this is still empty", "Write it down."));
  return given;
}

Count Answers::count(const QString& field) {
  const auto given = words(field);
  return given.empty() ? Count() : keep(field, Count::parse(given), Count());
}

int Answers::whole(const QString& field) {
  return static_cast<int>(count(field).value());
}

int Answers::needed_whole(const QString& field) {
  named(field);
  return whole(field);
}

double Answers::number(const QString& field) {
  named(field);
  return decimal(field).value_or(0);
}

std::optional<double> Answers::decimal(const QString& field) {
  if (words(field).empty())
    return std::nullopt;
  return keep(field, read_number(values_.value(field).toString()), 0.0);
}

std::optional<double> Answers::decimal(const QString& field, Quantity quantity) {
  if (words(field).empty())
    return std::nullopt;
  return keep(field, read_measure(quantity, values_.value(field).toString()), 0.0);
}

std::optional<book::Range> Answers::range(const QString& from, const QString& to) {
  const auto low = decimal(from);
  const auto high = decimal(to);
  if (!low && !high)
    return std::nullopt;
  return keep(to, book::Range::of(low ? *low : *high, high ? *high : *low), book::Range());
}

double Answers::measure(const QString& field, Quantity quantity) {
  return above_zero(field, decimal(field, quantity));
}

double Answers::measure(const QString& field) {
  return above_zero(field, decimal(field));
}

double Answers::above_zero(const QString& field, std::optional<double> given) {
  if (!given || *given <= 0)
    blame(field, coneline::fault("a number above 0 belongs here", "Measure it once."));
  return given.value_or(0);
}

std::optional<std::int64_t> Answers::cents(const QString& field) {
  const auto given = decimal(field);
  if (!given)
    return std::nullopt;
  return keep(field, cents_of(*given), std::int64_t{0});
}

Date Answers::day(const QString& field) {
  return keep(field, read_day(values_.value(field).toString()), subject_.today);
}

std::optional<Date> Answers::some_day(const QString& field) {
  return words(field).empty() ? std::nullopt : std::optional(day(field));
}

std::optional<Code> Answers::place(const QString& field) {
  const auto* place = book::named(subject_.registers().places, words(field));
  return place ? std::optional(place->code) : std::nullopt;
}

std::optional<Code> Answers::code(const QString& field) {
  const auto given = words(field);
  const auto read = Code::parse(given.substr(0, given.find(' ')));
  return read ? std::optional(*read) : std::nullopt;
}

std::optional<std::string> Answers::chosen(const QString& field) {
  auto given = words(field);
  return given.empty() || given == "none" ? std::nullopt : std::optional(given);
}

std::optional<book::State> Answers::state(const QString& field) {
  const auto given = words(field);
  return given.empty() ? std::nullopt : std::optional(one_of<book::State>(field));
}

work::Noted Answers::noted() {
  return {day(QStringLiteral("on")), words(QStringLiteral("who")), words(QStringLiteral("note"))};
}

std::optional<book::Weighing> Answers::weighing(const QString& hundreds, const QString& grams) {
  const auto given = values_.value(hundreds).toString().trimmed();
  if (given.isEmpty())
    return std::nullopt;
  book::Weighing weighed;
  for (const auto& piece : given.split(QRegularExpression(QStringLiteral("[\\s;]+")))) {
    weighed.hundreds.push_back(keep(hundreds, read_number(piece), 0.0));
  }
  weighed.grams = measure(grams);
  return weighed;
}

std::int64_t Answers::so_far(const QString& field) const {
  const auto read = Count::parse(words(field));
  return read ? read->value() : 0;
}

} // namespace coneline::window
