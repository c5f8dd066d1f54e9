// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Opens the window and runs it until it is closed.

#include "core/base/date.h"

#include <QQmlEngine>
#include <QQuickWindow>

#include <memory>
#include <optional>
#include <span>
#include <string>

namespace coneline::window {

class Session;

/// What the front door was asked for: the window, perhaps with a book.
struct Wanted {
  std::optional<std::string> book;
};

/// No argument, `--book FILE` or `--book=FILE` ask for the window; anything else does not.
std::optional<Wanted> window_wanted(std::span<const std::string> arguments);

/// Has an engine that is made afterwards compile a function when it was called a hundred times, not
/// three: most of those of a start are called no oftener.
struct CompilingLate {
  CompilingLate();
};

/// What the window's pages run in, and the window.
class PageEngine : private CompilingLate, public QQmlEngine {
 public:
  /// False where it cannot be shown.
  bool load(Session& session);
  [[nodiscard]] QQuickWindow* window() const { return window_.get(); }

 private:
  std::unique_ptr<QQuickWindow> window_; ///< goes before its engine
};

/// Runs the window; the book is the one wanted, else that of CONELINE_BOOK, else the one opened
/// last. CONELINE_TODAY sets another day than the computer's. Returns the exit status.
int run(int argc, char** argv, const Wanted& wanted);

} // namespace coneline::window
