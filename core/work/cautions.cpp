// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/cautions.h"

namespace coneline::work {

std::vector<const char*> cautions_of(book::Verb verb) {
  using book::Verb;
  switch (verb) {
  case Verb::pollinate:
  case Verb::check_scales:
  case Verb::watch_male_cone:
  case Verb::collect_pollen:
    return {caution::spines};
  case Verb::harvest:
    return {caution::poison, caution::spines, caution::powders};
  case Verb::clean:
    return {caution::poison, caution::drill};
  case Verb::sort:
  case Verb::open:
  case Verb::store:
  case Verb::discard:
    return {caution::poison};
  case Verb::sow:
    return {caution::poison, caution::dust, caution::heat};
  case Verb::pot:
  case Verb::pot_on:
    return {caution::dust, caution::spines, caution::lifting};
  case Verb::move:
  case Verb::plan_move:
    return {caution::lifting};
  case Verb::plant_out:
    return {caution::lifting, caution::spines, caution::poison};
  case Verb::buy_in:
  case Verb::sell:
    return {caution::permit, caution::poison};
  case Verb::inspect:
  case Verb::lose:
  case Verb::recount:
  case Verb::test_pollen:
  case Verb::discard_pollen:
  case Verb::correct:
  case Verb::put_off:
  case Verb::dismiss:
  case Verb::want_label:
  case Verb::print_label:
  case Verb::reverse:
    return {};
  }
  return {};
}

std::vector<std::string> cautions_told(book::Verb verb) {
  std::vector<std::string> told;
  for (const auto* caution : cautions_of(verb))
    told.push_back(phrase_of(caution));
  return told;
}

} // namespace coneline::work
