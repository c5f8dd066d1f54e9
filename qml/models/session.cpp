// SPDX-License-Identifier: GPL-3.0-or-later
#include "session.h"

#include "core/store/copies.h"
#include "core/work/doubts.h"
#include "core/work/find_code.h"
#include "core/work/one_reading.h"
#include "core/work/reverse.h"
#include "entry_words.h"
#include "wording.h"

#include <QCoreApplication>
#include <QDir>
#include <QStandardPaths>
#include <QUrl>

#include <algorithm>
#include <random>
#include <utility>

namespace coneline::window {

namespace {
/// " in T1742Q": what an entry is about.
QString about(store::Reading& reading, const book::Entry& entry) {
  return entry.lot ? " · " + text(reading.lot(*entry.lot).code.text()) : QString();
}

} // namespace

std::filesystem::path Session::path_of(const QString& typed) {
  const QUrl address(typed);
  const auto path = address.isLocalFile() ? address.toLocalFile() : typed.trimmed();
  return path.toStdString();
}

const work::LotLine* Standing::lot(const Code& code) const {
  const auto found = std::ranges::find_if(lots, [&](const auto& l) { return l.lot.code == code; });
  return found == lots.end() ? nullptr : &*found;
}

const work::ConeLine* Standing::cone(const Code& code) const {
  const auto* course = cone_course(code);
  return course ? &course->line : nullptr;
}

const work::ConeCourse* Standing::cone_course(const Code& code) const {
  const auto found =
      std::ranges::find_if(cones, [&](const auto& c) { return c.line.cone.code == code; });
  return found == cones.end() ? nullptr : &*found;
}

const work::PollenLine* Standing::pollen_lot(const Code& code) const {
  const auto found =
      std::ranges::find_if(pollen, [&](const auto& line) { return line.lot.code == code; });
  return found == pollen.end() ? nullptr : &*found;
}

bool Standing::knows(const Code& code) const {
  return work::registered(registers, code) || lot(code) != nullptr;
}

Session::Session(Date today, QObject* parent)
    : QObject(parent), today_(today),
      stations_({"key", "word", "onHand", "thickness", "due"}, this) {
  tell_stations();
  Workers::all().tell_faults_by([self = QPointer<Session>(this)](const Fault& fault) {
    if (self)
      self->set_fault(fault);
  });
  constexpr int between_looks = 100; // ms
  watch_.setInterval(between_looks);
  connect(&watch_, &QTimer::timeout, this, [this] {
    if (done() != std::exchange(seen_done_, done()))
      emit progressed();
  });
  connect(&speech_, &Speech::changed, this, [this] {
    read_anew();
    if (book_ && !undo_.empty())
      recall_last();
  });
}

Session::~Session() {
  if (course_)
    course_->stop = true;
}

bool Session::may_open() {
  if (replacing_)
    set_fault(wait_for_it());
  return !replacing_;
}

bool Session::openBook(const QString& path) {
  return may_open() && take(store::Book::open(path_of(path), store::Access::write));
}

bool Session::makeBook(const QString& path, const QString& nursery) {
  if (!may_open())
    return false;
  const auto file = path_of(path);
  QDir().mkpath(QString::fromStdString(file.parent_path().string()));
  std::random_device chance;
  book::Title title;
  title.name = plain(nursery);
  title.series = std::uniform_int_distribution(10, 99)(chance);
  title.made_on = today_;
  return take(store::Book::make(file, title));
}

void Session::close() {
  Aside::another_book();
  book_.reset();
  standing_ = std::make_shared<const Standing>();
  undo_.clear();
  told_.clear();
  tell_stations();
  emit changed();
  emit toldChanged();
}

Fault Session::wait_for_it() const {
  return book_fault(phrase("Wait until this is done: {}", underway_));
}

bool Session::may_begin_long() {
  if (underway_.isEmpty())
    return true;
  set_fault(wait_for_it());
  return false;
}

bool Session::begin_long(const QString& said, Touches touches, std::shared_ptr<Course> course) {
  if (!may_begin_long())
    return false;
  course_ = std::move(course);
  underway_ = said;
  if (touches == Touches::open_book)
    written_ = path();
  seen_done_ = 0;
  watch_.start();
  emit underwayChanged();
  emit progressed();
  return true;
}

void Session::end_long() {
  if (fault_ == fault_shown(wait_for_it()))
    forgetFault();
  course_.reset();
  watch_.stop();
  underway_.clear();
  written_.clear();
  emit underwayChanged();
  emit progressed();
}

bool Session::stoppable() const {
  return course_ && course_->go_on() && course_->done < 1;
}

double Session::done() const {
  return course_ ? course_->done.load() : 0;
}

void Session::stop() {
  if (course_)
    course_->stop = true;
  emit progressed();
}

void Session::end() {
  stop();
  while (!underway_.isEmpty()) {
    Workers::all().wait();
    QCoreApplication::sendPostedEvents();
  }
}

Result<void> Session::follow(const QString& from, const QString& to) {
  if (path() != from)
    return {};
  if (!openBook(to))
    return refuse(book_fault(plain(fault_)));
  if (written_ == from)
    written_ = to;
  return {};
}

void Session::set_outcome(const QString& outcome) {
  outcome_ = outcome;
  emit outcomeChanged();
}

bool Session::replace_file(const QString& path, const QString& said, std::shared_ptr<Course> course,
                           std::function<Result<void>()> work,
                           std::function<void(const Result<void>&)> take) {
  if (!may_begin_long())
    return false;
  replacing_ = true;
  if (is_open())
    close(); // before the work begins, which wants the file for itself
  auto alone = [file = path_of(path), course, work = std::move(work)] {
    Aside::wait_for_readers(file, course.get());
    auto done = work();
    if (done)
      store::make_due_copy(file); // what is wrong with the file, its opening tells
    return done;
  };
  return work_long(said, Touches::nothing, std::move(course), std::move(alone),
                   [this, path, take = std::move(take)](const Result<void>& done) {
                     replacing_ = false;
                     openBook(path);
                     if (!done)
                       set_fault(done.error());
                     take(done);
                   });
}

QString Session::usualPath() {
  return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
      .filePath(QStringLiteral("nursery.coneline"));
}

bool Session::take(Result<store::Book> book) {
  if (!book) {
    set_fault(book.error());
    return false;
  }
  Aside::another_book();
  book_.emplace(std::move(*book));
  undo_.clear();
  told_.clear();
  forgetFault();
  set_outcome({});
  read_anew();
  recall_last();
  if (const auto& not_copied = book_->not_copied()) { // who counts on its copies has to know
    auto told = *not_copied;
    told.what = phrase("the book is open, but the copy that was due could not be made: {}",
                       not_copied->what);
    set_fault(told);
  }
  return true;
}

std::optional<Fault> Session::unwritable() const {
  if (!book_)
    return replacing_ ? wait_for_it() : book_fault("no book is open", "Open a book first.");
  // Another book may have been opened meanwhile.
  return written_.isEmpty() || written_ != path() ? std::nullopt : std::optional(wait_for_it());
}

Result<work::Done> Session::act(const std::function<Result<work::Done>(store::Book&)>& act) {
  if (auto why = unwritable())
    return refuse(*std::move(why));
  auto done = act(*book_);
  if (!done)
    return done;
  remember(done->entries);
  told_ = text(done->told);
  for (const auto& doubt : work::doubts(*book_, *done, today_))
    told_ += u' ' + text(doubt);
  read_anew();
  emit toldChanged();
  return done;
}

Result<work::Done> Session::done_aside(work::Done done) {
  return act([&](store::Book&) { return Result<work::Done>(std::move(done)); });
}

Result<void> Session::keep(const std::function<Result<void>(store::Writing&)>& keep) {
  if (auto why = unwritable())
    return refuse(*std::move(why));
  return book_->write(keep);
}

Result<void> Session::keep(const std::function<Result<void>(store::Book&)>& act) {
  if (auto why = unwritable())
    return refuse(*std::move(why));
  return act(*book_);
}

bool Session::undo() {
  if (stays_)
    return false;
  while (!undo_.empty()) {
    const auto last = undo_.back();
    const auto rest = std::vector(undo_.begin(), undo_.end() - 1);
    if (!reverse(last.value))
      return false;
    undo_ = rest;
  }
  emit toldChanged();
  return true;
}

bool Session::reverse(qlonglong entry) {
  const auto done = act([&](store::Book& book) {
    return work::reverse(book, {book::EntryId{entry}, {}, {}});
  });
  if (!done) {
    set_fault(done.error());
    return false;
  }
  undo_.clear(); // a reversal is not reversed
  forgetFault();
  emit toldChanged();
  return true;
}

void Session::read_anew() {
  const auto today = today_;
  auto standing = ask([today](store::Reading& reading) {
    Standing now;
    now.today = today;
    now.registers = reading.registers();
    work::OneReading once(reading, now.registers, today);
    now.due = work::due_on(once);
    now.on_hand = work::on_hand(once);
    now.lots = once.take_lot_lines();
    now.cones = once.take_cone_courses();
    now.pollen = once.take_pollen_lines();
    return now;
  });
  if (standing)
    standing_ = std::make_shared<const Standing>(std::move(*standing));
  tell_stations();
  emit changed();
}

void Session::recall_last() {
  using Last = std::optional<std::pair<QString, book::EntryId>>;
  const auto last = ask([this](store::Reading& reading) -> Last {
    for (const auto& entry : reading.last_entries(1))
      if (!entry.reverses && !reading.reversed_by(entry.id))
        return std::pair(said(reading, standing_->registers, entry) + about(reading, entry),
                         entry.id);
    return std::nullopt;
  });
  if (last && *last) {
    told_ = (*last)->first;
    remember({(*last)->second});
  }
  emit toldChanged();
}

/// Nothing is promised to be undone of which a part would stay.
void Session::remember(std::vector<book::EntryId> entries) {
  stays_ = !ask([&](store::Reading& reading) {
              return work::can_be_reversed(reading, entries);
            }).value_or(true);
  undo_ = std::move(entries);
}

bool Session::is_empty() const {
  return standing_->registers.plants.empty() && standing_->lots.empty();
}

QString Session::name() const {
  return text(standing_->registers.title.name);
}

QString Session::path() const {
  return book_ ? QString::fromStdString(book_->path().string()) : QString();
}

QString Session::today_shown() const {
  return shown(today_);
}

void Session::set_look(const QString& look) {
  if (look == look_)
    return;
  look_ = look;
  emit lookChanged();
}

void Session::set_fault(const Fault& fault) {
  fault_ = fault_shown(fault);
  emit faultChanged();
}

void Session::forgetFault() {
  fault_.clear();
  emit faultChanged();
}

} // namespace coneline::window
