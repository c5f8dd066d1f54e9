// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/hard/failing_disk.h"

#include <new>
#include <sqlite3.h>

namespace coneline::hard {

namespace {

struct Plan {
  bool armed = false;
  bool failed = false;
  bool lasting = false;
  int left = 0;
  Failure failure = Failure::io_error;
};
Plan plan;
sqlite3_vfs* real = nullptr;

/// Whether this change fails.
bool fails() {
  if (!plan.armed || (plan.failed && !plan.lasting))
    return false;
  if (plan.failed || --plan.left == 0)
    return plan.failed = true;
  return false;
}

int code(int of_io) {
  return plan.failure == Failure::full ? SQLITE_FULL : of_io;
}

struct File {
  sqlite3_file base;
  sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

File* of(sqlite3_file* file) {
  return reinterpret_cast<File*>(file);
}
sqlite3_file* below(sqlite3_file* file) {
  return of(file)->real();
}

int write(sqlite3_file* f, const void* from, int size, sqlite3_int64 at) {
  return fails() ? code(SQLITE_IOERR_WRITE) : below(f)->pMethods->xWrite(below(f), from, size, at);
}
int truncate(sqlite3_file* f, sqlite3_int64 size) {
  return fails() ? code(SQLITE_IOERR_TRUNCATE) : below(f)->pMethods->xTruncate(below(f), size);
}
int sync(sqlite3_file* f, int flags) {
  return fails() ? code(SQLITE_IOERR_FSYNC) : below(f)->pMethods->xSync(below(f), flags);
}

// clang-format off
const sqlite3_io_methods methods = {
    2,
    [](sqlite3_file* f) { return below(f)->pMethods->xClose(below(f)); },
    [](sqlite3_file* f, void* to, int size, sqlite3_int64 at) { return below(f)->pMethods->xRead(below(f), to, size, at); },
    write,
    truncate,
    sync,
    [](sqlite3_file* f, sqlite3_int64* size) { return below(f)->pMethods->xFileSize(below(f), size); },
    [](sqlite3_file* f, int lock) { return below(f)->pMethods->xLock(below(f), lock); },
    [](sqlite3_file* f, int lock) { return below(f)->pMethods->xUnlock(below(f), lock); },
    [](sqlite3_file* f, int* out) { return below(f)->pMethods->xCheckReservedLock(below(f), out); },
    [](sqlite3_file* f, int op, void* arg) { return below(f)->pMethods->xFileControl(below(f), op, arg); },
    [](sqlite3_file* f) { return below(f)->pMethods->xSectorSize(below(f)); },
    [](sqlite3_file* f) { return below(f)->pMethods->xDeviceCharacteristics(below(f)); },
    [](sqlite3_file* f, int page, int size, int extend, void volatile** out) { return below(f)->pMethods->xShmMap(below(f), page, size, extend, out); },
    [](sqlite3_file* f, int offset, int n, int flags) { return below(f)->pMethods->xShmLock(below(f), offset, n, flags); },
    [](sqlite3_file* f) { below(f)->pMethods->xShmBarrier(below(f)); },
    [](sqlite3_file* f, int remove) { return below(f)->pMethods->xShmUnmap(below(f), remove); },
    nullptr,
    nullptr,
};
// clang-format on

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out) {
  file->pMethods = nullptr;
  const int opened = real->xOpen(real, name, below(file), flags, out);
  if (opened == SQLITE_OK)
    file->pMethods = &methods;
  return opened;
}

int remove(sqlite3_vfs*, const char* name, int sync_folder) {
  return fails() ? code(SQLITE_IOERR_DELETE) : real->xDelete(real, name, sync_folder);
}

void install_once() {
  static sqlite3_vfs shim;
  if (real != nullptr)
    return;
  real = sqlite3_vfs_find(nullptr);
  shim = *real;
  shim.zName = "failing";
  shim.szOsFile = real->szOsFile + static_cast<int>(sizeof(File));
  shim.xOpen = open;
  shim.xDelete = remove;
  sqlite3_vfs_register(&shim, 1);
}

} // namespace

void fail_at(int nth, Failure failure, bool lasting) {
  install_once();
  plan = {true, false, lasting, nth, failure};
}

bool work_again() {
  plan.armed = false;
  return plan.failed;
}

} // namespace coneline::hard
