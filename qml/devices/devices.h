// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What reaches out of the computer: camera, sound, printers. A library of its own, loaded when one
// of them is first asked for, since Qt's for them take longer to load than the whole book to read.
//
// What crosses over has no code in any common library, so that each side may have its own.

#include "labels/read/gray.h"

#include <QPagedPaintDevice>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>

namespace coneline::window {

/// Goes on until it is let go of, which any of what it tells may do.
class Camera {
 public:
  virtual ~Camera() = default;
};

/// Heard on the thread that asked for the camera.
struct HeardOfCamera {
  std::function<bool()> wanted; ///< whether a frame is looked at that has just come
  std::function<void(labels::GrayImage)> frame;
  std::function<void(const QString& form)> unreadable; ///< a frame whose pixels are not known
  std::function<void(const QString& why)> stopped;
};

class Sound {
 public:
  virtual ~Sound() = default;
  virtual void play() = 0;
};

class Devices {
 public:
  virtual ~Devices() = default;
  /// The usual camera; nothing where there is none or it may not be used.
  [[nodiscard]] virtual std::unique_ptr<Camera> camera(HeardOfCamera heard) = 0;
  [[nodiscard]] virtual bool plays_sounds() = 0;
  /// A sound from the program's own files.
  [[nodiscard]] virtual std::unique_ptr<Sound> sound(const QString& name) = 0;
  [[nodiscard]] virtual QStringList printers() = 0;
  /// The whole page of it, to its edges; nothing where there is no printer of that name.
  [[nodiscard]] virtual std::unique_ptr<QPagedPaintDevice> printer(const QString& name) = 0;
};

/// Of this computer; without the library there are none.
Devices& devices();

} // namespace coneline::window
