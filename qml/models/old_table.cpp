// SPDX-License-Identifier: GPL-3.0-or-later
#include "old_table.h"

#include "core/exchange/old_table.h"
#include "wording.h"

namespace coneline::window {

namespace {

using exchange::TableField;

QString left_out() {
  return OldTable::tr("left out");
}

std::optional<TableField> field_named(const QString& word) {
  const auto field = book::read_word<TableField>(plain(word));
  return field ? std::optional(*field) : std::nullopt;
}

QString word_of(TableField field) {
  return text(book::word(field));
}

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
      rows_({"line", "told", "wrong"}, this) {}

QString OldTable::file() const {
  return table_ ? text(table_->file) : QString();
}

QStringList OldTable::fields() {
  QStringList words{left_out()};
  for (const auto& [field, word] : book::Words<TableField>::all)
    words << word_of(field);
  return words;
}

QStringList OldTable::date_orders() {
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
  return meant ? text(exchange::about(*meant)) : QString();
}

bool OldTable::read(const QString& path) {
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
  if (!table_ || column < 0 || column >= static_cast<int>(table_->columns.size()))
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
  if (!meant)
    return;
  if (value.trimmed().isEmpty())
    match_.for_all.erase(*meant);
  else
    match_.for_all[*meant] = plain(value.trimmed());
  was_changed();
}

void OldTable::writeDates(const QString& order) {
  match_.dates.reset();
  if (order == date_orders()[1])
    match_.dates = exchange::TableDates::day_month_year;
  if (order == date_orders()[2])
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
                    found == match_.columns.end() ? left_out() : word_of(found->first)});
  }
  columns_.replace(std::move(rows));
  emit changed();
}

/// What was tried out before holds no more.
void OldTable::was_changed() {
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

bool OldTable::tryOut() {
  was_changed();
  if (!table_ || !session_)
    return false;
  const auto tried = session_->keep([&](store::Book& book) -> Result<void> {
    auto taken = exchange::take_in_table(*table_, match_, book, exchange::Import::dry_run,
                                         session_->today());
    if (!taken)
      return refuse(taken.error());
    show(*taken);
    ready_ = taken->faults.none();
    return {};
  });
  if (!tried)
    fault_ = text(tried.error().text());
  emit changed();
  return ready_;
}

bool OldTable::takeIn() {
  if (!ready_)
    return false;
  const auto done = session_->act([&](store::Book& book) -> Result<work::Done> {
    auto taken =
        exchange::take_in_table(*table_, match_, book, exchange::Import::write, session_->today());
    if (!taken)
      return refuse(taken.error());
    if (!taken->faults.none())
      return refuse(taken->faults.listed().front());
    work::Done made;
    made.entries = taken->entries;
    made.told = plain(tr("%n row(s) of %1 came in", nullptr, static_cast<int>(taken->rows.size()))
                          .arg(text(table_->file)));
    return made;
  });
  ready_ = false;
  if (!done) {
    fault_ = text(done.error().text());
  } else {
    table_.reset();
    rows_.replace({});
    columns_.replace({});
    said_ = QStringList{text(done->told)};
  }
  emit changed();
  return done.has_value();
}

} // namespace coneline::window
