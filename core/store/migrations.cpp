// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/migrations.h"

#include "core/base/phrase.h"
#include "core/store/chain.h"
#include "core/store/copies.h"
#include "core/store/copying.h"
#include "core/store/engine/sqlite.h"
#include "sql.h"

#include <fmt/format.h>

namespace coneline::store {

const std::vector<Migration>& migrations() {
  static const std::vector<Migration> steps = [] {
    std::vector<Migration> chain;
    for (const auto& step : sql::chain)
      chain.push_back({step.version, step.name, step.text});
    return chain;
  }();
  return steps;
}

namespace {

/// Within the last step, since reading an entry takes the tables of all of them.
void chain_older(soci::session& session) {
  constexpr int any_series = 10; // the chain holds no whole codes
  engine::Prepared prepared(session);
  Tables tables(session, prepared, any_series);
  chain_older_entries(tables);
}

} // namespace

std::filesystem::path copy_before_migration(const std::filesystem::path& path, int version) {
  for (int n = 1;; ++n) {
    auto name = fmt::format("{}.version-{}{}.copy", path.string(), version,
                            n == 1 ? "" : fmt::format("-{}", n));
    if (!std::filesystem::exists(name))
      return name;
  }
}

Result<void> bring_up_to_date(soci::session& session, const std::filesystem::path& path,
                              std::span<const Migration> steps) {
  const int there = engine::version(session);
  const int newest = steps.back().version;
  if (there > newest)
    return refuse(book_fault(
        phrase("'{}' was written by a newer program: its version is {}, this program knows {}",
               path.string(), there, newest),
        "Use the newer program. Nothing was changed. If no newer one wrote it, it is damaged. " +
            advice_for_damaged(path)));
  if (there > 0 && there < newest) {
    remove_abandoned(std::filesystem::absolute(path).parent_path(), path.filename().string() + ".");
    if (auto copied = checked_copy(session, path, copy_before_migration(path, there)); !copied)
      return refuse(copied.error());
  }
  for (const auto& step : steps) {
    if (step.version <= there)
      continue;
    engine::begin_writing(session);
    try {
      engine::run_script(session, step.script);
      if (step.version == newest && there > 0)
        chain_older(session);
      engine::set_version(session, step.version);
      engine::keep(session);
    } catch (...) {
      engine::drop(session);
      throw;
    }
  }
  return {};
}

} // namespace coneline::store
