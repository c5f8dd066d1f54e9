// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/germination_figures.h"

#include "core/stats/probability.h"

namespace coneline::stats {

namespace {

FinalShare wilson_share(std::int64_t germinated, std::int64_t sown, double confidence) {
  FinalShare final{{}, {}, "Wilson"};
  if (sown == 0)
    return final;
  final.share = static_cast<double>(germinated) / static_cast<double>(sown);
  final.range = wilson(germinated, sown, confidence).value();
  return final;
}

GroupFigures figures_of(TrayGroup group, std::span<const Tray> trays, double confidence) {
  GroupFigures figures;
  for (const auto place : group.trays) {
    figures.sown += trays[place].sown;
    figures.germinated += trays[place].germinated();
  }
  figures.final = wilson_share(figures.germinated, figures.sown, confidence);
  figures.group = std::move(group);
  return figures;
}

} // namespace

Result<GerminationFigures> germination_figures(std::span<const Tray> trays,
                                               const GerminationOptions& options) {
  if (const auto sound = inside_0_and_1(options.confidence, "confidence"); !sound)
    return refuse(sound.error());
  GerminationFigures figures;
  for (std::size_t i = 0; i < trays.size(); ++i)
    figures.trays.push_back({i, wilson_share(trays[i].germinated(), trays[i].sown, options.confidence),
                             germination_measures(trays[i])});
  for (auto& group : groups_of(trays))
    figures.groups.push_back(figures_of(std::move(group), trays, options.confidence));
  return figures;
}

} // namespace coneline::stats
