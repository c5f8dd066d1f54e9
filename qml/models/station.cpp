// SPDX-License-Identifier: GPL-3.0-or-later
#include "station.h"

#include "wording.h"

#include <array>

namespace coneline::window {

namespace {
constexpr std::array words{to_phrase("Pollen"), to_phrase("Cones"), to_phrase("Seed"),
                           to_phrase("Trays"),  to_phrase("Pots"),  to_phrase("Out")};
}

QString station_word(Station station) {
  return phrased_of(words[static_cast<std::size_t>(station)]);
}

QString station_key(Station station) {
  return QString::fromLatin1(words[static_cast<std::size_t>(station)]).toLower();
}

Station station_named(const QString& key) {
  for (std::size_t i = 0; i < words.size(); ++i)
    if (station_key(static_cast<Station>(i)) == key)
      return static_cast<Station>(i);
  return Station::pollen;
}

Station station_of(const work::Due& due) {
  return due.kind == work::DueKind::pollinate ? Station::cones : station_of(due.code.kind());
}

Station station_of(Kind kind) {
  switch (kind) {
  case Kind::plant:
  case Kind::pollen:
    return Station::pollen;
  case Kind::cone:
    return Station::cones;
  case Kind::tray:
    return Station::trays;
  case Kind::pot_group:
  case Kind::place:
    return Station::pots;
  default:
    return Station::seed;
  }
}

QString verb_of(work::DueKind kind) {
  switch (kind) {
  case work::DueKind::pollinate:
    return QStringLiteral("pollinate");
  case work::DueKind::harvest:
    return QStringLiteral("harvest");
  case work::DueKind::clean:
    return QStringLiteral("clean");
  case work::DueKind::water:
    return QStringLiteral("water");
  case work::DueKind::sow:
    return QStringLiteral("sow");
  case work::DueKind::inspect:
    return QStringLiteral("inspect");
  case work::DueKind::pot:
    return QStringLiteral("pot");
  case work::DueKind::pot_on:
    return QStringLiteral("pot on");
  case work::DueKind::check_scales:
    return QStringLiteral("check scales");
  case work::DueKind::collect_pollen:
    return QStringLiteral("collect pollen");
  case work::DueKind::test_pollen:
    return QStringLiteral("test pollen");
  case work::DueKind::move_plant:
    return QStringLiteral("moved");
  case work::DueKind::print_label:
    return QString(to_phrase("printed"));
  case work::DueKind::have_mix_ready:
    return QStringLiteral("later");
  case work::DueKind::store:
    return QStringLiteral("store");
  }
  return {};
}

} // namespace coneline::window
