// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/fit.h"

#include "core/base/phrase.h"
#include "core/plan/mix.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>

namespace coneline::plan {

namespace {

/// Sums of many small shares differ in their last digits; that is no square metre short.
constexpr double hair = 1e-9;

std::string capital(std::string_view word) {
  std::string text(word);
  text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

std::string room(double square_metres) {
  return measured(Quantity::square_metres, square_metres, 2);
}

std::string short_by(double needed, double offered) {
  return phrase("{} needed, {} there, {} short", room(needed), room(offered),
                room(needed - offered));
}

} // namespace

std::string month_name(Date day) {
  return phrase("{} {}", month_said(day.month()), day.year());
}

std::string not_sown_told(std::int64_t seeds) {
  return phrase_n(seeds, "{} seed is not sown yet and not counted.",
                  "{} seeds are not sown yet and not counted.");
}

std::string left_out_told(std::int64_t lots) {
  return phrase_n(lots, "{} lot is left out of pots and mix; its bench room is counted as it is.",
                  "{} lots are left out of pots and mix; their bench room is counted as it is.");
}

Result<void> add_mix(const book::Mix& mix, const ByMonth& fill, std::vector<Volume>& mixes,
                     std::map<std::string, ByMonth>& parts) {
  // What one litre in the pots takes; expected litres are no whole number of pots.
  MixOrder one{1, 1.0, {}, mix.shrink, mix.loss, 0};
  for (const auto& part : mix.parts)
    one.parts.push_back({part.name, part.share});
  const auto litre = mix_for(one);
  if (!litre)
    return refuse(
        book_fault(phrase("the mix '{}': {}", mix.name, litre.error().what), litre.error().remedy));
  Volume finished{mix.name, {}};
  for (const auto litres : fill)
    finished.litres.push_back(litres * litre->finished_litres);
  for (const auto& part : litre->parts) {
    auto& of_part = parts.try_emplace(part.name, ByMonth(fill.size(), 0.0)).first->second;
    for (std::size_t at = 0; at < fill.size(); ++at)
      of_part[at] += fill[at] * part.amount;
  }
  mixes.push_back(std::move(finished));
  return {};
}

void tell_fit(SpaceNeeds& space, const std::vector<Date>& months) {
  const auto over = [&](double needed) { return needed > space.offered + hair; };
  const auto first = std::ranges::find_if(space.needed, over);
  const auto most = std::ranges::max_element(space.needed);
  const auto name = capital(book::said(space.light));
  const auto month = [&](auto at) {
    return month_name(months.at(static_cast<std::size_t>(at - space.needed.begin())));
  };
  if (first != space.needed.end())
    space.first_over = static_cast<std::size_t>(first - space.needed.begin());
  if (!over(space.today) && first == space.needed.end()) {
    space.told =
        phrase("{} fits: at most {:.2f} of {}.", name,
               in_units(language().units(), Quantity::square_metres, std::max(space.today, *most)),
               room(space.offered));
    return;
  }
  space.told = over(space.today) ? phrase("{} does not fit today: {}.", name,
                                          short_by(space.today, space.offered))
                                 : phrase("{} does not fit from {}: {}.", name, month(first),
                                          short_by(*first, space.offered));
  if (over(*most) && (over(space.today) ? *most > space.today + hair : most != first))
    space.told += phrase(" Most in {}: {}.", month(most), short_by(*most, space.offered));
  if (space.offered <= 0)
    space.told += " " + phrase("The book has no measured place of this light class.");
}

} // namespace coneline::plan
