// SPDX-License-Identifier: GPL-3.0-or-later
// temperature take-in, show, take-out: what loggers measured at the places.
#include "core/commands/book_options.h"
#include "core/commands/commands.h"
#include "core/commands/table.h"
#include "core/exchange/logger_file.h"
#include "core/work/temperature.h"

#include <fmt/format.h>

#include <cmath>
#include <memory>

namespace coneline::commands {

namespace {

struct TakeInOptions {
  BookOption book;
  std::string file;
  std::string place;
  std::string unit;
  std::string delimiter;
  std::string decimal;
  std::string order;
  exchange::LoggerOptions logger;
};

exchange::LoggerOptions stated(const TakeInOptions& options) {
  auto logger = options.logger;
  if (!options.unit.empty())
    logger.unit = options.unit == "C" ? exchange::TemperatureUnit::celsius
                                      : exchange::TemperatureUnit::fahrenheit;
  if (!options.delimiter.empty())
    logger.delimiter = options.delimiter == "comma"       ? ','
                       : options.delimiter == "semicolon" ? ';'
                                                          : '\t';
  if (!options.decimal.empty())
    logger.decimal = options.decimal == "comma" ? ',' : '.';
  if (options.order == "ymd")
    logger.date_order = exchange::DateOrder::year_month_day;
  if (options.order == "dmy")
    logger.date_order = exchange::DateOrder::day_month_year;
  if (options.order == "mdy")
    logger.date_order = exchange::DateOrder::month_day_year;
  return logger;
}

Result<book::Place> place_given(store::Book& book, const std::string& typed) {
  const auto code = code_given(book, typed);
  if (!code)
    return refuse(code.error());
  const auto registers = book.read([](store::Reading& reading) { return reading.registers(); });
  if (!registers)
    return refuse(registers.error());
  for (const auto& place : registers->places)
    if (place.code == *code)
      return place;
  return refuse(fault(fmt::format("{} is no place", code->text()),
                      "Name the house, bench or bay where the logger hung."));
}

std::vector<book::Temperature> temperatures_of(const exchange::LoggerFile& file,
                                               book::PlaceId place) {
  std::vector<book::Temperature> readings;
  for (const auto& reading : file.readings)
    readings.push_back({place, reading.at, reading.celsius});
  return readings;
}

Answer answer_of(const exchange::LoggerFile& file, const work::TakenIn& taken,
                 const book::Place& place) {
  Answer answer;
  const bool celsius = file.unit == exchange::TemperatureUnit::celsius;
  answer.json = {{"place", place.code.text()},
                 {"time_column", file.time_column},
                 {"temperature_column", file.temperature_column},
                 {"unit", celsius ? "C" : "F"},
                 {"first", file.readings.front().at.iso()},
                 {"last", file.readings.back().at.iso()},
                 {"taken", taken.taken},
                 {"known", taken.known},
                 {"differing", taken.differing},
                 {"repeated", file.repeated},
                 {"second_answers", file.second_answers.size()},
                 {"without_reading", file.without_reading},
                 {"out_of_order", file.out_of_order}};
  auto& text = answer.table;
  text = fmt::format("{} readings taken in at {} {}, {} to {}, column '{}' in °{}.\n", taken.taken,
                     place.code.text(), place.name, file.readings.front().at.iso(),
                     file.readings.back().at.iso(), file.temperature_column, celsius ? "C" : "F");
  const auto say = [&](std::size_t count, std::string_view what) {
    if (count > 0)
      text += fmt::format("  {} {}\n", count, what);
  };
  say(taken.known, "were in the book already");
  say(taken.differing, "differ from what the book has of that moment; the book's stays");
  say(file.repeated, "rows were written twice and count once");
  say(file.second_answers.size(),
      "rows give another temperature for a moment that has one; the first is kept");
  say(file.without_reading, "rows have a time and no temperature");
  say(file.out_of_order, "rows were not in the order of time");
  if (!file.second_answers.empty())
    text += fmt::format("  the first such row is line {}\n", file.second_answers.front());
  return answer;
}

Result<Answer> take_in(const TakeInOptions& options) {
  const auto file = exchange::read_logger_file(options.file, stated(options));
  if (!file)
    return refuse(file.error());
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto place = place_given(*book, options.place);
  if (!place)
    return refuse(place.error());
  const auto readings = temperatures_of(*file, place->id);
  return book
      ->write([&](store::Writing& writing) {
        return work::take_in_temperature(writing, place->id, readings);
      })
      .map([&](const work::TakenIn& taken) { return answer_of(*file, taken, *place); });
}

void add_take_in(CommandLine& line) {
  auto options = std::make_shared<TakeInOptions>();
  auto& command = line.add("temperature", "take-in", "Take in a temperature logger's CSV",
                           [options] { return take_in(*options); });
  options->book.add_to(command);
  command.add_option("file", options->file, "The logger's file").required();
  command.add_option("--place", options->place, "Where the logger hung").required();
  command.add_option("--unit", options->unit, "C or F, where the column's name does not say")
      .one_of_any_case({"C", "F"});
  command.add_option("--time-column", options->logger.time_column,
                     "The column with date and time, or with the time beside --date-column");
  command.add_option("--date-column", options->logger.date_column,
                     "The column with the date alone");
  command.add_option("--temperature-column", options->logger.temperature_column,
                     "The column with the temperature");
  command.add_option("--delimiter", options->delimiter, "What stands between columns")
      .one_of({"comma", "semicolon", "tab"});
  command.add_option("--decimal", options->decimal, "What stands before the decimals")
      .one_of({"point", "comma"});
  command.add_option("--date-order", options->order, "Order of year, month and day")
      .one_of({"ymd", "dmy", "mdy"});
}

struct ShowOptions {
  BookOption book;
  std::string place;
  std::string from;
  std::string until;
  double base = 10;
  std::string method = "average";
  bool days = false;
};

std::string hours_text(double hours) {
  const auto seconds = static_cast<std::int64_t>(std::llround(hours * 3600));
  const auto day = static_cast<int>(seconds / 86400);
  return Moment{Date::from_days(day), static_cast<int>(seconds % 86400)}.iso();
}

/// Which days are shown, and how warm they were.
struct Shown {
  stats::DegreeDays method;
  double base;
  Date from;
  Date until;

