// SPDX-License-Identifier: GPL-3.0-or-later
#include "common.h"

namespace coneline::window {

namespace {
FieldSpec field(FieldSpec::Kind kind, const char* key, const char* label, const QString& value,
                const char* hint) {
  return {QString::fromUtf8(key), QString::fromUtf8(label), kind, value, {},
          QString::fromUtf8(hint)};
}
} // namespace

FieldSpec count_field(const char* key, const char* label, std::int64_t value) {
  return field(FieldSpec::Kind::count, key, label, QString::number(value), "");
}

FieldSpec words_field(const char* key, const char* label, const QString& value, const char* hint) {
  return field(FieldSpec::Kind::words, key, label, value, hint);
}

FieldSpec day_field(const char* key, const char* label, const QString& value, const char* hint) {
  return field(FieldSpec::Kind::day, key, label, value, hint);
}

FieldSpec decimal_field(const char* key, const char* label, const QString& value,
                        const char* hint) {
  return field(FieldSpec::Kind::decimal, key, label, value, hint);
}

FieldSpec measure_field(Quantity quantity, const char* key, const char* label,
                        std::optional<double> kept, const char* hint) {
  const auto system = language().units();
  auto made = field(FieldSpec::Kind::decimal, key, label,
                    kept ? written(quantity, *kept) : QString(), hint);
  made.label = text(fmt::format(fmt::runtime(phrase_of(label)), unit_word(system, quantity)));
  made.measure = quantity;
  return made;
}

FieldSpec name_field(const char* key, const char* label, QStringList names, const QString& value) {
  auto made = choice_field(key, label, std::move(names), value);
  made.names = true;
  return made;
}

FieldSpec row_field(const char* key, const char* label) {
  auto made = name_field(key, label, {}, {});
  made.fills = true;
  return made;
}

FieldSpec choice_field(const char* key, const char* label, QStringList choices,
                       const QString& value) {
  auto made = field(FieldSpec::Kind::choice, key, label, value, "");
  made.choices = std::move(choices);
  return made;
}

std::vector<FieldSpec> with_day_and_note(const Subject& subject, std::vector<FieldSpec> fields) {
  fields.push_back(day_field("on", "Day", shown(subject.today)));
  fields.push_back(words_field("note", "Note"));
  return fields;
}

QStringList states_held(const Subject& subject) {
  QStringList states;
  if (const auto* line = subject.lot())
    for (const auto& [state, count] : line->on_hand)
      states << text(book::word(state));
  return states;
}

void add_state_choice(const Subject& subject, std::vector<FieldSpec>& fields, const char* label) {
  const auto states = states_held(subject);
  if (states.size() > 1)
    fields.push_back(choice_field("state", label, states, states.last()));
}

std::optional<book::State> state_so_far(const Subject& subject, const Answers& answers) {
  const auto word = answers.words(QStringLiteral("state"));
  const auto states = states_held(subject);
  const auto read = book::read_word<book::State>(
      word.empty() && states.size() == 1 ? plain(states.first()) : word);
  return read ? std::optional(*read) : std::nullopt;
}

QStringList place_names(const Subject& subject) {
  auto places = subject.registers().places;
  std::ranges::stable_sort(places, {}, &book::Place::walk);
  QStringList names;
  for (const auto& place : places)
    names << text(place.name);
  return names;
}

QStringList pot_names(const Subject& subject, Cells cells) {
  QStringList all;
  QStringList such;
  for (const auto& pot : subject.registers().pots) {
    all << text(pot.name);
    if ((pot.cells > 1) == (cells == Cells::several))
      such << text(pot.name);
  }
  return such.isEmpty() ? all : such;
}

QStringList mix_names(const Subject& subject) {
  QStringList names{QStringLiteral("none")};
  for (const auto& mix : subject.registers().mixes)
    names << text(mix.name);
  return names;
}

work::Done in_the_book(const std::string& what) {
  return {{}, {}, phrase("{} is in the book", what), {}};
}

QString place_now(const Subject& subject) {
  const auto* line = subject.lot();
  return line && line->place ? place_name(subject.registers(), line->place) : QString();
}

const book::RouteStep* next_step(const Subject& subject) {
  const auto* line = subject.lot();
  const auto* route = line ? subject.registers().route(line->origin.taxon_id) : nullptr;
  if (!route || route->steps.empty())
    return nullptr;
  if (line->lot.code.kind() == Kind::batch)
    return &route->steps.front();
  if (line->lot.code.kind() == Kind::tray)
    return route->steps.size() > 1 ? &route->steps[1] : nullptr;
  for (std::size_t i = 1; i + 1 < route->steps.size(); ++i)
    if (route->steps[i].pot == line->lot.pot)
      return &route->steps[i + 1];
  return nullptr;
}

} // namespace coneline::window
