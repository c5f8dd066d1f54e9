// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/phrase.h"
#include "core/exchange/store_season.h"

#include <fmt/format.h>

namespace coneline::exchange {

void check_links(const Sheets& sheets, const Stored& stored, store::Writing& writing,
                 Faults& faults) {
  const auto& links = std::get<Sheet<book::Link>>(sheets).rows;
  if (links.empty())
    return; // a folder from before there was a chain, or one written by hand
  const auto made = writing.links();
  const auto say = [&](std::string what, const Lined<book::Link>& row) {
    faults.add(fault(std::move(what),
                     "Something was changed since the export. Put it back as it was, or take "
                     "links.csv out: the chain is then begun anew, and papers printed before no "
                     "longer match it.")
                   .at(where(row, "link")));
  };
  for (std::size_t at = 0; at < links.size() && at < made.size(); ++at) {
    const auto id = stored.find(links[at].row.entry);
    if (!id || *id != made[at].entry)
      return say(phrase("this is not the link of entry {}, whose turn it is", made[at].entry.value),
                 links[at]);
    if (links[at].row.hash != made[at].hash)
      return say(phrase("the chain breaks at entry {}: its link here is {}, and what the "
                        "folder says of it gives {}",
                        made[at].entry.value, shortened(links[at].row.hash), made[at].hash),
                 links[at]);
  }
  if (links.size() != made.size())
    say(phrase("{} links for {} entries", links.size(), made.size()), links.back());
}

} // namespace coneline::exchange
