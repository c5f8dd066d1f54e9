// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/commands/report_options.h"

namespace coneline::commands {

void ReportOptions::add_to(Command& command) {
  book.add_to(command);
  command.add_option("--as-of", as_of, "As it was known on that day; today when left out");
  command.add_option("--confidence", confidence, "Confidence of every range").told_default();
  command.add_option("--by", by, "What trays are taken together by")
      .one_of({"cross", "season", "cross-season"})
      .told_default();
  command
      .add_option("--season-begins", season_begins,
                  "Month in which a season of sowing begins, 1 to 12")
      .told_default();
  command
      .add_option("--time", time, "Times in days or in degree-days, by the loggers of the places")
      .one_of({"days", "degree-days"})
      .told_default();
  command.add_option("--base", base, "Degree-days count above so many °C").told_default();
  command.add_option("--degree-day-method", method, "How a day's degree-days are worked out")
      .one_of({"average", "clipped", "triangle", "readings"})
      .told_default();
}

Result<report::Asked> ReportOptions::asked() const {
  const auto day = date_or_today(as_of, "--as-of");
  if (!day)
    return refuse(day.error());
  report::Asked asked{*day, confidence, report::by_named(by).value(), season_begins, {}};
  if (time == "degree-days") {
    asked.degree_days.emplace();
    asked.degree_days->base = base;
    asked.degree_days->method = stats::degree_days_named(method).value();
  }
  return asked;
}

Result<report::GerminationReport> ReportOptions::report() const {
  const auto wanted = asked();
  if (!wanted)
    return refuse(wanted.error());
  auto opened = book.open(store::Access::read);
  if (!opened)
    return refuse(opened.error());
  return opened->read(
      [&](store::Reading& reading) { return report::germination_report(reading, *wanted); });
}

} // namespace coneline::commands
