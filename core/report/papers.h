// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The papers of one plant, lot, cone, purchase or sale: the line back to the parents with origin
// and papers, pollinations, harvest, counts and every disposal, with what is missing said. For a
// permit office to read. Not legal advice: the authority decides.

#include "core/book/registers.h"
#include "core/report/trade_rules.h"
#include "core/store/reading.h"
#include "core/work/line_back.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

namespace coneline::report {

struct PaperedPlant {
  std::string role; ///< said: "seed parent", "pollen parent", "this plant"
  book::Plant plant;
  std::string taxon;
};

struct Pass {
  book::EntryId entry;
  Date date;
  Code cone;
  std::string method;
  std::string pollen; ///< "L171 of P172, collected 2025-01-20", "unknown"
  std::optional<double> millilitres;
  std::string who;
};

/// Seed or plants that left the line, by an entry that stands.
struct Disposal {
  book::EntryId entry;
  Date date;
  Code lot;
  std::int64_t count = 0;
  book::State as = book::State::sold;
  std::string buyer;
  bool on_this_line = false; ///< out of the lot asked for or one it came through
};

struct Harvest {
  Code code; ///< cone or purchase
  std::optional<Date> date;
  std::int64_t seeds = 0;
};

struct Papers {
  book::Title title;
  Date printed;
  std::string subject;    ///< "pot group G1742Q", "sale of 2025-08-01 (entry 13)"
  std::string what;       ///< "Old Sentinel × Blue Twin", a plant's name
  std::string taxon;      ///< name or hybrid formula, seed parent first
  std::int64_t count = 0; ///< on hand, or sold in the sale asked for
  bool sold = false;
  std::vector<PaperedPlant> plants;       ///< the parents, or the plant and its own parents
  std::optional<book::Purchase> purchase; ///< where the line begins outside the nursery
  std::vector<TradeRule> listings;        ///< of the taxa concerned
  std::vector<TradeRule> rules;
  std::vector<Pass> passes;
  std::vector<Harvest> harvests;
  std::vector<work::LineStep> steps; ///< of a lot
  std::vector<Disposal> disposals;   ///< of all that came from the same cone or purchase
  std::int64_t in = 0;               ///< seeds and plants of the same origin = on_hand + ended
  std::int64_t on_hand = 0;
  std::int64_t ended = 0;
  std::vector<std::string> missing;
  std::string last_link; ///< of the book's chain on the day it was printed
  std::int64_t entries = 0;
  bool chain_holds = false;
};

struct PapersAsked {
  std::optional<Code> code;          ///< a plant, cone, purchase, batch, tray or pot group
  std::optional<book::EntryId> sale; ///< or the entry of a sale
  Date printed;                      ///< the day; the papers tell all that the book holds then
  std::vector<TradeRule> rules = built_in_trade_rules();
};

/// Fails: nothing has the code, it is of a kind that has no line, the entry is no sale that stands.
Result<Papers> papers(store::Reading& reading, const PapersAsked& asked);

/// The sales of one lot that stand, by their days.
struct StandingSale {
  book::EntryId entry;
  Date date;
  std::int64_t count = 0;
  std::string buyer;
};
std::vector<StandingSale> sales_of(store::Reading& reading, const Code& lot);

/// One part of the papers as it is read: lines of "label: text", or rows of a table.
struct PapersSection {
  std::string title;
  std::vector<std::pair<std::string, std::string>> lines; ///< label (may be empty) and text
  std::vector<std::string> header;
  std::vector<std::vector<std::string>> rows;
  bool warns = false; ///< what is missing
};
std::vector<PapersSection> papers_sections(const Papers& papers);

std::string papers_text(const Papers& papers);
std::string papers_html(const Papers& papers);
nlohmann::ordered_json papers_json(const Papers& papers);

} // namespace coneline::report
