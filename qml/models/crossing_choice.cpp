// SPDX-License-Identifier: GPL-3.0-or-later
#include "crossing_choice.h"

#include "core/report/crossing_report.h"
#include "wording.h"

#include <algorithm>

namespace coneline::window {

namespace {

QString plants_text(const plan::PossibleCross& cross) {
  return text(report::estimate_text(cross.plants));
}

double highest(const std::vector<plan::PossibleCross>& possible) {
  double most = 1;
  for (const auto& cross : possible)
    if (cross.plants)
      most = std::max(most, cross.plants->range ? cross.plants->range->high : cross.plants->likely);
  return most;
}

QString joined(const std::vector<std::string>& texts) {
  QStringList list;
  for (const auto& each : texts)
    list << text(each);
  return list.join(QStringLiteral("; "));
}

} // namespace

CrossingChoice::CrossingChoice(QObject* parent)
    : QObject(parent), aim_(aims().front()),
      rows_({"key", "code", "cross", "facts", "plants", "low", "likely", "high", "state", "why",
             "missing"},
            this) {
  connect(this, &CrossingChoice::asked, this, &CrossingChoice::read);
}

QStringList CrossingChoice::aims() {
  return {tr("most plants"), tr("least kinship"), tr("half of each")};
}

void CrossingChoice::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &CrossingChoice::read);
  emit asked();
}

QString CrossingChoice::key_of(const plan::CrossingInput& input, const plan::PossibleCross& cross) {
  return text(input.females[cross.female].code.text() + "=" +
              input.pollen[cross.pollen].code.text());
}

plan::CrossingWish CrossingChoice::wish() const {
  plan::CrossingWish wish;
  const auto at = aims().indexOf(aim_);
  wish.aim = at == 1   ? plan::Aim::least_kinship
             : at == 2 ? plan::Aim::mixture
                       : plan::Aim::most_plants;
  wish.hybrids = hybrids_;
  wish.seconds = 5; // a thread is busy with it
  return wish;
}

void CrossingChoice::fix(plan::CrossingWish& wish, const Fixed& fixed,
                         const plan::CrossingInput& input,
                         const std::vector<plan::PossibleCross>& possible) {
  for (std::size_t place = 0; place < possible.size(); ++place) {
    const auto key = key_of(input, possible[place]);
    if (fixed.pinned.contains(key))
      wish.pinned.push_back(place);
    if (fixed.forbidden.contains(key))
      wish.forbidden.push_back(place);
  }
}

void CrossingChoice::read() {
  if (session_ == nullptr)
    return;
  if (!session_->is_open()) {
    aside_->forget();
    answer_.reset();
    reckoning_ = false;
    show();
    return;
  }
  reckoning_ = true;
  show(); // what is fixed is seen at once
  report::CrossingAsked asked;
  asked.today = session_->today();
  asked.every_female = every_female_;
  asked.any_room = any_room_;
  const auto ask = [asked, wish = wish(),
                    fixed = fixed_](store::Reading& reading) -> Result<Answer> {
    auto input = report::crossing_input(reading, asked);
    if (!input)
      return refuse(input.error());
    auto possible = plan::possible_crosses(*input);
    if (!possible)
      return Answer{*std::move(input), {}, refuse(possible.error())};
    auto wanted = wish;
    fix(wanted, fixed, *input, *possible);
    auto proposal = plan::propose(*input, *possible, wanted);
    return Answer{*std::move(input), *std::move(possible), std::move(proposal)};
  };
  aside_->ask(plain(session_->path()), ask,
              [this](Result<Answer> answer) { take(std::move(answer)); });
}

void CrossingChoice::take(Result<Answer> answer) {
  reckoning_ = false;
  if (answer)
    answer_ = *std::move(answer);
  else
    answer_ = Answer{{}, {}, refuse(answer.error())};
  show();
}

