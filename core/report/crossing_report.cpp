// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/crossing_report.h"

#include "core/base/phrase.h"
#include "core/book/cross.h"
#include "core/report/trade_rules.h"

#include <fmt/format.h>

#include <algorithm>

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

Json plant_json(const book::Registers& registers, book::PlantId id) {
  const auto& plant = registers.plant(id);
  const auto& taxon = registers.taxon(plant.taxon).name;
  const auto* listing = listing_of(built_in_trade_rules(), taxon);
  return {{"code", plant.code.text()},
          {"name", plant.name},
          {"taxon", taxon},
          {"cites_appendix", listing == nullptr ? Json() : Json(listing->says)},
          {"papers", plant.papers.size()}};
}

Json estimate_json(const std::optional<plan::Estimate>& estimate) {
  if (!estimate)
    return nullptr;
  return {{"likely", estimate->likely},
          {"low", estimate->range ? Json(estimate->range->low) : Json()},
          {"high", estimate->range ? Json(estimate->range->high) : Json()},
          {"source", estimate->source}};
}

Json room_json(const std::map<book::Light, double>& room) {
  Json json = Json::object();
  for (const auto& [light, square_metres] : room)
    json[std::string(book::word(light))] = square_metres;
  return json;
}

Json cross_json(const plan::CrossingInput& input, const plan::PossibleCross& cross,
                const plan::CrossingWish& wish, bool proposed, bool pinned, bool forbidden) {
  const auto& registers = input.registers;
  const auto& female = input.females[cross.female];
  const auto& pollen = input.pollen[cross.pollen];
  Json founders = Json::array();
  for (const auto& id : cross.founders)
    founders.push_back(registers.plant(id).code.text());
  const auto why = plan::why_not(cross, wish);
  return {{"cone", female.code.text()},
          {"cone_state", female.when},
          {"pollen", pollen.code.text()},
          {"seed_parent", plant_json(registers, female.plant)},
          {"pollen_parent", plant_json(registers, pollen.plant)},
          {"cross", cross.name},
          {"taxon", cross.taxon},
          {"hybrid", cross.hybrid},
          {"kinship", cross.kinship},
          {"inbreeding_of_offspring", cross.kinship},
          {"mean_kinship_of_offspring", cross.mean_kinship},
          {"founders", founders},
          {"plants", estimate_json(cross.plants)},
          {"room", room_json(cross.room)},
          {"millilitres", input.millilitres_a_cone},
          {"missing", cross.missing},
          {"remarks", cross.remarks},
          {"proposed", proposed},
          {"pinned", pinned},
          {"forbidden", forbidden},
          {"why_not", why.empty() ? Json() : Json(why)}};
}

bool holds(const std::vector<std::size_t>& list, std::size_t at) {
  return std::ranges::find(list, at) != list.end();
}

std::string_view aim_word(plan::Aim aim) {
  switch (aim) {
  case plan::Aim::most_plants:
    return "plants";
  case plan::Aim::least_kinship:
    return "kinship";
  case plan::Aim::mixture:
    return "mixture";
  }
  return "";
}

} // namespace

std::string estimate_text(const std::optional<plan::Estimate>& estimate) {
  if (!estimate)
    return phrase("not known");
  return estimate->range ? phrase("{:.0f}–{:.0f}, likely {:.0f}", estimate->range->low,
                                  estimate->range->high, estimate->likely)
                         : phrase("likely {:.0f}", estimate->likely);
}

std::string bound_text(const plan::Proposal& proposal) {
  return proposal.proven
             ? phrase("{} {:.4g}, bound {:.4g}, gap {:.2g} %: proven the best there is",
                      proposal.measure, proposal.sum, proposal.bound, 100 * proposal.gap)
             : phrase("{} {:.4g}, bound {:.4g}: at most {:.2g} % from the best", proposal.measure,
                      proposal.sum, proposal.bound, 100 * proposal.gap);
}

