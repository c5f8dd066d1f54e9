// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that lots rest on: places, kinds of trays and pots, mixes, kinds of plants. New ones, and
// what was entered wrong amended: the same fields, filled in with what stands, of which only those
// that were changed are sent.
#include "common.h"
#include "core/base/number.h"
#include "core/book/names.h"
#include "core/work/amend.h"
#include "core/work/cautions.h"

#include <QRegularExpression>

#include <array>

namespace coneline::window {

namespace {

using book::Registers;

// The answers but for the name, each put into its row.
Result<void> read_fields(book::Place& place, const Registers& registers, Answers& answers);
Result<void> read_fields(book::Pot& pot, const Registers& registers, Answers& answers);
Result<void> read_fields(book::Mix& mix, const Registers& registers, Answers& answers);
Result<void> read_fields(book::Taxon& taxon, const Registers& registers, Answers& answers);

/// Whether a field is to be read: of a row that is new each, of one that stands what was changed.
template <class Row>
auto to_be_read(const Row& row, const Answers& answers) {
  return [anew = !row.id.stored(), &answers](const char* field) {
    return anew || answers.changed(field);
  };
}

/// The answers in a row, its name as the book keeps names; fails at the field where another row has
/// one that reads alike.
template <class Row>
Result<void> fill_in(Row& row, const Registers& registers, const std::vector<Row>& rows,
                     Answers& answers) {
  const bool named_now = to_be_read(row, answers)("name");
  if (named_now)
    row.name = answers.named("name");
  if (auto filled = read_fields(row, registers, answers); !filled)
    return filled;
  if (const auto& wrong = answers.fault())
    return refuse(*wrong);
  if (!named_now)
    return {};
  auto name = book::name_for(rows, row.name, row.id);
  if (!name)
    return refuse(name.error().at({{}, 0, "name"}));
  row.name = *name;
  return {};
}

/// The row to be amended: of a place its page's, else the one chosen in the form, at first the
/// first; null where there is none.
template <class Row>
const Row* row_asked(const Subject& subject, const std::vector<Row>& rows) {
  if constexpr (std::is_same_v<Row, book::Place>)
    if (const auto* place = book::coded(rows, subject.code))
      return place;
  const auto* chosen = book::named(rows, plain(subject.row));
  return chosen || rows.empty() ? chosen : &rows.front();
}

/// A choice of the row, where no page says which, and the fields of that row.
template <class Row, class FieldsOf>
std::vector<FieldSpec> fields_to_amend(const Subject& subject, const std::vector<Row>& rows,
                                       FieldSpec choice, FieldsOf fields_of) {
  std::vector<FieldSpec> fields;
  const auto* row = row_asked(subject, rows);
  if (subject.code == Code()) {
    for (const auto& one : rows)
      choice.choices << text(one.name);
    choice.value = row ? text(row->name) : QString();
    fields.push_back(std::move(choice));
  }
  if (row)
    std::ranges::move(fields_of(*row), std::back_inserter(fields));
  return with_day_and_note(subject, std::move(fields));
}

template <class Row>
Result<work::Done> run_amend(store::Book& book, Answers& answers, const std::string& which,
                             std::vector<Row> Registers::*rows) {
  const auto noted = answers.noted();
  return answers.then([&] {
    return work::amend(book, work::Amend<Row>{which,
                                              [&](Row& row, const Registers& registers) {
                                                return fill_in(row, registers, registers.*rows,
                                                               answers);
                                              },
                                              noted});
  });
}

// ---- places -------------------------------------------------------------------------------------

std::vector<FieldSpec> fields_of(const Subject& subject, const book::Place& place) {
  auto within = place_names(subject);
  within.removeAll(text(place.name));
  within.prepend(QStringLiteral("none"));
  return {words_field("name", "Name", text(place.name), "such as Bench 3"),
          word_choice("kind", "It is a", place.kind),
          name_field("within", "in", within,
                     place.within ? text(subject.registers().place(*place.within).name)
                                  : within.first()),
          measure_field(Quantity::millimetres, "length", "Length to stand on, {}", place.length_mm),
          measure_field(Quantity::millimetres, "width", "Width, {}", place.width_mm),
          word_choice("light", "Light", place.light),
          count_field("walk", "Its turn when walking through", place.walk)};
}

Result<void> read_fields(book::Place& place, const Registers& registers, Answers& answers) {
  const auto given = to_be_read(place, answers);
  if (given("kind"))
    place.kind = answers.one_of<book::PlaceKind>("kind");
  if (given("within")) {
    const auto within = answers.place("within");
    const auto* outer = within ? book::coded(registers.places, *within) : nullptr;
    place.within = outer ? std::optional(outer->id) : std::nullopt;
  }
  if (given("length"))
    place.length_mm = answers.decimal("length", Quantity::millimetres).value_or(0);
  if (given("width"))
    place.width_mm = answers.decimal("width", Quantity::millimetres).value_or(0);
  if (given("light"))
    place.light = answers.one_of<book::Light>("light");
  if (given("walk"))
    place.walk = answers.whole("walk");
  return {};
}

std::vector<FieldSpec> place_fields(const Subject& subject) {
  book::Place place;
  place.walk = static_cast<int>(subject.registers().places.size()) + 1;
  return fields_of(subject, place);
}

Result<work::Done> run_place(store::Book& book, Answers& answers) {
  book::Place place;
  const auto& registers = answers.subject().registers();
  if (auto filled = fill_in(place, registers, registers.places, answers); !filled)
    return refuse(filled.error());
  return book.write([&](store::Writing& writing) -> Result<work::Done> {
    const auto code = writing.next_code(Kind::place);
    if (!code)
      return refuse(code.error());
    place.code = *code;
    return writing.put(place).map([&](auto) { return in_the_book(place.name); });
  });
}

/// On the page of a place, or of none to choose one.
bool is_place_or_none(const Subject& subject) {
  return subject.code == Code() || book::coded(subject.registers().places, subject.code);
}

std::vector<FieldSpec> amend_place_fields(const Subject& subject) {
  return fields_to_amend(subject, subject.registers().places, row_field("place", "Place"),
                         [&](const book::Place& place) { return fields_of(subject, place); });
}

Result<work::Done> run_amend_place(store::Book& book, Answers& answers) {
  const auto& code = answers.subject().code;
  return run_amend(book, answers, code == Code() ? answers.named("place") : code.text(),
                   &Registers::places);
}

// ---- trays and pots -----------------------------------------------------------------------------

std::vector<FieldSpec> fields_of(const book::Pot& pot) {
  const auto measured = [](double kept) { return kept > 0 ? std::optional(kept) : std::nullopt; };
  return {words_field("name", "Name", text(pot.name), "such as deep pot 2 L"),
          measure_field(Quantity::litres, "litres", "It really holds, {}", measured(pot.litres),
                        "all cells together, measured"),
          word_choice("shape", "Shape", pot.shape),
          measure_field(Quantity::millimetres, "length", "Outside length or diameter, {}",
                        measured(pot.length_mm)),
          measure_field(Quantity::millimetres, "width", "Outside width, {}", measured(pot.width_mm),
                        "empty for a round one"),
          count_field("cells", "Seeds or plants it takes", pot.cells)};
}

Result<void> read_fields(book::Pot& pot, const Registers&, Answers& answers) {
  const auto given = to_be_read(pot, answers);
  if (given("litres"))
    pot.litres = answers.measure("litres", Quantity::litres);
  if (given("shape"))
    pot.shape = answers.one_of<book::Shape>("shape");
  if (given("length"))
    pot.length_mm = answers.measure("length", Quantity::millimetres);
  const bool round = pot.shape == book::Shape::round;
  if (round && (given("shape") || given("length")))
    pot.width_mm = pot.length_mm;
  if (!round && given("width"))
    pot.width_mm = answers.measure("width", Quantity::millimetres);
  if (given("cells"))
    pot.cells = answers.whole("cells");
  if (answers.changed("source"))
    pot.source = answers.words("source");
  return {};
}

std::vector<FieldSpec> pot_fields(const Subject&) {
  return fields_of(book::Pot());
}

Result<work::Done> run_pot(store::Book& book, Answers& answers) {
  book::Pot pot;
  pot.source = "measured"; // a record: the same in every language
  const auto& registers = answers.subject().registers();
  if (auto filled = fill_in(pot, registers, registers.pots, answers); !filled)
    return refuse(filled.error());
  return book.write([&](store::Writing& writing) {
    return writing.put(pot).map([&](auto) { return in_the_book(pot.name); });
  });
}

std::vector<FieldSpec> amend_pot_fields(const Subject& subject) {
  return fields_to_amend(
      subject, subject.registers().pots, row_field("pot", "Tray or pot"), [](const book::Pot& pot) {
        auto fields = fields_of(pot);
        fields.push_back(words_field("source", "Where this comes from", text(pot.source)));
        return fields;
      });
}

Result<work::Done> run_amend_pot(store::Book& book, Answers& answers) {
  return run_amend(book, answers, answers.named("pot"), &Registers::pots);
}

// ---- mixes --------------------------------------------------------------------------------------

QString parts_written(const book::Mix& mix) {
  QStringList parts;
  for (const auto& part : mix.parts)
    parts << text(part.name + " " + write_real(part.share));
  return parts.join(QStringLiteral(", "));
}

/// "perlite 4, peat 3": each part with its share.
Result<std::vector<book::MixPart>> read_parts(const std::string& written) {
  static const QRegularExpression one(QStringLiteral(R"(^\s*(.+?)\s+(\d+(?:\.\d+)?)\s*$)"));
  std::vector<book::MixPart> parts;
  for (const auto& piece : text(written).split(',')) {
    const auto match = one.match(piece);
    if (!match.hasMatch())
      return refuse(fault(phrase("'{}' is no part with its share", plain(piece)),
                          "Write it like: perlite 4, peat 3, sand 3."));
    parts.push_back({plain(match.captured(1)), match.captured(2).toDouble()});
  }
  return parts;
}

std::vector<FieldSpec> fields_of(const book::Mix& mix) {
  return {words_field("name", "Name", text(mix.name)),
          words_field("parts", "Parts by volume", parts_written(mix),
                      "such as perlite 4, peat 3, sand 3"),
          decimal_field("shrink", "Volume lost in mixing, %", written(mix.shrink * 100)),
          words_field("source", "Where this comes from", text(mix.source))};
}

Result<void> read_fields(book::Mix& mix, const Registers&, Answers& answers) {
  const auto given = to_be_read(mix, answers);
  if (given("parts")) {
    const auto parts = read_parts(answers.words("parts"));
    if (!parts)
      return refuse(parts.error().at({{}, 0, "parts"}));
    mix.parts = *parts;
  }
  if (given("shrink"))
    mix.shrink = answers.decimal("shrink").value_or(0) / 100;
  if (answers.changed("loss"))
    mix.loss = answers.decimal("loss").value_or(0) / 100;
  if (given("source"))
    mix.source = answers.words("source");
  return {};
}

std::vector<FieldSpec> mix_fields(const Subject&) {
  book::Mix mix;
  mix.shrink = 0.15;
  mix.source = phrase("own experience");
  return fields_of(mix);
}

Result<work::Done> run_mix(store::Book& book, Answers& answers) {
  book::Mix mix;
  const auto& registers = answers.subject().registers();
  if (auto filled = fill_in(mix, registers, registers.mixes, answers); !filled)
    return refuse(filled.error());
  return book.write([&](store::Writing& writing) {
    return writing.put(mix).map([&](auto) { return in_the_book(mix.name); });
  });
}

std::vector<FieldSpec> amend_mix_fields(const Subject& subject) {
  return fields_to_amend(
      subject, subject.registers().mixes, row_field("mix", "Mix"), [](const book::Mix& mix) {
        auto fields = fields_of(mix);
        fields.push_back(decimal_field("loss", "Spilt or left over, %", written(mix.loss * 100)));
        return fields;
      });
}

Result<work::Done> run_amend_mix(store::Book& book, Answers& answers) {
  return run_amend(book, answers, answers.named("mix"), &Registers::mixes);
}

// ---- kinds of plants ----------------------------------------------------------------------------

FieldSpec month_field(const char* key, const char* label, const book::Range* months,
                      double book::Range::*end) {
  return decimal_field(key, label, months ? written(months->*end) : QString(),
                       "empty where nobody can say");
}

std::vector<FieldSpec> fields_of(const book::Taxon& taxon) {
  const auto* ripening = taxon.ripening.value ? &*taxon.ripening.value : nullptr;
  const auto* after = taxon.after_ripening.value ? &*taxon.after_ripening.value : nullptr;
  return {words_field("name", "Botanical name", text(taxon.name)),
          word_choice("leaf", "Colour of the leaf", taxon.leaf_colour.value),
          word_choice("light", "Light", taxon.light.value),
          word_choice("frost", "Frost that it stands", taxon.frost.value),
          word_choice("float", "The float test is", taxon.float_test.value),
          month_field("ripe_from", "Months from pollination to the ripe cone, at least", ripening,
                      &book::Range::low),
          month_field("ripe_to", "and at most", ripening, &book::Range::high),
          month_field("after_from", "Months the seed ripens on after harvest, at least", after,
                      &book::Range::low),
          month_field("after_to", "and at most", after, &book::Range::high),
          words_field("source", "Where what you change comes from", phrased("own experience"))};
}

template <class Set>
void read_word(book::Sourced<Set>& value, const char* field, Answers& answers) {
  if (answers.changed(field))
    value = {answers.one_of<Set>(field), answers.words("source")};
}

void read_months(book::Sourced<std::optional<book::Range>>& value, const char* from, const char* to,
                 Answers& answers) {
  if (answers.changed(from) || answers.changed(to))
    value = {answers.range(from, to), answers.words("source")};
}

Result<void> read_fields(book::Taxon& taxon, const Registers&, Answers& answers) {
  read_word(taxon.leaf_colour, "leaf", answers);
  read_word(taxon.light, "light", answers);
  read_word(taxon.frost, "frost", answers);
  read_word(taxon.float_test, "float", answers);
  read_months(taxon.ripening, "ripe_from", "ripe_to", answers);
  read_months(taxon.after_ripening, "after_from", "after_to", answers);
  return {};
}

std::vector<FieldSpec> amend_taxon_fields(const Subject& subject) {
  return fields_to_amend(subject, subject.registers().taxa, row_field("taxon", "Kind of plant"),
                         [](const book::Taxon& taxon) { return fields_of(taxon); });
}

Result<work::Done> run_amend_taxon(store::Book& book, Answers& answers) {
  return run_amend(book, answers, answers.named("taxon"), &Registers::taxa);
}

} // namespace

std::span<const Deed> register_deeds() {
  static const std::array deeds{
      Deed{"new place", "New place", nullptr, place_fields, nullptr, run_place, {}},
      Deed{"new pot", "New tray or pot", nullptr, pot_fields, nullptr, run_pot, {}},
      Deed{"new mix", "New mix", nullptr, mix_fields, nullptr, run_mix, {work::caution::dust}},
      Deed{"amend place",
           "Amend a place",
           is_place_or_none,
           amend_place_fields,
           nullptr,
           run_amend_place,
           {}},
      Deed{"amend pot",
           "Amend a tray or pot",
           nullptr,
           amend_pot_fields,
           nullptr,
           run_amend_pot,
           {}},
      Deed{"amend mix", "Amend a mix", nullptr, amend_mix_fields, nullptr, run_amend_mix, {}},
      Deed{"amend taxon",
           "Amend a kind of plant",
           nullptr,
           amend_taxon_fields,
           nullptr,
           run_amend_taxon,
           {}}};
  return deeds;
}

} // namespace coneline::window
