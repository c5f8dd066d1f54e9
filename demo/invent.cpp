// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/invent.h"

#include "demo/seasons.h"

namespace coneline::demo {

Result<std::vector<exchange::FileCount>> invent(const std::filesystem::path& passing,
                                                const std::filesystem::path& folder,
                                                exchange::Existing existing) {
  auto book = store::Book::make(passing, invented_title());
  if (!book)
    return refuse(book.error());
  live_through(*book, found_nursery(*book));
  auto season =
      must(book->read([](store::Reading& reading) { return exchange::season_of(reading); }));
  // The moment of writing is the computer's own; here it is the evening of the day, or of the
  // book's first day for what came before it.
  const auto began = season.registers.title.made_on;
  for (auto& entry : season.entries)
    entry.entered = std::max(entry.date, began).iso() + "T17:00:00Z";
  season.links = exchange::chain_of(season);
  return exchange::write_season(season, folder, existing);
}

} // namespace coneline::demo
