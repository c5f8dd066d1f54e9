// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Everything that only SQLite understands: opening, versions, copies, its own proof, its errors.
// Another engine is another file beside this one.

#include "core/base/fault.h"
#include "core/base/progress.h"

#include <soci/soci.h>

#include <cstdint>
#include <exception>
#include <filesystem>
#include <string>
#include <vector>

namespace coneline::store::engine {

enum class Mode { read, write, make };

/// Says what a file is before the engine touches it. Fails: missing, a folder, empty, another kind
/// of file, cut short.
Result<void> looks_like_a_book(const std::filesystem::path& path);

/// Opens the session with its settings: foreign keys, full synchronisation, write-ahead log, five
/// seconds' wait for a lock. To read leaves no files beside the book. Throws soci::soci_error.
void open(soci::session& session, const std::filesystem::path& path, Mode mode);

/// An empty book that no file stands behind.
void open_in_memory(soci::session& session);

bool is_ours(soci::session& session);
int version(soci::session& session);
/// Runs a script of several statements. Throws soci::soci_error.
void run_script(soci::session& session, const std::string& script);
void set_version(soci::session& session, int version);

void begin_reading(soci::session& session);
void begin_writing(soci::session& session);
/// Nobody else may read or write until it ends. Throws soci::soci_error, also where a log shows
/// that another program has come to the book.
void begin_alone(soci::session& session);
void keep(soci::session& session);
void drop(soci::session& session) noexcept;

/// A whole copy at `to`, an empty file or none, of one state of the book; others may read and write
/// it meanwhile. What it holds is made last by the caller. Throws soci::soci_error, also when
/// `progress` stops it (`was_stopped`).
void copy(soci::session& session, const std::filesystem::path& to, const Progress& progress = {});

/// A number that changes when another session or program has written to the book.
std::int64_t seen_changes(soci::session& session);

/// Ends write-ahead logging, for which nobody else may have the file open. Throws soci::soci_error.
void leave_log(soci::session& session);
/// Whether somebody else holds the file.
bool is_busy(const std::exception& error);
/// Whether the disk failed or is full.
bool is_of_the_disk(const std::exception& error);

/// Whether it was told to stop.
bool was_stopped(const std::exception& error);

/// What the engine itself finds wrong with the file; empty when nothing. How far it is can only be
/// guessed. Throws soci::soci_error, also when `progress` stops it.
std::vector<std::string> integrity_faults(soci::session& session, const Progress& progress = {});
/// Tables, indexes, views and triggers as text, to compare with those of a new book.
std::vector<std::string> schema(soci::session& session);

/// What went wrong, in the grower's words.
Fault explain(const std::exception& error, const std::filesystem::path& path);

} // namespace coneline::store::engine
