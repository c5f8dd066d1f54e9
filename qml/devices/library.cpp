// SPDX-License-Identifier: GPL-3.0-or-later
// The devices through Qt's libraries for them.
#include "qml/devices/devices.h"
#include "qml/devices/frame_gray.h"

#include <QAudioDevice>
#include <QCamera>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QPrinter>
#include <QPrinterInfo>
#include <QSoundEffect>
#include <QUrl>
#include <QVideoSink>

#include <utility>

namespace coneline::window {

namespace {

class QtCamera : public Camera {
 public:
  explicit QtCamera(HeardOfCamera heard)
      : heard_(std::move(heard)),
        camera_(std::make_unique<QCamera>(QMediaDevices::defaultVideoInput())) {
    QObject::connect(
        camera_.get(), &QCamera::errorOccurred, &sink_,
        [this](QCamera::Error /*error*/, const QString& why) {
          const auto tell = heard_.stopped; // which may let go of this
          tell(why);
        },
        Qt::QueuedConnection); // after whoever asked for the camera has it
    QObject::connect(&sink_, &QVideoSink::videoFrameChanged, &sink_,
                     [this](const QVideoFrame& frame) { take(frame); });
    capture_.setVideoSink(&sink_);
    capture_.setCamera(camera_.get());
    camera_->start();
  }
  ~QtCamera() override {
    camera_->stop();
    capture_.setCamera(nullptr);
  }

 private:
  void take(const QVideoFrame& frame) {
    if (!frame.isValid() || !heard_.wanted())
      return;
    if (auto gray = gray_of(frame)) {
      const auto tell = heard_.frame;
      tell(*std::move(gray));
    } else {
      const auto tell = heard_.unreadable;
      tell(QVideoFrameFormat::pixelFormatToString(frame.pixelFormat()));
    }
  }

  HeardOfCamera heard_;
  std::unique_ptr<QCamera> camera_;
  QMediaCaptureSession capture_;
  QVideoSink sink_;
};

class QtSound : public Sound {
 public:
  explicit QtSound(const QString& name) {
    effect_.setSource(QUrl(QStringLiteral("qrc:/sounds/%1.wav").arg(name)));
  }
  void play() override { effect_.play(); }

 private:
  QSoundEffect effect_;
};

class QtDevices : public Devices {
 public:
  std::unique_ptr<Camera> camera(HeardOfCamera heard) override {
    if (QMediaDevices::videoInputs().isEmpty())
      return nullptr;
    return std::make_unique<QtCamera>(std::move(heard));
  }
  bool plays_sounds() override { return !QMediaDevices::audioOutputs().isEmpty(); }
  std::unique_ptr<Sound> sound(const QString& name) override {
    return std::make_unique<QtSound>(name);
  }
  QStringList printers() override { return QPrinterInfo::availablePrinterNames(); }
  std::unique_ptr<QPagedPaintDevice> printer(const QString& name) override {
    const auto known = QPrinterInfo::printerInfo(name);
    if (known.isNull()) // of which a printer would be made that writes a file somewhere
      return nullptr;
    auto printer = std::make_unique<QPrinter>(known, QPrinter::HighResolution);
    if (!printer->isValid())
      return nullptr;
    printer->setFullPage(true);
    return printer;
  }
};

} // namespace

} // namespace coneline::window

extern "C" Q_DECL_EXPORT coneline::window::Devices& coneline_devices() {
  static coneline::window::QtDevices all;
  return all;
}
