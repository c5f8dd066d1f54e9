// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What stands on a label: kind, running number, check character (ISO/IEC 7064 MOD 37,36). At most
// ten characters of 0-9 A-Z, so that a QR code of version 1 at level H holds it.
//
//   T 1742 Q     tray, number 1742, check character Q: written T1742Q
//
// The first two digits of the number are the book's own series (10 to 99), drawn when the book is
// made; the rest counts up from 1. So a label of another book is told apart 89 times in 90, and no
// code needs more letters for it.

#include "core/base/fault.h"

#include <array>
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace coneline {

/// What a code can stand on. The value is the letter printed.
enum class Kind : char {
  plant = 'P',
  pollen = 'L',
  cone = 'C',
  purchase = 'Q',
  batch = 'B',
  tray = 'T',
  pot_group = 'G',
  place = 'H',
};

inline constexpr std::array all_kinds{Kind::plant, Kind::pollen, Kind::cone,      Kind::purchase,
                                      Kind::batch, Kind::tray,   Kind::pot_group, Kind::place};

/// The word for a kind: "tray", "pot group".
std::string_view kind_word(Kind kind);
/// As it is said to a person.
std::string kind_said(Kind kind);
/// Fails and lists the words there are.
Result<Kind> kind_named(std::string_view word);

class Code {
 public:
  Code() = default; ///< not a valid code; for containers only

  /// `series` 10 to 99, `number` 1 to 999 999. Fails outside those.
  static Result<Code> of(Kind kind, int series, std::int64_t number);
  /// From the running number as it is stored and printed: series and count in one (1742). 101 to 99
  /// 999 999.
  static Result<Code> from_running(Kind kind, std::int64_t running);

  /// Reads what was typed or scanned. Small letters are taken as capitals; blanks and hyphens are
  /// passed over. A wrong check character is refused; `corrections` tells what may have been meant.
  static Result<Code> parse(std::string_view typed);

  [[nodiscard]] Kind kind() const { return kind_; }
  [[nodiscard]] int series() const;
  [[nodiscard]] std::int64_t running() const {
    return running_;
  } ///< series and number in one: 1742
  /// The running number without the two digits of the series: 42.
  [[nodiscard]] std::int64_t number_in_series() const;
  [[nodiscard]] std::string text() const; ///< "T1742Q"

  auto operator<=>(const Code&) const = default;

 private:
  Code(Kind kind, std::int64_t running) : kind_(kind), running_(running) {}
  Kind kind_ = Kind::tray;
  std::int64_t running_ = 0;
};

/// Every valid code that one wrong character or one swap of neighbours would turn into `typed`;
/// without repeats, in the order of their texts. A caller who knows which codes exist keeps those,
/// and offers one if just one is left.
std::vector<Code> corrections(std::string_view typed);

} // namespace coneline
