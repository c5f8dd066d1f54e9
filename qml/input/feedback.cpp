// SPDX-License-Identifier: GPL-3.0-or-later
#include "feedback.h"

#include <QApplication>

namespace coneline::window {

void Feedback::taken() {
  play(taken_, QStringLiteral("taken"));
}

void Feedback::refused() {
  play(refused_, QStringLiteral("refused"));
}

void Feedback::play(std::unique_ptr<Sound>& sound, const QString& name) {
  if (!devices().plays_sounds()) {
    QApplication::beep();
    return;
  }
  if (!sound)
    sound = devices().sound(name);
  sound->play();
}

} // namespace coneline::window
