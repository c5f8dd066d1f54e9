// SPDX-License-Identifier: GPL-3.0-or-later
#include "temperature_log.h"

#include "core/exchange/logger_file.h"
#include "wording.h"

#include <QPointF>
#include <fmt/format.h>

#include <algorithm>

namespace coneline::window {

namespace {

constexpr double base = 10;

QString called(const book::Place& place) {
  return text(place.name) + " · " + text(place.code.text());
}

QString days_of(const work::PlaceTemperature& place) {
  const auto known = static_cast<std::int64_t>(place.days.known.size());
  const auto lacking = static_cast<std::int64_t>(place.days.lacking.size());
  return phrased("{} days measured, {} without temperature", shown(known), shown(lacking));
}

QString span_of(const work::PlaceTemperature& place) {
  return phrased("{} to {}", shown(place.first.date), shown(place.last.date));
}

/// One row a stretch of days without a gap; those after the first go on with its line.
void add_line(std::vector<Rows::Row>& rows, const work::PlaceTemperature& place, const char* name,
              double stats::DayTemperature::*part) {
  const int first = place.first.date.days();
  QVariantList points;
  const char* style = "solid";
  std::optional<int> before;
  const auto end_stretch = [&] {
    if (!points.isEmpty())
      rows.push_back({phrased_of(name), points, QString::fromUtf8(style)});
    style = points.isEmpty() ? style : "more";
    points.clear();
  };
  for (const auto& [day, one] : place.days.known) {
    if (before && day != *before + 1)
      end_stretch();
    points << QPointF(day - first, in_units(language().units(), Quantity::celsius, one.*part));
    before = day;
  }
  end_stretch();
}

QVariantList marks_of(const work::PlaceTemperature& place) {
  const int days = std::max(1, days_between(place.first.date, place.last.date));
  const int apart = std::max(1, (days + 3) / 4);
  QVariantList marks;
  for (int day = 0; day <= days; day += apart)
    marks << QVariantMap{{"at", day}, {"word", shown(place.first.date.plus_days(day))}};
  return marks;
}

/// What is odd about the readings, in words.
QStringList oddities(const work::PlaceTemperature& place) {
  std::map<stats::SensorMark, std::int64_t> counts;
  for (const auto& one : place.marked)
    ++counts[one.mark];
  QStringList said;
  for (const auto& [mark, count] : counts)
    said << phrased_n(count, "{} reading looks like a fault of the sensor ({}) and takes no part",
                      "{} readings look like a fault of the sensor ({}) and take no part",
                      phrase_of(stats::sensor_word(mark)));
  if (!place.days.gaps.empty()) {
    const auto& gap = *std::ranges::max_element(place.days.gaps, {},
                                                [](const auto& one) { return one.to - one.from; });
    said << phrased_n(static_cast<std::int64_t>(place.days.gaps.size()),
                      "{} gap of {} hours from {}", "{} gaps, the longest of {} hours from {}",
                      shown(gap.to - gap.from, 0),
                      shown(Date::from_days(static_cast<int>(gap.from / 24))));
  }
  double sum = 0;
  for (const auto& [day, one] : place.days.known)
    sum += stats::degree_days(stats::DegreeDays::average, one, base);
  said << phrased("{} degree-days above {} °C in the days measured", shown(sum, 0), shown(base, 0));
  return said;
}

QString taken_text(const work::TakenIn& taken, const exchange::LoggerFile& file) {
  QString said = phrased_n(static_cast<std::int64_t>(taken.taken), "{} reading taken in",
                           "{} readings taken in");
  const auto add = [&](std::size_t count, const char* what) {
    if (count > 0)
      said += ", " + shown(static_cast<std::int64_t>(count)) + " " + phrased_of(what);
  };
  add(taken.known, to_phrase("known already"));
  add(taken.differing, to_phrase("differ from the book, which stays"));
  add(file.repeated, to_phrase("written twice"));
  add(file.second_answers.size(), to_phrase("of a moment that had another"));
  add(file.without_reading, to_phrase("rows without temperature"));
  return said;
}

exchange::LoggerOptions options_of(const QString& unit) {
  exchange::LoggerOptions options;
  if (unit == QStringLiteral("°C"))
    options.unit = exchange::TemperatureUnit::celsius;
  if (unit == QStringLiteral("°F"))
    options.unit = exchange::TemperatureUnit::fahrenheit;
  return options;
}

struct Wanted {
  std::filesystem::path file;
  exchange::LoggerOptions options;
  book::PlaceId place;
};

/// To be done aside, with a book that it opens itself; says what came in.
auto taking_in(Wanted wanted, const Session& session, std::shared_ptr<Course> course) {
  return [wanted = std::move(wanted), path = Session::path_of(session.path()),
          course = std::move(course)]() -> Result<QString> {
    const auto file = exchange::read_logger_file(wanted.file, wanted.options);
    if (!file)
      return refuse(file.error());
    std::vector<book::Temperature> readings;
    for (const auto& one : file->readings)
      readings.push_back({wanted.place, one.at, one.celsius});
    auto book = store::Book::open(path, store::Access::write);
    if (!book)
      return refuse(book.error());
    return book
        ->write([&](store::Writing& writing) {
          return work::take_in_temperature(writing, wanted.place, readings, told_to(course));
        })
        .map([&](const work::TakenIn& taken) { return taken_text(taken, *file); });
  };
}

/// The session knows what came in, whatever page is looked at.
Result<void> tell(Session& session, const QString& taken) {
  work::Done made;
  made.told = plain(taken);
  return session.done_aside(std::move(made)).map([](const work::Done&) {});
}

} // namespace

TemperatureLog::TemperatureLog(QObject* parent)
    : QObject(parent), measured_({"name", "span", "days"}, this),
      series_({"name", "points", "style"}, this) {}

void TemperatureLog::set_session(Session* session) {
  session_ = session;
  connect(session, &Session::changed, this, &TemperatureLog::read);
  read();
}

void TemperatureLog::choose(const QString& place) {
  place_ = place;
  chosen_ = true;
  show();
}

QStringList TemperatureLog::places() const {
  QStringList names;
  if (session_ != nullptr)
    for (const auto& place : session_->standing().registers.places)
      names << called(place);
  return names;
}

void TemperatureLog::read() {
  const auto path = session_->path();
  if (path != of_) {
    known_.clear();
    of_.clear();
  }
  looking_ = path != of_ && !path.isEmpty();
  if (path.isEmpty())
    aside_.forget();
  else
    aside_.ask(
        Session::path_of(path),
        [](store::Reading& reading) {
          return work::place_temperatures(reading, reading.registers(), base);
        },
        [this, path](Result<Measured> measured) {
          looking_ = false;
          of_ = path;
          if (measured)
            known_ = *std::move(measured);
          else
            session_->set_fault(measured.error());
          show();
        });
  show();
}

void TemperatureLog::show() {
  // Until one is chosen, a place with a logger is shown.
  if (!chosen_ || !places().contains(place_))
    place_ = known_.empty() ? places().value(0) : called(known_.front().place);
  std::vector<Rows::Row> rows;
  std::vector<Rows::Row> series;
  marks_.clear();
  said_.clear();
  across_ = 1;
  for (const auto& place : known_) {
    rows.push_back({called(place.place), span_of(place), days_of(place)});
    if (called(place.place) != place_)
      continue;
    add_line(series, place, to_phrase("highest"), &stats::DayTemperature::high);
    add_line(series, place, to_phrase("mean"), &stats::DayTemperature::mean);
    add_line(series, place, to_phrase("lowest"), &stats::DayTemperature::low);
    across_ = std::max(1, days_between(place.first.date, place.last.date));
    marks_ = marks_of(place);
    said_ = QStringList{span_of(place), days_of(place)} + oddities(place);
  }
  measured_.replace(std::move(rows));
  series_.replace(std::move(series));
  emit told();
}

void TemperatureLog::takeIn(const QString& path, const QString& unit) {
  fault_.clear();
  emit told();
  const auto& places = session_->standing().registers.places;
  const auto at =
      std::ranges::find_if(places, [&](const auto& place) { return called(place) == place_; });
  if (at == places.end()) {
    fail(coneline::fault("no place is chosen", "Enter the house or bench first."));
    return;
  }
  const auto course = std::make_shared<Course>();
  const auto file = Session::path_of(path);
  const auto took = [self = QPointer(this), session = session_,
                     of = session_->path()](const Result<QString>& taken) {
    // What came into a book that was closed meanwhile is seen when it is opened again.
    if (session->path() != of) {
      if (!taken)
        session->set_fault(taken.error());
      return;
    }
    const auto known = taken ? tell(*session, *taken) : refuse(taken.error());
    if (!known && self)
      self->fail(known.error());
    else if (!known)
      session->set_fault(known.error());
  };
  session_->work_long(tr("%1 comes into the book …").arg(text(file.filename().string())),
                      Touches::open_book, course,
                      taking_in({file, options_of(unit), at->id}, *session_, course), took);
}

void TemperatureLog::fail(const Fault& fault) {
  fault_ = fault_shown(fault);
  emit told();
}

} // namespace coneline::window
