// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/csv.h"

#include "core/base/phrase.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <fstream>
#include <set>
#include <system_error>

namespace coneline {

namespace {

constexpr std::uintmax_t largest_file = 512ULL * 1024 * 1024;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// Walks over the text a field at a time and knows the line it is on.
class Reader {
 public:
  Reader(std::string_view text, const std::string& file) : text_(text), file_(file) {}

  [[nodiscard]] bool at_end() const { return at_ >= text_.size(); }

  /// The next row with its line. Only called when not at the end.
  Result<CsvRow> row() {
    CsvRow row{line_, {}};
    for (;;) {
      auto field = at_quote() ? quoted() : plain();
      if (!field)
        return refuse(field.error());
      row.fields.push_back(std::move(*field));
      if (at_end() || take_line_end())
        return row;
      ++at_; // the comma
    }
  }

 private:
  [[nodiscard]] bool at_quote() const { return !at_end() && text_[at_] == '"'; }

  [[nodiscard]] bool at_line_end() const {
    return text_[at_] == '\n' ||
           (text_[at_] == '\r' && at_ + 1 < text_.size() && text_[at_ + 1] == '\n');
  }

  bool take_line_end() {
    if (!at_line_end())
      return false;
    at_ += text_[at_] == '\r' ? 2 : 1;
    ++line_;
    return true;
  }

  Result<std::string> plain() {
    const auto from = at_;
    while (!at_end() && text_[at_] != ',' && !at_line_end()) {
      if (text_[at_] == '"')
        return refuse(here("a quote stands inside an unquoted field",
                           "Put the whole field in quotes and double the quote."));
      if (text_[at_] == '\r')
        return refuse(here("a carriage return without a line feed",
                           "Save the file with ordinary line ends."));
      ++at_;
    }
    return std::string(text_.substr(from, at_ - from));
  }

  Result<std::string> quoted() {
    const auto opened = here("a quote is opened and never closed",
                             "Close it, or double a quote that belongs to the text.");
    std::string field;
    ++at_;
    for (;; ++at_) {
      if (at_end())
        return refuse(opened);
      if (text_[at_] == '"') {
        ++at_;
        if (!at_quote())
          break;
      }
      if (text_[at_] == '\n')
        ++line_;
      field += text_[at_];
    }
    if (!at_end() && text_[at_] != ',' && !at_line_end())
      return refuse(
          here("text follows a closing quote", "Double a quote that belongs to the text."));
    return field;
  }

  [[nodiscard]] Fault here(std::string what, std::string remedy) const {
    return fault(std::move(what), std::move(remedy)).at({file_, line_, {}});
  }

  std::string_view text_;
  const std::string& file_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
};

bool is_blank(const CsvRow& row) {
  return row.fields.size() == 1 && row.fields.front().empty();
}

Result<void> check_header(const CsvTable& table) {
  std::set<std::string_view> seen;
  for (const auto& name : table.columns) {
    if (name.empty())
      return refuse(fault("the header has a column without a name", "Name every column.")
                        .at({table.file, 1, {}}));
    if (!seen.insert(name).second)
      return refuse(
          fault(phrase("the column '{}' stands twice in the header", name), "Keep one of them.")
              .at({table.file, 1, name}));
  }
  return {};
}

/// Length of the well-formed UTF-8 sequence at the front of `text`, or 0 (Unicode 15, table 3-7).
std::size_t utf8_length(std::string_view text) {
  const auto byte = [&](std::size_t i) {
    return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
  };
  const auto tail = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
  const auto first = byte(0);
  if (first < 0x80)
    return first == 0 ? 0 : 1;
  if (first >= 0xC2 && first <= 0xDF)
    return tail(1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool too_low = first == 0xE0 && byte(1) < 0xA0;
    const bool surrogate = first == 0xED && byte(1) > 0x9F;
    return tail(1) && tail(2) && !too_low && !surrogate ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const bool too_low = first == 0xF0 && byte(1) < 0x90;
    const bool too_high = first == 0xF4 && byte(1) > 0x8F;
    return tail(1) && tail(2) && tail(3) && !too_low && !too_high ? 4 : 0;
  }
  return 0;
}

std::optional<std::size_t> first_bad_byte(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const auto length = utf8_length(text.substr(at, 4));
    if (length == 0)
      return at;
    at += length;
  }
  return std::nullopt;
}

bool asks_for_apostrophe(std::string_view value) {
  constexpr std::string_view risky = "=+-@\t\r'";
  return !value.empty() && risky.find(value.front()) != std::string_view::npos;
}

} // namespace

std::optional<std::size_t> CsvTable::column(std::string_view name) const {
  const auto found = std::ranges::find(columns, name);
  if (found == columns.end())
    return std::nullopt;
  return static_cast<std::size_t>(found - columns.begin());
}

