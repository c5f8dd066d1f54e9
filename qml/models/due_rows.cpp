// SPDX-License-Identifier: GPL-3.0-or-later
#include "due_rows.h"

#include "station.h"
#include "wording.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace coneline::window {

namespace {

enum Column { code = Qt::UserRole + 1, verb, told, heading, since, key, at_once, word };

QString when(const work::Due& due, Date today) {
  if (!due.missed.empty())
    return text(due.missed);
  if (due.to && *due.to > today)
    return shown(due.from) + QChar(0x2013) + shown(*due.to);
  const auto days = days_between(due.from, today);
  return days <= 0 ? phrased("today") : phrased("since {}", shown(due.from));
}

} // namespace

void DueRows::show(const Session& session, Order order) {
  const auto& all = session.standing().due;
  const auto count = static_cast<int>(all.size());
  const bool as_many = count == count_ && standing_ != nullptr;
  if (!as_many)
    beginResetModel();
  lots_.reset();
  standing_ = session.kept_standing();
  order_ = order;
  count_ = count;
  by_day_.clear();
  if (order == Order::by_day) { // as work::by_day, without copies
    by_day_.resize(all.size());
    std::iota(by_day_.begin(), by_day_.end(), std::size_t{0});
    std::ranges::stable_sort(by_day_, [&](std::size_t a, std::size_t b) {
      return std::tie(all[a].from, all[a].walk, all[a].code) <
             std::tie(all[b].from, all[b].walk, all[b].code);
    });
  }
  if (!as_many)
    endResetModel();
  else if (count > 0)
    emit dataChanged(index(0), index(count - 1));
}

QString DueRows::place_of(const Code& code) const {
  const auto& registers = standing_->registers;
  if (!lots_)
    lots_.emplace(standing_->lots, [](const work::LotLine& line) { return line.lot.code; });
  if (const auto* line = lots_->find(code))
    return place_name(registers, line->place);
  if (const auto* plant = book::coded(registers.plants, code))
    return place_name(registers, plant->place);
  if (const auto* line = standing_->cone(code))
    return place_name(registers, registers.plant(line->cone.plant).place);
  return place_name(registers, std::nullopt);
}

int DueRows::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count_;
}

QVariant DueRows::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || !standing_)
    return {};
  const auto row = static_cast<std::size_t>(index.row());
  const auto& all = standing_->due;
  const bool days = order_ == Order::by_day;
  const auto& due = all[days ? by_day_[row] : row];
  switch (role) {
  case code:
    return text(due.code.text());
  case verb:
    return verb_of(due.kind);
  case told:
    return text(due.told);
  case heading:
    return days ? shown(due.from) : place_of(due.code);
  case since: {
    const auto said = when(due, standing_->today);
    return !days ? said : place_of(due.code) + (due.missed.empty() ? QString() : ", " + said);
  }
  case key:
    return text(due.key);
  case at_once:
    return due.done_at_once;
  case word:
    return phrased_of(plain(verb_of(due.kind)));
  default:
    return {};
  }
}

QHash<int, QByteArray> DueRows::roleNames() const {
  return {{code, "code"},   {verb, "verb"}, {told, "told"},      {heading, "heading"},
          {since, "since"}, {key, "key"},   {at_once, "atOnce"}, {word, "word"}};
}

} // namespace coneline::window
