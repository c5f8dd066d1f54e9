// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The chain over the entries: each entry has a link, which is a hash over the link before it and
// over everything the entry says. Whoever changes an old entry breaks its link; whoever mends the
// link breaks the next one. The last link, printed on a paper, vouches for all entries before it.
//
//   link(n) = SHA-256(link(n-1) + "\n" + form(n))      as 64 small hexadecimal digits;
//                                                      the link before the first is the empty text
//
// The form of an entry is a list of fields, each written as its name, a blank, the length of its
// value in bytes, a colon, the value and a line end. A field that holds nothing is left out, so a
// field that a later program adds leaves older forms as they were. In this order:
//
//   entry verb date lot cone place who note reverses entered
//   for each movement, in its order:   from from_state to to_state count
//   of a pollination   method, then for each share of pollen   pollen_lot (or "unknown")
//                      millilitres
//   of a weighing      grams, then for each weighing hundred_grams
//   of a cleaning      soak_days
//   of a test          test
//   of a keeping       store celsius until_from until_to
//   of a sale          buyer cents
//   of a cone's look   scales fertile_scales
//   of a plant's note  plant male_cone to
//   of a pollen note   pollen_lot millilitres counted germinated conditions
//   of a correction    for each change plant field stood stands
//   of an answer       due until
//
// Numbers are written as in the season folder (the shortest decimals that read back as the same
// number), dates as ISO 8601. Rows have the numbers of their codes: a cone is "7", a place "3", a
// pollen lot "4", an entry its own number. A lot is told with all that must not change about it:
//
//   tray 42 of cone 7, filled by float
//
// The chain does not hold registers (plants, papers, places, pots): those may be corrected.

#include "core/book/entry.h"

#include <string>
#include <string_view>

namespace coneline::book {

/// The link of one entry.
struct Link {
  EntryId entry;
  std::string hash;

  bool operator==(const Link&) const = default;
};

/// How the rows that an entry refers to are told in its form.
class NamesInChain {
 public:
  virtual ~NamesInChain() = default;
  virtual std::string lot(LotId id) = 0; ///< as lot_in_chain gives it
  virtual std::int64_t cone(ConeId id) = 0;
  virtual std::int64_t place(PlaceId id) = 0;
  virtual std::int64_t pollen_lot(PollenLotId id) = 0;
  virtual std::int64_t plant(PlantId id) = 0;
};

/// `number` and `origin_number` are those of the codes, without the book's series.
std::string lot_in_chain(Kind kind, std::int64_t number, bool of_cone, std::int64_t origin_number,
                         Judged judged, SeedTest judged_by);

/// The form of an entry that has its id and its moment.
std::string form_in_chain(const Entry& entry, NamesInChain& names);

/// The link after `previous`.
std::string next_link(std::string_view previous, std::string_view form);

} // namespace coneline::book
