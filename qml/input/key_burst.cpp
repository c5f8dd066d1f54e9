// SPDX-License-Identifier: GPL-3.0-or-later
#include "key_burst.h"

#include "core/base/code.h"
#include "core/work/scan_text.h"

#include <utility>

namespace coneline::window {

KeyBurst::Verdict KeyBurst::letter(const QString& text, Moment now) {
  Verdict verdict;
  verdict.hold = true;
  if (too_late(now)) {
    verdict.release = true;
    held_.clear();
  }
  held_ += text;
  last_ = now;
  return verdict;
}

KeyBurst::Verdict KeyBurst::end(Moment now) {
  const auto held = std::exchange(held_, {});
  if (held.size() >= least && now - last_ <= gap)
    return {false, true, held};
  return {!held.isEmpty(), false, {}};
}

KeyBurst::Verdict KeyBurst::other() {
  return {!std::exchange(held_, {}).isEmpty(), false, {}};
}

KeyBurst::Verdict KeyBurst::rest() {
  const auto held = std::exchange(held_, {});
  if (held.size() >= least && Code::parse(work::scan_text(held.toStdString()).text))
    return {false, false, held};
  return {!held.isEmpty(), false, {}};
}

} // namespace coneline::window
