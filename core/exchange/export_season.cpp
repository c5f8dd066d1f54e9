// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/export_season.h"

#include "core/base/phrase.h"
#include "core/exchange/field_writer.h"
#include "core/exchange/fields.h"

#include <fmt/format.h>

namespace coneline::exchange {

namespace {

template <class Row>
void add_keys(Keys& keys, const Sheet<Row>& sheet) {
  using Id = typename IdOf<Row>::Id;
  if constexpr (!std::is_void_v<Id>)
    for (const auto& each : sheet.rows) {
      if constexpr (numbered<Id>)
        keys.add(std::to_string(each.row.id.value), each.row.id);
      else if constexpr (requires { each.row.code; })
        keys.add(each.row.code.text(), each.row.id);
      else
        keys.add(each.row.name, each.row.id);
    }
}

template <class Row>
Result<std::string> text_of(const Keys& keys, const Sheet<Row>& sheet) {
  FieldWriter header(keys);
  Row none{};
  fields(header, none);
  auto text = csv_line(header.columns());
  std::size_t number = 0;
  for (auto each : sheet.rows) {
    FieldWriter io(keys);
    fields(io, each.row);
    ++number;
    if (!io.unwritable().empty())
      return refuse(
          fault(phrase("row {} of the book's {} has a text that is no UTF-8", number, file_of<Row>),
                "Correct the text in the book, then export again.")
              .at({std::string(file_of<Row>), 0, io.unwritable()}));
    text += csv_line(io.cells());
  }
  return text;
}

} // namespace

Result<std::vector<FileCount>>
write_season(const Season& season, const std::filesystem::path& folder, Existing existing) {
  const auto sheets = sheets_of(season);
  Keys keys;
  each_sheet(sheets, [&](const auto& sheet) { add_keys(keys, sheet); });
  std::vector<FileCount> counts;
  const auto fill = [&](const std::filesystem::path& unfinished) {
    Result<void> done;
    each_sheet(sheets, [&]<class Row>(const Sheet<Row>& sheet) {
      if (!done || (may_be_missing<Row> && sheet.rows.empty()))
        return;
      done = text_of(keys, sheet).and_then([&](const std::string& text) {
        return write_file(unfinished / file_of<Row>, text);
      });
      counts.push_back({std::string(file_of<Row>), sheet.rows.size()});
    });
    return done;
  };
  return write_whole(folder, existing, files_of_a_season(), fill).map([&] { return counts; });
}

Result<std::vector<FileCount>> export_season(store::Book& book, const std::filesystem::path& folder,
                                             Existing existing) {
  const auto season = book.read([](store::Reading& reading) { return season_of(reading); });
  if (!season)
    return refuse(season.error());
  return write_season(*season, folder, existing);
}

} // namespace coneline::exchange
