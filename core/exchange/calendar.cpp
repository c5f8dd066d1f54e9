// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/calendar.h"

#include "core/base/phrase.h"
#include "core/exchange/calendar_lines.h"

#include <fmt/format.h>

#include <libical/ical.h>
#include <memory>

namespace coneline::exchange {

namespace {

struct Free {
  void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, Free>;

icaltimetype time_of(Date day) {
  auto time = icaltime_null_date();
  time.year = day.year();
  time.month = static_cast<int>(day.month());
  time.day = static_cast<int>(day.day());
  time.is_date = 1;
  return time;
}

std::optional<Date> day_of(const icaltimetype& time) {
  if (icaltime_is_null_time(time))
    return std::nullopt;
  const auto day =
      Date::of(time.year, static_cast<unsigned>(time.month), static_cast<unsigned>(time.day));
  return day ? std::optional(*day) : std::nullopt;
}

std::string ending(const book::Title& title) {
  auto made = title.made_on.iso();
  std::erase(made, '-');
  return fmt::format("@{}-{}.coneline", title.series, made);
}

class Write {
 public:
  explicit Write(const CalendarGiven& given)
      : given_(given), calendar_(icalcomponent_new_vcalendar()) {
    add(*calendar_, icalproperty_new_prodid("-//Coneline//Due//EN"));
    add(*calendar_, icalproperty_new_version("2.0"));
  }

  std::string all() {
    for (const auto& due : given_.due)
      write(due);
    for (const auto& settled : given_.settled)
      write(settled);
    const std::unique_ptr<char, void (*)(void*)> text(
        icalcomponent_as_ical_string_r(calendar_.get()), icalmemory_free_buffer);
    return text.get();
  }

 private:
  static void add(icalcomponent& to, icalproperty* property) {
    icalcomponent_add_property(&to, property);
  }
  [[nodiscard]] bool todo() const { return given_.as == CalendarAs::todo; }

  icalcomponent& begin(const std::string& key, int sequence, const std::string& summary) {
    auto* item = icalcomponent_new(todo() ? ICAL_VTODO_COMPONENT : ICAL_VEVENT_COMPONENT);
    icalcomponent_add_component(calendar_.get(), item);
    add(*item, icalproperty_new_uid(calendar_uid(given_.title, key).c_str()));
    add(*item, icalproperty_new_dtstamp(icaltime_from_string(given_.stamp.c_str())));
    add(*item, icalproperty_new_sequence(sequence));
    add(*item, icalproperty_new_summary(summary.c_str()));
    return *item;
  }

  void days(icalcomponent& item, Date from, std::optional<Date> to) const {
    add(item, icalproperty_new_dtstart(time_of(from)));
    // DUE must be later than DTSTART, and the end of an event is the day after its last.
    if (!todo())
      add(item, icalproperty_new_dtend(time_of(to.value_or(from).plus_days(1))));
    else if (to && *to > from)
      add(item, icalproperty_new_due(time_of(*to)));
  }

  void write(const work::Due& due) {
    auto& item =
        begin(due.key, due.times_put_off, fmt::format("{}: {}", due.code.text(), due.told));
    days(item, due.from, due.to);
    if (!todo())
      add(item, icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
    else
      add(item, icalproperty_new_status(ICAL_STATUS_NEEDSACTION));
    if (!due.missed.empty())
      add(item, icalproperty_new_description(due.missed.c_str()));
    add(item, icalproperty_new_categories(std::string(book::word(due.kind)).c_str()));
  }

  void write(const work::Settled& settled) {
    auto& item = begin(settled.key, settled.times_put_off + 1, settled.told);
    days(item, settled.date, std::nullopt);
    if (todo() && !settled.dismissed) {
      auto at = time_of(settled.date);
      at.is_date = 0; // COMPLETED is a moment in UTC; the book knows the day
      at.hour = at.minute = at.second = 0;
      at.zone = icaltimezone_get_utc_timezone();
      add(item, icalproperty_new_status(ICAL_STATUS_COMPLETED));
      add(item, icalproperty_new_completed(at));
    } else {
      add(item, icalproperty_new_status(ICAL_STATUS_CANCELLED));
    }
  }

  const CalendarGiven& given_;
  Component calendar_;
};

CalendarLine line_of(icalcomponent* item, std::string key) {
  CalendarLine line;
  line.key = std::move(key);
  line.from = day_of(icalcomponent_get_dtstart(item));
  line.sequence = icalcomponent_get_sequence(item);
  const auto status = icalcomponent_get_status(item);
  line.cancelled = status == ICAL_STATUS_CANCELLED;
  if (icalcomponent_isa(item) == ICAL_VTODO_COMPONENT) {
    line.to = day_of(icalcomponent_get_due(item));
    if (auto* done = icalcomponent_get_first_property(item, ICAL_COMPLETED_PROPERTY)) {
      line.completed = true;
      line.completed_on = day_of(icalproperty_get_completed(done));
    }
    line.completed = line.completed || status == ICAL_STATUS_COMPLETED;
  } else if (icalcomponent_get_first_property(item, ICAL_DTEND_PROPERTY) != nullptr) {
    if (const auto end = day_of(icalcomponent_get_dtend(item)))
      line.to = end->plus_days(-1);
  }
  return line;
}

std::string key_of(std::string_view uid) {
  std::string key;
  for (std::size_t i = 0; i < uid.size(); ++i) {
    const auto three = uid.substr(i, 3);
    const bool coded = three == "%20" || three == "%25";
    key += coded ? (three == "%20" ? ' ' : '%') : uid[i];
    i += coded ? 2 : 0;
  }
  return key;
}

} // namespace

std::string calendar_uid(const book::Title& title, std::string_view key) {
  std::string uid;
  for (const char c : key)
    uid += c == ' ' ? "%20" : c == '%' ? "%25" : std::string(1, c);
  return uid + ending(title);
}

std::string calendar_text(const CalendarGiven& given) {
  return Write(given).all();
}

Result<CalendarRead> read_calendar(std::string_view text, const std::string& file,
                                   const book::Title& title) {
  if (auto faults = broken_lines(text, file); !faults.empty()) {
    auto first = faults.front();
    if (faults.size() > 1)
      first.what += phrase(" (and {} more, the next on line {})", faults.size() - 1,
                           faults[1].where ? faults[1].where->line : 0);
    return refuse(first);
  }
  const Component calendar(icalparser_parse_string(std::string(text).c_str()));
  if (!calendar)
    return refuse(fault("the calendar cannot be read", "Write it again from the calendar program.")
                      .at({file, 1, {}}));
  const auto lines = component_lines(text);
  const auto end = ending(title);
  CalendarRead read;
  std::size_t number = 0;
  for (auto* item = icalcomponent_get_first_component(calendar.get(), ICAL_ANY_COMPONENT);
       item != nullptr;
       item = icalcomponent_get_next_component(calendar.get(), ICAL_ANY_COMPONENT)) {
    const auto kind = icalcomponent_isa(item);
    if (kind != ICAL_VTODO_COMPONENT && kind != ICAL_VEVENT_COMPONENT)
      continue;
    const auto* given = icalcomponent_get_uid(item);
    std::string uid = given == nullptr ? "" : given;
    const auto line = number < lines.size() ? lines[number] : 0;
    ++number;
    if (!uid.ends_with(end) || uid.size() == end.size()) { // no work has an empty key
      ++read.of_others;
      continue;
    }
    uid.resize(uid.size() - end.size());
    read.lines.push_back(line_of(item, key_of(uid)));
    read.lines.back().line = line;
  }
  return read;
}

} // namespace coneline::exchange
