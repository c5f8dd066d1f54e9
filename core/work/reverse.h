// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Undoing a mistake: an entry that names the wrong one and sends its movements back.

#include "core/work/verb_done.h"

namespace coneline::work {

struct Reverse {
  book::EntryId entry;
  std::string who;
  std::string note;
};

/// False of what corrected a register, which is corrected again.
bool can_be_reversed(const book::Entry& entry);
/// Whether all of them can be.
bool can_be_reversed(store::Reading& reading, const std::vector<book::EntryId>& entries);

/// Fails: what corrected a register, reversed already, itself a reversal, or what it brought has
/// gone on since, pollen of a collection too (the fault says where).
Result<Done> reverse(store::Book& book, const Reverse& wanted);
/// The same as a part of something larger, in one transaction with it.
Result<Done> reverse(store::Writing& writing, const Reverse& wanted);

/// One line that says what reversing an entry would take back: "sow on 2026-03-02: 40 seeds back
/// from T1742Q".
std::string told(store::Reading& reading, const book::Entry& entry);

} // namespace coneline::work
