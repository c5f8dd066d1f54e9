// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What was counted in a tray of seed: how many were sown, and what each inspection found. Times are
// days since sowing; any other unit of time serves as well, as long as it is one for all trays.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace coneline::stats {

/// One inspection. An inspection that found nothing is a look with two zeros: it carries
/// information.
struct Look {
  double day = 0;              ///< since sowing, 0 or more
  std::int64_t germinated = 0; ///< newly germinated since the look before
  std::int64_t removed = 0;    ///< taken out dead, not germinated, since the look before
  bool operator==(const Look&) const = default;
};

/// Seed sown together, with its looks in the order of their days. `group` is what it is compared
/// by, such as a cross.
struct Tray {
  std::string group;
  std::string tray;
  std::int64_t sown = 0;
  std::vector<Look> looks;

  [[nodiscard]] std::int64_t germinated() const;
  [[nodiscard]] std::int64_t removed() const;
  /// Neither germinated nor removed so far.
  [[nodiscard]] std::int64_t waiting() const { return sown - germinated() - removed(); }
  /// Day of the last look; 0 without a look.
  [[nodiscard]] double last_day() const { return looks.empty() ? 0 : looks.back().day; }
};

/// All trays as one without a name, looks of one day after sowing taken together.
Tray as_one(std::span<const Tray> trays);

enum class TrayColumn { sown, day, germinated, removed };

/// What is wrong with a tray. `look` is the place in Tray::looks; none when it is the tray itself.
struct TrayFault {
  std::optional<std::size_t> look;
  TrayColumn column = TrayColumn::sown;
  std::string what;
  std::string remedy;
};

/// More than any tray holds; a number beyond it is a slipped digit.
inline constexpr std::int64_t most_sown = 1'000'000;

/// Everything wrong with a tray whose looks are in the order of their days: a count below zero, a
/// number sown above most_sown, a
/// day below 0 or no number, two looks on one day, a seed germinated on day 0, more germinated, or
/// germinated and removed, than sown. Empty when it is sound. Every other function of this room
/// takes sound trays only.
std::vector<TrayFault> faults_of(const Tray& tray);

/// Groups in the order of their first tray, each with the places of its trays in `trays`.
struct TrayGroup {
  std::string name;
  std::vector<std::size_t> trays;
};
std::vector<TrayGroup> groups_of(std::span<const Tray> trays);

} // namespace coneline::stats