void CrossingChoice::show() {
  summary_.clear();
  remarks_.clear();
  fault_.clear();
  if (answer_) {
    if (answer_->proposal)
      summarise(*answer_->proposal);
    else
      fault_ = fault_shown(answer_->proposal.error());
    for (const auto& [code, why] : answer_->input.left_out)
      remarks_ << text(code.text() + ": " + why);
    for (const auto& remark : answer_->input.remarks)
      remarks_ << text(remark);
    for (const auto& rule : report::crossing_rules())
      remarks_ << text(rule);
  }
  show_rows();
  emit told();
}

void CrossingChoice::show_rows() {
  std::vector<Rows::Row> rows;
  if (!answer_) {
    rows_.replace(std::move(rows));
    return;
  }
  const auto& [input, possible, proposal] = *answer_;
  auto wanted = wish();
  fix(wanted, fixed_, input, possible);
  const auto holds = [](const std::vector<std::size_t>& list, std::size_t at) {
    return std::ranges::find(list, at) != list.end();
  };
  const double scale = highest(possible);
  for (std::size_t at = 0; at < possible.size(); ++at) {
    const auto& cross = possible[at];
    const auto& lot = input.pollen[cross.pollen];
    const bool pinned = holds(wanted.pinned, at);
    const bool forbidden = holds(wanted.forbidden, at);
    if (cross.hybrid && !hybrids_ && !pinned && !forbidden)
      continue;
    const auto why = plan::why_not(cross, wanted);
    const auto facts =
        tr("%1; %2, %3; kinship %4; %5 founders")
            .arg(text(input.females[cross.female].when), text(lot.code.text()),
                 lot.millilitres ? tr("%1 ml left").arg(shown(*lot.millilitres, 1))
                                 : tr("not measured"),
                 QString::number(cross.kinship, 'g', 4), QString::number(cross.founders.size()));
    rows.push_back({key_of(input, cross), text(input.females[cross.female].code.text()),
                    text(cross.name + (cross.hybrid ? " (" + cross.taxon + ")" : "")), facts,
                    plants_text(cross),
                    cross.plants && cross.plants->range ? cross.plants->range->low / scale : -1.0,
                    cross.plants ? cross.plants->likely / scale : -1.0,
                    cross.plants && cross.plants->range ? cross.plants->range->high / scale : -1.0,
                    pinned                                    ? QStringLiteral("pinned")
                    : forbidden                               ? QStringLiteral("forbidden")
                    : proposal && holds(proposal->chosen, at) ? QStringLiteral("proposed")
                                                              : QString(),
                    text(why), joined(cross.missing)});
  }
  rows_.replace(std::move(rows));
}

void CrossingChoice::summarise(const plan::Proposal& proposal) {
  summary_ << tr("%1 crosses, about %2 plants, %3 founders")
                  .arg(QString::number(proposal.chosen.size()), shown(proposal.plants, 0),
                       QString::number(proposal.founders));
  summary_ << text(report::bound_text(proposal));
  const auto& free = answer_->input.room;
  for (const auto& [light, taken] : proposal.room)
    summary_ << (free && free->contains(light)
                     ? tr("%1: %2 of %3 free")
                           .arg(text(book::said(light)), shown(Quantity::square_metres, taken, 1),
                                shown(Quantity::square_metres, free->at(light), 1))
                     : text(book::said(light)) + ": " + shown(Quantity::square_metres, taken, 1));
}

void CrossingChoice::pin(const QString& key) {
  fixed_.forbidden.erase(key);
  if (fixed_.pinned.erase(key) == 0)
    fixed_.pinned.insert(key);
  read();
}

void CrossingChoice::forbid(const QString& key) {
  fixed_.pinned.erase(key);
  if (fixed_.forbidden.erase(key) == 0)
    fixed_.forbidden.insert(key);
  read();
}

void CrossingChoice::freeAll() {
  fixed_.pinned.clear();
  fixed_.forbidden.clear();
  read();
}

} // namespace coneline::window
