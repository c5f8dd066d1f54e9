// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_orders.h"

#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/whole_file.h"
#include "labels/print/plan_pdf.h"
#include "wording.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>

#include <cmath>

namespace coneline::window {

namespace {

constexpr int months = 12; // a season
constexpr int runs = 4000;
constexpr double per_cent = 100;

/// A number or a measure as it was typed; `empty` where there is none.
Result<double> number(const QVariantMap& typed, const char* field, double empty,
                      std::optional<Quantity> of = {}) {
  const auto written = typed.value(QLatin1String(field)).toString().trimmed();
  if (written.isEmpty())
    return empty;
  return of ? read_measure(*of, written) : read_number(written);
}

QString price(double cents) {
  return QLocale().toString(cents / per_cent, 'f', 2);
}

QString pack_of(const book::Offer& offer) {
  const auto form = offer.form == book::Form::bag    ? PlanOrders::tr("bag of %1")
                    : offer.form == book::Form::bulk ? PlanOrders::tr("load of %1")
                                                     : PlanOrders::tr("bale of %1");
  auto said = form.arg(shown(Quantity::litres, offer.litres, 0));
  if (offer.expansion > 1)
    said += PlanOrders::tr(", %1 loose").arg(shown(Quantity::litres, offer.loose_litres(), 0));
  return said;
}

QString packs_of(const plan::OrderLine& line) {
  switch (line.form) {
  case book::Form::bag:
    return PlanOrders::tr("%n bag(s)", nullptr, static_cast<int>(line.packs));
  case book::Form::bulk:
    return PlanOrders::tr("%n load(s)", nullptr, static_cast<int>(line.packs));
  case book::Form::bale:
    return PlanOrders::tr("%n bale(s)", nullptr, static_cast<int>(line.packs));
  }
  return {};
}

} // namespace

PlanOrders::PlanOrders(QObject* parent)
    : QObject(parent), assurances_({"share", "word", "price", "chosen"}, this),
      lines_({"by", "what", "from", "price", "weight"}, this),
      offers_({"id", "good", "what", "price"}, this),
      goods_({"name", "onHand", "counted", "room", "keeps", "need"}, this), aside_(nullptr) {}

PlanOrders::~PlanOrders() {
  if (stop_)
    *stop_ = true;
}

void PlanOrders::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &PlanOrders::reckon);
  reckon();
}

void PlanOrders::reckon() {
  if (session_ == nullptr || !session_->is_open())
    return;
  if (stop_)
    *stop_ = true;
  stop_ = std::make_shared<std::atomic<bool>>(false);
  busy_ = true;
  emit told();
  aside_.ask(
      session_->path().toStdString(),
      [today = session_->today(), stop = stop_](store::Reading& reading) -> Result<Answer> {
        const auto registers = reading.registers();
        const auto input =
            report::forecast_input(reading, today, months, report::assumptions_in(registers));
        const auto forecast = plan::forecast_of(input, {runs, 1, 0, [&](int) { return !*stop; }});
        Answer answer;
        answer.records = reading.plan_records();
        if (!forecast) {
          answer.fault = forecast.error();
          return answer;
        }
        answer.months = forecast->months();
        for (const auto& series : forecast->series())
          if (series.shown == plan::Shown::part)
            answer.parts.push_back(series.name);
        const auto& offers = answer.records.offers;
        const auto& goods = answer.records.goods;
        auto ordered =
            report::ordered(*forecast, offers, goods, today, report::assurance_in(registers));
        if (!ordered) {
          answer.fault = ordered.error();
          return answer;
        }
        answer.ordered = *std::move(ordered);
        for (const auto share : report::usual_assurances()) {
          if (*stop)
            break;
          if (auto one = report::ordered(*forecast, offers, goods, today, share))
            answer.by_assurance.push_back(*std::move(one));
        }
        return answer;
      },
      [this](Result<Answer> answer) {
        busy_ = false;
        fault_.clear();
        if (answer)
          take(*answer);
        else
          fault_ = text(answer.error().text());
        emit told();
      });
}

