// SPDX-License-Identifier: GPL-3.0-or-later
#include "at_table.h"

#include "wording.h"

namespace coneline::window {

namespace {

const QString lost = QStringLiteral("lost");
const QString floating = QStringLiteral("float");
const QString again = QStringLiteral("again");
const QString sinkers = QStringLiteral("sinkers");
const QString floaters = QStringLiteral("floaters");

} // namespace

AtTable::AtTable(QObject* parent)
    : QObject(parent), pieces_({"label", "count", "figure", "role", "share"}, this),
      ranges_({"label", "figure", "likely", "low", "high", "at", "hint"}, this),
      choices_({"label", "plants", "cost", "gain", "chosen"}, this) {
  connect(this, &AtTable::asked, this, &AtTable::begin);
  connect(this, &AtTable::counted, this, &AtTable::reckon);
}

void AtTable::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &AtTable::read);
  emit asked();
}

void AtTable::begin() {
  load();
  reset();
}

void AtTable::reset() {
  doing_.clear();
  fault_.clear();
  first_ = second_ = 0;
  emit counted();
}

void AtTable::set_doing(const QString& doing) {
  if (doing == doing_)
    return;
  doing_ = doing;
  fault_.clear();
  first_ = second_ = 0;
  emit doingChanged();
  emit counted();
}

QString AtTable::first_says() const {
  if (doing_ == lost)
    return tr("lost in cleaning");
  if (doing_ == floating)
    return tr("sank");
  if (doing_ == again)
    return tr("sink now");
  return tr("cut, filled");
}

QString AtTable::second_says() const {
  if (doing_ == lost || doing_ == again)
    return {};
  return doing_ == floating ? tr("floated") : tr("cut, empty");
}

std::optional<work::TableCount> AtTable::counting() const {
  using What = work::TableCount::What;
  if (!pending())
    return std::nullopt;
  const auto what = doing_ == lost       ? What::lost
                    : doing_ == floating ? What::floated
                    : doing_ == again    ? What::again
                    : doing_ == sinkers  ? What::sinkers
                                         : What::floaters;
  return work::TableCount{what, Count::sure(std::max(first_, 0)),
                          Count::sure(std::max(second_, 0))};
}

void AtTable::load() {
  ground_.reset();
  const auto code = Code::parse(plain(batch_));
  if (!session_ || !session_->is_open() || !code || code->kind() != Kind::batch)
    return;
  ground_ = session_->ask([&](store::Reading& reading) {
    return report::harvest_ground(reading, *code, session_->today());
  });
}

void AtTable::read() {
  load();
  reckon();
}

void AtTable::reckon() {
  if (!ground_)
    return;
  report::HarvestAsked asked;
  asked.figures = report::figures_in(ground_->registers);
  asked.counting = counting();
  const auto view = report::harvest_view(*ground_, asked);
  fault_ = view ? QString() : fault_shown(view.error());
  if (view)
    tell(*view);
  emit told();
}

void AtTable::offer_doings(const work::HarvestTable& table) {
  doings_.clear();
  if (table.unsorted > 0 || doing_ == lost || doing_ == floating)
    doings_ << lost << floating;
  if (table.empty.on_hand > 0 || doing_ == again || doing_ == floaters)
    doings_ << again;
  if (table.filled.on_hand > 0 || doing_ == sinkers)
    doings_ << sinkers;
  if (table.empty.on_hand > 0 || doing_ == floaters)
    doings_ << floaters;
  if (!doing_.isEmpty() || doings_.isEmpty())
    return;
  doing_ = table.unsorted > 0                                   ? (table.cleaned ? floating : lost)
           : table.empty.on_hand > 0 && table.empty.opened == 0 ? floaters
                                                                : sinkers;
  if (!doings_.contains(doing_))
    doing_ = doings_.last();
  emit doingChanged();
}

void AtTable::tell(const report::HarvestView& view) {
  title_ = origin_shown(view.table.origin.name);
  next_ = text(view.next);
  float_told_ =
      tr("Float test: %1. ").arg(text(book::said(view.float_test))) + text(view.history.told);
  suggestion_ = view.history.suggested
                    ? tr("Set it to: %1").arg(text(book::said(*view.history.suggested)))
                    : QString();
  decision_ = text(view.decision_told);
  offer_doings(view.table);
  tell_pieces(view.table);
  tell_ranges(view);
  tell_choices(view);
}

