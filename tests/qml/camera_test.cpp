// SPDX-License-Identifier: GPL-3.0-or-later
// Frames of every pixel format that a camera may give, read aside from the window.
#include "qml/devices/frame_gray.h"
#include "qml/input/camera_scan.h"
#include "tests/qml/label_picture.h"

#include <QTest>
#include <QVideoFrameFormat>
#include <gtest/gtest.h>

#include <typeinfo>

namespace coneline::window {
namespace {

using Format = QVideoFrameFormat::PixelFormat;

const Code code = Code::of(Kind::tray, 37, 12).value();

constexpr int longest_wait = 20'000; // ms

QImage picture() {
  static const auto page =
      tests::label_picture({code}).copy(0, 0, 560, 296).convertToFormat(QImage::Format_Grayscale8);
  return page;
}

/// How many bytes a pixel has in the first plane, and which of them carry the lightness.
struct Bytes {
  Format format;
  int pixel;
  std::vector<int> light;
  int shift = 0; ///< of a two-byte value
};

QVideoFrame frame_of(const Bytes& bytes) {
  const auto image = picture();
  QVideoFrame frame(QVideoFrameFormat(image.size(), bytes.format));
  if (!frame.map(QVideoFrame::WriteOnly))
    return {};
  for (int plane = 0; plane < frame.planeCount(); ++plane)
    std::fill_n(frame.bits(plane), frame.mappedBytes(plane), std::uint8_t{128});
  for (int y = 0; y < image.height(); ++y) {
    auto* row = frame.bits(0) + static_cast<qsizetype>(y) * frame.bytesPerLine(0);
    for (int x = 0; x < image.width(); ++x) {
      const int light = image.constScanLine(y)[x];
      for (const int at : bytes.light)
        row[x * bytes.pixel + at] =
            static_cast<std::uint8_t>(bytes.shift == 0 ? light : (light << bytes.shift) & 255);
      if (bytes.shift > 0)
        row[x * bytes.pixel + bytes.light.front() + 1] =
            static_cast<std::uint8_t>((light << bytes.shift) >> 8);
    }
  }
  frame.unmap();
  return frame;
}

class Camera : public testing::Test {
 protected:
  Camera() {
    QObject::connect(&scan, &CameraScan::scanned, &scan,
                     [this](const QString& text) { texts << text; });
  }
  void take(const QVideoFrame& frame) {
    scan.take(gray_of(frame).value());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !scan.reading(); }, longest_wait));
  }

  CameraScan scan;
  QStringList texts;
};

TEST_F(Camera, ReadsEveryFormatWithALightness) {
  for (const auto& bytes :
       {Bytes{Format::Format_YUV420P, 1, {0}}, Bytes{Format::Format_YUV422P, 1, {0}},
        Bytes{Format::Format_YV12, 1, {0}}, Bytes{Format::Format_NV12, 1, {0}},
        Bytes{Format::Format_NV21, 1, {0}}, Bytes{Format::Format_Y8, 1, {0}},
        Bytes{Format::Format_UYVY, 2, {1}}, Bytes{Format::Format_YUYV, 2, {0}},
        Bytes{Format::Format_AYUV, 4, {1}}, Bytes{Format::Format_Y16, 2, {0}, 8},
        Bytes{Format::Format_P010, 2, {0}, 8}, Bytes{Format::Format_P016, 2, {0}, 8}}) {
    CameraScan fresh;
    QStringList read;
    QObject::connect(&fresh, &CameraScan::scanned, &fresh,
                     [&](const QString& text) { read << text; });
    fresh.take(gray_of(frame_of(bytes)).value());
    // What was read comes through the event loop, some time after the reading has ended.
    EXPECT_TRUE(QTest::qWaitFor([&] { return !read.isEmpty(); }, longest_wait));
    EXPECT_EQ(read, QStringList(QString::fromStdString(code.text())))
        << QVideoFrameFormat::pixelFormatToString(bytes.format).toStdString();
  }
}

TEST_F(Camera, ReadsEveryFormatOfColours) {
  for (const auto format :
       {Format::Format_ARGB8888, Format::Format_XRGB8888, Format::Format_BGRA8888,
        Format::Format_BGRX8888, Format::Format_ABGR8888, Format::Format_XBGR8888,
        Format::Format_RGBA8888, Format::Format_RGBX8888}) {
    CameraScan fresh;
    QStringList read;
    QObject::connect(&fresh, &CameraScan::scanned, &fresh,
                     [&](const QString& text) { read << text; });
    fresh.take(gray_of(frame_of({format, 4, {0, 1, 2, 3}})).value());
    // What was read comes through the event loop, some time after the reading has ended.
    EXPECT_TRUE(QTest::qWaitFor([&] { return !read.isEmpty(); }, longest_wait));
    EXPECT_EQ(read, QStringList(QString::fromStdString(code.text())))
        << QVideoFrameFormat::pixelFormatToString(format).toStdString();
  }
}

TEST_F(Camera, TakesALabelThatStaysInViewOnce) {
  const Bytes grey{Format::Format_Y8, 1, {0}};
  take(frame_of(grey));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !texts.isEmpty(); }, longest_wait));
  for (int i = 0; i < 4; ++i)
    take(frame_of(grey));
  EXPECT_EQ(texts.size(), 1);
}

// Qt 6.4 lays out a frame of this format with one byte a sample, half of what it needs.
TEST_F(Camera, PassesOverAFrameThatIsNoneOrTooShort) {
  EXPECT_FALSE(gray_of({}));
  EXPECT_FALSE(gray_of(QVideoFrame(QVideoFrameFormat(picture().size(), Format::Format_YUV420P10))));
}

TEST(Devices, AreInALibraryThatIsFoundAndAsked) {
  EXPECT_NE(std::string(typeid(devices()).name()).find("QtDevices"), std::string::npos);
  EXPECT_EQ(devices().printer("no printer of this name"), nullptr);
  EXPECT_FALSE(devices().printers().contains("no printer of this name"));
}

} // namespace
} // namespace coneline::window
