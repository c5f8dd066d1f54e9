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

bool came_in(const Result<exchange::TableTaken>& taken) {
  return taken && taken->faults.none();
}

QString told_of(const QString& file, const exchange::TableTaken& taken) {
  return OldTable::tr("%n row(s) of %1 came in", nullptr, static_cast<int>(taken.rows.size()))
      .arg(file);
}

/// The session knows what came in, and how it is undone, whatever page is looked at.
void tell(Session& session, const QString& file, const exchange::TableTaken& taken) {
  work::Done made;
  made.entries = taken.entries;
  made.told = plain(told_of(file, taken));
  if (auto known = session.done_aside(std::move(made)); !known)
    session.set_fault(known.error());
}

struct Wanted {
  CsvTable table;
  exchange::TableMatch match;
  exchange::Import how;
};

/// To be done aside, with a book that it opens itself.
auto taking_in(Wanted wanted, const Session& session, std::shared_ptr<Course> course) {
  return [wanted = std::move(wanted), path = session.path().toStdString(), today = session.today(),
          course = std::move(course)]() -> Result<exchange::TableTaken> {
    const Aside::Reader reader(path);
    auto book = store::Book::open(path, store::Access::write);
    if (!book)
      return refuse(book.error());
    return exchange::take_in_table(wanted.table, wanted.match, *book, wanted.how, today,
                                   told_to(course));
  };
}

} // namespace

OldTable::OldTable(QObject* parent)
    : QObject(parent), columns_({"column", "first", "field"}, this),
      rows_({"line", "told", "wrong"}, this), aside_(nullptr) {
  look_.setInterval(100);
  connect(&look_, &QTimer::timeout, this, &OldTable::progressed);
}

OldTable::~OldTable() {
  if (course_ && !writing()) // what comes in does so whatever page is looked at
    course_->stop = true;
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

void OldTable::read(const QString& path) {
  if (writing())
    return;
  was_changed();
  table_.reset();
  show_columns();
  begin(Doing::reading, std::make_shared<Course>());
  aside_.run([path = Session::path_of(path)] { return exchange::read_old_table_file(path, {}); },
             [this](Result<CsvTable> table) {
               end();
               was_read(std::move(table));
             });
}

void OldTable::was_read(Result<CsvTable> table) {
  if (table) {
    match_.columns = exchange::guess(table->columns).columns; // what holds for all rows stays
    table_ = *std::move(table);
  } else {
    fault_ = fault_shown(table.error());
  }
  show_columns();
}

void OldTable::match(int column, const QString& field) {
  if (fixed() || !table_ || column < 0 || column >= static_cast<int>(table_->columns.size()))
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
  if (!meant || fixed())
    return;
  if (value.trimmed().isEmpty())
    match_.for_all.erase(*meant);
  else
    match_.for_all[*meant] = plain(value.trimmed());
  was_changed();
}

void OldTable::writeDates(const QString& order) {
  if (fixed())
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
  if (course_)
    course_->stop = true;
  aside_.forget();
  end();
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
          {static_cast<int>(fault.where ? fault.where->line : 0), fault_shown(fault), true});
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
  if (fixed())
    return;
  was_changed();
  if (table_ && session_ != nullptr && session_->is_open())
    try_out();
}

void OldTable::takeIn() {
  if (ready_ && session_->is_open())
    write();
}

double OldTable::done() const {
  return course_ ? course_->done.load() : 0;
}

void OldTable::stop() {
  if (reading())
    was_changed();
  else if (doing_ == Doing::writing)
    session_->stop();
  else if (course_)
    course_->stop = true;
}

void OldTable::begin(Doing what, std::shared_ptr<Course> course) {
  ready_ = false;
  doing_ = what;
  course_ = std::move(course);
  look_.start();
  emit changed();
  emit progressed();
}

void OldTable::end() {
  course_.reset();
  look_.stop();
  emit progressed();
}

void OldTable::try_out() {
  begin(Doing::trying, std::make_shared<Course>());
  aside_.run(taking_in({*table_, match_, exchange::Import::dry_run}, *session_, course_),
             [this, of = session_->path()](const Result<exchange::TableTaken>& taken) {
               end();
               if (session_->path() == of)
                 take(taken);
             });
}

void OldTable::write() {
  const auto course = std::make_shared<Course>();
  const auto wrote = [self = QPointer(this), session = session_, of = session_->path(),
                      file = file()](const Result<exchange::TableTaken>& taken) {
    // What came into a book that was closed meanwhile is seen when it is opened again.
    const bool open = session->path() == of;
    if (open && came_in(taken))
      tell(*session, file, *taken);
    if (self)
      self->wrote(open, taken);
    if (!came_in(taken) && !(self && open))
      session->set_fault(taken ? taken->faults.listed().front() : taken.error());
  };
  if (session_->work_long(tr("%1 comes into the book …").arg(file()), Touches::open_book, course,
                          taking_in({*table_, match_, exchange::Import::write}, *session_, course),
                          wrote))
    begin(Doing::writing, course);
}

void OldTable::wrote(bool still_open, const Result<exchange::TableTaken>& taken) {
  end();
  if (!still_open)
    return;
  if (!came_in(taken)) {
    take(taken);
    return;
  }
  said_ = QStringList{told_of(file(), *taken)};
  table_.reset();
  rows_.replace({});
  show_columns();
}

void OldTable::take(const Result<exchange::TableTaken>& taken) {
  if (taken)
    show(*taken);
  else
    fault_ = fault_shown(taken.error());
  ready_ = doing_ == Doing::trying && came_in(taken);
  emit changed();
}

} // namespace coneline::window
