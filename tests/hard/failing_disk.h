// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A disk that fails at a chosen write: stands between the engine and the real files.

namespace coneline::hard {

enum class Failure { io_error, full };

/// From now on the nth change of a file (write, sync, truncate, delete), and with `lasting` each
/// after it, fails. Installs itself at the first call.
void fail_at(int nth, Failure failure, bool lasting);
/// The disk works again. Returns whether it failed at all.
bool work_again();

} // namespace coneline::hard
