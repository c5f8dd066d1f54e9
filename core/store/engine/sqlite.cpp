// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/engine/sqlite.h"

#include "core/base/phrase.h"
#include "core/store/copies.h"
#include "core/store/engine/connection.h"
#include "core/store/statement.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <memory>
#include <unistd.h>

namespace coneline::store::engine {

namespace {

// "Cone" in letters; stands in the file's header so that other programs' files are told apart.
constexpr int application_id = 0x436F6E65;

/// A file name as a URI, so that blanks, quotes and question marks in it mean nothing.
std::string uri(const std::filesystem::path& path, std::string_view mode) {
  std::string text = "file:";
  for (const char c : std::filesystem::absolute(path).string()) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                       c == '/' || c == '.' || c == '_' || c == '-';
    text += plain ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
  }
  return text + "?mode=" + std::string(mode);
}

/// A reader that may not write leaves its log and index behind, since it cannot take them away. So
/// to read, too, the file is opened to write where that is allowed. Where it is not, and no log is
/// there, the file alone is read.
std::string way_to_read(const std::filesystem::path& path) {
  const auto folder = std::filesystem::absolute(path).parent_path();
  if (::access(path.c_str(), W_OK) == 0 && ::access(folder.c_str(), W_OK) == 0)
    return "rw";
  std::error_code error;
  return std::filesystem::exists(path.string() + "-wal", error) ? "ro" : "ro&immutable=1";
}

int code_of(const std::exception& error) {
  const auto* from_engine = dynamic_cast<const soci::sqlite3_soci_error*>(&error);
  return from_engine == nullptr ? SQLITE_ERROR : from_engine->result() & 0xFF;
}

/// A row that a trigger looks at is written with the pages as they were kept beside it, for the
/// case that it is refused. As soon as one row needs more of them than this, the engine would keep
/// those of every later row of the transaction in a file.
constexpr int bytes_kept_of_a_row = 4 << 20;

void set_up_once() {
  static const bool done = [] {
    sqlite_api::sqlite3_config(SQLITE_CONFIG_URI, 1);
    sqlite_api::sqlite3_config(SQLITE_CONFIG_STMTJRNL_SPILL, bytes_kept_of_a_row);
    return true;
  }();
  static_cast<void>(done);
}

std::uint32_t big_endian(const unsigned char* bytes) {
  return static_cast<std::uint32_t>(bytes[0]) << 24U | static_cast<std::uint32_t>(bytes[1]) << 16U |
         static_cast<std::uint32_t>(bytes[2]) << 8U | bytes[3];
}

/// The length that the header promises (SQLite file format, section 1.3), or 0 where it makes no
/// promise.
std::uintmax_t promised_size(const std::array<unsigned char, 100>& header) {
  const std::uintmax_t page = header[16] * 256U + header[17];
  const bool promise_holds = big_endian(&header[24]) == big_endian(&header[92]);
  return promise_holds ? big_endian(&header[28]) * (page == 1 ? 65536 : page) : 0;
}

int pragma(soci::session& session, const std::string& name) {
  return static_cast<int>(Statement(session, "PRAGMA " + name).number().value_or(0));
}

/// Asks now and then while the engine goes over the whole file.
class Asking {
 public:
  Asking(soci::session& session, const Progress& progress)
      : connection_(connection(session)), progress_(progress),
        steps_(steps_a_page *
               static_cast<std::size_t>(std::max(1, pragma(session, "page_count")))) {
    if (progress_)
      sqlite_api::sqlite3_progress_handler(connection_, between, &Asking::ask, this);
  }
  ~Asking() { sqlite_api::sqlite3_progress_handler(connection_, 0, nullptr, nullptr); }
  Asking(const Asking&) = delete;
  Asking& operator=(const Asking&) = delete;

 private:
  // Steps of the engine's own machine. A book of 14,000 pages took 1,800 a page.
  static constexpr std::size_t steps_a_page = 1'800;
  static constexpr int between = 100'000;

  static int ask(void* self) {
    auto& asking = *static_cast<Asking*>(self);
    asking.done_ = std::min(asking.done_ + between, asking.steps_);
    return asking.progress_(asking.done_, asking.steps_) ? 0 : 1;
  }