  [[nodiscard]] bool holds(int day) const { return day >= from.days() && day <= until.days(); }
  [[nodiscard]] double sum(const work::PlaceTemperature& place) const {
    double sum = 0;
    for (const auto& [day, one] : place.days.known)
      sum += holds(day) ? stats::degree_days(method, one, base) : 0;
    return sum;
  }
};

Json json_of(const work::PlaceTemperature& place, const Shown& shown, bool with_days) {
  Json marked = Json::array();
  for (const auto& one : place.marked)
    marked.push_back(
        {{"at", one.at.iso()}, {"celsius", one.celsius}, {"mark", stats::sensor_word(one.mark)}});
  Json gaps = Json::array();
  for (const auto& gap : place.days.gaps)
    gaps.push_back(
        {{"from", hours_text(gap.from)}, {"to", hours_text(gap.to)}, {"hours", gap.to - gap.from}});
  Json lacking = Json::array();
  for (const auto day : place.days.lacking)
    if (shown.holds(day))
      lacking.push_back(Date::from_days(day).iso());
  Json json = {{"place", place.place.code.text()}, {"name", place.place.name},
               {"readings", place.readings},       {"first", place.first.iso()},
               {"last", place.last.iso()},         {"marked", std::move(marked)},
               {"gaps", std::move(gaps)},          {"days_lacking", std::move(lacking)},
               {"degree_days", shown.sum(place)}};
  if (!with_days)
    return json;
  json["days"] = Json::array();
  for (const auto& [day, one] : place.days.known)
    if (shown.holds(day))
      json["days"].push_back({{"date", Date::from_days(day).iso()},
                              {"low", one.low},
                              {"mean", one.mean},
                              {"high", one.high},
                              {"hours_measured", one.hours_measured},
                              {"degree_days", stats::degree_days(shown.method, one, shown.base)}});
  return json;
}

std::string marks_text(const work::PlaceTemperature& place) {
  std::map<std::string_view, std::size_t> counts;
  for (const auto& one : place.marked)
    ++counts[stats::sensor_word(one.mark)];
  std::string text;
  for (const auto& [word, count] : counts)
    text += fmt::format("{}{} {}", text.empty() ? "" : ", ", count, word);
  return text.empty() ? "none" : text;
}

std::string text_of(const work::PlaceTemperature& place, const Shown& shown, bool with_days) {
  auto text = fmt::format(
      "{} {}: {} readings, {} to {}\n  readings marked: {}\n  gaps: {}; days without temperature: "
      "{}\n  degree-days above {:g} °C ({} method): {:.1f}\n",
      place.place.code.text(), place.place.name, place.readings, place.first.iso(),
      place.last.iso(), marks_text(place), place.days.gaps.size(), place.days.lacking.size(),
      shown.base, stats::degree_days_word(shown.method), shown.sum(place));
  constexpr std::size_t most = 10;
  for (std::size_t i = 0; i < std::min(most, place.days.gaps.size()); ++i)
    text += fmt::format("  gap {} to {}\n", hours_text(place.days.gaps[i].from),
                        hours_text(place.days.gaps[i].to));
  for (std::size_t i = 0; i < std::min(most, place.marked.size()); ++i)
    text += fmt::format("  {} {:.2f} °C: {}\n", place.marked[i].at.iso(), place.marked[i].celsius,
                        stats::sensor_word(place.marked[i].mark));
  if (!with_days)
    return text;
  Table table({"day", "low °C", "mean °C", "high °C", "hours", "degree-days"});
  for (const auto& [day, one] : place.days.known)
    if (shown.holds(day))
      table.row({Date::from_days(day).iso(), commands::shown(one.low, 1),
                 commands::shown(one.mean, 1), commands::shown(one.high, 1),
                 commands::shown(one.hours_measured, 1),
                 commands::shown(stats::degree_days(shown.method, one, shown.base), 1)});
  return text + table.text();
}

Result<Shown> shown_by(const ShowOptions& options) {
  Shown shown{stats::degree_days_named(options.method).value(), options.base,
              Date::of(1900, 1, 1).value(), Date::of(2199, 12, 31).value()};
  if (!std::isfinite(options.base))
    return refuse(usage_fault("--base is no number", "Give degrees Celsius, such as 10."));
  for (const auto& [given, option, day] : {std::tuple(&options.from, "--from", &shown.from),
                                           {&options.until, "--until", &shown.until}})
    if (!given->empty()) {
      const auto read = date_or_today(*given, option);
      if (!read)
        return refuse(read.error());
      *day = *read;
    }
  return shown;
}

Result<Answer> show(const ShowOptions& options) {
  const auto shown = shown_by(options);
  if (!shown)
    return refuse(shown.error());
  auto book = options.book.open(store::Access::read);
  if (!book)
    return refuse(book.error());
  std::optional<book::PlaceId> only;
  if (!options.place.empty()) {
    const auto place = place_given(*book, options.place);
    if (!place)
      return refuse(place.error());
    only = place->id;
  }
  const auto places = book->read([&](store::Reading& reading) {
    return work::place_temperatures(reading, reading.registers(), options.base);
  });
  if (!places)
    return refuse(places.error());
  Answer answer;
  answer.json = {{"base", options.base}, {"method", options.method}, {"places", Json::array()}};
  for (const auto& place : *places)
    if (!only || place.place.id == *only) {
      answer.json["places"].push_back(json_of(place, *shown, options.days));
      answer.table += text_of(place, *shown, options.days);
    }
  if (answer.table.empty())
    answer.table =
        "No temperature was taken in yet: coneline temperature take-in FILE --place H…\n";
  return answer;
}

void add_show(CommandLine& line) {
  auto options = std::make_shared<ShowOptions>();
  auto& command = line.add("temperature", "show", "What was measured: days, gaps, sensor faults",
                           [options] { return show(*options); });
  options->book.add_to(command);
  command.add_option("--place", options->place, "One place only");
  command.add_option("--from", options->from, "The first day shown");
  command.add_option("--until", options->until, "The last day shown");
  command.add_option("--base", options->base, "Degree-days count above so many °C").told_default();
  command.add_option("--method", options->method, "How a day's degree-days are worked out")
      .one_of({"average", "clipped", "triangle", "readings"})
      .told_default();
  command.add_flag("--days", options->days, "One row a day");
}

struct TakeOutOptions {
  BookOption book;
  std::string place;
  std::string from;
  std::string until;
};

Result<Answer> take_out(const TakeOutOptions& options) {
  const auto from = date_or_today(options.from, "--from");
  if (!from)
    return refuse(from.error());
  const auto until = date_or_today(options.until, "--until");
  if (!until)
    return refuse(until.error());
  auto book = options.book.open(store::Access::write);
  if (!book)
    return refuse(book.error());
  const auto place = place_given(*book, options.place);
  if (!place)
    return refuse(place.error());
  return book
      ->write([&](store::Writing& writing) -> Result<std::int64_t> {
        return writing.take_out_temperatures(place->id, *from, *until);
      })
      .map([&](std::int64_t count) {
        return Answer{{{"place", place->code.text()}, {"taken_out", count}},
                      fmt::format("{} readings of {} {} taken out.\n", count, place->code.text(),
                                  place->name)};
      });
}

void add_take_out(CommandLine& line) {
  auto options = std::make_shared<TakeOutOptions>();
  auto& command =
      line.add("temperature", "take-out", "Take readings out again, such as those in a wrong unit",
               [options] { return take_out(*options); });
  options->book.add_to(command);
  command.add_option("--place", options->place, "The place").required();
  command.add_option("--from", options->from, "The first day").required();
  command.add_option("--until", options->until, "The last day").required();
}

} // namespace

void add_temperature(CommandLine& line) {
  add_take_in(line);
  add_show(line);
  add_take_out(line);
}

} // namespace coneline::commands
