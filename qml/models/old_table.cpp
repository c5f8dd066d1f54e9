// SPDX-License-Identifier: GPL-3.0-or-later
#include "old_table.h"

#include "core/base/heading.h"
#include "core/exchange/old_table.h"
#include "wording.h"

namespace coneline::window {

namespace {

using exchange::TableField;

std::optional<TableField> field_named(const QString& word) {
  const auto field = book::read_word<TableField>(plain(word));
  return field ? std::optional(*field) : std::nullopt;
}

QString word_of(TableField field) {
  return text(book::word(field));
}

const QString none = QStringLiteral("none");
const QString as_told = QStringLiteral("file");
const QString day_first = QStringLiteral("day");
const QString month_first = QStringLiteral("month");

void list(QStringList& said, const QString& what, const std::vector<std::string>& names) {
  QStringList all;
  for (const auto& name : names)
    all << text(name);
  if (!all.isEmpty())
    said << what.arg(all.join(QStringLiteral(", ")));
}

} // namespace

OldTable::OldTable(QObject* parent)
    : QObject(parent), columns_({"column", "first", "field"}, this),
      rows_({"line", "told", "wrong"}, this), aside_(nullptr) {
  look_.setInterval(100);
  connect(&look_, &QTimer::timeout, this, &OldTable::progressed);
}

OldTable::~OldTable() {
  stop();
}

QString OldTable::file() const {
  return table_ ? text(table_->file) : QString();
}

QStringList OldTable::fields() {
  QStringList words{none};
  for (const auto& [field, word] : book::Words<TableField>::all)
    words << word_of(field);
  return words;
}

QStringList OldTable::fields_shown() {
  QStringList shown;
  for (const auto& field : fields())
    shown << named(field);
  return shown;
}

QString OldTable::named(const QString& field) {
  return field == none ? tr("left out") : text(as_heading(plain(field)));
}

QStringList OldTable::date_orders() {
  return {as_told, day_first, month_first};
}

QStringList OldTable::date_orders_shown() {
  return {tr("as the file tells"), tr("day first"), tr("month first")};
}

QStringList OldTable::matched() const {
  QStringList words;
  for (const auto& [field, column] : match_.columns)
    words << word_of(field);
  return words;
}

QString OldTable::about(const QString& field) {
  const auto meant = field_named(field);
  return meant ? phrased_of(exchange::about(*meant)) : QString();
}

bool OldTable::read(const QString& path) {
  if (writing_)
    return false;
  auto table = exchange::read_old_table_file(Session::path_of(path), {});
  if (table) {
    match_.columns = exchange::guess(table->columns).columns; // what holds for all rows stays
    table_ = std::move(*table);
  } else {
    table_.reset();
  }
  was_changed();
  fault_ = table ? QString() : text(table.error().text());
  show_columns();
  return table_.has_value();
}

void OldTable::match(int column, const QString& field) {
  if (writing_ || !table_ || column < 0 || column >= static_cast<int>(table_->columns.size()))
    return;
  const auto& name = table_->columns[static_cast<std::size_t>(column)];
  std::erase_if(match_.columns, [&](const auto& one) { return one.second == name; });
  if (const auto meant = field_named(field))
    match_.columns[*meant] = name;
  was_changed();
  show_columns();
}

void OldTable::forAll(const QString& field, const QString& value) {
  const auto meant = field_named(field);
  if (!meant || writing_)
    return;
  if (value.trimmed().isEmpty())
    match_.for_all.erase(*meant);
  else
    match_.for_all[*meant] = plain(value.trimmed());
  was_changed();
}

void OldTable::writeDates(const QString& order) {
  if (writing_)
    return;
  match_.dates.reset();
  if (order == day_first)
    match_.dates = exchange::TableDates::day_month_year;
  if (order == month_first)
    match_.dates = exchange::TableDates::month_day_year;
  was_changed();
}

void OldTable::show_columns() {
  std::vector<Rows::Row> rows;
  for (std::size_t i = 0; table_ && i < table_->columns.size(); ++i) {
    const auto& column = table_->columns[i];
    const auto found =
        std::ranges::find_if(match_.columns, [&](const auto& one) { return one.second == column; });
    rows.push_back({text(column), text(exchange::shortened(table_->rows.front().fields[i])),
                    found == match_.columns.end() ? none : word_of(found->first)});
  }
  columns_.replace(std::move(rows));
  emit changed();
}

/// What was tried out before, or is being tried, holds no more.
void OldTable::was_changed() {
  stop();
  course_.reset();
  look_.stop();
  aside_.forget();
  emit progressed();
  ready_ = false;
  rows_.replace({});
  said_.clear();
  fault_.clear();
  emit changed();
}

void OldTable::show(const exchange::TableTaken& taken) {
  constexpr std::size_t most_shown = 200;
  std::vector<Rows::Row> rows;
  for (const auto& fault : taken.faults.listed())
    if (rows.size() < most_shown)
      rows.push_back(
          {static_cast<int>(fault.where ? fault.where->line : 0), text(fault.text()), true});
  for (const auto& row : taken.rows)
    if (rows.size() < most_shown)
      rows.push_back({static_cast<int>(row.line), text(row.told), false});
  rows_.replace(std::move(rows));
  said_.clear();
  const auto wrong = taken.faults.listed().size() + taken.faults.unlisted();
  said_ << (wrong > 0
                ? tr("%n row(s) or cell(s) at fault; nothing can come in yet.", nullptr,
                     static_cast<int>(wrong))
                : tr("%n row(s) would come in.", nullptr, static_cast<int>(taken.rows.size())));
  if (taken.rows.size() + taken.faults.listed().size() > most_shown)
    said_ << tr("The first %1 are shown.").arg(most_shown);
  list(said_, tr("New taxa: %1"), taken.taxa);
  list(said_, tr("New plants: %1"), taken.plants);
  list(said_, tr("New places: %1"), taken.places);
  list(said_, tr("New trays and pots: %1"), taken.pots);
  for (const auto& look : taken.look_at)
    said_ << text(look);
}

void OldTable::tryOut() {
  if (writing_)
    return;
  was_changed();
  if (table_ && session_ != nullptr && session_->is_open())
    run(exchange::Import::dry_run);
}

void OldTable::takeIn() {
  if (ready_ && session_->is_open())
    run(exchange::Import::write);
}

double OldTable::done() const {
  return course_ ? course_->done.load() : 0;
}

void OldTable::stop() {
  if (course_)
    course_->stop = true;
}

void OldTable::run(exchange::Import how) {
  ready_ = false;
  writing_ = how == exchange::Import::write;
  course_ = std::make_shared<Course>();
  look_.start();
  emit changed();
  emit progressed();
  aside_.run(
      [path = session_->path().toStdString(), table = *table_, match = match_, how,
       today = session_->today(), course = course_]() -> Result<exchange::TableTaken> {
        auto book = store::Book::open(path, store::Access::write);
        if (!book)
          return refuse(book.error());
        return exchange::take_in_table(
            table, match, *book, how, today, [&](std::size_t done, std::size_t of) {
              course->done = static_cast<double>(done) / static_cast<double>(of);
              return !course->stop;
            });
      },
      [this, how, of = session_->path()](const Result<exchange::TableTaken>& taken) {
        course_.reset();
        writing_ = false;
        look_.stop();
        // What came into a book that was closed meanwhile is seen when it is opened again.
        if (session_->path() == of)
          take(how, taken);
        emit progressed();
      });
}

void OldTable::take(exchange::Import how, const Result<exchange::TableTaken>& taken) {
  if (!taken)
    fault_ = text(taken.error().text());
  else if (how == exchange::Import::dry_run || !taken->faults.none())
    show(*taken);
  else
    came_in(*taken);
  ready_ = taken && how == exchange::Import::dry_run && taken->faults.none();
  emit changed();
}

void OldTable::came_in(const exchange::TableTaken& taken) {
  work::Done made;
  made.entries = taken.entries;
  made.told = plain(tr("%n row(s) of %1 came in", nullptr, static_cast<int>(taken.rows.size()))
                        .arg(text(table_->file)));
  const auto told = text(made.told);
  if (auto known = session_->act([&](store::Book&) { return Result<work::Done>(made); }); !known)
    fault_ = text(known.error().text());
  table_.reset();
  rows_.replace({});
  columns_.replace({});
  said_ = QStringList{told};
}

} // namespace coneline::window
