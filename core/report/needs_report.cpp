// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/needs_report.h"

#include "core/base/csv.h"
#include "core/base/month.h"
#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/report/forecast_report.h"

namespace coneline::report {

namespace {

using Json = nlohmann::ordered_json;

/// Rows of one series.
class Series {
 public:
  Series(const plan::Needs& needs, const book::Title& title) : needs_(needs), title_(title) {}

  void add(const std::string& what, std::string_view name, const plan::ByMonth& values,
           const std::string& unit) {
    for (std::size_t at = 0; at < values.size(); ++at)
      text_ += csv_line({iso_month(needs_.months[at]), what, for_spreadsheet(name),
                         write_real(values[at]), unit, title_.invented ? "yes" : "no"});
  }
  [[nodiscard]] std::string text() const { return text_; }

 private:
  const plan::Needs& needs_;
  const book::Title& title_;
  std::string text_ = csv_line({"month", "what", "name", "value", "unit", "invented"});
};

Json json_of(const std::vector<plan::Volume>& volumes) {
  Json list = Json::array();
  for (const auto& volume : volumes)
    list.push_back({{"name", volume.name}, {"litres", volume.litres}});
  return list;
}

Json json_of(const plan::PotNeeds& pot) {
  return {{"name", pot.name},
          {"cells", pot.cells},
          {"into", pot.into},
          {"standing_today", pot.standing_today},
          {"standing", pot.standing},
          {"containers_today", pot.containers_today},
          {"containers", pot.containers}};
}

Json json_of(const plan::SpaceNeeds& space, const plan::Needs& needs) {
  return {{"light", book::word(space.light)},
          {"offered", space.offered},
          {"today", space.today},
          {"needed", space.needed},
          {"first_month_over",
           space.first_over ? Json(iso_month(needs.months[*space.first_over])) : Json(nullptr)},
          {"told", space.told}};
}

} // namespace

std::vector<std::string> needs_rules() {
  return {
      phrase(
          "Expected values of what stands in the book today; what is not sown yet is not in it."),
      phrase("A step lasts the middle of its range of months; what is overdue is due this month."),
      phrase(
          "Ready plants stay in their pots until they are sold, and no sale is foreseen: they keep "
          "taking room."),
      phrase("Standing counts and room are those of the month's end, pots touching.")};
}

std::string needs_csv(const plan::Needs& needs, const book::Title& title) {
  Series series(needs, title);
  for (const auto& pot : needs.pots) {
    series.add("into pot", pot.name, pot.into, "plants");
    series.add("standing in pot", pot.name, pot.standing, "plants");
    series.add("pots standing", pot.name, pot.containers, "pots");
  }
  for (const auto& mix : needs.mixes)
    series.add("mix", mix.name, mix.litres, "litres");
  for (const auto& part : needs.parts)
    series.add("part", part.name, part.litres, "litres");
  for (const auto& space : needs.space) {
    const plan::ByMonth offered(needs.months.size(), space.offered);
    series.add("bench needed", book::word(space.light), space.needed, "square metres");
    series.add("bench offered", book::word(space.light), offered, "square metres");
  }
  for (const auto& cross : needs.ready)
    series.add("ready", cross.cross, cross.plants, "plants");
  return series.text();
}

Json needs_json(const plan::Needs& needs, const book::Title& title) {
  Json json{{"book", title.name},
            {"invented", title.invented},
            {"today", needs.today.iso()},
            {"months", Json::array()},
            {"pots", Json::array()},
            {"mixes", json_of(needs.mixes)},
            {"parts", json_of(needs.parts)},
            {"space", Json::array()},
            {"ready", Json::array()},
            {"plants",
             {{"here", needs.sums.here},
              {"come_up", needs.sums.come_up},
              {"growing", needs.sums.growing},
              {"ready", needs.sums.ready},
              {"lost", needs.sums.lost}}},
            {"left_out", left_out_json(needs.left_out)},
            {"remarks", needs.remarks},
            {"rules", needs_rules()}};
  for (const auto month : needs.months)
    json["months"].push_back(iso_month(month));
  for (const auto& pot : needs.pots)
    json["pots"].push_back(json_of(pot));
  for (const auto& space : needs.space)
    json["space"].push_back(json_of(space, needs));
  for (const auto& cross : needs.ready)
    json["ready"].push_back(
        {{"cross", cross.cross}, {"taxon", cross.taxon}, {"plants", cross.plants}});
  return json;
}

} // namespace coneline::report