  sqlite_api::sqlite3* connection_;
  const Progress& progress_;
  std::size_t steps_;
  std::size_t done_ = 0;
};

/// Copies page by page into an empty file.
void copy_pages(soci::session& from, soci::session& to, const Progress& progress) {
  const auto failed = [&](int code) {
    return soci::sqlite3_soci_error(sqlite_api::sqlite3_errstr(code), code);
  };
  constexpr int steps = 64;
  constexpr int least_at_once = 64;
  const int at_once = std::max(least_at_once, pragma(from, "page_count") / steps);
  const std::unique_ptr<sqlite_api::sqlite3_backup, int (*)(sqlite_api::sqlite3_backup*)> copying(
      sqlite_api::sqlite3_backup_init(connection(to), "main", connection(from), "main"),
      sqlite_api::sqlite3_backup_finish);
  if (!copying)
    throw failed(sqlite_api::sqlite3_errcode(connection(to)));
  for (int code = SQLITE_OK; code != SQLITE_DONE;) {
    code = sqlite_api::sqlite3_backup_step(copying.get(), at_once);
    if (code != SQLITE_OK && code != SQLITE_DONE)
      throw failed(code);
    const int all = sqlite_api::sqlite3_backup_pagecount(copying.get());
    const int left = sqlite_api::sqlite3_backup_remaining(copying.get());
    if (progress && !progress(static_cast<std::size_t>(all - left), static_cast<std::size_t>(all)))
      throw failed(SQLITE_INTERRUPT);
  }
}

} // namespace

namespace {

/// What to do about a file that is missing or is not like a book: where good copies stand beside
/// it, it was one.
std::string copy_or(const std::filesystem::path& path, std::string otherwise) {
  const auto copy = newest_good_copy(path);
  return copy ? advice_to_restore(*copy) : std::move(otherwise);
}

} // namespace

Result<void> looks_like_a_book(const std::filesystem::path& path) {
  const auto name = path.string();
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (!std::filesystem::exists(status))
    return refuse(book_fault(phrase("there is no book '{}'", name),
                             copy_or(path, "Check the name, or make a new book.")));
  if (!std::filesystem::is_regular_file(status))
    return refuse(book_fault(phrase("'{}' is no file", name), "Name the book's file."));
  const auto size = std::filesystem::file_size(path, error);
  std::ifstream in(path, std::ios::binary);
  if (!in)
    return refuse(book_fault(phrase("'{}' may not be read", name),
                             "Ask its owner for the right to read it."));
  std::array<unsigned char, 100> header{};
  in.read(reinterpret_cast<char*>(header.data()), static_cast<std::streamsize>(header.size()));
  constexpr std::string_view magic{"SQLite format 3\0", 16};
  if (!std::equal(magic.begin(), magic.end(), header.begin(),
                  [](char a, unsigned char b) { return static_cast<unsigned char>(a) == b; }))
    return refuse(book_fault(phrase("'{}' is no book of Coneline", name),
                             copy_or(path, "Name another file, or make a new book.")));
  if (in.gcount() < 100)
    return refuse(
        book_fault(phrase("'{}' is cut short: {} bytes", name, size), advice_for_damaged(path)));
  if (big_endian(&header[68]) != application_id)
    return refuse(book_fault(phrase("'{}' is no book of Coneline", name),
                             copy_or(path, "Name another file, or make a new book.")));
  const bool has_log = std::filesystem::exists(name + "-wal", error);
  const auto promised = promised_size(header);
  if (!has_log && size < promised)
    return refuse(book_fault(phrase("'{}' is cut short: {} of {} bytes", name, size, promised),
                             advice_for_damaged(path)));
  return {};
}

void open(soci::session& session, const std::filesystem::path& path, Mode mode) {
  set_up_once();
  const auto way = mode == Mode::read ? way_to_read(path) : mode == Mode::write ? "rw" : "rwc";
  session.open(soci::sqlite3, "dbname=" + uri(path, way) + " timeout=5");
  if (mode == Mode::read)
    session << "PRAGMA query_only = ON";
  session << "PRAGMA foreign_keys = ON";
  // What an untrusted file's own schema may do is kept small.
  session << "PRAGMA trusted_schema = OFF";
  if (mode != Mode::read) {
    session << "PRAGMA synchronous = FULL";
    std::string journal;
    session << "PRAGMA journal_mode = WAL", soci::into(journal);
  }
}

void open_in_memory(soci::session& session) {
  session.open(soci::sqlite3, "dbname=:memory:");
}

bool is_ours(soci::session& session) {
  return pragma(session, "application_id") == application_id;
}

int version(soci::session& session) {
  return pragma(session, "user_version");
}

void run_script(soci::session& session, const std::string& script) {
  char* message = nullptr;
  const int result =
      sqlite_api::sqlite3_exec(connection(session), script.c_str(), nullptr, nullptr, &message);
  if (result != SQLITE_OK) {
    const std::string said = message != nullptr ? message : "unknown";
    sqlite_api::sqlite3_free(message);
    throw soci::sqlite3_soci_error(said, result);
  }
}

void set_version(soci::session& session, int version) {
  session << fmt::format("PRAGMA user_version = {}", version);
  session << fmt::format("PRAGMA application_id = {}", application_id);
}

