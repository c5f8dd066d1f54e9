// SPDX-License-Identifier: GPL-3.0-or-later
// coming: how many seeds still come up, and by when, for each cross and tray of a book.
#include "core/base/number.h"
#include "core/commands/book_options.h"
#include "core/commands/coming_json.h"
#include "core/commands/commands.h"
#include "core/commands/number_options.h"
#include "core/commands/table.h"

#include <fmt/format.h>

#include <cmath>
#include <memory>

namespace coneline::commands {

namespace {

struct Asked {
  BookOption book;
  std::string as_of;
  std::string lot;
  std::string within = "30,90";
  double confidence = 0.8;
};

std::string count_text(const stats::CountRange& seeds) {
  return seeds.low == seeds.high ? std::to_string(seeds.low)
                                 : fmt::format("{}–{}", seeds.low, seeds.high);
}

std::string day_text(const std::optional<double>& days, Date as_of) {
  return days ? as_of.plus_days(static_cast<int>(std::ceil(*days))).iso() : "not in sight";
}

std::string days_text(const std::optional<stats::DayRange>& range, Date as_of) {
  if (!range)
    return "most likely none";
  return fmt::format("{} – {}", day_text(range->low, as_of), day_text(range->high, as_of));
}

std::vector<std::string> row_of(const std::string& name, std::int64_t up,
                                const stats::Coming& coming, Date as_of) {
  std::vector<std::string> row{name, std::to_string(up), std::to_string(coming.waiting),
                               count_text(coming.seeds), std::to_string(coming.seeds.median)};
  for (const auto& within : coming.within)
    row.push_back(count_text(within.seeds));
  row.push_back(fmt::format("{:.1f}", 100 * coming.chance_of_one));
  row.push_back(days_text(coming.half, as_of));
  row.push_back(days_text(coming.nine_tenths, as_of));
  return row;
}

std::string table_of(const work::ComingBook& book) {
  if (book.crosses.empty())
    return fmt::format("No seed waits in a tray on {}.\n", book.as_of.iso());
  std::vector<std::string> header{
      "cross / tray", "up", "waiting",
      fmt::format("still to come, {:g} % range", 100 * book.asked.confidence), "middle"};
  for (const double days : book.asked.within)
    header.push_back(fmt::format("in {:g} days", days));
  for (const auto* column : {"% chance of one more", "half of it by", "nine tenths by"})
    header.emplace_back(column);
  Table table(header);
  for (const auto& cross : book.crosses) {
    std::int64_t up = 0;
    for (const auto& tray : cross.trays)
      up += tray.germinated;
    table.row(row_of(cross.name, up, cross.coming, book.as_of));
    for (const auto& tray : cross.trays)
      table.row(row_of("  " + tray.seen.lot.code.text(), tray.germinated, tray.coming, book.as_of));
  }
  auto text = table.text() + "\nWhat the book knew of each taxon beforehand:\n";
  for (const auto& cross : book.crosses)
    text += fmt::format("  {}: {}\n", cross.name, work::told(cross.prior, book.asked.confidence));
  for (const auto& tray : book.left_out)
    text += fmt::format("Left out: {}: {}\n", tray.code.text(), tray.why);
  return text;
}

Json json_of(const work::ComingBook& book) {
  Json json{{"as_of", book.as_of.iso()},
            {"confidence", book.asked.confidence},
            {"crosses", Json::array()},
            {"left_out", Json::array()}};
  for (const auto& cross : book.crosses) {
    Json one{{"cross", cross.name},
             {"taxon", cross.taxon},
             {"prior", commands::json_of(cross.prior, book.asked.confidence)},
             {"coming", commands::json_of(cross.coming, book.as_of)},
             {"trays", Json::array()}};
    for (const auto& tray : cross.trays)
      one["trays"].push_back({{"tray", tray.seen.lot.code.text()},
                              {"sown_on", tray.seen.sown_on.iso()},
                              {"sown", tray.seen.sown},
                              {"germinated", tray.germinated},
                              {"coming", commands::json_of(tray.coming, book.as_of)}});
    json["crosses"].push_back(one);
  }
  for (const auto& tray : book.left_out)
    json["left_out"].push_back({{"tray", tray.code.text()}, {"why", tray.why}});
  return json;
}

Result<std::vector<double>> days_given(const std::string& text) {
  std::vector<double> days;
  for (const auto& piece : split_at_commas(text)) {
    const auto number = parse_real(piece);
    if (!number)
      return refuse(usage_fault(fmt::format("--within {}: '{}' is no number of days", text, piece),
                                "Write days from now, as in 30,90."));
    days.push_back(*number);
  }
  return days;
}

Result<Answer> run(const Asked& asked) {
  const auto as_of = date_or_today(asked.as_of, "--as-of");
  if (!as_of)
    return refuse(as_of.error());
  const auto within = days_given(asked.within);
  if (!within)
    return refuse(within.error());
  auto book = asked.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  std::optional<Code> only;
  if (!asked.lot.empty()) {
    const auto code = code_given(*book, asked.lot);
    if (!code)
      return refuse(code.error());
    if (code->kind() != Kind::tray)
      return refuse(
          fault(fmt::format("{} is a {}, not a tray", code->text(), kind_word(code->kind())),
                "Give the code of a tray: its cross is reckoned."));
    only = *code;
  }
  const auto found = book->read([&](store::Reading& reading) {
    return work::coming(reading, *as_of, {asked.confidence, *within}, only);
  });
  if (!found)
    return refuse(found.error());
  return Answer{json_of(*found), table_of(*found)};
}

} // namespace

void add_coming(CommandLine& line) {
  auto asked = std::make_shared<Asked>();
  auto& command = line.add("coming", "How many seeds still come up, and by when",
                           [asked] { return run(*asked); });
  asked->book.add_to(command);
  command.add_option("tray", asked->lot, "Only the cross of this tray");
  command.add_option("--as-of", asked->as_of, "As it was known on that day; today when left out");
  command.add_option("--within", asked->within, "Days from then to reckon with, as in 30,90")
      .told_default();
  real_option(command, "--confidence", asked->confidence,
              "Confidence of every range; 0.8 unless said");
}

} // namespace coneline::commands
