// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Fields that many forms share.

#include "../wording.h"
#include "deed.h"

namespace coneline::window {

FieldSpec count_field(const char* key, const char* label, std::int64_t value);
FieldSpec words_field(const char* key, const char* label, const QString& value = {},
                      const char* hint = "");
FieldSpec day_field(const char* key, const char* label, const QString& value = {},
                    const char* hint = "");
FieldSpec decimal_field(const char* key, const char* label, const QString& value = {},
                        const char* hint = "");
/// A field of a measure; its label has a place for the unit. `kept` is in the book's unit.
FieldSpec measure_field(Quantity quantity, const char* key, const char* label,
                        std::optional<double> kept = {}, const char* hint = "");
FieldSpec choice_field(const char* key, const char* label, QStringList choices,
                       const QString& value);
/// A choice among names the grower gave.
FieldSpec name_field(const char* key, const char* label, QStringList names, const QString& value);
/// The row of a register that the form is about, chosen by name, which fills in the rest.
FieldSpec row_field(const char* key, const char* label);

/// The words of a set, as the book writes them.
template <class Set>
QStringList all_words() {
  QStringList words;
  for (const auto& [value, word] : book::Words<Set>::all)
    words << QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
  return words;
}

template <class Set>
FieldSpec word_choice(const char* key, const char* label, Set now) {
  return choice_field(key, label, all_words<Set>(), text(book::word(now)));
}

/// Day and note, which close every form.
std::vector<FieldSpec> with_day_and_note(const Subject& subject, std::vector<FieldSpec> fields);

/// The states the lot holds something in, as they are written.
QStringList states_held(const Subject& subject);
/// A choice between them; nothing to choose where there is one only.
void add_state_choice(const Subject& subject, std::vector<FieldSpec>& fields, const char* label);
/// The state chosen so far, or the only one.
std::optional<book::State> state_so_far(const Subject& subject, const Answers& answers);

QStringList place_names(const Subject& subject);
/// Kinds of trays (of several cells) or pots (of one); all where there are none such.
enum class Cells { several, one };
QStringList pot_names(const Subject& subject, Cells cells);
QStringList mix_names(const Subject& subject); ///< with "none" first

/// What is said of a row that was kept without an entry.
work::Done in_the_book(const std::string& what);

/// The lot's place by name, or empty.
QString place_now(const Subject& subject);

/// The route's step that begins a lot of this one's next kind; null where no route says.
const book::RouteStep* next_step(const Subject& subject);

} // namespace coneline::window
