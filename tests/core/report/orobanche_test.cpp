// SPDX-License-Identifier: GPL-3.0-or-later
// Crowder 1978, Applied Statistics 27:34-37: 21 plates of two varieties of Orobanche in two root
// extracts. The four combinations go through a book as four crosses.
#include "core/base/csv.h"
#include "core/base/number.h"
#include "core/report/germination_report.h"
#include "tests/core/work/small_nursery.h"

namespace coneline::report {
namespace {

using tests::day;
using tests::SmallNursery;

struct Plate {
  std::string variety_and_extract;
  std::int64_t sown = 0;
  std::int64_t germinated = 0;
};

std::vector<Plate> plates() {
  const auto table =
      read_csv_file(std::filesystem::path(CONELINE_TEST_DATA) / "germination/orobanche-plates.csv")
          .value();
  std::vector<Plate> plates;
  for (const auto& row : table.rows) {
    const auto field = [&](const char* name) { return row.fields[table.column(name).value()]; };
    plates.push_back({field("variety") + " in " + field("extract"),
                      parse_whole(field("sown")).value(),
                      parse_whole(field("germinated")).value()});
  }
  return plates;
}

/// Every plate a tray, looked at once.
void enter(SmallNursery& nursery, const std::vector<Plate>& plates) {
  std::map<std::string, book::LotId> batches;
  for (const auto& plate : plates) {
    const auto [batch, fresh] = batches.try_emplace(plate.variety_and_extract);
    if (fresh)
      batch->second =
          nursery.harvest(nursery.cone(nursery.plant(plate.variety_and_extract, book::Sex::female)),
                          "2025-01-10", 1000);
    const auto tray = nursery.sow(batch->second, "2025-02-01", plate.sown);
    nursery.inspect(tray, "2025-03-01", plate.germinated);
  }
}

TEST(Orobanche, ThroughABookGivesWhatTheFileGives) {
  const auto published = plates();
  ASSERT_EQ(published.size(), 21U);
  SmallNursery nursery;
  enter(nursery, published);
  const auto report = nursery.book()
                          .read([](store::Reading& reading) {
                            return germination_report(reading, {day("2025-03-01")});
                          })
                          .value();

  std::vector<stats::Tray> trays;
  for (const auto& plate : published)
    trays.push_back({plate.variety_and_extract,
                     std::to_string(trays.size()),
                     plate.sown,
                     {{28, plate.germinated, 0}}});
  const auto from_file = stats::germination_figures(trays, {}).value();

  ASSERT_EQ(report.crosses.size(), 4U);
  std::size_t trays_seen = 0;
  for (const auto& group : from_file.groups) {
    const auto cross =
        std::ranges::find(report.crosses, group.group.name + " × Blue Twin", &CrossReport::name);
    ASSERT_NE(cross, report.crosses.end()) << group.group.name;
    EXPECT_EQ(cross->figures.sown, group.sown);
    EXPECT_EQ(cross->figures.germinated, group.germinated);
    EXPECT_EQ(cross->figures.final.share, group.final.share);
    EXPECT_EQ(cross->figures.final.range, group.final.range);
    EXPECT_EQ(cross->figures.final.method, group.final.method);
    EXPECT_EQ(cross->figures.still_expected, group.still_expected);
    ASSERT_EQ(cross->trays.size(), group.group.trays.size());
    for (std::size_t at = 0; at < cross->trays.size(); ++at) {
      const auto& plate = trays[group.group.trays[at]];
      EXPECT_EQ(cross->trays[at].seen.sown, plate.sown);
      EXPECT_EQ(cross->trays[at].germinated, plate.germinated());
      ++trays_seen;
    }
  }
  EXPECT_EQ(trays_seen, 21U);
}

TEST(Orobanche, HasThePublishedCounts) {
  SmallNursery nursery;
  enter(nursery, plates());
  const auto report = nursery.book()
                          .read([](store::Reading& reading) {
                            return germination_report(reading, {day("2025-03-01")});
                          })
                          .value();
  // Sums of Crowder's table by hand: 49/123, 75/141, 99/272, 201/295.
  const std::vector<std::pair<std::int64_t, std::int64_t>> sums{
      {49, 123}, {75, 141}, {99, 272}, {201, 295}};
  ASSERT_EQ(report.crosses.size(), sums.size());
  for (std::size_t at = 0; at < sums.size(); ++at) {
    EXPECT_EQ(report.crosses[at].figures.germinated, sums[at].first) << report.crosses[at].name;
    EXPECT_EQ(report.crosses[at].figures.sown, sums[at].second) << report.crosses[at].name;
  }
  EXPECT_NEAR(report.crosses[2].figures.final.share.value(), 0.364, 0.0005);
  EXPECT_NEAR(report.crosses[3].figures.final.share.value(), 0.681, 0.0005);
}

} // namespace
} // namespace coneline::report
