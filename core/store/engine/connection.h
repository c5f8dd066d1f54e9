// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What stands behind a session. Private to this folder.

#include <soci/sqlite3/soci-sqlite3.h>

namespace coneline::store::engine {

inline sqlite_api::sqlite3* connection(soci::session& session) {
  // The library hides the type information of its backend, so dynamic_cast does not link.
  return static_cast<soci::sqlite3_session_backend*>(session.get_backend())->conn_;
}

} // namespace coneline::store::engine
