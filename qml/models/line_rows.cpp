// SPDX-License-Identifier: GPL-3.0-or-later
#include "line_rows.h"

#include "core/work/line_back.h"
#include "core/work/reverse.h"
#include "entry_words.h"
#include "wording.h"

#include <QStringList>

namespace coneline::window {

namespace {

/// Ends that are no loss are told apart from losses.
bool is_loss(book::State end) {
  return end != book::State::sold && end != book::State::planted_out;
}

QString ended(const work::LineStep& step, bool losses) {
  QStringList said;
  for (const auto& [state, count] : step.ended)
    if (count != 0 && is_loss(state) == losses)
      said << shown(count) + QChar(0x00A0) + text(book::said(state));
  return said.join(QStringLiteral(", "));
}

std::int64_t lost(const work::LineStep& step) {
  std::int64_t sum = 0;
  for (const auto& [state, count] : step.ended)
    sum += is_loss(state) ? std::max<std::int64_t>(count, 0) : 0;
  return sum;
}

Rows::Row row_of(const work::LineStep& step, std::int64_t widest) {
  const auto of = [widest](std::int64_t count) {
    return widest > 0 ? static_cast<double>(count) / static_cast<double>(widest) : 0.0;
  };
  const auto here = step.on_hand;
  const auto elsewhere = step.passed_on - step.to_this_line;
  return {text(step.code.text()),
          text(step.what),
          step.first ? shown(*step.first) : QString(),
          qlonglong(step.in),
          qlonglong(step.to_this_line),
          qlonglong(here),
          qlonglong(elsewhere),
          ended(step, true),
          ended(step, false),
          of(step.in),
          of(step.to_this_line),
          of(lost(step))};
}

std::vector<book::Entry> entries_of(store::Reading& reading, const Standing& standing,
                                    const Code& code) {
  if (const auto* line = standing.lot(code))
    return reading.entries_of(line->lot.id);
  if (const auto* line = standing.cone(code))
    return reading.entries_of(line->cone.id);
  if (const auto* plant = book::coded(standing.registers.plants, code))
    return reading.entries_of(plant->id);
  return {};
}

} // namespace

std::vector<Rows::Row> line_rows(Session& session, const Code& code) {
  const auto* line = session.standing().lot(code);
  if (!line)
    return {};
  const auto back = session.ask([&](store::Reading& reading) {
    return work::line_back(reading, session.standing().registers, line->lot);
  });
  std::vector<Rows::Row> rows;
  if (!back)
    return rows;
  std::int64_t widest = 0;
  for (const auto& step : back->steps)
    widest = std::max(widest, step.in);
  for (const auto& step : back->steps)
    rows.push_back(row_of(step, widest));
  return rows;
}

std::vector<Rows::Row> history_rows(Session& session, const Code& code) {
  const auto rows = session.ask([&](store::Reading& reading) {
    std::vector<Rows::Row> all;
    for (const auto& entry : entries_of(reading, session.standing(), code)) {
      const auto reversed = reading.reversed_by(entry.id).has_value();
      const bool stands = !reversed && !entry.reverses;
      auto told = said(reading, session.standing().registers, entry);
      if (reversed)
        told += phrased(" (taken back)");
      all.push_back({qlonglong(entry.id.value), shown(entry.date), told, note_shown(entry.note),
                     stands, stands && work::can_be_reversed(entry)});
    }
    std::ranges::reverse(all);
    return all;
  });
  return rows.value_or(std::vector<Rows::Row>{});
}

} // namespace coneline::window