std::vector<std::string> crossing_rules() {
  return {
      phrase(
          "Kinship of the parents is the inbreeding of their offspring; a parent that is not known "
          "is taken as related to nobody, so kinship may be higher than said."),
      phrase(
          "Hybrids are named by their parents joined by ×, the seed parent first (ICN Art. H.2); "
          "both parents are kept as plants, never read from a name."),
      phrase("Plants = seeds sown × viable share of the pollen × germination × survival along the "
             "route; ranges are 10 to 90 % and leave survival at one value."),
      phrase("Many cycads are protected: what is said of papers is no legal advice; the authority "
             "decides.")};
}

std::vector<TaxonKinship> kinship_by_taxon(const plan::CrossingInput& input) {
  const stats::Kinship kinship(input.parents);
  std::vector<TaxonKinship> rows;
  for (const auto& taxon : input.registers.taxa) {
    std::vector<std::size_t> group;
    for (std::size_t at = 0; at < input.registers.plants.size(); ++at)
      if (input.registers.plants[at].taxon == taxon.id)
        group.push_back(at);
    if (group.empty())
      continue;
    const auto founders = stats::founders_of(input.parents, kinship, group);
    rows.push_back({taxon.name, group.size(), founders.named, founders.mean_kinship,
                    founders.genome_equivalents});
  }
  return rows;
}

Json crossing_json(const plan::CrossingInput& input,
                   const std::vector<plan::PossibleCross>& possible, const plan::CrossingWish& wish,
                   const plan::Proposal& proposal) {
  Json crosses = Json::array();
  for (std::size_t at = 0; at < possible.size(); ++at)
    crosses.push_back(cross_json(input, possible[at], wish, holds(proposal.chosen, at),
                                 holds(wish.pinned, at), holds(wish.forbidden, at)));
  Json pollen = Json::array();
  for (std::size_t at = 0; at < input.pollen.size(); ++at) {
    const auto& lot = input.pollen[at];
    const auto taken = std::ranges::find(proposal.pollen, at, &plan::PollenTaken::pollen);
    pollen.push_back(
        {{"pollen", lot.code.text()},
         {"millilitres_left", lot.millilitres ? Json(*lot.millilitres) : Json()},
         {"millilitres_taken", taken == proposal.pollen.end() ? 0 : taken->millilitres},
         {"viability", estimate_json(lot.viability)},
         {"collected", lot.collected.iso()},
         {"store", lot.store}});
  }
  Json taxa = Json::array();
  for (const auto& row : kinship_by_taxon(input))
    taxa.push_back({{"taxon", row.taxon},
                    {"plants", row.plants},
                    {"founders", row.founders},
                    {"mean_kinship", row.mean_kinship},
                    {"founder_genome_equivalents", row.genome_equivalents}});
  Json left_out = Json::array();
  for (const auto& [code, why] : input.left_out)
    left_out.push_back({{"code", code.text()}, {"why", why}});
  return {{"as_of", input.today.iso()},
          {"aim", aim_word(wish.aim)},
          {"kinship_weight", wish.aim == plan::Aim::mixture ? Json(wish.kinship_weight) : Json()},
          {"proposal",
           {{"crosses", proposal.chosen.size()},
            {"measure", proposal.measure},
            {"value", proposal.sum},
            {"bound", proposal.bound},
            {"gap", proposal.gap},
            {"proven", proposal.proven},
            {"plants", proposal.plants},
            {"mean_kinship", proposal.mean_kinship ? Json(*proposal.mean_kinship) : Json()},
            {"founders", proposal.founders},
            {"room", room_json(proposal.room)}}},
          {"crosses", crosses},
          {"pollen", pollen},
          {"room", input.room ? room_json(*input.room) : Json()},
          {"taxa", taxa},
          {"left_out", left_out},
          {"remarks", input.remarks},
          {"rules", crossing_rules()}};
}

} // namespace coneline::report
