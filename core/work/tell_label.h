// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What any label answers in one look: what it is, how many, where, its line back to the cone, both
// parents with their origin and papers, and what is due.

#include "core/book/registers.h"
#include "core/work/due.h"
#include "core/work/line_back.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace coneline::work {

struct ParentTold {
  Code code;
  std::string name;
  std::string taxon;
  std::string certainty; ///< of the taxon; empty where it is certain
  std::string sex;
  std::string origin; ///< in the grower's words; empty where nobody said
  std::optional<Date> acquired;
  std::vector<book::Paper> papers;
};

struct LabelTold {
  Code code;
  std::string what;  ///< "tray, seed tray": its kind, and its pot, sex or size
  std::string title; ///< cross, plant, place or supplier
  std::string taxon;
  std::vector<std::pair<std::string, std::int64_t>> holds; ///< what is on hand, by state
  std::string ended; ///< why nothing is left; empty while something is, or where it never counts
  std::optional<std::string> place;
  std::optional<Date> last_seen; ///< the day its label was last scanned or pictured
  std::string note;
  std::vector<LineStep> line;       ///< from the cone or purchase down to a lot; else empty
  std::optional<ParentTold> itself; ///< of a plant: its own origin and papers
  std::optional<ParentTold> seed_parent;
  std::vector<ParentTold> pollen_parents;
  std::string parents_said;    ///< of a plant: parents that are no plants of the register, in words
  bool unknown_father = false; ///< some or all of the pollen came from nobody knows where
  std::string bought;          ///< from whom and when, for what was bought in
  std::vector<Due> due;
  std::vector<std::pair<Code, std::string>> here; ///< of a place: what stands there
};

/// `code` is one of this book (see find_code). What is due is due on `day`.
Result<LabelTold> tell_label(store::Reading& reading, const book::Registers& registers,
                             const Code& code, Date day);

/// One line: "permit 123, office, 2019-05-01".
std::string told(const book::Paper& paper);

} // namespace coneline::work
