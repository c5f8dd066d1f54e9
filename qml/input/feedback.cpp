// SPDX-License-Identifier: GPL-3.0-or-later
#include "feedback.h"

#include <QApplication>
#include <QAudioDevice>
#include <QMediaDevices>
#include <QSoundEffect>
#include <QUrl>

namespace coneline::window {

void Feedback::taken() {
  play(taken_, "taken");
}

void Feedback::refused() {
  play(refused_, "refused");
}

void Feedback::play(QSoundEffect*& effect, const char* sound) {
  if (QMediaDevices::audioOutputs().isEmpty()) {
    QApplication::beep();
    return;
  }
  if (effect == nullptr) {
    effect = new QSoundEffect(this);
    effect->setSource(QUrl(QStringLiteral("qrc:/sounds/%1.wav").arg(QLatin1String(sound))));
  }
  effect->play();
}

} // namespace coneline::window
