// SPDX-License-Identifier: GPL-3.0-or-later
#include "camera_scan.h"

#include "labels/read/read_codes.h"

#include <utility>

namespace coneline::window {

namespace {

QImage picture_of(const labels::GrayImage& gray) {
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
}

void CameraScan::say(const QString& text) {
  says_ = text;
  emit saidChanged();
}

std::unique_ptr<Camera> CameraScan::begun() {
  return devices().camera(
      {[this] { return !reading_; }, [this](labels::GrayImage gray) { take(std::move(gray)); },
       [this](const QString& form) {
         say(tr("The camera's pictures cannot be read: their form is %1.").arg(form));
       },
       [this](const QString& why) {
         say(tr("The camera stopped: %1. Scan with a hand scanner, or type the code.").arg(why));
         set_active(false);
       }});
}

void CameraScan::set_active(bool active) {
  if (active == this->active())
    return;
  if (active) {
    camera_ = begun();
    if (camera_)
      say(tr("Hold the label before the camera."));
    else
      say(tr("There is no camera here, or it may not be used. Scan with a hand scanner, or type "
             "the code."));
  } else {
    camera_.reset();
    repeated_.forget();
    image_ = {};
    emit imageChanged();
  }
  emit activeChanged();
}

void CameraScan::take(labels::GrayImage gray) {
  if (reading_)
    return;
  image_ = picture_of(gray);
  emit imageChanged();
  reading_ = true;
  aside_.run([picture = std::move(gray)] { return texts_in(picture); },
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
