// SPDX-License-Identifier: GPL-3.0-or-later
#include "form.h"

#include "wording.h"

namespace coneline::window {

namespace {

constexpr std::size_t key_column = 0;
constexpr std::size_t value_column = 3;

QString kind_word(FieldSpec::Kind kind) {
  switch (kind) {
  case FieldSpec::Kind::count:
    return QStringLiteral("count");
  case FieldSpec::Kind::decimal:
    return QStringLiteral("decimal");
  case FieldSpec::Kind::choice:
    return QStringLiteral("choice");
  case FieldSpec::Kind::day:
    return QStringLiteral("day");
  case FieldSpec::Kind::words:
    break;
  }
  return QStringLiteral("words");
}

/// The choices as they are shown. What the grower named is shown as it was named.
QStringList shown_choices(const FieldSpec& field) {
  QStringList shown;
  for (const auto& choice : field.choices)
    shown << (field.names && choice != QLatin1String("none") ? choice : phrased_of(plain(choice)));
  return shown;
}

} // namespace

Form::Form(QObject* parent)
    : QObject(parent), fields_({"key", "label", "kind", "value", "choices", "hint", "shown"}, this),
      pieces_({"label", "count", "figure", "role", "share"}, this) {
  connect(this, &Form::asked, this, [this] { begin_with({}); });
}

Subject Form::subject() const {
  return {&session_->standing(), session_->today(), Code::parse(plain(code_)).value_or(Code()),
          row_};
}

void Form::begin_with(const QString& row) {
  row_ = row;
  begin();
}

void Form::begin() {
  if (session_)
    connect(session_->speech(), &Speech::changed, this, &Form::say_anew, Qt::UniqueConnection);
  fault_.clear();
  fault_field_.clear();
  values_.clear();
  by_hand_.clear();
  specs_.clear();
  std::vector<Rows::Row> rows;
  const auto* deed = deed_named(deed_);
  if (session_ && deed && (!deed->fits || deed->fits(subject())))
    specs_ = deed->fields(subject());
  for (const auto& field : specs_) {
    values_[field.key] = field.value;
    rows.push_back({field.key, phrased_of(plain(field.label)), kind_word(field.kind), field.value,
                    field.choices, phrased_of(plain(field.hint)), shown_choices(field)});
  }
  fields_.replace({}); // a form of as many fields must not keep the old one's delegates
  fields_.replace(std::move(rows));
  split_up();
  emit told();
  emit refused();
}

QString Form::title() const {
  const auto* deed = deed_named(deed_);
  return deed ? phrased_of(deed->title) : QString();
}

QStringList Form::cautions() const {
  QStringList all;
  if (const auto* deed = deed_named(deed_))
    for (const auto* caution : deed->cautions)
      all << phrased_of(caution);
  return all;
}

void Form::set(const QString& field, const QString& value) {
  const auto spec = std::ranges::find(specs_, field, &FieldSpec::key);
  if (spec != specs_.end() && spec->fills) {
    if (value != valueOf(field))
      begin_with(value);
    return;
  }
  values_[field] = value;
  by_hand_[field] = given(field, value);
  split_up();
}

/// Read as it was written; what cannot be read stays as it is.
Form::Given Form::given(const QString& field, const QString& value) const {
  const auto as_is = [value] { return value; };
  const auto spec = std::ranges::find(specs_, field, &FieldSpec::key);
  if (spec == specs_.end())
    return {value, as_is};
  if (spec->kind == FieldSpec::Kind::day)
    if (const auto day = read_day(value))
      return {value, [day = *day] { return shown(day); }};
  if (spec->kind == FieldSpec::Kind::decimal && !spec->measure)
    if (const auto number = read_number(value))
      return {value, [number = *number] { return written(number); }};
  if (spec->measure)
    if (const auto kept = read_exactly(*spec->measure, value))
      return {value, [quantity = *spec->measure, kept = *kept] { return written(quantity, kept); }};
  return {value, as_is};
}

void Form::renew(const QString& field, const QString& value) {
  auto kept = by_hand_;
  kept[field] = given(field, value);
  begin();
  put_back(kept);
}

void Form::say_anew() {
  auto kept = by_hand_;
  for (auto& [field, given] : kept)
    given.value = given.anew();
  begin();
  put_back(kept);
}

void Form::put_back(const std::map<QString, Given>& kept) {
  auto rows = fields_.rows();
  for (auto& row : rows)
    if (const auto found = kept.find(row[key_column].toString()); found != kept.end()) {
      row[value_column] = found->second.value;
      values_[found->first] = found->second.value;
      by_hand_.insert(*found);
    }
  split_up();
  fields_.replace({});
  fields_.replace(std::move(rows));
}

QString Form::valueOf(const QString& field) const {
  return values_.value(field).toString();
}

QString Form::shownOf(const QString& field) const {
  const auto value = values_.value(field).toString();
  for (int row = 0; row < fields_.size(); ++row)
    if (fields_.value(row, QStringLiteral("key")).toString() == field) {
      const auto at = fields_.value(row, QStringLiteral("choices")).toStringList().indexOf(value);
      return at < 0 ? value : fields_.value(row, QStringLiteral("shown")).toStringList().at(at);
    }
  return value;
}

QString Form::dayMoved(const QString& written, int days) const {
  const auto day = read_day(written);
  return shown(day ? day->plus_days(days) : session_->today());
}

void Form::split_up() {
  const auto* deed = deed_named(deed_);
  std::vector<Rows::Row> rows;
  std::int64_t total = 0;
  if (session_ && deed && deed->pieces && !values_.isEmpty()) {
    const auto about = subject();
    const auto pieces = deed->pieces(about, Answers(about, values_));
    for (const auto& piece : pieces)
      total += piece.count;
    for (const auto& piece : pieces)
      rows.push_back(
          {phrased_of(plain(piece.label)), qlonglong(piece.count), shown(piece.count), piece.role,
           total > 0
               ? std::clamp(static_cast<double>(piece.count) / static_cast<double>(total), 0.0, 1.0)
               : 0.0});
  }
  total_ = shown(total);
  pieces_.replace(std::move(rows));
  emit split();
}

bool Form::reads(const QStringList& fields) {
  const auto* deed = deed_named(deed_);
  if (!session_ || !deed || !deed->read)
    return false;
  const auto about = subject();
  Answers answers(about, values_);
  deed->read(answers);
  const auto& fault = answers.fault();
  const bool wrong = fault && fault->where && fields.contains(text(fault->where->column));
  if (wrong) {
    refuse_with(*fault);
  } else {
    fault_.clear();
    fault_field_.clear();
    emit refused();
  }
  return !wrong;
}

bool Form::submit() {
  const auto* deed = deed_named(deed_);
  if (!session_ || !deed)
    return false;
  const auto about = subject();
  QVariantMap stood;
  for (const auto& field : specs_)
    stood[field.key] = field.value;
  Answers answers(about, values_, stood);
  const auto given = session_->act([&](store::Book& book) { return deed->run(book, answers); });
  if (!given) {
    refuse_with(given.error());
    return false;
  }
  made_.clear();
  for (const auto& code : given->made)
    made_ << text(code.text());
  emit done();
  return true;
}

void Form::refuse_with(const Fault& fault) {
  auto said = fault;
  said.where.reset(); // the field itself shows where
  fault_ = fault_shown(said);
  fault_field_ = fault.where ? text(fault.where->column) : QString();
  emit refused();
}

} // namespace coneline::window
