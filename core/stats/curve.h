// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Three shapes of germination over time, with a share of the seed that never germinates:
//
//   F(t) = germinable * H(shape * ln(t / scale))
//
//   log-logistic  H(z) = 1 / (1 + exp(-z))
//   Weibull       H(z) = 1 - exp(-exp(z))
//   log-normal    H(z) = normal distribution function
//
// F is the share of seed sown that has germinated by day t.

#include <array>
#include <optional>
#include <string_view>

namespace coneline::stats {

enum class Family { log_logistic, weibull, log_normal };

inline constexpr std::array all_families{Family::log_logistic, Family::weibull, Family::log_normal};

/// "log-logistic", "weibull", "log-normal".
std::string_view family_word(Family family);
std::optional<Family> family_named(std::string_view word);

/// H at z with what goes with it; `above` is 1 - H without loss of digits.
struct Height {
  double below = 0; ///< H(z)
  double above = 1; ///< 1 - H(z)
  double slope = 0; ///< H'(z)
  double bend = 0;  ///< H''(z)
};
Height height(Family family, double z);

/// H and 1 - H alone, which take less time.
struct Parts {
  double below = 0;
  double above = 1;
};
Parts parts(Family family, double z);

struct Curve {
  Family family = Family::log_logistic;
  double germinable = 0; ///< share of seed sown that germinates sooner or later, 0 to 1
  double shape = 1;      ///< above 0
  double scale = 1;      ///< days, above 0

  /// F(day): share of the seed sown.
  [[nodiscard]] double germinated_by(double day) const;
  /// Share of the germinable seed that has germinated by `day`.
  [[nodiscard]] double progress_by(double day) const;
  /// Day by which `share` (inside 0 to 1) of the germinable seed has germinated.
  [[nodiscard]] double day_of_progress(double share) const;
};

} // namespace coneline::stats
