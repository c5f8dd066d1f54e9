// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_orders.h"

#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "deeds/answers.h"
#include "wording.h"

#include <QLocale>

#include <cmath>

namespace coneline::window {

namespace {

constexpr int months = 12; // a season
constexpr int runs = 4000;
constexpr double per_cent = 100;

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
    : PlanPart(parent), assurances_({"share", "word", "price", "chosen"}, this),
      lines_({"by", "what", "from", "price", "weight"}, this),
      offers_({"id", "good", "what", "price"}, this),
      goods_({"name", "onHand", "counted", "room", "keeps", "need"}, this) {}

void PlanOrders::reckon() {
  reckon_with(nullptr);
}

void PlanOrders::kept() {
  reckon_with(answer_ ? answer_->forecast : nullptr);
}

void PlanOrders::reckon_with(std::shared_ptr<const plan::Forecast> forecast) {
  ask(
      [today = session_ == nullptr ? Date() : session_->today(),
       forecast = std::move(forecast)](store::Reading& reading, Course& course) -> Result<Answer> {
        const auto registers = reading.registers();
        Answer answer;
        answer.records = reading.plan_records();
        answer.forecast = forecast;
        if (!answer.forecast) {
          const auto input =
              report::forecast_input(reading, today, months, report::assumptions_in(registers));
          auto drawn = plan::forecast_of(input, futures(runs, course));
          if (!drawn) {
            answer.fault = drawn.error();
            return answer;
          }
          answer.forecast = std::make_shared<const plan::Forecast>(*std::move(drawn));
        }
        answer.months = answer.forecast->months();
        for (const auto& series : answer.forecast->series())
          if (series.shown == plan::Shown::part)
            answer.parts.push_back(series.name);
        const auto& offers = answer.records.offers;
        const auto& goods = answer.records.goods;
        auto ordered = report::ordered(*answer.forecast, offers, goods, today,
                                       report::assurance_in(registers));
        if (!ordered) {
          answer.fault = ordered.error();
          return answer;
        }
        answer.ordered = *std::move(ordered);
        for (const auto share : report::usual_assurances()) {
          if (!course.go_on())
            break;
          if (auto one = report::ordered(*answer.forecast, offers, goods, today, share))
            answer.by_assurance.push_back(*std::move(one));
        }
        return answer;
      },
      [this](const Answer& answer) { take(answer); });
}

void PlanOrders::take(const Answer& answer) {
  answer_ = answer;
  if (answer.fault)
    blame(*answer.fault);
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

void PlanOrders::assure(double share) {
  keep([share](store::Writing& writing) {
    return writing.put(book::Figure{book::figure::plan_assurance, share});
  });
}

bool PlanOrders::enterOffer(const QVariantMap& typed) {
  const Subject subject{&session_->standing(), session_->today(), {}};
  Answers answers(subject, trimmed(typed));
  const auto or_else = [&](const char* field, double empty) {
    return answers.decimal(QLatin1String(field)).value_or(empty);
  };
  const auto least = answers.words("least").empty() ? 1 : answers.whole("least");
  book::Offer offer;
  offer.good = answers.words("good");
  offer.supplier = answers.words("supplier");
  offer.form = answers.one_of<book::Form>("form");
  offer.litres = answers.decimal("litres", Quantity::litres).value_or(0);
  offer.expansion = or_else("expansion", 1);
  const auto cost = answers.cents("price");
  offer.cents = cost.value_or(0);
  offer.delivery_cents = answers.cents("delivery").value_or(0);
  offer.lead_days = answers.whole("leadDays");
  offer.least = least;
  const auto weight = answers.decimal("kilograms", Quantity::kilograms);
  if (weight && *weight != 0)
    offer.kilograms = weight;
  if (answers.fault())
    return refuse_entry(*answers.fault());
  if (!cost)
    return refuse_entry(coneline::fault("an offer without a price", "Write what a pack costs."));
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
  const Subject subject{&session_->standing(), session_->today(), {}};
  Answers answers(subject, trimmed(typed));
  const auto on_hand = answers.decimal("onHand", Quantity::litres).value_or(0);
  const auto room = answers.decimal("room", Quantity::litres);
  const auto keeps =
      answers.words("keeps").empty() ? std::nullopt : std::optional(answers.whole("keeps"));
  if (answers.fault())
    return refuse_entry(*answers.fault());
  return keep([&](store::Writing& writing) -> Result<void> {
    book::Good good;
    for (const auto& known : writing.plan_records().goods)
      if (known.name == plain(name))
        good = known;
    good.name = plain(name);
    if (good.on_hand != on_hand || !good.counted)
      good.counted = session_->today();
    good.on_hand = on_hand;
    good.room = room;
    good.keeps = keeps;
    if (auto put = writing.put(good); !put)
      return refuse(put.error());
    return {};
  });
}

QString PlanOrders::usualPath(const QString& ending) const {
  return beside(QStringLiteral("order-list.") + ending);
}

report::PlanPaper PlanOrders::paper() const {
  return report::order_paper(*answer_->ordered, session_->standing().registers.title,
                             session_->today(), answer_->months);
}

bool PlanOrders::save(const QString& path) {
  return answer_ && answer_->ordered && save_paper(path, paper());
}

void PlanOrders::copy() {
  if (answer_ && answer_->ordered)
    copy_out(report::tabbed(paper().tables.front()));
}

} // namespace coneline::window
