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

const store::Sweep& OneReading::sweep() {
  using book::Verb;
  return once(sweep_, [&] {
    return store::Sweep(reading_, day_.value_or(Date()),
                        {Verb::pollinate, Verb::harvest, Verb::check_scales, Verb::watch_male_cone,
                         Verb::collect_pollen, Verb::test_pollen, Verb::discard_pollen, Verb::clean,
                         Verb::store, Verb::plan_move, Verb::want_label, Verb::print_label,
                         Verb::put_off, Verb::dismiss});
  });
}

const std::vector<book::Entry>& OneReading::standing(book::Verb verb) {
  if (sweep_)
    return sweep_->standing(verb);
  const auto found = standing_.find(verb);
  return found != standing_.end()
             ? found->second
             : standing_.emplace(verb, reading_.standing_entries(verb)).first->second;
}

const std::map<book::Origin, OriginName>& OneReading::origins() {
  return once(origins_, [&] { return origin_names(registers_, standing(book::Verb::pollinate)); });
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

std::vector<LotLine> OneReading::take_lot_lines() {
  static_cast<void>(lot_lines());
  return std::move(*std::exchange(lot_lines_, std::nullopt));
}

std::vector<ConeCourse> OneReading::take_cone_courses() {
  static_cast<void>(cone_courses());
  return std::move(*std::exchange(cone_courses_, std::nullopt));
}

std::vector<PollenLine> OneReading::take_pollen_lines() {
  static_cast<void>(pollen_lines());
  return std::move(*std::exchange(pollen_lines_, std::nullopt));
}

} // namespace coneline::work
