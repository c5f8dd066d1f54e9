// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A camera in the window that reads labels. Frames are decoded aside from the window, one at a
// time; those that come meanwhile are only shown. A label in view of many frames is one scan.

#include "core/work/scan_text.h"
#include "labels/read/gray.h"
#include "qml/devices/devices.h"
#include "qml/models/aside.h"

#include <QElapsedTimer>
#include <QImage>
#include <QObject>
#include <QStringList>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace coneline::window {

class CameraScan : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(bool active READ active WRITE set_active NOTIFY activeChanged)
  Q_PROPERTY(QString says READ says NOTIFY saidChanged)
  Q_PROPERTY(QVariant image READ image NOTIFY imageChanged)

 public:
  explicit CameraScan(QObject* parent = nullptr);

  [[nodiscard]] bool active() const { return camera_ != nullptr; }
  /// Without a camera it stays off, and `says` says so.
  void set_active(bool active);
  [[nodiscard]] QString says() const { return says_; }
  [[nodiscard]] QVariant image() const { return image_; } ///< the last frame, a grey QImage

  /// One frame, from the camera or from a test; passed over while one is being decoded.
  void take(labels::GrayImage gray);
  /// Whether a frame is being decoded.
  [[nodiscard]] bool reading() const { return reading_; }

 signals:
  void scanned(const QString& text, const QString& note);
  void activeChanged();
  void saidChanged();
  void imageChanged();

 private:
  [[nodiscard]] std::unique_ptr<Camera> begun();
  void say(const QString& text);
  void read(const QStringList& texts);

  std::unique_ptr<Camera> camera_; ///< while it is on
  Aside aside_{nullptr};
  bool reading_ = false;
  work::RepeatedScan repeated_{std::chrono::milliseconds(2000)};
  QElapsedTimer clock_;
  QString says_;
  QImage image_;
};

} // namespace coneline::window
