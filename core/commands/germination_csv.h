// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Reads germination counts as a grower writes them: a header with group, tray, sown, day,
// germinated and perhaps removed, in any order; one row per tray and inspection, in any order.
//
//   group,tray,sown,day,germinated
//   A x B,T1,60,28,14
//
// Other columns, such as a note, are passed over. An empty `removed` is 0.

#include "core/base/csv.h"
#include "core/stats/germination_data.h"

#include <vector>

namespace coneline::commands {

/// The trays in the order of their first row, each with its looks in the order of their days; all
/// are sound. Fails with every fault found, one a line in the order of the file, each with file,
/// line and column: a column missing, a field that is no number, no rows, two rows of a tray on one
/// day, two different numbers sown, and all that stats::faults_of finds. The same name in two
/// groups is two trays.
Result<std::vector<stats::Tray>> read_germination(const CsvTable& table);

} // namespace coneline::commands