void PlanOrders::take(const Answer& answer) {
  answer_ = answer;
  if (answer.fault)
    fault_ = text(answer.fault->text());
  parts_.clear();
  for (const auto& part : answer.parts)
    parts_ << text(part);
  std::vector<Rows::Row> lines;
  std::vector<Rows::Row> assurances;
  if (answer.ordered)
    for (const auto& line : answer.ordered->list.lines)
      lines.push_back(
          {shown(line.order_by),
           packs_of(line) + QStringLiteral(" ") + text(line.good) + QStringLiteral(", ") +
               shown(Quantity::litres, line.litres, 0),
           text(line.supplier), price(static_cast<double>(line.cents)),
           line.kilograms ? shown(Quantity::kilograms, *line.kilograms, 0) : QString()});
  for (const auto& one : answer.by_assurance)
    assurances.push_back(
        {one.assurance, tr("%1 %").arg(shown(per_cent * one.assurance, 0)), price(one.list.cents),
         answer.ordered && std::abs(answer.ordered->assurance - one.assurance) < 1e-9});
  lines_.replace(std::move(lines));
  assurances_.replace(std::move(assurances));
  tell_lists(answer);
}

void PlanOrders::tell_lists(const Answer& answer) {
  std::vector<Rows::Row> offers;
  for (const auto& offer : answer.records.offers) {
    auto what = text(offer.supplier) + QStringLiteral(" · ") + pack_of(offer);
    if (offer.delivery_cents > 0)
      what += tr(" · delivery %1").arg(price(static_cast<double>(offer.delivery_cents)));
    if (offer.lead_days > 0)
      what += tr(" · %n day(s)", nullptr, offer.lead_days);
    if (offer.least > 1)
      what += tr(" · at least %1").arg(shown(offer.least));
    offers.push_back({static_cast<qlonglong>(offer.id.value), text(offer.good), what,
                      price(static_cast<double>(offer.cents))});
  }
  std::vector<Rows::Row> goods;
  for (const auto& part : answer.parts) {
    const auto found = std::ranges::find(answer.records.goods, part, &book::Good::name);
    const bool known = found != answer.records.goods.end();
    QString need;
    if (answer.ordered)
      for (const auto& good : answer.ordered->goods)
        if (good.good == part) {
          double sum = 0;
          for (const auto litres : good.litres)
            sum += litres;
          need = tr("%1 in 12 months").arg(shown(Quantity::litres, sum, 0));
        }
    goods.push_back({text(part), known ? written(Quantity::litres, found->on_hand) : QString(),
                     known && found->counted ? shown(*found->counted) : QString(),
                     known && found->room ? written(Quantity::litres, *found->room) : QString(),
                     known && found->keeps ? QString::number(*found->keeps) : QString(), need});
  }
  offers_.replace(std::move(offers));
  goods_.replace(std::move(goods));
}

QString PlanOrders::summary() const {
  if (!answer_ || !answer_->ordered)
    return {};
  if (answer_->ordered->list.lines.empty())
    return tr("Nothing has to be ordered for the next twelve months.");
  return tr("%1 in all, for the next twelve months").arg(price(answer_->ordered->list.cents));
}

QString PlanOrders::proof() const {
  if (!answer_ || !answer_->ordered)
    return {};
  const auto& one = *answer_->ordered;
  return tr("Nothing runs short in %1 of 100 futures. No list costs less than %2 (gap %3 %).")
      .arg(shown(per_cent * one.held, 1), price(one.list.bound), shown(per_cent * one.list.gap, 2));
}

bool PlanOrders::keep(const std::function<Result<void>(store::Writing&)>& write) {
  entry_fault_.clear();
  if (session_ == nullptr)
    return false;
  const auto kept = session_->keep(write);
  if (!kept)
    entry_fault_ = text(kept.error().text());
  emit entryTold();
  if (kept)
    reckon();
  return kept.has_value();
}

void PlanOrders::assure(double share) {
  keep([share](store::Writing& writing) {
    return writing.put(book::Figure{book::figure::plan_assurance, share});
  });
}

