// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The real window on a platform without a display, showing a book of the invented nursery that is
// thrown away afterwards.

#include "core/store/book.h"
#include "qml/models/session.h"
#include "qml/window.h"
#include "tests/core/store/scratch.h"

#include <QQuickItem>
#include <QQuickWindow>

namespace coneline::window {

/// Which book the window opens.
enum class With { demo_season, no_book };

class ShownWindow {
 public:
  ShownWindow(With with, QSize size);

  [[nodiscard]] QQuickWindow& window() { return *window_; }
  [[nodiscard]] Session& session() { return session_; }

  /// The visible item of that name; null where there is none.
  QQuickItem* find(const QString& name);
  /// Every visible item.
  std::vector<QQuickItem*> items();

  void tap(const QString& name);
  void tap(QQuickItem* item);
  /// Types like a hand scanner: the characters, then Return.
  void scan(const QString& text);
  /// Types like a person, a letter at a time.
  void type(const QString& text);
  void press(Qt::Key key);
  void resize(QSize size);
  /// Lets bindings, layout and motion come to rest.
  void settle();

  void set(const char* property, const QVariant& value);
  [[nodiscard]] QVariant get(const char* property) const { return window_->property(property); }

  /// The first lot of a kind that still holds something in this state.
  const work::LotLine& lot_with(Kind kind, book::State state);

 private:
  tests::Scratch scratch_;
  Session session_;
  PageEngine engine_;
  QQuickWindow* window_ = nullptr;
};

} // namespace coneline::window
