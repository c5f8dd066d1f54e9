// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What one hears after a scan: a high note for taken, two low ones for refused. Without anything to
// play them on, the system's own beep; and nothing at all where there is none. The same is always
// seen too.

#include "qml/devices/devices.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace coneline::window {

class Feedback : public QObject {
  Q_OBJECT
  QML_ELEMENT

 public:
  explicit Feedback(QObject* parent = nullptr) : QObject(parent) {}
  Q_INVOKABLE void taken();
  Q_INVOKABLE void refused();

 private:
  void play(std::unique_ptr<Sound>& sound, const QString& name);
  std::unique_ptr<Sound> taken_; ///< made when first needed: asking for audio takes a moment
  std::unique_ptr<Sound> refused_;
};

} // namespace coneline::window
