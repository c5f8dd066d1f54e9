// SPDX-License-Identifier: GPL-3.0-or-later
#include "label_sheet.h"

#include "core/report/label_words.h"
#include "labels/commands/commands.h"
#include "station.h"
#include "wording.h"

#include <QFileInfo>
#include <QPageSize>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>

namespace coneline::window {

namespace {
constexpr int screen_dots = 150; ///< an inch, for the picture on the screen
}

LabelSheet::LabelSheet(QObject* parent) : QObject(parent), stock_(stocks().value(0)) {
  connect(this, &LabelSheet::asked, this, &LabelSheet::read);
  connect(this, &LabelSheet::stockChanged, this, &LabelSheet::lay_out);
}

void LabelSheet::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &LabelSheet::read);
  emit asked();
}

QStringList LabelSheet::stocks() {
  QStringList names;
  for (const auto& stock : labels::common_stocks())
    names << text(stock.name);
  return names;
}

QStringList LabelSheet::printers() {
  return QPrinterInfo::availablePrinterNames();
}

labels::Stock LabelSheet::chosen_stock() const {
  for (const auto& stock : labels::common_stocks())
    if (text(stock.name) == stock_)
      return stock;
  return labels::common_stocks().front();
}

std::vector<Code> LabelSheet::codes() const {
  if (const auto code = Code::parse(plain(about_)))
    return {*code};
  std::vector<Code> all;
  for (const auto& line : session_->standing().lots)
    if (!line.on_hand.empty() && station_key(station_of(line.lot.code.kind())) == about_)
      all.push_back(line.lot.code);
  return all;
}

void LabelSheet::read() {
  labels_.clear();
  fault_.clear();
  if (session_ && !about_.isEmpty()) {
    const auto& registers = session_->standing().registers;
    const auto words = session_->ask(
        [&](store::Reading& reading) { return report::label_words(reading, registers, codes()); });
    if (words)
      labels_ = labels::label_texts(*words);
  }
  lay_out();
}

void LabelSheet::lay_out() {
  preview_ = {};
  fault_.clear();
  if (!labels_.empty()) {
    const auto picture =
        labels::preview(labels_, chosen_stock(), {screen_dots, start_}, 0, labels::Edges::shown);
    if (picture)
      preview_ = *picture;
    else
      fault_ = text(picture.error().text());
  }
  emit laidOut();
}

QString LabelSheet::usualPath() const {
  return QFileInfo(Session::usualPath()).path() + "/labels-" + about_ + ".pdf";
}

bool LabelSheet::writePdf(const QString& path) {
  labels::PrintOptions options;
  options.start = start_;
  const auto file = Session::path_of(path).string();
  return tell(labels::print_pdf(file, labels_, chosen_stock(), options), "in " + text(file));
}

bool LabelSheet::print(const QString& name) {
  const auto stock = chosen_stock();
  QPrinter printer(QPrinterInfo::printerInfo(name), QPrinter::HighResolution);
  printer.setFullPage(true);
  printer.setPageSize(QPageSize(QSizeF(stock.page_width, stock.page_height), QPageSize::Millimeter,
                                text(stock.name), QPageSize::ExactMatch));
  printer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
  QPainter painter;
  if (!painter.begin(&printer))
    return tell(refuse(coneline::fault("the printer " + plain(name) + " does not answer",
                                       "See whether it is on, or write a PDF.")),
                {});
  return tell(labels::paint_labels(painter, labels_, stock, {printer.resolution(), start_},
                                   [&] { return printer.newPage(); }),
              "sent to " + name);
}

bool LabelSheet::tell(const Result<labels::Printed>& done, const QString& where) {
  if (!done)
    told_ = text(done.error().text());
  else {
    told_ = shown(std::int64_t(done->labels)) + (done->labels == 1 ? " label on " : " labels on ") +
            shown(std::int64_t(done->pages)) + (done->pages == 1 ? " page " : " pages ") + where;
    if (done->shortened > 0)
      told_ += QStringLiteral("; on %1 of them something is shortened").arg(done->shortened);
  }
  emit printed();
  return done.has_value();
}

} // namespace coneline::window
