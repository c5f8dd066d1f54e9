// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Amending a row of the registers that lots, routes and other rows rest on: a taxon, place, pot,
// mix or route. Lots keep pointing at the row, so all that is reckoned for them goes by what it
// says from now on. What stood before is told in the note of an entry, field by field; a plant's
// row, on which papers rest, is corrected in `correct.h`.

#include "core/work/verb_done.h"

#include <functional>

namespace coneline::work {

template <class Row>
struct Amend {
  std::string which; ///< the row's name; of a place its code too, of a route its taxon's name
  /// Changes a copy of the row as it stands; fails in words.
  std::function<Result<void>(Row&, const book::Registers&)> edit;
  Noted noted;
};

/// All fail: no such row, nothing changed, a name that another row has, what the store refuses.
Result<Done> amend(store::Book& book, const Amend<book::Taxon>& wanted);
/// Fails, too, where places within it do not fit its new kind, and where lots are pinned to a place
/// that would have no size.
Result<Done> amend(store::Book& book, const Amend<book::Place>& wanted);
Result<Done> amend(store::Book& book, const Amend<book::Pot>& wanted);
/// A new name is the new name of the part, too, in the mixes that it is a part of.
Result<Done> amend(store::Book& book, const Amend<book::Mix>& wanted);
Result<Done> amend(store::Book& book, const Amend<book::Route>& wanted);

} // namespace coneline::work
