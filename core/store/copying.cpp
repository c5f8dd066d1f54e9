// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/copying.h"

#include "core/base/number.h"
#include "core/base/phrase.h"
#include "core/store/copies.h"
#include "core/store/engine/sqlite.h"
#include "core/store/statement.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <fcntl.h>
#include <limits>
#include <set>
#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>
#include <vector>

namespace coneline::store {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t large_book = 32U << 20U;
constexpr auto pause_of_large = std::chrono::minutes(15);
constexpr std::size_t newest_kept = 10;
constexpr std::size_t days_kept = 14;

Fault of_the_disk(const std::string& told) {
  return book_fault(told,
                    "Make room or ask for the right to write there. The book itself is as it was.");
}
Fault cannot_open(const fs::path& path, const std::error_code& why) {
  return of_the_disk(phrase("'{}' cannot be opened: {}", path.string(), why.message()));
}
Fault cannot_make(const fs::path& path, const std::error_code& why) {
  return of_the_disk(phrase("'{}' cannot be made: {}", path.string(), why.message()));
}
Fault cannot_write(const fs::path& path, const std::error_code& why) {
  return of_the_disk(phrase("'{}' cannot be written: {}", path.string(), why.message()));
}

Fault cannot_read(const fs::path& path, const std::error_code& why) {
  return book_fault(phrase("'{}' cannot be read: {}", path.string(), why.message()),
                    "See to the disk it is on. The book itself is as it was.");
}

/// What the system said of its last call.
std::error_code system_said() {
  return {errno, std::generic_category()};
}

/// Makes a file's or a folder's content last.
Result<void> sync(const fs::path& path, int flags) {
  const int file = ::open(path.c_str(), flags | O_CLOEXEC);
  if (file < 0)
    return refuse(cannot_open(path, system_said()));
  const auto failed = ::fsync(file) == 0 ? std::error_code() : system_said();
  ::close(file);
  if (failed)
    return refuse(cannot_write(path, failed));
  return {};
}

/// How much a book holds; both only ever grow.
struct Marks {
  std::int64_t entries = 0;
  std::int64_t movements = 0;
};

Marks marks(soci::session& session) {
  const auto count = [&](const char* table) {
    return Statement(session, fmt::format("SELECT count(*) FROM {}", table)).number().value_or(0);
  };
  return {count("entry"), count("movement")};
}

/// Reads a new copy back: whole, ours, and holding what the book held while it was made; others may
/// write to the book meanwhile.
Result<void> is_like(const fs::path& copy, soci::session& book, const Marks& before,
                     const Progress& progress) {
  soci::session session;
  engine::open(session, copy, engine::Mode::read);
  auto faults = engine::integrity_faults(session, progress);
  if (faults.empty() && engine::schema(session) != engine::schema(book))
    faults.push_back(phrase("its tables are not those of the book"));
  const auto held = marks(session);
  const auto after = marks(book);
  if (faults.empty() && (held.entries < before.entries || held.entries > after.entries ||
                         held.movements < before.movements || held.movements > after.movements))
    faults.push_back(phrase("it holds other entries than the book"));
  if (!faults.empty())
    return refuse(book_fault(phrase("the copy '{}' is not good: {}", copy.string(), faults.front()),
                             "Run 'coneline check' on the book, and see to the disk."));
  return {};
}

/// When the content was last changed: the log's time while there is one with something in it.
timespec changed(const fs::path& book) {
  struct stat state {};
  if (::stat((book.string() + "-wal").c_str(), &state) == 0 && state.st_size > 0)
    return state.st_mtim;
  ::stat(book.c_str(), &state);
  return state.st_mtim;
}

bool is_due(const fs::path& book) {
  for (const auto& copy : copies_of(book)) {
    if (copy.kind != Copy::Kind::copy)
      continue;
    struct stat state {};
    ::stat(copy.path.c_str(), &state);
    const auto now = changed(book);
    if (state.st_mtim.tv_sec == now.tv_sec && state.st_mtim.tv_nsec == now.tv_nsec)
      return false;
    // Status time: when the copy was made, whatever time of change it was given.
    const auto age = std::chrono::seconds(::time(nullptr) - state.st_ctim.tv_sec);
    std::error_code error;
    const bool large = fs::file_size(book, error) > large_book;
    return !large || age < std::chrono::seconds(0) || age > pause_of_large;
  }
  return true;
}

/// Takes away what the stated rule does not keep.
void thin(const fs::path& book) {
  std::size_t seen = 0;
  std::set<std::string> days;
  std::set<std::string> months;
  for (const auto& copy : copies_of(book)) {
    if (copy.kind != Copy::Kind::copy)
      continue;
    bool keep = seen++ < newest_kept;
    const bool new_day = days.insert(copy.changed.substr(0, 10)).second;
    keep = (new_day && days.size() <= days_kept) || keep;
    keep = months.insert(copy.changed.substr(0, 7)).second || keep;
    std::error_code ignored;
    if (!keep)
      fs::remove(copy.path, ignored);
  }
}

constexpr std::string_view unfinished_end = ".unfinished";

/// Closed when it goes.
class OpenFile {
 public:
  OpenFile(const fs::path& path, int flags) : file_(::open(path.c_str(), flags | O_CLOEXEC)) {}
  ~OpenFile() {
    if (file_ >= 0)
      ::close(file_);
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;
  [[nodiscard]] int get() const { return file_; }

 private:
  int file_;
};

bool write_all(int file, const std::vector<char>& bytes, std::size_t count) {
  for (std::size_t at = 0; at < count;) {
    const auto written = ::write(file, bytes.data() + at, count - at);
    if (written < 0 && errno != EINTR)
      return false;
    at += written < 0 ? 0 : static_cast<std::size_t>(written);
  }
  return true;
}

/// The bytes of one file into another that is there and empty.
Result<void> copy_content(const fs::path& from, const fs::path& to, const Progress& progress) {
  constexpr std::size_t at_once = 1U << 20U;
  const OpenFile in(from, O_RDONLY);
  if (in.get() < 0)
    return refuse(cannot_open(from, system_said()));
  const OpenFile out(to, O_WRONLY);
  if (out.get() < 0)
    return refuse(cannot_open(to, system_said()));
  std::error_code error;
  const auto of = static_cast<std::size_t>(fs::file_size(from, error));
  std::vector<char> bytes(at_once);
  for (std::size_t done = 0;;) {
    const auto read = ::read(in.get(), bytes.data(), bytes.size());
    if (read < 0 && errno == EINTR)
      continue;
    if (read < 0)
      return refuse(cannot_read(from, system_said()));
    if (read == 0)
      return {};
    const auto count = static_cast<std::size_t>(read);
    if (!write_all(out.get(), bytes, count))
      return refuse(cannot_write(to, system_said()));
    done += count;
    if (progress && !progress(std::min(done, of), of))
      return refuse(stopped_copying());
  }
}

} // namespace

Result<void> is_named(const fs::path& path) {
  if (path.empty())
    return refuse(fault("no file is named", "Give the book's file."));
  return {};
}

Result<void> is_free(const fs::path& path) {
  std::error_code error;
  if (auto named = is_named(path); !named)
    return named;
  if (fs::exists(fs::symlink_status(path, error)))
    return refuse(book_fault(phrase("'{}' is there already", path.string()),
                             "Choose another name, or open it."));
  return has_folder(path);
}

Result<void> has_folder(const fs::path& path) {
  std::error_code error;
  const auto folder = fs::absolute(path).parent_path();
  if (!fs::is_directory(folder, error))
    return refuse(book_fault(phrase("there is no folder '{}'", folder.string()),
                             "Make it first, or choose another."));
  return {};
}

fs::path unfinished_name(const fs::path& to) {
  return fmt::format("{}.{}{}", to.string(), ::getpid(), unfinished_end);
}

void remove_unfinished(const fs::path& path) {
  std::error_code ignored;
  for (const auto* end : {"", "-wal", "-shm", "-journal"})
    fs::remove(path.string() + end, ignored);
}

void remove_abandoned(const fs::path& folder, const std::string& begins) {
  std::error_code error;
  for (const auto& file : fs::directory_iterator(folder, error)) {
    auto name = file.path().filename().string();
    if (!name.starts_with(begins) || !name.ends_with(unfinished_end))
      continue;
    name.resize(name.size() - unfinished_end.size());
    const auto maker = parse_whole(name.substr(name.rfind('.') + 1));
    const bool ended = maker && *maker > 0 && *maker <= std::numeric_limits<pid_t>::max() &&
                       ::kill(static_cast<pid_t>(*maker), 0) != 0 && errno == ESRCH;
    if (ended)
      remove_unfinished(file.path());
  }
}

Result<void> give_name(const fs::path& unfinished, const fs::path& to) {
  if (::link(unfinished.c_str(), to.c_str()) == 0)
    return {};
  // A file system without links moves it.
  if (errno != EEXIST &&
      ::renameat2(AT_FDCWD, unfinished.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
    return {};
  return refuse(cannot_make(to, system_said()));
}

Result<void> make_private_file(const fs::path& path, const fs::path& becomes) {
  const int file = ::open(path.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, S_IRUSR | S_IWUSR);
  if (file < 0)
    return refuse(cannot_make(becomes.empty() ? path : becomes, system_said()));
  ::close(file);
  return {};
}

Result<void> copy_bytes(const fs::path& from, const fs::path& to, const Progress& progress) {
  std::error_code error;
  fs::remove(to, error);
  if (auto made = make_private_file(to); !made)
    return made;
  if (auto copied = copy_content(from, to, progress); !copied) {
    fs::remove(to, error);
    return copied;
  }
  fs::permissions(to, fs::perms::owner_read | fs::perms::owner_write, error);
  fs::last_write_time(to, fs::last_write_time(from, error), error);
  return settle(to);
}

Result<void> settle(const fs::path& path) {
  if (auto done = sync(path, O_RDWR); !done)
    return done;
  return sync(fs::absolute(path).parent_path(), O_RDONLY | O_DIRECTORY);
}

Result<void> make_copies_folder(const fs::path& book) {
  const auto folder = copies_folder(book);
  if (::mkdir(folder.c_str(), S_IRWXU) != 0 && errno != EEXIST)
    return refuse(cannot_make(folder, system_said()));
  return {};
}

std::int64_t next_number(const fs::path& book) {
  std::int64_t last = 0;
  for (const auto& copy : copies_of(book))
    last = std::max(last, copy.number);
  return last + 1;
}

Result<void> checked_copy(soci::session& session, const fs::path& book, const fs::path& to,
                          const Progress& progress) {
  const auto unfinished = unfinished_name(to);
  remove_unfinished(unfinished); // of this program, so of an earlier try
  const auto time = changed(book);
  auto made = make_private_file(unfinished, to);
  if (!made)
    return made;
  try {
    const auto before = marks(session);
    constexpr double copied = 0.3; // checking goes over every page again, and over its rows
    ProgressOfParts parts(progress);
    engine::copy(session, unfinished, parts.part(0, copied));
    made = is_like(unfinished, session, before, parts.part(copied, 1));
  } catch (const std::exception& failed) {
    made = refuse(engine::was_stopped(failed)
                      ? stopped_copying()
                      : engine::explain(failed, engine::is_of_the_disk(failed) ? to : book));
  }
  if (made && progress && !progress(1, 1))
    made = refuse(stopped_copying());
  const std::array<timespec, 2> times{time, time};
  if (made && ::utimensat(AT_FDCWD, unfinished.c_str(), times.data(), 0) != 0)
    made = refuse(cannot_write(unfinished, system_said()));
  if (made)
    made = sync(unfinished, O_RDWR);
  if (made)
    made = give_name(unfinished, to);
  remove_unfinished(unfinished);
  return made ? settle(to) : made;
}

Result<std::optional<fs::path>> copy_if_changed(soci::session& session, const fs::path& book) {
  if (!is_due(book))
    return std::nullopt;
  if (auto made = make_copies_folder(book); !made)
    return refuse(made.error());
  remove_abandoned(copies_folder(book), "");
  const auto name = fmt::format("{:06}-{:%Y-%m-%d-%H%M%S}.copy", next_number(book),
                                fmt::gmtime(changed(book).tv_sec));
  const auto to = copies_folder(book) / name;
  if (auto copied = checked_copy(session, book, to); !copied)
    return refuse(copied.error());
  thin(book);
  return to;
}

} // namespace coneline::store
