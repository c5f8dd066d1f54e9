// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A fault is a value that travels with the result: what is wrong, where, by how much, and what to
// do. Exceptions are left for faults of the program itself.
//
//   return fault("12 germinated of 10 sown: 2 too many", "Correct the count or the seeds sown.")
//       .at({"counts.csv", 3, "germinated"});

#include <tl/expected.hpp>

#include <cstddef>
#include <optional>
#include <string>

namespace coneline {

/// A place in something the grower wrote. `line` counts from 1, the header of a CSV file being line
/// 1; 0 means no line. `column` is named by the header.
struct Where {
  std::string file;
  std::size_t line = 0;
  std::string column;

  bool operator==(const Where&) const = default;
};

/// Who has to act. The command line turns it into its exit status: input and book 1, usage 2,
/// program 3.
enum class Blame { input, book, usage, program };

struct Fault {
  std::string what;   ///< what is wrong and by how much
  std::string remedy; ///< what to do next; may be empty
  std::optional<Where> where;
  Blame blame = Blame::input;

  /// The same fault with its place; a place already known stays.
  [[nodiscard]] Fault at(Where place) const;

  /// One line for a person: "counts.csv, line 3, column germinated: 12 germinated ... Correct ...".
  [[nodiscard]] std::string text() const;

  bool operator==(const Fault&) const = default;
};

Fault fault(std::string what, std::string remedy = {});
Fault book_fault(std::string what, std::string remedy = {});
Fault usage_fault(std::string what, std::string remedy = {});
Fault program_fault(std::string what, std::string remedy = {});

template <class T>
using Result = tl::expected<T, Fault>;

/// `return refuse(fault(...));`
inline tl::unexpected<Fault> refuse(Fault why) {
  return tl::unexpected<Fault>(std::move(why));
}

} // namespace coneline
