// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the hard tests share: how often, movements to take in, and other processes.

#include "core/store/copies.h"
#include "core/store/proof.h"
#include "tests/core/store/first_cone.h"

#include <gtest/gtest.h>

#include <functional>
#include <sys/wait.h>
#include <unistd.h>

namespace coneline::hard {

/// How often an experiment runs: the short form unless CONELINE_HARD is "full".
inline int times(int brief, int full) {
  const char* wanted = std::getenv("CONELINE_HARD");
  return wanted != nullptr && std::string_view(wanted) == "full" ? full : brief;
}

/// One more seed counted in from the first cone.
inline Result<book::EntryId> take_in(store::Book& book, const tests::FirstCone& first) {
  book::Entry entry;
  entry.verb = book::Verb::harvest;
  entry.date = tests::day("2026-02-02");
  entry.lot = first.batch_id;
  entry.movements = {{{first.batch_id, book::State::cone},
                      {first.batch_id, book::State::unsorted},
                      Count::sure(1)}};
  return book.write([&](store::Writing& writing) { return writing.enter(entry); });
}

/// The number of entries, of a book that must prove.
inline std::int64_t proven_entries(const std::filesystem::path& path) {
  auto book = store::Book::open(path, store::Access::read);
  if (!book) {
    ADD_FAILURE() << book.error().text();
    return -1;
  }
  const auto proof = store::prove(*book);
  if (!proof || !proof->holds()) {
    ADD_FAILURE() << (proof ? proof->faults.front() : proof.error().text());
    return -1;
  }
  return proof->entries;
}

/// Runs `act` in a process of its own, which ends with what it returns.
inline pid_t begin(const std::function<int()>& act) {
  const pid_t child = ::fork();
  if (child == 0)
    ::_exit(act());
  return child;
}

/// How a process ended, as wait tells it.
inline int ended(pid_t child) {
  int status = 0;
  ::waitpid(child, &status, 0);
  return status;
}

} // namespace coneline::hard
