// SPDX-License-Identifier: GPL-3.0-or-later
#include "finder.h"

#include "core/book/cross.h"
#include "wording.h"

#include <QTimer>

namespace coneline::window {

namespace {

/// A kind's letter and then digits: what was meant to be a code, right or not.
bool looks_like_a_code(const QString& typed) {
  const auto bare = QString(typed).remove(' ').remove('-');
  const auto digits = std::ranges::count_if(bare, [](QChar c) { return c.isDigit(); });
  return bare.size() >= 4 && bare.size() <= 10 && bare.front().isLetter() && digits >= 2;
}

std::vector<std::pair<QString, Code>> names(const Standing& standing) {
  std::vector<std::pair<QString, Code>> all;
  const auto& registers = standing.registers;
  for (const auto& plant : registers.plants)
    all.emplace_back(text(book::plant_name(plant)) + ", " + text(registers.taxon(plant.taxon).name),
                     plant.code);
  for (const auto& place : registers.places)
    all.emplace_back(text(place.name), place.code);
  for (const auto& course : standing.cones)
    all.emplace_back(origin_shown(course.line.origin.name), course.line.cone.code);
  for (const auto& line : standing.lots)
    if (!line.on_hand.empty())
      all.emplace_back(origin_shown(line.origin.name) + ": " + holding(line), line.lot.code);
  return all;
}

} // namespace

Finder::Finder(QObject* parent) : QObject(parent), found_({"code", "name"}, this) {}

void Finder::set_session(Session* session) {
  session_ = session;
  // Names are made ready between two events, so that no letter waits for them.
  const auto make_ready = [this] {
    known_.clear();
    before_.clear();
    QTimer::singleShot(0, this, [this] { known(); });
  };
  connect(session, &Session::changed, this, make_ready);
  make_ready();
  emit sessionChanged();
}

const std::vector<Finder::Known>& Finder::known() {
  if (known_.empty())
    for (auto& [name, code] : names(session_->standing()))
      known_.push_back({name, name.toCaseFolded(), code});
  return known_;
}

std::vector<std::size_t> Finder::called(const QString& name) {
  const auto folded = name.toCaseFolded();
  const auto& all = known();
  std::vector<std::size_t> found;
  // A longer name is among what the shorter one found.
  if (!before_.isEmpty() && folded.startsWith(before_)) {
    std::ranges::copy_if(called_, std::back_inserter(found),
                         [&](std::size_t at) { return all[at].folded.contains(folded); });
  } else {
    for (std::size_t at = 0; at < all.size(); ++at)
      if (all[at].folded.contains(folded))
        found.push_back(at);
  }
  before_ = folded;
  called_ = found;
  return found;
}

void Finder::lookAhead(const QString& typed) {
  constexpr int enough = 2; // letters
  forget();
  const auto name = typed.trimmed();
  if (!session_ || !session_->is_open() || name.size() < enough || looks_like_a_code(name))
    return;
  const auto found = called(name);
  if (found.size() == 1)
    ahead_ = known()[found.front()].name;
  else if (found.size() > 1)
    ahead_ = phrased("{} go by “{}”.", shown(std::int64_t(found.size())), name);
  emit answered();
}

void Finder::forget() {
  answer_.clear();
  ahead_.clear();
  meant_.clear();
  emit answered();
}

QString Finder::find(const QString& typed) {
  answer_.clear();
  ahead_.clear();
  meant_.clear();
  found_.replace({});
  QString code;
  if (!session_ || !session_->is_open())
    answer_ = phrased("No book is open yet.");
  else if (!typed.trimmed().isEmpty()) {
    const auto read = Code::parse(plain(typed));
    code = read || looks_like_a_code(typed.trimmed()) ? find_code(typed.trimmed(), read)
                                                      : find_name(typed.trimmed());
  }
  emit answered();
  return code;
}

QString Finder::find_code(const QString& typed, const Result<Code>& code) {
  const auto& standing = session_->standing();
  if (code && standing.knows(*code))
    return text(code->text());
  const auto series = standing.registers.title.series;
  if (code && code->series() != series) {
    answer_ =
        phrased("{} is the label of another book: its codes begin with {}, those of this book "
                "with {}.",
                code->text(), code->series(), series);
    return {};
  }
  answer_ =
      code ? phrased("There is no {} in this book.", code->text()) : fault_shown(code.error());
  auto likely = corrections(plain(typed));
  std::erase_if(likely, [&](const Code& one) { return !standing.knows(one); });
  if (likely.size() == 1) {
    meant_ = text(likely.front().text());
    answer_ = phrased("{} is not right by one character.", typed.toUpper());
  }
  return {};
}

QString Finder::find_name(const QString& name) {
  std::vector<Rows::Row> rows;
  for (const auto at : called(name))
    rows.push_back({text(known()[at].code.text()), known()[at].name});
  if (rows.size() == 1)
    return rows.front().front().toString();
  answer_ = rows.empty()
                ? phrased("Nothing here is called “{}”. Try part of the name, or a code.", name)
                : phrased("{} go by “{}”.", shown(std::int64_t(rows.size())), name);
  found_.replace(std::move(rows));
  return {};
}

} // namespace coneline::window
