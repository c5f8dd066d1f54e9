// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Independent pieces of work on a few threads.

#include <functional>

namespace coneline::labels {

/// Calls `work` once for each of 0 to `pieces` - 1, in any order, on up to four threads, and
/// returns when all are done. The first exception thrown by a piece is thrown again here.
void in_parallel(int pieces, const std::function<void(int)>& work);

} // namespace coneline::labels
