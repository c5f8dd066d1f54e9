// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan_benches.h"

#include "core/report/assumptions.h"
#include "core/report/forecast_input.h"
#include "core/report/placing_input.h"
#include "core/report/placing_paper.h"
#include "core/work/find_code.h"
#include "wording.h"

#include <algorithm>

namespace coneline::window {

namespace {

constexpr int months_placed = 12;
constexpr int runs = 2000;
constexpr double seconds = 10; // a light class; a person waits

} // namespace

PlanBenches::PlanBenches(QObject* parent)
    : PlanPart(parent), todo_({"month", "code", "what", "from", "to", "begins"}, this),
      places_({"name", "taken", "told"}, this), stands_({"code", "what", "when"}, this),
      pins_({"code", "place"}, this) {}

void PlanBenches::reckon() {
  reckon_with(nullptr);
}

void PlanBenches::kept() {
  reckon_with(answer_ ? answer_->drawn : nullptr);
}

void PlanBenches::reckon_with(std::shared_ptr<const Drawn> drawn) {
  ask(
      [today = session_ == nullptr ? Date() : session_->today(),
       drawn = std::move(drawn)](store::Reading& reading, Course& course) -> Result<Answer> {
        const auto registers = reading.registers();
        const auto records = reading.plan_records();
        const auto codes = report::lot_codes(reading);
        Answer answer;
        for (const auto& pin : records.pins)
          if (const auto code = codes.find(pin.lot); code != codes.end())
            answer.pinned[code->second] = registers.place(pin.place).name;
        answer.drawn = drawn;
        if (!answer.drawn) {
          auto input = report::forecast_input(reading, today, months_placed,
                                              report::assumptions_in(registers));
          auto forecast = plan::forecast_of(input, futures(runs, course));
          if (!forecast) {
            answer.fault = forecast.error();
            return answer;
          }
          answer.drawn =
              std::make_shared<const Drawn>(Drawn{std::move(input), *std::move(forecast)});
        }
        answer.input = report::placing_input(answer.drawn->input, answer.drawn->forecast, records,
                                             codes, report::assurance_in(registers), months_placed);
        // Stopped now, what was found by then is taken.
        auto placing = plan::place_lots(answer.input, {seconds, [&] { return course.go_on(); }});
        if (placing)
          answer.placing = *std::move(placing);
        else
          answer.fault = placing.error();
        return answer;
      },
      [this](Answer answer) { take(std::move(answer)); });
}

void PlanBenches::take(Answer answer) {
  tell_pins(answer.pinned); // they are known whether or not a placing is found
  if (stopped() && !answer.placing && answer_)
    return; // nothing was found by then: what was told before stays
  answer_ = std::move(answer);
  if (answer_->fault)
    blame(*answer_->fault);
  place_names_.clear();
  for (const auto& place : session_->standing().registers.places)
    if (place.square_metres() > 0)
      place_names_ << text(place.name);
  proof_.clear();
  no_room_.clear();
  months_.clear();
  if (answer_->placing) {
    proof_ = text(report::proof_told(*answer_->placing));
    for (const auto& told : report::no_room_told(answer_->input, *answer_->placing))
      no_room_ << text(told);
    for (const auto month : answer_->placing->months)
      months_ << month_shown(month);
  }
  tell_todo();
  tell_places();
  if (opened() < 0)
    opened_.reset();
  tell_stands();
}

void PlanBenches::tell_pins(const std::map<Code, std::string>& pinned) {
  std::vector<Rows::Row> rows;
  for (const auto& [code, place] : pinned)
    rows.push_back({text(code.text()), text(place)});
  pins_.replace(std::move(rows));
}

void PlanBenches::tell_todo() {
  std::vector<Rows::Row> rows;
  if (answer_ && answer_->placing) {
    const auto& registers = answer_->input.registers;
    QString last;
    for (const auto& move : answer_->placing->moves) {
      const auto& piece = answer_->input.pieces[move.piece];
      const auto month = months_[static_cast<int>(move.month)];
      rows.push_back({month, text(piece.code.text()),
                      origin_shown(piece.cross) + QStringLiteral(" · ") +
                          tr("%1 of %2")
                              .arg(shown(piece.containers[move.month], 0),
                                   text(registers.pot(piece.pot).name)),
                      move.from ? text(registers.place(*move.from).name) : QString(),
                      text(registers.place(move.to).name), month != last});
      last = month;
    }
  }
  todo_.replace(std::move(rows));
}

void PlanBenches::tell_places() {
  std::vector<Rows::Row> rows;
  shown_places_.clear();
  constexpr double per_cent = 100;
  if (answer_ && answer_->placing)
    for (const auto& [place, taken] : answer_->placing->taken) {
      QVariantList shares;
      for (const auto share : taken)
        shares << share;
      const auto most = std::ranges::max_element(taken);
      const auto told = *most <= 0 ? tr("stands empty")
                                   : tr("most in %1: %2 % of its room")
                                         .arg(months_[static_cast<int>(most - taken.begin())],
                                              shown(per_cent * *most, 0));
      rows.push_back({text(answer_->input.registers.place(place).name), shares, told});
      shown_places_.push_back(place);
    }
  places_.replace(std::move(rows));
}

void PlanBenches::tell_stands() {
  std::vector<Rows::Row> rows;
  if (answer_ && answer_->placing && opened_) {
    const auto place = *opened_;
    for (const auto& placed : answer_->placing->placed) {
      const auto& piece = answer_->input.pieces[placed.piece];
      std::optional<std::size_t> first;
      std::size_t last = 0;
      for (std::size_t month = 0; month < placed.places.size(); ++month)
        if (placed.places[month] == place) {
          first = first.value_or(month);
          last = month;
        }
      if (!first)
        continue;
      rows.push_back({text(piece.code.text()),
                      origin_shown(piece.cross) + QStringLiteral(" · ") +
                          tr("%1 of %2")
                              .arg(shown(piece.containers[*first], 0),
                                   text(answer_->input.registers.pot(piece.pot).name)),
                      months_[static_cast<int>(*first)] + QStringLiteral(" – ") +
                          months_[static_cast<int>(last)]});
    }
  }
  stands_.replace(std::move(rows));
  emit openedChanged();
}

int PlanBenches::opened() const {
  const auto found =
      std::ranges::find_if(shown_places_, [&](book::PlaceId place) { return place == opened_; });
  return found == shown_places_.end() ? -1 : static_cast<int>(found - shown_places_.begin());
}

void PlanBenches::open(int place) {
  if (place == opened() || place < 0 || place >= static_cast<int>(shown_places_.size()))
    opened_.reset();
  else
    opened_ = shown_places_[static_cast<std::size_t>(place)];
  tell_stands();
}

QString PlanBenches::opened_name() const {
  return opened() < 0 ? QString() : places_.value(opened(), "name").toString();
}

bool PlanBenches::pin(const QString& code, const QString& place) {
  return keep([&](store::Writing& writing) -> Result<void> {
    const auto registers = writing.registers();
    const auto meant = work::find_code(writing, registers, plain(code));
    if (!meant)
      return refuse(meant.error());
    const auto lot = writing.lot(*meant);
    if (!lot)
      return refuse(lot.error());
    const auto* found = book::named(registers.places, plain(place));
    if (found == nullptr)
      return refuse(coneline::fault("no place is chosen", "Choose one."));
    return writing.put(book::Pin{lot->id, found->id});
  });
}

void PlanBenches::unpin(const QString& code) {
  keep([&](store::Writing& writing) -> Result<void> {
    const auto meant = Code::parse(plain(code));
    if (!meant)
      return refuse(meant.error());
    const auto lot = writing.lot(*meant);
    if (!lot)
      return refuse(lot.error());
    writing.take_out_pin(lot->id);
    return {};
  });
}

QString PlanBenches::usualPath(const QString& ending) const {
  return beside(QStringLiteral("bench-list.") + ending);
}

bool PlanBenches::save(const QString& path) {
  return answer_ && answer_->placing &&
         save_paper(path, report::placing_paper(answer_->input, *answer_->placing));
}

void PlanBenches::copy() {
  if (!answer_ || !answer_->placing)
    return;
  std::string all;
  for (const auto& table : report::placing_paper(answer_->input, *answer_->placing).tables)
    all += table.name + "\n" + report::tabbed(table) + "\n";
  copy_out(all);
}

} // namespace coneline::window
