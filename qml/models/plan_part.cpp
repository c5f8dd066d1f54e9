// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_part.h"

#include "labels/print/plan_pdf.h"
#include "wording.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>

namespace coneline::window {

PlanPart::PlanPart(QObject* parent) : QObject(parent), aside_(nullptr) {
  look_.setInterval(100);
  connect(&look_, &QTimer::timeout, this, &PlanPart::progressed);
}

PlanPart::~PlanPart() {
  stop();
}

void PlanPart::set_session(Session* session) {
  if (session == session_)
    return;
  session_ = session;
  if (session == nullptr)
    return;
  connect(session, &Session::changed, this, &PlanPart::book_changed);
  reckon();
}

void PlanPart::book_changed() {
  if (session_->is_open()) {
    reckon();
    return;
  }
  stop();
  aside_.forget();
  if (busy_)
    end();
  emit progressed();
}

void PlanPart::stop() {
  if (course_)
    course_->stop = true;
}

double PlanPart::done() const {
  return course_ ? course_->done.load() : 0;
}

bool PlanPart::begin() {
  if (session_ == nullptr || !session_->is_open())
    return false;
  stop();
  course_ = std::make_shared<Course>();
  busy_ = true;
  stopped_ = false;
  look_.start();
  emit progressed();
  return true;
}

void PlanPart::end() {
  busy_ = false;
  look_.stop();
  stopped_ = course_ && course_->stop;
  fault_.clear();
}

plan::ForecastRuns PlanPart::futures(int runs, Course& course) {
  return {runs, 1, 0, [runs, &course](int done) {
            course.done = static_cast<double>(done) / runs;
            return course.go_on();
          }};
}

void PlanPart::blame(const Fault& fault) {
  if (!stopped_)
    fault_ = fault_shown(fault);
}

bool PlanPart::keep(const std::function<Result<void>(store::Writing&)>& write) {
  entry_fault_.clear();
  if (session_ == nullptr)
    return false;
  const auto done = session_->keep(write);
  if (!done)
    return refuse_entry(done.error());
  emit entryTold();
  kept();
  return true;
}

bool PlanPart::refuse_entry(const Fault& fault) {
  auto said = fault;
  said.where.reset(); // it would name the field by its key
  entry_fault_ = fault_shown(said);
  emit entryTold();
  return false;
}

QVariantMap PlanPart::trimmed(const QVariantMap& typed) {
  auto words = typed;
  for (auto& word : words)
    word = word.toString().trimmed();
  return words;
}

QString PlanPart::beside(const QString& name) const {
  if (session_ == nullptr || session_->path().isEmpty())
    return name;
  return QFileInfo(session_->path()).absolutePath() + QLatin1Char('/') + name;
}

bool PlanPart::tell_saved(const QString& path, const Result<void>& written) {
  saved_ = written ? tr("Saved in %1").arg(path) : QString();
  save_fault_ = written ? QString() : fault_shown(written.error());
  emit savedChanged();
  return written.has_value();
}

bool PlanPart::save_paper(const QString& path, const report::PlanPaper& paper) {
  return tell_saved(path, report::write_paper(paper, session_->standing().registers.title,
                                              Session::path_of(path), labels::plan_pdf));
}

void PlanPart::copy_out(const std::string& tabs) {
  QGuiApplication::clipboard()->setText(text(tabs));
  saved_ = tr("Copied; paste it into a spreadsheet.");
  save_fault_.clear();
  emit savedChanged();
}

} // namespace coneline::window
