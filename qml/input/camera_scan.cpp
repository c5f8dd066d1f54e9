// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera_scan.h"

#include "frame_gray.h"
#include "labels/read/read_codes.h"

#include <QMediaDevices>

namespace coneline::window {

namespace {

QImage shown(const labels::GrayImage& gray) {
  const auto view = gray.view();
  return QImage(view.data, view.width, view.height, static_cast<int>(view.stride),
                QImage::Format_Grayscale8)
      .scaled(640, 480, Qt::KeepAspectRatio, Qt::FastTransformation);
}

QStringList texts_in(const labels::GrayImage& gray) {
  QStringList texts;
  for (const auto& code : labels::read_codes(gray.view()))
    texts << QString::fromStdString(code.text);
  return texts;
}

} // namespace

CameraScan::CameraScan(QObject* parent) : QObject(parent) {
  clock_.start();
  connect(&sink_, &QVideoSink::videoFrameChanged, this, &CameraScan::take);
  capture_.setVideoSink(&sink_);
}

void CameraScan::say(const QString& text) {
  says_ = text;
  emit saidChanged();
}

void CameraScan::set_active(bool active) {
  if (active == active_)
    return;
  if (active && QMediaDevices::videoInputs().isEmpty()) {
    say(tr("There is no camera here, or it may not be used. Scan with a hand scanner, or type the "
           "code."));
    emit activeChanged();
    return;
  }
  active_ = active;
  if (active) {
    camera_ = std::make_unique<QCamera>(QMediaDevices::defaultVideoInput());
    connect(
        camera_.get(), &QCamera::errorOccurred, this, [this](QCamera::Error, const QString& why) {
          say(tr("The camera stopped: %1. Scan with a hand scanner, or type the code.").arg(why));
          set_active(false);
        });
    capture_.setCamera(camera_.get());
    camera_->start();
    say(tr("Hold the label before the camera."));
  } else if (camera_) {
    camera_->stop();
    capture_.setCamera(nullptr);
    camera_.release()->deleteLater(); // it may be the one that is just telling of its fault
    repeated_.forget();
    image_ = {};
    emit imageChanged();
  }
  emit activeChanged();
}

void CameraScan::take(const QVideoFrame& frame) {
  if (!frame.isValid() || reading_)
    return;
  auto gray = gray_of(frame);
  if (!gray) {
    say(tr("The camera's pictures cannot be read: their form is %1.")
            .arg(QVideoFrameFormat::pixelFormatToString(frame.pixelFormat())));
    return;
  }
  image_ = coneline::window::shown(*gray);
  emit imageChanged();
  reading_ = true;
  aside_.run([picture = std::move(*gray)] { return texts_in(picture); },
             [this](const QStringList& texts) {
               reading_ = false;
               read(texts);
             });
}

void CameraScan::read(const QStringList& texts) {
  // Two labels in view would take turns; the person is to show one.
  if (texts.size() > 1)
    return say(tr("%1 labels are in view. Show one alone.").arg(texts.size()));
  if (texts.isEmpty())
    return;
  const auto scan = work::scan_text(texts.front().toStdString());
  if (repeated_.is_new(scan.text, std::chrono::milliseconds(clock_.elapsed())))
    emit scanned(QString::fromStdString(scan.text), QString::fromStdString(scan.note));
}

} // namespace coneline::window
