// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What was written into a form, read as core's values. The first answer that cannot be read is
// kept as a fault whose column is the field; `then` acts only where there is none.

#include "../session.h"

#include <QVariantMap>

namespace coneline::window {

/// What a form is about. The code is not valid for forms that begin something new.
struct Subject {
  const Standing* standing = nullptr;
  Date today;
  Code code;
  /// The name of the row that was chosen in the form itself; empty until one was.
  QString row{};

  [[nodiscard]] const book::Registers& registers() const { return standing->registers; }
  [[nodiscard]] const work::LotLine* lot() const { return standing->lot(code); }
  /// What the lot holds in a state; 0 for none.
  [[nodiscard]] std::int64_t held(book::State state) const;
};

class Answers {
 public:
  /// `stood`: what the form was filled in with.
  Answers(const Subject& subject, QVariantMap values, QVariantMap stood = {})
      : subject_(subject), values_(std::move(values)), stood_(std::move(stood)) {}

  /// Whether something else was written than what the field was filled in with.
  [[nodiscard]] bool changed(const QString& field) const;

  [[nodiscard]] std::string words(const QString& field) const;
  /// A text that must not be empty.
  std::string named(const QString& field);
  Count count(const QString& field); ///< empty is 0
  int whole(const QString& field);
  int needed_whole(const QString& field);              ///< not empty
  std::optional<double> decimal(const QString& field); ///< with the locale's decimal sign
  /// A measure in the units people reckon in, as the book keeps it.
  std::optional<double> decimal(const QString& field, Quantity quantity);
  /// From one to the other, or the same twice where one is empty; none where both are.
  std::optional<book::Range> range(const QString& from, const QString& to);
  double number(const QString& field);  ///< not empty
  double measure(const QString& field); ///< above 0
  double measure(const QString& field, Quantity quantity);
  std::optional<std::int64_t> cents(const QString& field);
  Date day(const QString& field);
  std::optional<Date> some_day(const QString& field);
  std::optional<Code> place(const QString& field);         ///< by name
  std::optional<Code> code(const QString& field);          ///< the first word, where it is a code
  std::optional<std::string> chosen(const QString& field); ///< none for "none"
  std::optional<book::State> state(const QString& field);
  work::Noted noted();
  /// Weighings with blanks or semicolons between them; none where the first field is empty.
  std::optional<book::Weighing> weighing(const QString& hundreds, const QString& grams);

  template <class Set>
  Set one_of(const QString& field) {
    return keep(field, book::read_word<Set>(words(field)), Set{});
  }

  /// For a bar that is drawn while one is still typing: 0 for what cannot be read.
  [[nodiscard]] std::int64_t so_far(const QString& field) const;

  [[nodiscard]] const Subject& subject() const { return subject_; }
  [[nodiscard]] const std::optional<Fault>& fault() const { return fault_; }

  template <class Act>
  Result<work::Done> then(Act act) const {
    return fault_ ? refuse(*fault_) : Result<work::Done>(act());
  }

 private:
  template <class Value>
  Value keep(const QString& field, Result<Value> read, Value otherwise) {
    if (read)
      return *read;
    blame(field, read.error());
    return otherwise;
  }
  void blame(const QString& field, const Fault& fault);
  double above_zero(const QString& field, std::optional<double> given);

  const Subject& subject_;
  QVariantMap values_;
  QVariantMap stood_;
  std::optional<Fault> fault_;
};

} // namespace coneline::window
