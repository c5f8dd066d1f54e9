// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The least the engine has to do for a book, by its own C interface.

#include "tests/benchmark/raw_sqlite.h"

namespace coneline::tests {

/// Inserts all rows in one transaction, and closes the file.
void insert_all(const std::filesystem::path& path, const std::vector<RawTable>& tables);

/// Writes entries of one movement each, a transaction a time: seed of a tray's own that came up.
void enter_each(RawSqlite& raw, const std::vector<std::int64_t>& trays);

/// What every lot holds in every state up to a day, by reading every movement once and adding up in
/// memory; how many sums there are.
std::size_t sum_balances(RawSqlite& raw, const std::string& day);

/// Opens a book and asks once, in as few queries as can be, for all that the line shows: registers,
/// lots, what came in and when, what is on hand, where it stands, what was done when, passes,
/// harvests, answers, labels. How many rows came.
std::size_t raw_line(const std::filesystem::path& path, const std::string& day);
/// The sums of the line by reading entries, movements and lots once each and adding up in memory:
/// the fastest way known, and no query. How many sums there are.
std::size_t swept_line(const std::filesystem::path& path);

} // namespace coneline::tests
