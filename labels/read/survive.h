// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The symbol library checks itself with assertions, and in the build at hand they are on: some
// ordinary, if blurred, pictures make its search for QR codes abort. A whole bench must not be lost
// for one such place, so an abort ends that search alone.

#include <functional>

namespace coneline::labels {

/// Runs `work` and returns true, or false when it called abort() on the way. What it had built is
/// then left in memory unfreed, and no lock may be held across the call; the library at hand holds
/// none. An abort outside, or on a thread that `work` started, ends the process as ever.
bool survives(const std::function<void()>& work);

} // namespace coneline::labels
