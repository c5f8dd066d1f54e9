// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A lot's line back to its cone, with what was lost at each step.

#include "core/book/cross.h"
#include "core/store/reading.h"

#include <map>

namespace coneline::work {

/// One step of the line. in = on_hand + passed_on + the ended ones.
struct LineStep {
  Code code;                     ///< cone or purchase first, then batch, tray, pot groups
  book::LotId lot;               ///< not stored for the cone
  std::string what;              ///< "harvested", "sown", "potted"
  std::optional<Date> first;     ///< the first day something came in
  std::int64_t in = 0;           ///< seeds or plants that came in
  std::int64_t on_hand = 0;      ///< still in this lot
  std::int64_t passed_on = 0;    ///< gone on into other lots
  std::int64_t to_this_line = 0; ///< of those, into the steps shown below it
  std::map<book::State, std::int64_t> ended; ///< by end; unexplained may be below zero
};

struct LineBack {
  std::string origin; ///< cross name, or what was bought from whom
  std::string taxon;  ///< name or hybrid formula
  std::optional<book::Cross> cross;
  std::vector<LineStep> steps; ///< from the cone down to the lot asked for
};

LineBack line_back(store::Reading& reading, const book::Registers& registers, const book::Lot& lot);

/// Entries of each cone, in the order they come.
std::map<book::ConeId, std::vector<book::Entry>> by_cone(const std::vector<book::Entry>& passes);

/// The origin of lots in words and as a cross, for many lots at once.
struct OriginName {
  std::string name;       ///< cross name or purchase
  std::string taxon;      ///< name or formula
  book::TaxonId taxon_id; ///< of the seed parent
  Code code;              ///< of cone or purchase
};
std::map<book::Origin, OriginName> origin_names(store::Reading& reading,
                                                const book::Registers& registers);

} // namespace coneline::work