void AtTable::tell_pieces(const work::HarvestTable& table) {
  const auto total = static_cast<double>(std::max<std::int64_t>(1, table.counted));
  std::vector<Rows::Row> rows;
  const auto piece = [&](const QString& label, std::int64_t count, const char* role) {
    if (count > 0)
      rows.push_back({label, qlonglong(count), shown(count), role,
                      std::clamp(static_cast<double>(count) / total, 0.0, 1.0)});
  };
  piece(tr("judged filled"), table.filled.on_hand, "act");
  piece(tr("judged empty"), table.empty.on_hand, "lost");
  piece(tr("unsorted"), table.unsorted, "quiet");
  piece(tr("opened"), table.opened(), "ink");
  piece(tr("lost in cleaning"), table.lost, "lost");
  piece(tr("sown"), table.sown, "forecast");
  piece(tr("discarded"), table.discarded, "lost");
  piece(tr("dead, sold or missing"), table.other, "lost");
  total_ = shown(table.counted);
  pieces_.replace(std::move(rows));
}

void AtTable::tell_ranges(const report::HarvestView& view) {
  std::vector<Rows::Row> rows;
  const auto row = [&](const QString& label, std::int64_t seeds, const stats::Filled& filled,
                       const QString& hint) {
    if (seeds == 0)
      return;
    const auto of = static_cast<double>(seeds);
    rows.push_back({label, range(filled.low, filled.high) + tr(" of %1").arg(shown(seeds)),
                    filled.estimate ? tr("likely %1").arg(shown(*filled.estimate, 0)) : QString(),
                    static_cast<double>(filled.low) / of, static_cast<double>(filled.high) / of,
                    filled.estimate ? *filled.estimate / of : -1.0, hint});
  };
  const auto hint = [&](const report::PartView& part) {
    const auto more = part.open_for_tenth - part.part.opened;
    QString told = part.part.opened == 0
                       ? tr("none cut open")
                       : tr("%1 of %2 cut open were filled")
                             .arg(shown(part.part.opened_filled), shown(part.part.opened));
    if (more > 0 && part.part.opened_filled == 0 && part.part.on_hand > 0)
      told +=
          tr("; %1 more would show a tenth filled").arg(shown(std::min(more, part.part.on_hand)));
    if (part.filled_by_opening && *part.filled_by_opening > 0)
      told += tr("; 10 more cost about %1 good").arg(shown(*part.filled_by_opening, 1));
    return told;
  };
  row(tr("filled of what sank"), view.sank.part.seeds, view.sank.filled, hint(view.sank));
  row(tr("filled of what floated"), view.floated.part.seeds, view.floated.filled,
      hint(view.floated));
  const auto& table = view.table;
  const auto left =
      table.filled.seeds + table.empty.seeds - table.filled.opened - table.empty.opened;
  row(tr("filled and whole, both parts"), left, view.judged.left, QString());
  ranges_.replace(std::move(rows));
}

void AtTable::tell_choices(const report::HarvestView& view) {
  std::vector<Rows::Row> rows;
  if (view.decision) {
    const auto row = [&](const QString& label, const plan::Choice& choice,
                         plan::FloatersAdvice advice) {
      rows.push_back(
          {label, shown(choice.plants_low, 0) + "–" + shown(choice.plants_high, 0) + tr(" plants"),
           tr("costs %1").arg(shown(choice.cost, 0)),
           tr("gains %1 to %2").arg(shown(choice.gain_low, 0), shown(choice.gain_high, 0)),
           view.decision->advice == advice});
    };
    row(tr("sow"), view.decision->sow, plan::FloatersAdvice::sow);
    row(tr("keep"), view.decision->keep, plan::FloatersAdvice::keep);
    row(tr("discard"), view.decision->discard, plan::FloatersAdvice::discard);
  }
  choices_.replace(std::move(rows));
}

bool AtTable::record() {
  const auto code = Code::parse(plain(batch_));
  const auto count = counting();
  if (!session_ || !code || !count)
    return false;
  const auto done = session_->act([&](store::Book& book) {
    return work::enter(book, *code, *count, {session_->today(), {}, {}});
  });
  if (!done) {
    fault_ = fault_shown(done.error());
    emit told();
    return false;
  }
  reset(); // the session said `changed`, so the ground is new
  return true;
}

bool AtTable::accept() {
  if (!session_ || !ground_)
    return false;
  const auto taxon = ground_->history.name; // the ground is read anew while it is written
  return session_
      ->act([&](store::Book& book) {
        return work::accept_float_test(book, taxon, session_->today());
      })
      .has_value();
}

} // namespace coneline::window