Where CsvTable::where(const CsvRow& row, std::string_view name) const {
  return {file, row.line, std::string(name)};
}

bool is_utf8(std::string_view text) {
  return !first_bad_byte(text);
}

std::optional<std::string> other_separator(const CsvTable& table) {
  if (table.columns.size() != 1)
    return std::nullopt;
  if (table.columns.front().find(';') != std::string::npos)
    return "semicolons";
  if (table.columns.front().find('\t') != std::string::npos)
    return "tabs";
  return std::nullopt;
}

namespace {

/// Most rows of another length come from a file with other separators, or from decimals with a
/// comma.
std::string remedy_for_row(const CsvTable& table, std::size_t fields) {
  if (const auto other = other_separator(table))
    return phrase("Columns seem to be separated by {}. Save the file with commas between "
                  "columns and decimals with a point, such as 7.5.",
                  *other);
  if (fields > table.columns.size())
    return "Check commas and quotes in this row; write decimals with a point, such as 7.5.";
  return "Check commas and quotes in this row.";
}

} // namespace

Result<CsvTable> read_csv(std::string_view text, std::string file) {
  if (text.starts_with(byte_order_mark))
    text.remove_prefix(byte_order_mark.size());
  CsvTable table{std::move(file), {}, {}};
  if (const auto bad = first_bad_byte(text)) {
    const auto line = 1 + static_cast<std::size_t>(std::ranges::count(text.substr(0, *bad), '\n'));
    return refuse(fault("a byte that is no UTF-8 text", "Save the file as UTF-8.")
                      .at({table.file, line, {}}));
  }
  Reader reader(text, table.file);
  if (reader.at_end())
    return refuse(fault("the file is empty", "It needs a header with the names of the columns.")
                      .at({table.file, 1, {}}));
  auto header = reader.row();
  if (!header)
    return refuse(header.error());
  table.columns = std::move(header->fields);
  if (auto sound = check_header(table); !sound)
    return refuse(sound.error());
  while (!reader.at_end()) {
    auto row = reader.row();
    if (!row)
      return refuse(row.error());
    table.rows.push_back(std::move(*row));
  }
  if (table.columns.size() > 1)
    while (!table.rows.empty() && is_blank(table.rows.back()))
      table.rows.pop_back();
  for (const auto& row : table.rows)
    if (row.fields.size() != table.columns.size())
      return refuse(fault(phrase("the row has {} fields, the header {}", row.fields.size(),
                                 table.columns.size()),
                          remedy_for_row(table, row.fields.size()))
                        .at({table.file, row.line, {}}));
  return table;
}

Result<CsvTable> read_csv_file(const std::filesystem::path& path) {
  const auto name = path.filename().string();
  std::error_code error;
  const auto size = std::filesystem::file_size(path, error);
  if (error)
    return refuse(fault(phrase("'{}' cannot be read: {}", path.string(), error.message()),
                        "Check the name."));
  if (size > largest_file)
    return refuse(fault(
        phrase("'{}' has {} MB, more than {} MB", path.string(), size >> 20U, largest_file >> 20U),
        "Split it."));
  std::ifstream in(path, std::ios::binary);
  std::string text(size, '\0');
  if (!in || !in.read(text.data(), static_cast<std::streamsize>(size)))
    return refuse(fault(
        phrase("'{}' cannot be read: {}", path.string(), std::generic_category().message(errno)),
        "Check that it may be read."));
  return read_csv(text, name);
}

std::string csv_field(std::string_view value) {
  const bool blank_end = !value.empty() && (value.front() == ' ' || value.back() == ' ');
  // At the front of a file a byte-order mark would be taken off; behind a quote it is text.
  const bool marked = value.starts_with(byte_order_mark);
  if (!blank_end && !marked && value.find_first_of(",\"\n\r") == std::string_view::npos)
    return std::string(value);
  std::string quoted = "\"";
  for (const char c : value) {
    if (c == '"')
      quoted += '"';
    quoted += c;
  }
  return quoted + '"';
}

std::string csv_line(const std::vector<std::string>& fields) {
  std::string line;
  for (const auto& field : fields) {
    if (&field != &fields.front())
      line += ',';
    line += csv_field(field);
  }
  // A single empty field would read back as no row at all.
  if (fields.size() == 1 && line.empty())
    line = "\"\"";
  return line + '\n';
}

std::string for_spreadsheet(std::string_view value) {
  return asks_for_apostrophe(value) ? "'" + std::string(value) : std::string(value);
}

std::string from_spreadsheet(std::string_view value) {
  if (value.size() > 1 && value.front() == '\'' && asks_for_apostrophe(value.substr(1)))
    value.remove_prefix(1);
  return std::string(value);
}

} // namespace coneline
