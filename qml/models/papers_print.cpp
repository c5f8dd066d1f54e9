// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers_print.h"

#include "labels/print/papers_pdf.h"
#include "wording.h"

#include <QFileInfo>

namespace coneline::window {

namespace {

QString subject_of(const report::StandingSale& sale) {
  return QObject::tr("sale of %1: %2%3, entry %4")
      .arg(shown(sale.date), shown(sale.count),
           sale.buyer.empty() ? QString() : QObject::tr(" to %1").arg(text(sale.buyer)),
           QString::number(sale.entry.value));
}

} // namespace

PapersPrint::PapersPrint(QObject* parent) : QObject(parent) {
  connect(this, &PapersPrint::asked, this, [this] {
    sales_.clear();
    missing_.clear();
    say({}, {});
    emit read();
  });
}

bool PapersPrint::offered() const {
  const auto code = Code::parse(plain(code_));
  return code && code->kind() != Kind::pollen && code->kind() != Kind::place;
}

void PapersPrint::open() {
  const auto code = Code::parse(plain(code_));
  if (session_ == nullptr || !code)
    return;
  const auto sales =
      session_->ask([&](store::Reading& reading) { return report::sales_of(reading, *code); });
  sales_ = sales.value_or(std::vector<report::StandingSale>{});
  emit read();
}

QStringList PapersPrint::subjects() const {
  QStringList subjects{code_};
  for (const auto& sale : sales_)
    subjects << subject_of(sale);
  return subjects;
}

std::optional<report::StandingSale> PapersPrint::sale_of(const QString& subject) const {
  for (const auto& sale : sales_)
    if (subject_of(sale) == subject)
      return sale;
  return std::nullopt;
}

QString PapersPrint::usualPath(const QString& subject) const {
  const auto sale = sale_of(subject);
  const auto name = sale ? QStringLiteral("papers-sale-%1.pdf").arg(sale->entry.value)
                         : QStringLiteral("papers-%1.pdf").arg(code_);
  if (session_ == nullptr || session_->path().isEmpty())
    return name;
  return QFileInfo(session_->path()).absolutePath() + QLatin1Char('/') + name;
}

bool PapersPrint::save(const QString& subject, const QString& path) {
  const auto code = Code::parse(plain(code_));
  if (session_ == nullptr || !code)
    return false;
  report::PapersAsked asked;
  asked.printed = session_->today();
  if (const auto sale = sale_of(subject))
    asked.sale = sale->entry;
  else
    asked.code = *code;
  missing_.clear();
  const auto papers =
      session_->ask([&](store::Reading& reading) { return report::papers(reading, asked); });
  if (!papers) {
    say({}, session_->fault());
    return false;
  }
  const auto printed = labels::papers_pdf(plain(path), *papers);
  if (!printed) {
    say({}, fault_shown(printed.error()));
    return false;
  }
  for (const auto& what : papers->missing)
    missing_ << text(what);
  say(tr("%n page(s) in %1, which only you can read", nullptr, printed->pages).arg(path), {});
  return true;
}

void PapersPrint::say(const QString& told_now, const QString& fault) {
  told_ = told_now;
  fault_ = fault;
  emit told();
}

} // namespace coneline::window
