// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The columns of each file. What walks through them has `field(column, value, rule or kind of
// code)` for every type of value, and `own_number` for the number of an entry.

#include "core/exchange/rows.h"

namespace coneline::exchange {

template <class Io>
void fields(Io& io, book::Title& title) {
  io.field("name", title.name);
  io.field("series", title.series);
  io.field("invented", title.invented);
  io.field("made_on", title.made_on);
  io.field("hemisphere", title.hemisphere);
}

template <class Io, class Value>
void sourced(Io& io, const std::string& column, book::Sourced<Value>& value) {
  io.field(column, value.value);
  io.field(column + "_source", value.source);
}

template <class Io>
void fields(Io& io, book::Taxon& taxon) {
  io.field("name", taxon.name, Rule::given);
  sourced(io, "leaf_colour", taxon.leaf_colour);
  sourced(io, "light", taxon.light);
  sourced(io, "frost", taxon.frost);
  sourced(io, "float_test", taxon.float_test);
  sourced(io, "ripening_months", taxon.ripening);
  sourced(io, "after_ripening_months", taxon.after_ripening);
}

template <class Io>
void fields(Io& io, book::Place& place) {
  io.field("code", place.code, Kind::place);
  io.field("name", place.name, Rule::given);
  io.field("kind", place.kind);
  io.field("within", place.within);
  io.field("length_mm", place.length_mm, Rule::zero_or_more);
  io.field("width_mm", place.width_mm, Rule::zero_or_more);
  io.field("light", place.light);
  io.field("walk", place.walk);
}

template <class Io>
void fields(Io& io, book::Pot& pot) {
  io.field("name", pot.name, Rule::given);
  io.field("litres", pot.litres, Rule::above_zero);
  io.field("shape", pot.shape);
  io.field("length_mm", pot.length_mm, Rule::above_zero);
  io.field("width_mm", pot.width_mm, Rule::above_zero);
  io.field("cells", pot.cells, Rule::above_zero);
  io.field("source", pot.source);
}

template <class Io>
void fields(Io& io, book::Mix& mix) {
  io.field("name", mix.name, Rule::given);
  io.field("shrink", mix.shrink, Rule::share_or_none);
  io.field("loss", mix.loss, Rule::zero_or_more);
  io.field("source", mix.source);
}

template <class Io>
void fields(Io& io, PartRow& row) {
  io.field("mix", row.mix);
  io.field("part", row.part.name, Rule::given);
  io.field("share", row.part.share, Rule::above_zero);
}

template <class Io>
void fields(Io& io, book::Route& route) {
  io.field("taxon", route.taxon);
  io.field("germination", route.germination, Rule::share);
  io.field("germination_months", route.germination_months);
  io.field("source", route.source);
}

template <class Io>
void fields(Io& io, StepRow& row) {
  io.field("taxon", row.taxon);
  io.field("step", row.step, Rule::above_zero);
  io.field("pot", row.what.pot);
  io.field("mix", row.what.mix);
  io.field("months", row.what.months);
  io.field("survival", row.what.survival, Rule::share);
  io.field("light", row.what.light);
  io.field("source", row.what.source);
}

template <class Io>
void fields(Io& io, book::Plant& plant) {
  io.field("code", plant.code, Kind::plant);
  io.field("name", plant.name);
  io.field("taxon", plant.taxon);
  io.field("taxon_certainty", plant.taxon_certainty);
  io.field("sex", plant.sex);
  io.field("origin", plant.origin);
  io.field("acquired", plant.acquired);
  io.field("place", plant.place);
  io.field("note", plant.note);
  io.field("seed_parent", plant.seed_parent);
  io.field("seed_parent_said", plant.seed_parent_said);
  io.field("pollen_parent", plant.pollen_parent);
  io.field("pollen_parent_said", plant.pollen_parent_said);
  io.field("parents_certainty", plant.parents_certainty);
  io.field("stands_in", plant.stands_in);
}

template <class Io>
void fields(Io& io, PaperRow& row) {
  io.field("plant", row.plant);
  io.field("kind", row.paper.kind);
  io.field("number", row.paper.number);
  io.field("issued", row.paper.issued);
  io.field("authority", row.paper.authority);
  io.field("note", row.paper.note);
}

template <class Io>
void fields(Io& io, book::PollenLot& lot) {
  io.field("code", lot.code, Kind::pollen);
  io.field("plant", lot.plant);
  io.field("collected", lot.collected);
  io.field("millilitres", lot.millilitres, Rule::above_zero);
  io.field("store", lot.store);
  io.field("note", lot.note);
}

template <class Io>
void fields(Io& io, book::Cone& cone) {
  io.field("code", cone.code, Kind::cone);
  io.field("plant", cone.plant);
  io.field("first_seen", cone.first_seen);
  io.field("note", cone.note);
}

template <class Io>
void fields(Io& io, book::Purchase& purchase) {
  io.field("code", purchase.code, Kind::purchase);
  io.field("taxon", purchase.taxon);
  io.field("supplier", purchase.supplier);
  io.field("bought", purchase.bought);
  io.field("note", purchase.note);
}

template <class Io>
void fields(Io& io, book::Lot& lot) {
  io.lot_code("code", lot.code);
  io.field("origin", lot.origin);
  io.field("judged", lot.judged);
  io.field("judged_by", lot.judged_by);
  io.field("pot", lot.pot);
  io.field("mix", lot.mix);
  io.field("note", lot.note);
}

template <class Io>
void fields(Io& io, book::Entry& entry) {
  io.own_number("entry", entry.id);
  io.field("verb", entry.verb);
  io.field("date", entry.date);
  io.field("lot", entry.lot);
  io.field("cone", entry.cone);
  io.field("place", entry.place);
  io.field("who", entry.who);
  io.field("note", entry.note);
  io.field("reverses", entry.reverses);
  io.field("entered", entry.entered);
}

template <class Io>
void fields(Io& io, MovementRow& row) {
  io.field("entry", row.entry);
  io.field("from_lot", row.movement.from.lot);
  io.field("from_state", row.movement.from.state);
  io.field("to_lot", row.movement.to.lot);
  io.field("to_state", row.movement.to.state);
  io.field("count", row.movement.count);
}

template <class Io>
void fields(Io& io, PollinationRow& row) {
  io.field("entry", row.entry);
  io.field("method", row.method);
  io.field("pollen_lot", row.pollen.lot);
  io.field("millilitres", row.pollen.millilitres, Rule::above_zero);
}

template <class Io>
void fields(Io& io, WeighingRow& row) {
  io.field("entry", row.entry);
  io.field("grams", row.grams, Rule::above_zero);
  io.field("hundred_grams", row.hundred_grams, Rule::above_zero);
}

template <class Io>
void fields(Io& io, CleaningRow& row) {
  io.field("entry", row.entry);
  io.field("soak_days", row.cleaning.soak_days, Rule::zero_or_more);
}

template <class Io>
void fields(Io& io, SortingRow& row) {
  io.field("entry", row.entry);
  io.field("test", row.sorting.test);
}

template <class Io>
void fields(Io& io, KeepingRow& row) {
  io.field("entry", row.entry);
  io.field("store", row.keeping.store);
  io.field("celsius", row.keeping.celsius);
  io.field("until_from", row.keeping.until_from);
  io.field("until_to", row.keeping.until_to);
}

template <class Io>
void fields(Io& io, SaleRow& row) {
  io.field("entry", row.entry);
  io.field("buyer", row.sale.buyer);
  io.field("cents", row.sale.cents, Rule::zero_or_more);
}

template <class Io>
void fields(Io& io, book::Figure& figure) {
  io.field("name", figure.name, Rule::given);
  io.field("value", figure.value);
}

template <class Io>
void fields(Io& io, book::Temperature& reading) {
  io.field("place", reading.place);
  io.field("at", reading.at);
  io.field("celsius", reading.celsius);
}

template <class Io>
void fields(Io& io, book::Link& link) {
  io.field("entry", link.entry);
  io.field("link", link.hash, Rule::given);
}

template <class Io>
void fields(Io& io, book::PollenStore& store) {
  io.field("name", store.name, Rule::given);
  sourced(io, "years", store.years);
}

template <class Io>
void fields(Io& io, ConeLookRow& row) {
  io.field("entry", row.entry);
  io.field("scales", row.look.scales);
  io.field("fertile_scales", row.look.fertile_scales, Rule::above_zero);
}

template <class Io>
void fields(Io& io, PlantNoteRow& row) {
  io.field("entry", row.entry);
  io.field("plant", row.note.plant);
  io.field("male_cone", row.note.male_cone);
  io.field("to_place", row.note.to);
}

template <class Io>
void fields(Io& io, PollenNoteRow& row) {
  io.field("entry", row.entry);
  io.field("pollen_lot", row.note.lot);
  io.field("millilitres", row.note.millilitres, Rule::above_zero);
  io.field("counted", row.note.counted, Rule::above_zero);
  io.field("germinated", row.note.germinated, Rule::zero_or_more);
  io.field("conditions", row.note.conditions);
}

template <class Io>
void fields(Io& io, CorrectionRow& row) {
  io.field("entry", row.entry);
  io.field("plant", row.change.plant);
  io.field("field", row.change.field, Rule::given);
  io.field("stood", row.change.stood);
  io.field("stands", row.change.stands);
}

template <class Io>
void fields(Io& io, DueAnswerRow& row) {
  io.field("entry", row.entry);
  io.field("due", row.answer.due, Rule::given);
  io.field("until", row.answer.until);
}

template <class Io>
void fields(Io& io, book::LabelStock& stock) {
  io.field("name", stock.name, Rule::given);
  io.field("page_width_mm", stock.page_width, Rule::above_zero);
  io.field("page_height_mm", stock.page_height, Rule::above_zero);
  io.field("left_mm", stock.left, Rule::zero_or_more);
  io.field("top_mm", stock.top, Rule::zero_or_more);
  io.field("label_width_mm", stock.label_width, Rule::above_zero);
  io.field("label_height_mm", stock.label_height, Rule::above_zero);
  io.field("column_pitch_mm", stock.column_pitch, Rule::zero_or_more);
  io.field("row_pitch_mm", stock.row_pitch, Rule::zero_or_more);
  io.field("columns", stock.columns, Rule::above_zero);
  io.field("rows", stock.rows, Rule::above_zero);
  io.field("in_soil_mm", stock.in_soil, Rule::zero_or_more);
}

template <class Io>
void fields(Io& io, book::LabelLayout& layout) {
  io.field("name", layout.name, Rule::given);
  io.field("what", layout.what);
  io.field("origin", layout.origin);
  io.field("day", layout.day);
  io.field("count", layout.count);
  io.field("caution", layout.caution);
}

template <class Io>
void fields(Io& io, book::PrinterScale& scale) {
  io.field("printer", scale.printer, Rule::given);
  io.field("stock", scale.stock);
  io.field("across_mm", scale.across_mm, Rule::above_zero);
  io.field("down_mm", scale.down_mm, Rule::above_zero);
}

template <class Io>
void fields(Io& io, book::LabelPrint& print) {
  io.any_code("code", print.code);
  io.field("printed", print.printed);
  io.field("stock", print.stock);
  io.field("copies", print.copies, Rule::above_zero);
}

template <class Io>
void fields(Io& io, book::Round& round) {
  io.own_number("round", round.id);
  io.field("began", round.began);
  io.field("place", round.place);
  io.field("who", round.who);
  io.field("bench", round.bench);
  io.field("in_hand", round.in_hand);
  io.field("roots", round.tapped.roots, Rule::zero_or_more);
  io.field("leaves", round.tapped.leaves, Rule::zero_or_more);
  io.field("dead", round.tapped.dead, Rule::zero_or_more);
  io.field("ended", round.ended);
}

template <class Io>
void fields(Io& io, StopRow& row) {
  io.field("round", row.round);
  io.field("tray", row.stop.lot);
  io.field("place", row.stop.place);
}

template <class Io>
void fields(Io& io, book::RoundEntry& made) {
  io.field("entry", made.entry);
  io.field("round", made.round);
}

template <class Io>
void fields(Io& io, book::Sighting& sighting) {
  io.field("lot", sighting.lot);
  io.field("place", sighting.place);
  io.field("date", sighting.date);
  io.field("how", sighting.how);
  io.field("source", sighting.source);
  io.field("round", sighting.round);
}

} // namespace coneline::exchange
