// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/fault.h"

#include <optional>

namespace coneline::commands {

/// The first of several results that failed, or nothing.
template <class... Results>
std::optional<Fault> first_fault(const Results&... results) {
  std::optional<Fault> found;
  const auto look = [&](const auto& result) {
    if (!found && !result)
      found = result.error();
  };
  (look(results), ...);
  return found;
}

} // namespace coneline::commands
