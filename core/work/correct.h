// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Correcting a plant's register row. What stood before stays in the book as an entry, field by
// field, so that a paper or a sex given wrongly for years can still be seen.

#include "core/work/verb_done.h"

#include <functional>

namespace coneline::work {

/// Changes a copy of the plant as it stands; fails in words.
using Edit = std::function<Result<void>(book::Plant&, const book::Registers&)>;

struct Correct {
  Code plant;
  Edit edit;
  Noted noted;
};

/// Fails: no such plant, nothing changed, a male with cones to pollinate, a female with pollen
/// lots, a plant that would be its own ancestor.
Result<Done> correct(store::Book& book, const Correct& wanted);

/// The same inside a transaction, without refusing what changes nothing.
Result<book::EntryId> correct_to(store::Writing& writing, const book::Registers& registers,
                                 const book::Plant& plant, const Noted& noted);

/// A parent as it was written: a plant's code, or words where it is not in the book; empty for not
/// known. Fails: a mistyped code, a plant that is not in the book.
Result<void> give_parent(const std::string& written, const book::Registers& registers,
                         std::optional<book::PlantId>& id, std::string& said);

/// The fields that differ, each in words.
std::vector<book::FieldChange> changes_between(const book::Plant& before, const book::Plant& after,
                                               const book::Registers& registers);

} // namespace coneline::work
