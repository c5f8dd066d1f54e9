// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is to happen on which day. What happens may plan more.

#include "core/base/date.h"

#include <functional>
#include <map>

namespace coneline::demo {

class Diary {
 public:
  using Act = std::function<void(Date)>;

  void plan(Date on, Act act) { days_.emplace(on, std::move(act)); }

  /// Everything up to and including `last`, in the order of days; on one day in the order planned.
  void live_until(Date last) {
    while (!days_.empty() && days_.begin()->first <= last) {
      const auto first = days_.begin();
      const auto [on, act] = *first;
      days_.erase(first);
      act(on);
    }
  }

 private:
  std::multimap<Date, Act> days_;
};

} // namespace coneline::demo
