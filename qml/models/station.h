// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The stations of the line, from pollen to out.

#include "core/work/due.h"

#include <QString>

namespace coneline::window {

enum class Station { pollen, cones, seed, trays, pots, out };

QString station_key(Station station);  ///< "pollen": what pages are asked for by
QString station_word(Station station); ///< "Pollen"
Station station_named(const QString& key);

/// Where something due is done.
Station station_of(const work::Due& due);

/// The station at which a thing of this kind is listed.
Station station_of(Kind kind);

/// The verb that settles what is due, as forms are named: "pot on".
QString verb_of(work::DueKind kind);

} // namespace coneline::window
