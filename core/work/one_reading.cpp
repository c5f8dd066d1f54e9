// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/one_reading.h"

namespace coneline::work {

namespace {

template <class Part, class Read>
const Part& once(std::optional<Part>& part, Read read) {
  if (!part)
    part.emplace(read());
  return *part;
}

} // namespace

const std::vector<book::Lot>& OneReading::lots() {
  return once(lots_, [&] { return reading_.lots(); });
}

const std::vector<book::Entry>& OneReading::passes() {
  return once(passes_, [&] { return reading_.standing_entries(book::Verb::pollinate); });
}

const std::map<book::Origin, OriginName>& OneReading::origins() {
  return once(origins_, [&] { return origin_names(registers_, passes()); });
}

const std::vector<store::Balance>& OneReading::balances() {
  return once(balances_, [&] { return reading_.balances(); });
}

const std::vector<LotLine>& OneReading::lot_lines() {
  return once(lot_lines_, [&] { return work::lot_lines(*this); });
}

const std::vector<ConeCourse>& OneReading::cone_courses() {
  return once(cone_courses_, [&] { return work::cone_courses(*this); });
}

const std::vector<PollenLine>& OneReading::pollen_lines() {
  return once(pollen_lines_, [&] { return work::pollen_lines(*this); });
}

} // namespace coneline::work
