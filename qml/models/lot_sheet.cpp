// SPDX-License-Identifier: GPL-3.0-or-later
#include "lot_sheet.h"

#include "core/book/cross.h"
#include "deeds/deed.h"
#include "line_rows.h"
#include "wording.h"

namespace coneline::window {

LotSheet::LotSheet(QObject* parent)
    : QObject(parent), line_({"code", "what", "day", "came", "through", "here", "elsewhere", "lost",
                              "kept", "share", "throughShare", "lostShare"},
                             this),
      history_({"entry", "day", "told", "note", "stands", "reversible"}, this),
      here_({"code", "heading", "what", "place", "due", "ended"}, this) {
  connect(this, &LotSheet::asked, this, &LotSheet::read);
}

void LotSheet::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &LotSheet::read);
  emit asked();
}

void LotSheet::read() {
  if (!session_)
    return;
  const auto code = Code::parse(plain(code_));
  there_ = code && session_->standing().knows(*code);
  for (auto* said : {&kind_, &title_, &taxon_, &holds_, &place_, &note_})
    said->clear();
  deeds_.clear();
  if (there_)
    tell(session_->standing(), *code);
  if (!there_ || (code->kind() != Kind::place))
    here_.replace({});
  emit told();
}

void LotSheet::tell(const Standing& standing, const Code& code) {
  const auto& registers = standing.registers;
  kind_ = text(kind_said(code.kind()));
  for (const auto* deed : deeds_for(Subject{&standing, session_->today(), code}))
    deeds_ << QString::fromLatin1(deed->name);
  if (code.kind() == Kind::batch && standing.lot(code))
    deeds_.prepend(QStringLiteral("table"));
  deeds_ << QStringLiteral("labels");
  line_.replace(line_rows(*session_, code));
  history_.replace(history_rows(*session_, code));
  if (const auto* lot = standing.lot(code))
    tell_lot(standing, *lot);
  else if (const auto* cone = standing.cone(code))
    tell_cone(standing, *cone);
  else if (code.kind() == Kind::plant)
    tell_plant(standing, *book::coded(registers.plants, code));
  else if (code.kind() == Kind::pollen)
    tell_pollen(standing, *standing.pollen_lot(code));
  else if (code.kind() == Kind::place)
    tell_place(standing, *book::coded(registers.places, code));
}

void LotSheet::tell_lot(const Standing& standing, const work::LotLine& line) {
  title_ = origin_shown(line.origin.name);
  taxon_ = text(line.origin.taxon);
  holds_ = holding(line);
  place_ = place_name(standing.registers, line.place);
  note_ = text(line.lot.note);
  if (line.lot.pot)
    kind_ += ", " + text(standing.registers.pot(*line.lot.pot).name);
}

void LotSheet::tell_cone(const Standing& standing, const work::ConeLine& line) {
  title_ = origin_shown(line.origin.name);
  taxon_ = text(line.origin.taxon);
  holds_ = line.harvested_on ? phrased_n(line.harvested, "{} seed harvested {}",
                                         "{} seeds harvested {}", shown(*line.harvested_on))
                             : phrased("on the plant");
  const auto& plant = standing.registers.plant(line.cone.plant);
  place_ = text(book::plant_name(plant)) + ", " + place_name(standing.registers, plant.place);
  note_ = text(line.cone.note);
}

void LotSheet::tell_plant(const Standing& standing, const book::Plant& plant) {
  title_ = text(book::plant_name(plant));
  taxon_ = text(standing.registers.taxon(plant.taxon).name);
  holds_ = plant.sex == book::Sex::not_known ? phrased("sex not known yet")
                                             : text(book::said(plant.sex));
  if (!plant.origin.empty())
    holds_ += phrased(", from {}", plant.origin);
  place_ = place_name(standing.registers, plant.place);
  QStringList papers{text(plant.note)};
  for (const auto& paper : plant.papers)
    papers << text(paper.kind) + " " + text(paper.number) + " " + text(paper.authority);
  papers.removeAll(QString());
  note_ = papers.join('\n');
}

void LotSheet::tell_pollen(const Standing& standing, const work::PollenLine& line) {
  const auto& lot = line.lot;
  const auto& plant = standing.registers.plant(lot.plant);
  title_ = phrased("Pollen of {}", book::plant_name(plant));
  taxon_ = text(standing.registers.taxon(plant.taxon).name);
  holds_ = phrased("collected {}", shown(lot.collected));
  if (line.collected)
    holds_ += phrased(", {} ml in all", shown(*line.collected, 1));
  place_ = text(lot.store);
  note_ = text(lot.note);
}

void LotSheet::tell_place(const Standing& standing, const book::Place& place) {
  title_ = text(place.name);
  kind_ = text(book::said(place.kind));
  taxon_ = text(book::said(place.light));
  if (place.square_metres() > 0)
    holds_ = shown(Quantity::square_metres, place.square_metres(), 1);
  place_ =
      place.within ? phrased("in {}", standing.registers.place(*place.within).name) : QString();
  std::vector<Rows::Row> rows;
  for (const auto& line : standing.lots)
    if (line.place == place.id && !line.on_hand.empty())
      rows.push_back({text(line.lot.code.text()), phrased("Standing here"), holding(line),
                      origin_shown(line.origin.name), QString(), false});
  here_.replace(std::move(rows));
}

} // namespace coneline::window
