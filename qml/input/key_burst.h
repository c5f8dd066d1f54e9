// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Tells a hand scanner that types from a person who does. A scanner sends a whole label with a few
// milliseconds between keys; a person needs 60 and more. So every letter is held back for one
// short gap: what follows closer belongs together, and a long enough row of such letters with its
// end key is a scan. Everything else is a person's and goes on in its order.
//
//   T1742Q Return, 8 ms apart    a scan, nothing goes on, not even the Return
//   "ab" 30 ms apart, then rest  a person's two fingers: both go on
//   Return alone                 a person's: goes on

#include <QString>

#include <chrono>
#include <optional>

namespace coneline::window {

class KeyBurst {
 public:
  using Moment = std::chrono::milliseconds; ///< from any fixed beginning, not going back

  static constexpr std::chrono::milliseconds gap{35}; ///< longest between two keys of a scan
  static constexpr int least = 4;                     ///< letters a scan has at least

  /// What is to be done. In this order: let the held letters go on, take the scan, let this key go
  /// on or hold it.
  struct Verdict {
    bool release = false;        ///< the letters held so far were a person's
    bool hold = false;           ///< this key is held back, or belongs to the scan
    std::optional<QString> scan; ///< what was scanned
  };

  /// A key with a letter.
  Verdict letter(const QString& text, Moment now);
  /// Return, Enter or Tab: what a scanner may send at the end.
  Verdict end(Moment now);
  /// Any other key: it ends what was held.
  Verdict other();
  /// Nothing came for a gap. A scanner without an end key is known by a sound code.
  Verdict rest();

  [[nodiscard]] bool holds() const { return !held_.isEmpty(); }

 private:
  [[nodiscard]] bool too_late(Moment now) const { return !held_.isEmpty() && now - last_ > gap; }
  QString held_;
  Moment last_{};
};

} // namespace coneline::window
