// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The window worked with the keyboard alone. After every key it is checked that the keyboard is
// somewhere to be seen: the item that has it shows a ring or a strong border, inside the window and
// inside every part that scrolls.

#include "tests/qml/shown_window.h"

namespace coneline::window {

class Keyboard {
 public:
  explicit Keyboard(ShownWindow& shown) : shown_(shown) {}

  void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
  /// Presses `way` (Tab unless said) until the keyboard is at a thing: one that is called so, or is
  /// part of what is called so, or whose name for screen readers begins so. Throws where it is not
  /// reached.
  void go_to(const QString& name, Qt::Key way = Qt::Key_Tab);
  /// The same, but only a field that is written in will do.
  void go_to_field(const QString& name);
  /// Goes to a thing and presses Return there.
  void choose(const QString& name);
  /// Goes to a field and writes in it in place of what it holds.
  void write(const QString& field, const QString& text);
  /// A code or name typed by a person into the ready field.
  void look_up(const QString& text);

  /// What is wrong with how it is shown where the keyboard is; empty where it is seen.
  std::string unseen();
  /// How many keys were pressed.
  [[nodiscard]] int keys() const { return keys_; }

 private:
  void walk_to(const QString& name, Qt::Key way, bool field);
  bool is_at(const QString& name, bool field);

  ShownWindow& shown_;
  int keys_ = 0;
};

} // namespace coneline::window
