// SPDX-License-Identifier: GPL-3.0-or-later
#include "label_print.h"

#include "core/report/label_words.h"
#include "labels/commands/commands.h"
#include "labels/print/print_labels.h"
#include "listed.h"

#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>

namespace coneline::window {

namespace {

Result<std::vector<labels::LabelText>> texts_of(Session& session, const std::vector<Code>& codes) {
  const auto words = session.ask([&](store::Reading& reading) {
    return report::label_words(reading, reading.registers(), codes);
  });
  if (!words)
    return refuse(fault(session.fault().toStdString()));
  return labels::label_texts(*words);
}

Result<labels::Printed> to_printer(const QString& name, const std::vector<labels::LabelText>& texts,
                                   const labels::Stock& stock, labels::PrintOptions options) {
  QPrinter printer(QPrinterInfo::printerInfo(name), QPrinter::HighResolution);
  if (!printer.isValid())
    return refuse(
        fault("there is no printer of that name", "Save the labels as a file and print that."));
  printer.setFullPage(true);
  printer.setPageLayout(QPageLayout(QPageSize(QSizeF(stock.page_width, stock.page_height),
                                              QPageSize::Millimeter, {}, QPageSize::ExactMatch),
                                    QPageLayout::Portrait, QMarginsF(0, 0, 0, 0),
                                    QPageLayout::Millimeter));
  options.dpi = printer.resolution();
  QPainter painter(&printer);
  if (!painter.isActive())
    return refuse(fault("the printer took nothing", "Look whether it is on and has paper."));
  return labels::paint_labels(painter, texts, stock, options, [&] { return printer.newPage(); });
}

} // namespace

LabelPrint::LabelPrint(QObject* parent)
    : QObject(parent), stock_(labels::common_stocks().front()),
      rows_({"code", "what", "chosen"}, this) {
  connect(this, &LabelPrint::asked, this, &LabelPrint::read);
  connect(this, &LabelPrint::chosenChanged, this, &LabelPrint::lay_out);
  connect(this, &LabelPrint::stockChanged, this, &LabelPrint::lay_out);
}

void LabelPrint::set_session(Session* session) {
  session_ = session;
  emit asked();
}

void LabelPrint::set_station(const QString& station) {
  station_ = station;
  emit asked();
}

void LabelPrint::read() {
  listed_.clear();
  chosen_.clear();
  const auto first = Code::parse(first_.toStdString());
  if (first)
    chosen_.insert(*first);
  const auto station = first ? station_of(first->kind()) : station_named(station_);
  if (session_ != nullptr && session_->is_open() && !station_.isEmpty())
    for (const auto& thing : listed(session_->standing(), station, false))
      if (!thing.ended)
        listed_.emplace_back(thing.code, thing.group + QStringLiteral(" · ") + thing.what);
  if (first)
    std::ranges::stable_partition(listed_, [&](const auto& one) { return one.first == *first; });
  say({}, {});
  show();
}

void LabelPrint::show() {
  std::vector<Rows::Row> rows;
  for (const auto& [code, what] : listed_)
    rows.push_back({QString::fromStdString(code.text()), what, chosen_.contains(code)});
  rows_.replace(std::move(rows));
  emit chosenChanged();
}

void LabelPrint::lay_out() {
  constexpr int screen_dots = 150;
  preview_ = {};
  if (session_ != nullptr && !chosen_.empty()) {
    const auto picture =
        texts_of(*session_, codes()).and_then([&](const std::vector<labels::LabelText>& texts) {
          return labels::preview(texts, stock_, {screen_dots, start_}, 0, labels::Edges::shown);
        });
    if (picture)
      preview_ = *picture;
    else
      say({}, QString::fromStdString(picture.error().text()));
  }
  emit laidOut();
}

void LabelPrint::toggle(const QString& code) {
  if (const auto parsed = Code::parse(code.toStdString());
      parsed && !chosen_.insert(*parsed).second)
    chosen_.erase(*parsed);
  show();
}

void LabelPrint::chooseAll() {
  for (const auto& [code, what] : listed_)
    chosen_.insert(code);
  show();
}

void LabelPrint::chooseNone() {
  chosen_.clear();
  show();
}

QStringList LabelPrint::stocks() {
  QStringList names;
  for (const auto& stock : labels::common_stocks())
    names.push_back(QString::fromStdString(stock.name));
  return names;
}

void LabelPrint::set_stock(const QString& name) {
  for (const auto& stock : labels::common_stocks())
    if (stock.name == name.toStdString())
      stock_ = stock;
  emit stockChanged();
}

QStringList LabelPrint::printers() {
  return QPrinterInfo::availablePrinterNames();
}

QString LabelPrint::usualPath() const {
  if (session_ == nullptr || session_->path().isEmpty())
    return QStringLiteral("labels.pdf");
  return QFileInfo(session_->path()).absolutePath() + QStringLiteral("/labels.pdf");
}

std::vector<Code> LabelPrint::codes() const {
  std::vector<Code> codes;
  for (const auto& [code, what] : listed_)
    if (chosen_.contains(code))
      codes.push_back(code);
  return codes;
}

void LabelPrint::say(const QString& told, const QString& fault) {
  told_ = told;
  fault_ = fault;
  emit toldChanged();
}

bool LabelPrint::save(const QString& path) {
  if (session_ == nullptr)
    return false;
  const auto printed =
      texts_of(*session_, codes()).and_then([&](const std::vector<labels::LabelText>& texts) {
        return labels::print_pdf(path.toStdString(), texts, stock_, {600, start_});
      });
  if (!printed) {
    say({}, QString::fromStdString(printed.error().text()));
    return false;
  }
  say(tr("%n label(s) in %1", nullptr, printed->labels).arg(path), {});
  return true;
}

bool LabelPrint::print(const QString& printer) {
  if (session_ == nullptr)
    return false;
  const auto printed =
      texts_of(*session_, codes()).and_then([&](const std::vector<labels::LabelText>& texts) {
        return to_printer(printer, texts, stock_, {600, start_});
      });
  if (!printed) {
    say({}, QString::fromStdString(printed.error().text()));
    return false;
  }
  say(tr("%n label(s) sent to %1", nullptr, printed->labels).arg(printer), {});
  return true;
}

} // namespace coneline::window
