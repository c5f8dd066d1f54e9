// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast.h"

#include "core/base/phrase.h"
#include "core/plan/forecast_run.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <exception>
#include <thread>

namespace coneline::plan {

namespace {

/// Turns what a run counted into the values of its series.
class Written {
 public:
  Written(Forecast& forecast, const Run& run)
      : forecast_(forecast), run_(run), months_(forecast.months().size()),
        sums_(forecast.series().size() * months_) {
    const auto& series = forecast.series();
    for (std::size_t at = 0; at < series.size(); ++at)
      if (series[at].shown == Shown::load)
        loads_.emplace_back(at, *forecast.find({Shown::square_metres, series[at].name}));
  }

  void write(int run) {
    const auto& ways = forecast_.ways();
    for (std::size_t at = 0; at < ways.series.size(); ++at)
      std::fill_n(&sums_[at * months_], months_, ways.always[at]);
    for (std::size_t spot = 0; spot < ways.spots.size(); ++spot)
      stand(ways.spots[spot], &run_.changes()[spot * run_.width()]);
    for (std::size_t event = 0; event < ways.events.size(); ++event)
      happen(ways.events[event], &run_.happened()[event * run_.width()]);
    for (const auto& [load, metres] : loads_)
      for (std::size_t month = 0; month < months_; ++month) {
        const double taken = sums_[metres * months_ + month];
        auto& kilograms = sums_[load * months_ + month];
        kilograms = taken > 1e-12 ? kilograms / taken : 0;
      }
    for (std::size_t at = 0; at < ways.series.size(); ++at)
      std::transform(&sums_[at * months_], &sums_[at * months_] + months_,
                     forecast_.values(at, run), [](double sum) { return static_cast<float>(sum); });
  }

 private:
  void stand(const Spot& spot, const std::int64_t* changes) {
    std::int64_t standing = 0;
    for (std::size_t month = 0; month < months_; ++month) {
      standing += changes[month];
      if (standing != 0)
        for (const auto& yield : spot.yields)
          sums_[yield.series * months_ + month] += yield.by_plant * static_cast<double>(standing);
    }
  }
  void happen(const Event& event, const std::int64_t* counts) {
    for (std::size_t month = 0; month < months_; ++month)
      if (counts[month] != 0)
        for (const auto& yield : event.yields)
          sums_[yield.series * months_ + month] +=
              yield.by_plant * static_cast<double>(counts[month]);
  }

  Forecast& forecast_;
  const Run& run_;
  std::size_t months_;
  std::vector<double> sums_;                               ///< by series and month
  std::vector<std::pair<std::size_t, std::size_t>> loads_; ///< load, its square metres
};

/// Shares the runs out over threads; a thread takes the next run that nobody has.
class Crew {
 public:
  Crew(Forecast& forecast, const ForecastInput& input, const ForecastRuns& asked)
      : forecast_(forecast), input_(input), asked_(asked) {}

  /// False when it was stopped.
  bool work() {
    const auto wanted = asked_.threads > 0
                            ? asked_.threads
                            : static_cast<int>(std::max(1U, std::thread::hardware_concurrency()));
    std::vector<std::exception_ptr> thrown(static_cast<std::size_t>(wanted));
    {
      std::vector<std::jthread> others;
      for (int thread = 1; thread < wanted; ++thread)
        others.emplace_back([this, &failed = thrown[static_cast<std::size_t>(thread)]] {
          guarded(failed, [] { return true; });
        });
      guarded(thrown.front(), [this] { return !asked_.go_on || asked_.go_on(done_); });
    }
    for (const auto& failed : thrown)
      if (failed)
        std::rethrow_exception(failed);
    return !stopped_;
  }

 private:
  template <class GoOn>
  void guarded(std::exception_ptr& failed, GoOn go_on) {
    try {
      runs(go_on);
    } catch (...) {
      failed = std::current_exception();
      stopped_ = true;
    }
  }
  template <class GoOn>
  void runs(GoOn go_on) {
    Run run(forecast_.ways(), input_);
    Written written(forecast_, run);
    constexpr int between_looks = 16;
    for (int own = 0;; ++own) {
      if (own % between_looks == 0 && !go_on())
        stopped_ = true;
      const int number = next_++;
      if (stopped_ || number >= asked_.runs)
        return;
      Stream stream(asked_.seed, static_cast<std::uint64_t>(number));
      run.walk(stream);
      written.write(number);
      ++done_;
    }
  }

  Forecast& forecast_;
  const ForecastInput& input_;
  const ForecastRuns& asked_;
  std::atomic<int> next_ = 0;
  std::atomic<int> done_ = 0;
  std::atomic<bool> stopped_ = false;
};

float point(std::vector<float>& values, double share) {
  const auto place = std::max(1.0, std::ceil(share * static_cast<double>(values.size()) - 1e-9));
  const auto at = values.begin() + static_cast<std::ptrdiff_t>(place) - 1;
  std::nth_element(values.begin(), at, values.end());
  return *at;
}

} // namespace

Likely likely(std::vector<float>& values) {
  return {point(values, 0.1), point(values, 0.5), point(values, 0.9)};
}

Forecast::Forecast(Ways ways, Date today, int runs) : ways_(std::move(ways)), runs_(runs) {
  for (int month = 0; month < ways_.calendar.months(); ++month)
    months_.push_back(today.first_of_month().plus_months(month));
  values_.resize(ways_.series.size() * static_cast<std::size_t>(runs) * months_.size());
}

std::optional<std::size_t> Forecast::find(const SeriesName& name) const {
  const auto found = std::ranges::find(ways_.series, name);
  if (found == ways_.series.end())
    return std::nullopt;
  return static_cast<std::size_t>(found - ways_.series.begin());
}

double Forecast::mean(std::size_t series, std::size_t month) const {
  double sum = 0;
  for (int run = 0; run < runs_; ++run)
    sum += static_cast<double>(value(series, run, month));
  return sum / runs_;
}

Likely Forecast::range(std::size_t series, std::size_t month) const {
  std::vector<float> values;
  values.reserve(static_cast<std::size_t>(runs_));
  for (int run = 0; run < runs_; ++run)
    values.push_back(value(series, run, month));
  return likely(values);
}

Likely Forecast::range_of_sum(std::size_t series, std::size_t first, std::size_t last) const {
  std::vector<float> values;
  values.reserve(static_cast<std::size_t>(runs_));
  for (int run = 0; run < runs_; ++run) {
    double sum = 0;
    for (auto month = first; month < last; ++month)
      sum += static_cast<double>(value(series, run, month));
    values.push_back(static_cast<float>(sum));
  }
  return likely(values);
}

double Forecast::share_above(std::size_t series, std::size_t month, double limit) const {
  int above = 0;
  for (int run = 0; run < runs_; ++run)
    above += static_cast<double>(value(series, run, month)) > limit ? 1 : 0;
  return static_cast<double>(above) / runs_;
}

Result<Forecast> forecast_of(const ForecastInput& input, const ForecastRuns& asked) {
  if (auto can = can_be_planned(input); !can)
    return refuse(can.error());
  if (asked.runs < 1 || asked.runs > 1'000'000)
    return refuse(
        usage_fault(phrase("a forecast of {} runs", asked.runs), "Ask for 1 to 1 000 000."));
  Forecast forecast(ways_of(input), input.standing.today, asked.runs);
  if (!Crew(forecast, input, asked).work())
    return refuse(fault("the forecast was stopped", "Ask again to have it whole."));
  return forecast;
}

} // namespace coneline::plan
