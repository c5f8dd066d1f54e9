// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/supposed_records.h"

#include "core/base/phrase.h"
#include "core/plan/potting_months.h"

#include <fmt/format.h>

namespace coneline::plan {

namespace {

/// Why a change is no record; nothing where it is one.
std::optional<std::string> not_a_record(const Change& change) {
  struct Why {
    std::optional<std::string> operator()(const OtherPace& pace) const {
      return phrase("That seed of '{}' comes up sooner or later is not written: the book "
                    "learns it from the counts.",
                    pace.of);
    }
    std::optional<std::string> operator()(const PlaceLess& place) const {
      return phrase("That '{}' is gone is not written: move what stands there, then set its "
                    "measures to 0.",
                    place.name);
    }
    std::optional<std::string> operator()(const NoCones&) const {
      return phrase("That no cones come is not written: the book has the cones that were seen.");
    }
    std::optional<std::string> operator()(const MoreSeed& seed) const {
      return phrase("The sowing of {} seeds of {} is not written before it is made.", seed.seeds,
                    seed.cross);
    }
    std::optional<std::string> operator()(const SoldAfter& sold) const {
      if (sold.months)
        return std::nullopt;
      return phrase("That ready plants stay is not written: it holds where the book says nothing.");
    }
    std::optional<std::string> operator()(const OtherSurvival&) const { return std::nullopt; }
    std::optional<std::string> operator()(const PlaceMore&) const { return std::nullopt; }
    std::optional<std::string> operator()(const OtherMix&) const { return std::nullopt; }
    std::optional<std::string> operator()(const OtherStepMix&) const { return std::nullopt; }
    std::optional<std::string> operator()(const OtherRecipe&) const { return std::nullopt; }
    std::optional<std::string> operator()(const OtherPotting&) const { return std::nullopt; }
  };
  return std::visit(Why{}, change);
}

bool same(const book::Mix& a, const book::Mix& b) {
  return a.shrink == b.shrink && a.loss == b.loss &&
         std::ranges::equal(a.parts, b.parts, [](const auto& x, const auto& y) {
           return x.name == y.name && x.share == y.share;
         });
}

/// The steps that differ, their source with what is new.
std::optional<book::Route> changed(const book::Route& before, book::Route after, Date today) {
  bool any = false;
  for (std::size_t at = 0; at < after.steps.size(); ++at) {
    const auto& stood = before.steps[at];
    auto& stands = after.steps[at];
    any |= stood.mix != stands.mix || stood.survival != stands.survival;
    if (stood.survival != stands.survival)
      stands.source += fmt::format("{}survival {:g} since {}, own plan",
                                   stands.source.empty() ? "" : "; ", stands.survival, today.iso());
  }
  return any ? std::optional(std::move(after)) : std::nullopt;
}

} // namespace

Result<SupposedRecords> changes_of(const ForecastInput& present, const Supposition& supposition) {
  SupposedRecords records;
  Supposition written;
  auto all = suppose(present, supposition);
  if (!all)
    return refuse(all.error());
  for (std::size_t at = 0; at < supposition.size(); ++at) {
    if (auto why = not_a_record(supposition[at])) {
      records.not_written.push_back(std::move(*why));
      continue;
    }
    written.push_back(supposition[at]);
    records.told.push_back(all->told[at]);
  }
  if (written.empty())
    return refuse(usage_fault("nothing of this can be written", records.not_written.empty()
                                                                    ? "Suppose something first."
                                                                    : records.not_written.front()));
  const auto supposed = suppose(present, written);
  if (!supposed)
    return refuse(supposed.error());
  const auto& before = present.standing.registers;
  const auto& after = supposed->input.standing.registers;
  for (const auto& place : after.places)
    if (book::named(before.places, place.name) == nullptr)
      records.places.push_back(place);
  for (const auto& mix : after.mixes)
    if (const auto* stood = book::named(before.mixes, mix.name);
        stood == nullptr || !same(*stood, mix))
      records.mixes.push_back(mix);
  for (std::size_t at = 0; at < after.routes.size(); ++at)
    if (auto route = changed(before.routes[at], after.routes[at], present.standing.today))
      records.routes.push_back(std::move(*route));
  const auto& assumed = supposed->input.assumed;
  if (assumed.potting != present.assumed.potting)
    records.figures.push_back({book::figure::potting_months, months_as_number(assumed.potting)});
  if (assumed.sold_after && assumed.sold_after != present.assumed.sold_after)
    records.figures.push_back(
        {book::figure::ready_stands, static_cast<double>(*assumed.sold_after)});
  return records;
}

Result<void> write(store::Writing& writing, const SupposedRecords& records) {
  const auto stored = writing.registers();
  std::map<book::MixId, book::MixId> mixes;
  for (const auto& mix : records.mixes) {
    auto row = mix;
    const auto* stands = book::named(stored.mixes, mix.name);
    row.id = stands == nullptr ? book::MixId{} : stands->id;
    const auto put = writing.put(row);
    if (!put)
      return refuse(put.error());
    mixes[mix.id] = *put;
  }
  for (auto route : records.routes) {
    for (auto& step : route.steps)
      if (const auto found = mixes.find(step.mix); found != mixes.end())
        step.mix = found->second;
    if (const auto put = writing.put(route); !put)
      return refuse(put.error());
  }
  for (auto place : records.places) {
    const auto code = writing.next_code(Kind::place);
    if (!code)
      return refuse(code.error());
    place.id = {};
    place.code = *code;
    if (const auto put = writing.put(place); !put)
      return refuse(put.error());
  }
  for (const auto& figure : records.figures)
    if (auto put = writing.put(figure); !put)
      return put;
  return {};
}

Result<SupposedRecords> accept(store::Book& book, const ForecastInput& present,
                               const Supposition& supposition) {
  return book.write([&](store::Writing& writing) -> Result<SupposedRecords> {
    auto now = present;
    now.standing.registers = writing.registers();
    auto records = changes_of(now, supposition);
    if (!records)
      return records;
    if (auto written = write(writing, *records); !written)
      return refuse(written.error());
    return records;
  });
}

} // namespace coneline::plan
