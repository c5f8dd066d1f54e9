// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/curve.h"

#include <boost/math/special_functions/erf.hpp>

#include <cmath>
#include <numbers>

namespace coneline::stats {

std::string_view family_word(Family family) {
  switch (family) {
  case Family::log_logistic:
    return "log-logistic";
  case Family::weibull:
    return "weibull";
  case Family::log_normal:
    return "log-normal";
  }
  return {};
}

std::optional<Family> family_named(std::string_view word) {
  for (const auto family : all_families)
    if (family_word(family) == word)
      return family;
  return std::nullopt;
}

Parts parts(Family family, double z) {
  switch (family) {
  case Family::log_logistic: {
    const double small = std::exp(-std::abs(z));
    const double far = small / (1 + small);
    const double near = 1 / (1 + small);
    return z < 0 ? Parts{far, near} : Parts{near, far};
  }
  case Family::weibull: {
    const double power = std::exp(z);
    return {-std::expm1(-power), std::exp(-power)};
  }
  case Family::log_normal:
    return {std::erfc(-z / std::numbers::sqrt2) / 2, std::erfc(z / std::numbers::sqrt2) / 2};
  }
  return {};
}

Height height(Family family, double z) {
  const auto [below, above] = parts(family, z);
  switch (family) {
  case Family::log_logistic: {
    const double slope = below * above;
    return {below, above, slope, slope * (above - below)};
  }
  case Family::weibull: {
    const double power = std::exp(z);
    const double slope = std::isfinite(power) ? power * above : 0;
    return {below, above, slope, slope == 0 ? 0 : slope * (1 - power)};
  }
  case Family::log_normal: {
    const double slope = std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi);
    return {below, above, slope, slope == 0 ? 0 : -z * slope};
  }
  }
  return {};
}

double Curve::progress_by(double day) const {
  return day > 0 ? parts(family, shape * std::log(day / scale)).below : 0;
}

double Curve::germinated_by(double day) const {
  return germinable * progress_by(day);
}

double Curve::day_of_progress(double share) const {
  const auto z = [&] {
    switch (family) {
    case Family::log_logistic:
      return std::log(share) - std::log1p(-share);
    case Family::weibull:
      return std::log(-std::log1p(-share));
    case Family::log_normal:
      return -std::numbers::sqrt2 * boost::math::erfc_inv(2 * share);
    }
    return 0.0;
  }();
  return scale * std::exp(z / shape);
}

} // namespace coneline::stats
