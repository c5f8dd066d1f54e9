// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_season.h"

#include "core/base/phrase.h"
#include "core/exchange/read_folder.h"
#include "core/exchange/store_season.h"
#include "core/store/make_filled.h"

#include <fmt/format.h>

namespace coneline::exchange {

namespace {

Result<void> is_empty(store::Reading& reading) {
  const auto registers = reading.registers();
  const bool empty = registers.taxa.empty() && registers.places.empty() && registers.pots.empty() &&
                     registers.mixes.empty() && registers.routes.empty() &&
                     registers.plants.empty() && registers.pollen_lots.empty() &&
                     registers.cones.empty() && registers.purchases.empty() &&
                     reading.lots().empty() && reading.last_entries(1).empty();
  if (!empty)
    return refuse(
        book_fault(phrase("the book '{}' holds something already", registers.title.name),
                   "A season folder is imported into a new book; name one that does not exist."));
  return {};
}

std::vector<FileCount> counts_of(const Sheets& sheets) {
  std::vector<FileCount> counts;
  each_sheet(sheets, [&]<class Row>(const Sheet<Row>& sheet) {
    counts.push_back({std::string(file_of<Row>), sheet.rows.size()});
  });
  return counts;
}

} // namespace

Result<Imported> import_season(const std::filesystem::path& folder, store::Book& book, Import how,
                               const Progress& progress) {
  constexpr double files_read = 0.25; // as it was measured with 300,000 entries
  ProgressOfParts parts(progress);
  auto read = read_folder(folder, parts.part(0, files_read));
  if (!read)
    return refuse(read.error());
  if (parts.stopped())
    return refuse(stopped_taking_in());
  Imported imported{counts_of(read->sheets), std::move(read->faults), 0};
  bool judged = false;
  const auto put_all = [&](store::Writing& writing) -> Result<void> {
    if (auto empty = is_empty(writing); !empty)
      return empty;
    imported.not_judged =
        store_season(read->sheets, writing, imported.faults, parts.part(files_read, 1));
    if (parts.stopped())
      return refuse(stopped_taking_in());
    judged = true;
    if (!imported.faults.none())
      return refuse(imported.faults.listed().front()); // so that nothing of it is kept
    return {};
  };
  const auto done = how == Import::write ? book.write(put_all) : book.try_out(put_all);
  if (!done && (!judged || imported.faults.none()))
    return refuse(done.error());
  return imported;
}

Result<Imported> import_new(const std::filesystem::path& folder, const std::filesystem::path& path,
                            Date today, const Progress& progress) {
  constexpr int any_series = 10;
  std::optional<Imported> imported;
  const auto made = store::make_filled(
      path, {"", any_series, false, today}, [&](store::Book& book) -> Result<void> {
        auto came = import_season(folder, book, Import::write, progress);
        if (!came)
          return refuse(came.error());
        imported = std::move(*came);
        if (!imported->faults.none())
          return refuse(imported->faults.listed().front());
        return {};
      });
  if (!made && (!imported || imported->faults.none()))
    return refuse(made.error());
  return *std::move(imported);
}

} // namespace coneline::exchange