bool PlanOrders::enterOffer(const QVariantMap& typed) {
  const auto read = [&](const char* field, double empty) { return number(typed, field, empty); };
  const auto litres = number(typed, "litres", 0, Quantity::litres);
  const auto cost = read("price", -1);
  const auto expansion = read("expansion", 1);
  const auto delivery = read("delivery", 0);
  const auto days = read("leadDays", 0);
  const auto least = read("least", 1);
  const auto weight = number(typed, "kilograms", 0, Quantity::kilograms);
  for (const auto* one : {&litres, &cost, &expansion, &delivery, &days, &least, &weight})
    if (!*one) {
      entry_fault_ = text(one->error().text());
      emit entryTold();
      return false;
    }
  book::Offer offer;
  offer.good = plain(typed.value("good").toString().trimmed());
  offer.supplier = plain(typed.value("supplier").toString().trimmed());
  const auto form = typed.value("form").toString();
  offer.form = form == "bulk"   ? book::Form::bulk
               : form == "bale" ? book::Form::bale
                                : book::Form::bag;
  offer.litres = *litres;
  offer.expansion = *expansion;
  offer.cents = std::llround(*cost * per_cent);
  offer.delivery_cents = std::llround(*delivery * per_cent);
  offer.lead_days = static_cast<int>(*days);
  offer.least = std::llround(*least);
  if (*weight != 0)
    offer.kilograms = *weight;
  return keep([&](store::Writing& writing) -> Result<void> {
    if (auto put = writing.put(offer); !put)
      return refuse(put.error());
    return {};
  });
}

void PlanOrders::strikeOffer(qlonglong id) {
  keep([id](store::Writing& writing) -> Result<void> {
    writing.take_out(book::OfferId{id});
    return {};
  });
}

bool PlanOrders::enterGood(const QString& name, const QVariantMap& typed) {
  const auto on_hand = number(typed, "onHand", 0, Quantity::litres);
  const auto room = number(typed, "room", -1, Quantity::litres);
  const auto keeps = number(typed, "keeps", -1);
  for (const auto* one : {&on_hand, &room, &keeps})
    if (!*one) {
      entry_fault_ = text(one->error().text());
      emit entryTold();
      return false;
    }
  return keep([&](store::Writing& writing) -> Result<void> {
    book::Good good;
    for (const auto& known : writing.plan_records().goods)
      if (known.name == plain(name))
        good = known;
    good.name = plain(name);
    if (good.on_hand != *on_hand || !good.counted)
      good.counted = session_->today();
    good.on_hand = *on_hand;
    good.room = *room < 0 ? std::nullopt : std::optional(*room);
    good.keeps = *keeps < 0 ? std::nullopt : std::optional(static_cast<int>(*keeps));
    if (auto put = writing.put(good); !put)
      return refuse(put.error());
    return {};
  });
}

QString PlanOrders::usualPath(const QString& ending) const {
  const auto name = QStringLiteral("order-list.") + ending;
  if (session_ == nullptr || session_->path().isEmpty())
    return name;
  return QFileInfo(session_->path()).absolutePath() + QLatin1Char('/') + name;
}

bool PlanOrders::save(const QString& path) {
  saved_.clear();
  save_fault_.clear();
  if (answer_ && answer_->ordered) {
    const auto& title = session_->standing().registers.title;
    const auto paper =
        report::order_paper(*answer_->ordered, title, session_->today(), answer_->months);
    const auto written =
        report::write_paper(paper, title, Session::path_of(path), labels::plan_pdf);
    if (written)
      saved_ = tr("Saved in %1").arg(path);
    else
      save_fault_ = text(written.error().text());
  }
  emit savedChanged();
  return !saved_.isEmpty();
}

void PlanOrders::copy() {
  if (!answer_ || !answer_->ordered)
    return;
  const auto paper = report::order_paper(*answer_->ordered, session_->standing().registers.title,
                                         session_->today(), answer_->months);
  QGuiApplication::clipboard()->setText(text(report::tabbed(paper.tables.front())));
  saved_ = tr("Copied; paste it into a spreadsheet.");
  save_fault_.clear();
  emit savedChanged();
}

} // namespace coneline::window
