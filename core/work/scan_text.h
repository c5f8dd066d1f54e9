// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What a scanner sent, brought to the text of the label. Scanners put things before and after the
// code, and one that types pretends to be an American keyboard: on a computer set to another one,
// keys come out as other letters.
//
//   "]Q1T1742Q\r"   T1742Q     the symbol's identifier (ISO/IEC 15424) and the end are taken off
//   "Tè'é&Q"        ...        on a French keyboard, when the check character proves it right

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace coneline::work {

struct ScanText {
  std::string text; ///< what stands on the label, as far as can be told
  std::string note; ///< what is to be put right at the scanner; usually empty
};

/// `prefix` is what the grower's scanner is set to send first; it may be missing.
ScanText scan_text(std::string_view raw, std::string_view prefix = {});

/// A label held a moment too long, or seen by a camera in every frame, is one scan: a text that
/// comes again before `pause` has passed without it is not new.
class RepeatedScan {
 public:
  using Moment = std::chrono::milliseconds; ///< from any fixed beginning, not going back
  explicit RepeatedScan(std::chrono::milliseconds pause) : pause_(pause) {}

  bool is_new(std::string_view text, Moment now);
  void forget() { last_.reset(); }

 private:
  std::chrono::milliseconds pause_;
  std::optional<std::string> last_;
  Moment heard_{};
};

} // namespace coneline::work