void begin_reading(soci::session& session) {
  session << "BEGIN";
}
void begin_writing(soci::session& session) {
  session << "BEGIN IMMEDIATE";
}
void begin_alone(soci::session& session) {
  session << "BEGIN EXCLUSIVE";
  // With a log, readers would be let in all the same; only an opening to write makes one.
  std::string journal;
  session << "PRAGMA journal_mode", soci::into(journal);
  if (journal == "wal")
    throw soci::sqlite3_soci_error("another program has opened it", SQLITE_BUSY);
}
void keep(soci::session& session) {
  session << "COMMIT";
}

void drop(soci::session& session) noexcept {
  try {
    session << "ROLLBACK";
  } catch (const soci::soci_error&) {
    // A full disk or an I/O error may have rolled back already; the engine then knows no
    // transaction.
  }
}

void copy(soci::session& session, const std::filesystem::path& to, const Progress& progress) {
  const auto there = "dbname=" + uri(to, "rwc");
  {
    soci::session made(soci::sqlite3, there);
    made << "PRAGMA synchronous = OFF"; // the caller makes it last, all at once
    begin_reading(session);
    try {
      // The state that is copied is the one of this moment, whatever others write meanwhile.
      Statement(session, "SELECT count(*) FROM sqlite_master").number();
      copy_pages(session, made, progress);
    } catch (...) {
      drop(session);
      throw;
    }
    drop(session);
  }
  soci::session made(soci::sqlite3, there);
  leave_log(made); // which the book's first page says it has
}

std::int64_t seen_changes(soci::session& session) {
  return Statement(session, "PRAGMA data_version").number().value_or(0);
}

void leave_log(soci::session& session) {
  session << "PRAGMA busy_timeout = 0";
  std::string mode;
  session << "PRAGMA journal_mode = DELETE", soci::into(mode);
}

bool is_busy(const std::exception& error) {
  return code_of(error) == SQLITE_BUSY || code_of(error) == SQLITE_LOCKED;
}

bool is_of_the_disk(const std::exception& error) {
  return code_of(error) == SQLITE_FULL || code_of(error) == SQLITE_IOERR;
}

bool was_stopped(const std::exception& error) {
  return code_of(error) == SQLITE_INTERRUPT;
}

std::vector<std::string> integrity_faults(soci::session& session, const Progress& progress) {
  std::vector<std::string> faults;
  const Asking asking(session, progress);
  Statement(session, "PRAGMA integrity_check").each([&](const Row& row) {
    if (const auto said = row.text("integrity_check"); said != "ok")
      faults.push_back(said);
  });
  Statement(session, "PRAGMA foreign_key_check").each([&](const Row& row) {
    faults.push_back(fmt::format("row {} of {} refers to a row of {} that is missing",
                                 row.whole("rowid"), row.text("table"), row.text("parent")));
  });
  return faults;
}

std::vector<std::string> schema(soci::session& session) {
  std::vector<std::string> lines;
  Statement(session, "SELECT name, coalesce(sql, '') AS sql FROM sqlite_master WHERE name NOT LIKE "
                     "'sqlite_%' ORDER BY name")
      .each([&](const Row& row) { lines.push_back(row.text("name") + ": " + row.text("sql")); });
  return lines;
}

Fault explain(const std::exception& error, const std::filesystem::path& path) {
  const auto name = path.string();
  if (const auto* not_text = dynamic_cast<const NotText*>(&error))
    return fault(not_text->what(), "Write it anew in UTF-8. Nothing was written.");
  switch (code_of(error)) {
  case SQLITE_BUSY:
  case SQLITE_LOCKED:
    return book_fault(
        phrase("'{}' is in use: another program has been writing to it for five seconds", name),
        "Wait or close the other program, then do it again. Nothing was written.");
  case SQLITE_READONLY:
  case SQLITE_PERM:
    return book_fault(phrase("'{}' may only be read", name),
                      "Ask for the right to write to it. Nothing was written.");
  case SQLITE_CANTOPEN:
    return book_fault(phrase("'{}' cannot be opened", name),
                      "Check that file and folder may be read and written.");
  case SQLITE_FULL:
    return book_fault(phrase("the disk with '{}' is full", name),
                      "Make room, then do it again. Nothing was written.");
  case SQLITE_CORRUPT:
  case SQLITE_NOTADB:
    return book_fault(phrase("'{}' is damaged: {}", name, error.what()), advice_for_damaged(path));
  case SQLITE_IOERR:
    return book_fault(phrase("the disk with '{}' failed: {}", name, error.what()),
                      "Check the disk, then do it again. Nothing was written.");
  case SQLITE_CONSTRAINT:
    return book_fault(phrase("the book refused it: {}", error.what()), "Nothing was written.");
  default:
    break;
  }
  if (dynamic_cast<const soci::sqlite3_soci_error*>(&error) != nullptr)
    return program_fault(phrase("'{}': {}", name, error.what()),
                         copy_or(path, "Nothing was written."));
  return book_fault(phrase("'{}' holds something it should not: {}", name, error.what()),
                    copy_or(path, "Run 'coneline check' on the book."));
}

} // namespace coneline::store::engine
