// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The files of a season folder and their columns. Each kind of row has one list of fields, which
// writing, reading and storing all walk through, so that no column can be written and not read.
//
//   struct Shout { void field(std::string_view column, auto& value, auto... rule) { ... } };
//   Shout io;
//   fields(io, taxon);   // calls io.field("name", taxon.name, Rule::given), ...
//
// Where a row refers to another, the file has the other's code or name. Entries have numbers of
// their own. Rows stand in the order in which they were written to the book.

#include "core/exchange/season.h"

#include <tuple>

namespace coneline::exchange {

/// What a field must fulfil besides being of its type.
enum class Rule {
  none,
  given,        ///< a text that is not empty
  above_zero,   ///< a number
  zero_or_more, ///< a number
  share,        ///< a number above 0, at most 1
  share_or_none ///< a number from 0 to below 1
};

// Rows that belong to another row and have a file of their own.
struct PartRow {
  book::MixId mix;
  book::MixPart part;
};
struct StepRow {
  book::TaxonId taxon; ///< a taxon has one route
  int step = 0;        ///< from 1
  book::RouteStep what;
};
struct PaperRow {
  book::PlantId plant;
  book::Paper paper;
};
struct MovementRow {
  book::EntryId entry;
  book::Movement movement;
};
/// One share of the pollen of a pass.
struct PollinationRow {
  book::EntryId entry;
  book::PollinationMethod method = book::PollinationMethod::dry;
  book::PollenUsed pollen;
};
/// One weighing of 100 seeds, with the weight of all the seed.
struct WeighingRow {
  book::EntryId entry;
  double grams = 0;
  double hundred_grams = 0;
};
struct CleaningRow {
  book::EntryId entry;
  book::Cleaning cleaning;
};
struct SortingRow {
  book::EntryId entry;
  book::Sorting sorting;
};
struct KeepingRow {
  book::EntryId entry;
  book::Keeping keeping;
};
struct SaleRow {
  book::EntryId entry;
  book::Sale sale;
};

struct ConeLookRow {
  book::EntryId entry;
  book::ConeLook look;
};
struct PlantNoteRow {
  book::EntryId entry;
  book::PlantNote note;
};
struct PollenNoteRow {
  book::EntryId entry;
  book::PollenNote note;
};
struct CorrectionRow {
  book::EntryId entry;
  book::FieldChange change;
};
struct DueAnswerRow {
  book::EntryId entry;
  book::DueAnswer answer;
};
struct StopRow {
  book::RoundId round;
  book::RoundStop stop;
};

/// A row and the line it came from. One with a fault of its own is kept, so that what depends on it
/// is known.
template <class Row>
struct Lined {
  Row row;
  std::size_t line = 0;
  bool sound = true;
};

template <class RowType>
struct Sheet {
  using Row = RowType;
  std::vector<Lined<Row>> rows;
  bool whole = true; ///< false where the file could not be read
};

using Sheets =
    std::tuple<Sheet<book::Title>, Sheet<book::Taxon>, Sheet<book::Place>, Sheet<book::Pot>,
               Sheet<book::Mix>, Sheet<PartRow>, Sheet<book::Route>, Sheet<StepRow>,
               Sheet<book::Plant>, Sheet<PaperRow>, Sheet<book::PollenLot>, Sheet<book::Cone>,
               Sheet<book::Purchase>, Sheet<book::Lot>, Sheet<book::Entry>, Sheet<MovementRow>,
               Sheet<PollinationRow>, Sheet<WeighingRow>, Sheet<CleaningRow>, Sheet<SortingRow>,
               Sheet<KeepingRow>, Sheet<SaleRow>, Sheet<book::PollenStore>, Sheet<ConeLookRow>,
               Sheet<PlantNoteRow>, Sheet<PollenNoteRow>, Sheet<CorrectionRow>, Sheet<DueAnswerRow>,
               Sheet<book::Figure>, Sheet<book::Temperature>, Sheet<book::Link>,
               Sheet<book::LabelStock>, Sheet<book::LabelLayout>, Sheet<book::PrinterScale>,
               Sheet<book::LabelPrint>, Sheet<book::Round>, Sheet<StopRow>, Sheet<book::RoundEntry>,
               Sheet<book::Sighting>>;

template <class Row>
inline constexpr std::string_view file_of = "";
template <>
inline constexpr std::string_view file_of<book::Title> = "book.csv";
template <>
inline constexpr std::string_view file_of<book::Taxon> = "taxa.csv";
template <>
inline constexpr std::string_view file_of<book::Place> = "places.csv";
template <>
inline constexpr std::string_view file_of<book::Pot> = "pots.csv";
template <>
inline constexpr std::string_view file_of<book::Mix> = "mixes.csv";
template <>
inline constexpr std::string_view file_of<PartRow> = "mix_parts.csv";
template <>
inline constexpr std::string_view file_of<book::Route> = "routes.csv";
template <>
inline constexpr std::string_view file_of<StepRow> = "route_steps.csv";
template <>
inline constexpr std::string_view file_of<book::Plant> = "plants.csv";
template <>
inline constexpr std::string_view file_of<PaperRow> = "papers.csv";
template <>
inline constexpr std::string_view file_of<book::PollenLot> = "pollen_lots.csv";
template <>
inline constexpr std::string_view file_of<book::Cone> = "cones.csv";
template <>
inline constexpr std::string_view file_of<book::Purchase> = "purchases.csv";
template <>
inline constexpr std::string_view file_of<book::Lot> = "lots.csv";
template <>
inline constexpr std::string_view file_of<book::Entry> = "entries.csv";
template <>
inline constexpr std::string_view file_of<MovementRow> = "movements.csv";
template <>
inline constexpr std::string_view file_of<PollinationRow> = "pollinations.csv";
template <>
inline constexpr std::string_view file_of<WeighingRow> = "weighings.csv";
template <>
inline constexpr std::string_view file_of<CleaningRow> = "cleanings.csv";
template <>
inline constexpr std::string_view file_of<SortingRow> = "sortings.csv";
template <>
inline constexpr std::string_view file_of<KeepingRow> = "keepings.csv";
template <>
inline constexpr std::string_view file_of<SaleRow> = "sales.csv";
template <>
inline constexpr std::string_view file_of<book::LabelStock> = "label_stocks.csv";
template <>
inline constexpr std::string_view file_of<book::LabelLayout> = "label_layouts.csv";
template <>
inline constexpr std::string_view file_of<book::PrinterScale> = "printer_scales.csv";
template <>
inline constexpr std::string_view file_of<book::LabelPrint> = "label_prints.csv";
template <>
inline constexpr std::string_view file_of<book::Figure> = "figures.csv";
template <>
inline constexpr std::string_view file_of<book::Temperature> = "temperatures.csv";
template <>
inline constexpr std::string_view file_of<book::Link> = "links.csv";

template <>
inline constexpr std::string_view file_of<book::PollenStore> = "pollen_stores.csv";
template <>
inline constexpr std::string_view file_of<ConeLookRow> = "cone_looks.csv";
template <>
inline constexpr std::string_view file_of<PlantNoteRow> = "plant_notes.csv";
template <>
inline constexpr std::string_view file_of<PollenNoteRow> = "pollen_notes.csv";
template <>
inline constexpr std::string_view file_of<CorrectionRow> = "corrections.csv";
template <>
inline constexpr std::string_view file_of<DueAnswerRow> = "due_answers.csv";

/// A file that came later than others: written when there is something to write, and a folder
/// without it is whole.
template <class Row>
inline constexpr bool may_be_missing = false;
template <>
inline constexpr bool may_be_missing<WeighingRow> = true;
template <>
inline constexpr bool may_be_missing<book::Figure> = true;
template <>
inline constexpr bool may_be_missing<book::Temperature> = true;
/// The chain is then begun anew.
template <>
inline constexpr bool may_be_missing<book::Link> = true;
template <>
inline constexpr bool may_be_missing<book::LabelStock> = true;
template <>
inline constexpr bool may_be_missing<book::LabelLayout> = true;
template <>
inline constexpr bool may_be_missing<book::PrinterScale> = true;
template <>
inline constexpr bool may_be_missing<book::LabelPrint> = true;

template <>
inline constexpr std::string_view file_of<book::Round> = "rounds.csv";
template <>
inline constexpr std::string_view file_of<StopRow> = "round_stops.csv";
template <>
inline constexpr std::string_view file_of<book::RoundEntry> = "round_entries.csv";
template <>
inline constexpr std::string_view file_of<book::Sighting> = "sightings.csv";

template <>
inline constexpr bool may_be_missing<book::Round> = true;
template <>
inline constexpr bool may_be_missing<StopRow> = true;
template <>
inline constexpr bool may_be_missing<book::RoundEntry> = true;
template <>
inline constexpr bool may_be_missing<book::Sighting> = true;

/// Calls `act` with every sheet, in the order in which the files build on each other.
template <class AnySheets, class Act>
void each_sheet(AnySheets& sheets, Act act) {
  std::apply([&](auto&... sheet) { (act(sheet), ...); }, sheets);
}

/// The names of all files of a season folder.
std::vector<std::string> files_of_a_season();

/// A season as rows; without lines.
Sheets sheets_of(const Season& season);

} // namespace coneline::exchange
