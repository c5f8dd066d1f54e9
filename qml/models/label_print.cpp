// SPDX-License-Identifier: GPL-3.0-or-later
#include "label_print.h"

#include "core/base/number.h"
#include "core/report/label_words.h"
#include "core/work/note_prints.h"
#include "labels/commands/commands.h"
#include "labels/print/print_labels.h"
#include "labels/print/test_page.h"
#include "listed.h"
#include "qml/devices/devices.h"
#include "wording.h"

#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>

namespace coneline::window {

namespace {

Result<std::vector<labels::LabelText>> texts_of(Session& session, const std::vector<Code>& codes,
                                                const book::LabelLayout& layout) {
  const auto words = session.ask([&](store::Reading& reading) {
    return report::label_words(reading, reading.registers(), codes);
  });
  if (!words)
    return refuse(fault(session.fault().toStdString()));
  return labels::label_texts(*words, layout);
}

Result<labels::Printed> to_printer(const QString& name, const std::vector<labels::LabelText>& texts,
                                   const labels::Stock& stock, labels::PrintOptions options) {
  const auto printer = devices().printer(name);
  if (!printer)
    return refuse(
        fault("there is no printer of that name", "Save the labels as a file and print that."));
  printer->setPageLayout(QPageLayout(QPageSize(QSizeF(stock.page_width, stock.page_height),
                                               QPageSize::Millimeter, {}, QPageSize::ExactMatch),
                                     QPageLayout::Portrait, QMarginsF(0, 0, 0, 0),
                                     QPageLayout::Millimeter));
  options.dpi = printer->logicalDpiX();
  QPainter painter(printer.get());
  if (!painter.isActive())
    return refuse(fault("the printer took nothing", "Look whether it is on and has paper."));
  return labels::paint_labels(painter, texts, stock, options, [&] { return printer->newPage(); });
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
  connect(session->speech(), &Speech::languageChanged, this, &LabelPrint::stocksChanged);
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
  read_stocks();
  const bool open = session_ != nullptr && session_->is_open();
  if (open && places_) {
    for (const auto& place : session_->standing().registers.places)
      listed_.emplace_back(place.code, QString::fromStdString(place.name));
  } else if (open && !station_.isEmpty())
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
        texts_of(*session_, codes(), layout_)
            .and_then([&](const std::vector<labels::LabelText>& texts) {
              return labels::preview(texts, stock_, {screen_dots, start_}, 0, labels::Edges::shown);
            });
    if (picture)
      preview_ = *picture;
    else
      say({}, fault_shown(picture.error()));
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

void LabelPrint::read_stocks() {
  if (session_ != nullptr && session_->is_open())
    if (auto records =
            session_->ask([](store::Reading& reading) { return reading.label_records(); }))
      records_ = *std::move(records);
  emit stocksChanged();
}

QStringList LabelPrint::stocks() const {
  QStringList names;
  for (const auto& stock : labels::stocks_of(records_))
    names.push_back(QString::fromStdString(stock.name));
  return names;
}

QStringList LabelPrint::layouts() const {
  QStringList names;
  for (const auto& layout : labels::layouts_of(records_))
    names.push_back(QString::fromStdString(layout.name));
  return names;
}

QStringList LabelPrint::stocks_said() const {
  QStringList names;
  for (const auto& stock : labels::stocks_of(records_))
    names.push_back(text(labels::name_said(stock)));
  return names;
}

QStringList LabelPrint::layouts_said() const {
  QStringList names;
  for (const auto& layout : labels::layouts_of(records_))
    names.push_back(text(labels::name_said(layout)));
  return names;
}

void LabelPrint::set_stock(const QString& name) {
  if (auto stock = labels::stock_named(records_, name.toStdString()))
    stock_ = *std::move(stock);
  start_ = std::min(start_, stock_.per_page());
  emit stockChanged();
}

void LabelPrint::set_layout(const QString& name) {
  if (auto layout = labels::layout_named(records_, name.toStdString()))
    layout_ = *std::move(layout);
  emit stockChanged();
}

QStringList LabelPrint::printers() {
  return devices().printers();
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

bool LabelPrint::told(const Result<void>& done, const QString& what) {
  say(done ? what : QString(), done ? QString() : fault_shown(done.error()));
  return done.has_value();
}

bool LabelPrint::send(
    const QString& to,
    const std::function<Result<labels::Printed>(const std::vector<labels::LabelText>&)>& print) {
  if (session_ == nullptr)
    return false;
  const auto wanted = codes();
  const auto printed = texts_of(*session_, wanted, layout_).and_then(print);
  if (!printed)
    return told(refuse(printed.error()), {});
  const auto counted = session_->keep([&](store::Writing& writing) {
    return work::note_prints(writing, wanted, session_->today(), stock_.name);
  });
  return told(counted, tr("%n label(s) in %1", nullptr, printed->labels).arg(to));
}

bool LabelPrint::save(const QString& path) {
  return send(path, [&](const std::vector<labels::LabelText>& texts) {
    return labels::print_pdf(path.toStdString(), texts, stock_, {600, start_});
  });
}

bool LabelPrint::print(const QString& printer) {
  return send(printer, [&](const std::vector<labels::LabelText>& texts) {
    return to_printer(
        printer, texts, stock_,
        {600, start_, labels::correction_of(records_, printer.toStdString(), stock_.name)});
  });
}

bool LabelPrint::saveTestPage(const QString& path) {
  const auto rulers = labels::print_test_page(path.toStdString(), stock_);
  if (!rulers)
    return told(refuse(rulers.error()), {});
  return told({},
              tr("a test page in %1: print it at 100 %, then say what its rulers measure: %2 mm "
                 "across, %3 mm down when true")
                  .arg(path)
                  .arg(rulers->across)
                  .arg(rulers->down));
}

bool LabelPrint::correct(const QString& printer, const QString& across, const QString& down) {
  if (session_ == nullptr)
    return false;
  const auto wide = read_number(across);
  const auto high = read_number(down);
  for (const auto* length : {&wide, &high})
    if (!*length)
      return told(refuse(length->error()), {});
  const bool kept = told(session_->keep([&](store::Writing& writing) -> Result<void> {
    auto put =
        writing.put(book::PrinterScale{{}, printer.toStdString(), stock_.name, *wide, *high});
    if (!put)
      return refuse(put.error());
    return {};
  }),
                         tr("%1 is corrected for this stock from now on").arg(printer));
  read_stocks();
  return kept;
}

namespace {

/// The form's fields, in the order in which they are asked for.
constexpr std::array<std::pair<const char*, double labels::Stock::*>, 9> lengths{
    {{"page_width", &labels::Stock::page_width},
     {"page_height", &labels::Stock::page_height},
     {"label_width", &labels::Stock::label_width},
     {"label_height", &labels::Stock::label_height},
     {"left", &labels::Stock::left},
     {"top", &labels::Stock::top},
     {"column_pitch", &labels::Stock::column_pitch},
     {"row_pitch", &labels::Stock::row_pitch},
     {"in_soil", &labels::Stock::in_soil}}};
constexpr std::array<std::pair<const char*, int labels::Stock::*>, 2> counts{
    {{"columns", &labels::Stock::columns}, {"rows", &labels::Stock::rows}}};

Result<labels::Stock> stock_typed(const QVariantMap& typed) {
  labels::Stock stock;
  stock.name = typed["name"].toString().trimmed().toStdString();
  const auto text = [&](const char* field) { return typed[field].toString().toStdString(); };
  for (const auto& [field, length] : lengths) {
    auto read = read_measure(Quantity::millimetres, typed[field].toString());
    if (!read)
      return refuse(read.error());
    stock.*length = *read;
  }
  for (const auto& [field, count] : counts) {
    auto read = parse_whole(text(field));
    if (!read)
      return refuse(read.error());
    stock.*count = static_cast<int>(std::clamp<std::int64_t>(*read, 0, 1000));
  }
  return stock;
}

} // namespace

QVariantMap LabelPrint::dimensions() const {
  QVariantMap typed{{"name", QString::fromStdString(stock_.name)}};
  for (const auto& [field, length] : lengths)
    typed[field] = written(Quantity::millimetres, stock_.*length);
  for (const auto& [field, count] : counts)
    typed[field] = QString::number(stock_.*count);
  return typed;
}

bool LabelPrint::enterStock(const QVariantMap& typed) {
  if (session_ == nullptr)
    return false;
  auto stock = stock_typed(typed);
  if (!stock)
    return told(refuse(stock.error()), {});
  if (auto sound = labels::check(*stock); !sound)
    return told(sound, {});
  for (const auto& known : records_.stocks)
    if (known.name == stock->name)
      stock->id = known.id;
  const auto kept = session_->keep([&](store::Writing& writing) -> Result<void> {
    auto put = writing.put(*stock);
    if (!put)
      return refuse(put.error());
    return {};
  });
  if (kept) {
    read_stocks();
    set_stock(QString::fromStdString(stock->name));
  }
  return told(kept, tr("%1 is in the book").arg(QString::fromStdString(stock->name)));
}

} // namespace coneline::window
