// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What can be done with a thing, as a form: its fields with sensible values filled in, the bar that
// splits as they are filled, cautions, and the use case it ends in.

#include "answers.h"

#include <span>

namespace coneline::window {

struct FieldSpec {
  enum class Kind { count, decimal, words, choice, day };
  QString key;
  QString label;
  Kind kind = Kind::words;
  QString value;
  QStringList choices; ///< of a choice
  QString hint;
  bool names = false; ///< the choices are names the grower gave, but for "none"
  std::optional<Quantity> measure = std::nullopt; ///< what a decimal measures
  bool fills = false; ///< what is chosen is `Subject::row`, by which the form is filled in anew
};

/// One piece of a bar whose pieces add up to what is there.
struct Piece {
  QString label;
  std::int64_t count = 0;
  QString role; ///< "ink", "act", "lost", "quiet"
};

struct Deed {
  const char* name;
  const char* title; ///< what the button says
  bool (*fits)(const Subject&);
  std::vector<FieldSpec> (*fields)(const Subject&);
  std::vector<Piece> (*pieces)(const Subject&, const Answers&); ///< may be null
  Result<work::Done> (*run)(store::Book&, Answers&);
  std::vector<const char*> cautions;
  bool (*unlikely)(const Subject&) = nullptr; ///< offered after all else where it is true
  /// Of a form in steps: reads every answer in its turn, so that each step can be checked.
  void (*read)(Answers&) = nullptr;
};

/// What can be done with the subject now: what is due first, what is unlikely last.
std::vector<const Deed*> deeds_for(const Subject& subject);

/// Null for no such deed.
const Deed* deed_named(const QString& name);

std::span<const Deed> cone_deeds();
std::span<const Deed> diary_deeds();
std::span<const Deed> seed_deeds();
std::span<const Deed> growing_deeds();
std::span<const Deed> leaving_deeds();
std::span<const Deed> beginning_deeds();
std::span<const Deed> first_cone_deeds();
std::span<const Deed> nursery_deeds();
std::span<const Deed> plant_deeds();
std::span<const Deed> register_deeds();

} // namespace coneline::window
