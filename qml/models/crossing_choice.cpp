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

QString CrossingChoice::key_of(const plan::PossibleCross& cross) const {
  return text(input_.females[cross.female].code.text() + "=" +
              input_.pollen[cross.pollen].code.text());
}

plan::CrossingWish CrossingChoice::wish() const {
  plan::CrossingWish wish;
  const auto at = aims().indexOf(aim_);
  wish.aim = at == 1   ? plan::Aim::least_kinship
             : at == 2 ? plan::Aim::mixture
                       : plan::Aim::most_plants;
  wish.hybrids = hybrids_;
  wish.seconds = 2; // the window waits for it
  for (std::size_t place = 0; place < possible_.size(); ++place) {
    const auto key = key_of(possible_[place]);
    if (pinned_.contains(key))
      wish.pinned.push_back(place);
    if (forbidden_.contains(key))
      wish.forbidden.push_back(place);
  }
  return wish;
}

void CrossingChoice::read() {
  if (session_ == nullptr || !session_->is_open())
    return;
  summary_.clear();
  remarks_.clear();
  fault_.clear();
  possible_.clear();
  report::CrossingAsked asked;
  asked.today = session_->today();
  asked.every_female = every_female_;
  asked.any_room = any_room_;
  const auto input = session_->ask(
      [&](store::Reading& reading) { return report::crossing_input(reading, asked); });
  if (input) {
    input_ = *input;
    if (auto possible = plan::possible_crosses(input_)) {
      possible_ = *std::move(possible);
      const auto wanted = wish();
      tell(plan::propose(input_, possible_, wanted), wanted);
    } else {
      fault_ = fault_shown(possible.error());
      rows_.replace({});
    }
    for (const auto& [code, why] : input_.left_out)
      remarks_ << text(code.text() + ": " + why);
    for (const auto& remark : input_.remarks)
      remarks_ << text(remark);
    for (const auto& rule : report::crossing_rules())
      remarks_ << text(rule);
  }
  emit told();
}

void CrossingChoice::tell(const Result<plan::Proposal>& proposal, const plan::CrossingWish& wish) {
  if (proposal)
    summarise(*proposal);
  else
    fault_ = fault_shown(proposal.error());
  const auto holds = [](const std::vector<std::size_t>& list, std::size_t at) {
    return std::ranges::find(list, at) != list.end();
  };
  const double scale = highest(possible_);
  std::vector<Rows::Row> rows;
  for (std::size_t at = 0; at < possible_.size(); ++at) {
    const auto& cross = possible_[at];
    const auto& lot = input_.pollen[cross.pollen];
    const bool pinned = holds(wish.pinned, at);
    const bool forbidden = holds(wish.forbidden, at);
    if (cross.hybrid && !hybrids_ && !pinned && !forbidden)
      continue;
    const auto why = plan::why_not(cross, wish);
    const auto facts =
        tr("%1; %2, %3; kinship %4; %5 founders")
            .arg(text(input_.females[cross.female].when), text(lot.code.text()),
                 lot.millilitres ? tr("%1 ml left").arg(shown(*lot.millilitres, 1))
                                 : tr("not measured"),
                 QString::number(cross.kinship, 'g', 4), QString::number(cross.founders.size()));
    rows.push_back({key_of(cross), text(input_.females[cross.female].code.text()),
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
  for (const auto& [light, taken] : proposal.room)
    summary_ << (input_.room && input_.room->contains(light)
                     ? tr("%1: %2 of %3 free")
                           .arg(text(book::said(light)), shown(Quantity::square_metres, taken, 1),
                                shown(Quantity::square_metres, input_.room->at(light), 1))
                     : text(book::said(light)) + ": " + shown(Quantity::square_metres, taken, 1));
}

void CrossingChoice::pin(const QString& key) {
  forbidden_.erase(key);
  if (pinned_.erase(key) == 0)
    pinned_.insert(key);
  read();
}

void CrossingChoice::forbid(const QString& key) {
  pinned_.erase(key);
  if (forbidden_.erase(key) == 0)
    forbidden_.insert(key);
  read();
}

void CrossingChoice::freeAll() {
  pinned_.clear();
  forbidden_.clear();
  read();
}

} // namespace coneline::window
