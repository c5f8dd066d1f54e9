// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/read/read_pictures.h"
#include "tests/labels/read/other_symbols.h"
#include "tests/labels/read/scene.h"

#include <QBuffer>
#include <QByteArray>
#include <QFile>
#include <QPainter>
#include <QTemporaryDir>
#include <QtEndian>
#include <gtest/gtest.h>

namespace coneline::labels {
namespace {

/// Two labels, one above and one below.
QImage two_labels() {
  QImage picture(500, 900, QImage::Format_RGB32);
  picture.fill(QColor(190, 190, 180));
  QPainter painter(&picture);
  painter.drawImage(60, 40, other_symbol("T1742Q", OtherSymbol::qr, 6));
  painter.drawImage(200, 650, other_symbol("G31007B", OtherSymbol::qr, 6));
  return picture;
}

QByteArray saved(const QImage& picture, const char* format, int quality = -1) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  picture.save(&buffer, format, quality);
  return bytes;
}

class ReadPictures : public testing::Test {
 protected:
  std::string file(const QString& name, const QByteArray& bytes) {
    const auto path = folder_.filePath(name);
    QFile out(path);
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(bytes);
    return path.toStdString();
  }
  ReadPicture read(const QString& name, const QByteArray& bytes) {
    const std::vector<std::string> files{file(name, bytes)};
    return read_pictures(files).front();
  }
  QTemporaryDir folder_;
};

TEST_F(ReadPictures, ReadsTheCommonKinds) {
  for (const auto* kind : {"PNG", "JPG", "BMP", "PPM"}) {
    const auto result = read(kind, saved(two_labels(), kind));
    EXPECT_FALSE(result.error) << kind << ": " << *result.error;
    ASSERT_EQ(result.codes.size(), 2U) << kind;
    EXPECT_EQ(result.codes[0].text, "T1742Q");
    EXPECT_EQ(result.codes[1].text, "G31007B");
  }
}

TEST_F(ReadPictures, TakesTheFirstPartOfACutPictureAndSaysSo) {
  for (const auto* kind : {"PNG", "JPG", "BMP"}) {
    auto bytes = saved(two_labels(), kind, kind == std::string("PNG") ? 100 : 90);
    // BMP stands upside down: its first half is the lower one.
    const bool lower = kind == std::string("BMP");
    const auto result = read(kind, bytes.left(bytes.size() * 6 / 10));
    ASSERT_TRUE(result.error) << kind;
    EXPECT_NE(result.error->find(kind == std::string("JPG") ? "JPEG" : kind), std::string::npos)
        << *result.error;
    if (lower)
      continue;
    ASSERT_EQ(result.codes.size(), 1U) << kind;
    EXPECT_EQ(result.codes[0].text, "T1742Q");
  }
}

TEST_F(ReadPictures, TakesTheFirstPartOfASmallPngThatIsOneBlock) {
  const auto bytes = saved(two_labels(), "PNG");
  ASSERT_LT(bytes.size(), 8192) << "a picture of more blocks tries nothing here";
  int with_the_first = 0;
  for (const int percent : {60, 75, 90}) {
    const auto result = read("a.png", bytes.left(bytes.size() * percent / 100));
    EXPECT_TRUE(result.error) << percent;
    with_the_first += !result.codes.empty() && result.codes[0].text == "T1742Q" ? 1 : 0;
  }
  EXPECT_EQ(with_the_first, 3);
}

TEST_F(ReadPictures, SaysWhenOnlyTheEndIsMissing) {
  auto jpeg = saved(two_labels(), "JPG");
  const auto cut = read("a.jpg", jpeg.left(jpeg.size() - 2));
  EXPECT_TRUE(cut.error);
  EXPECT_EQ(cut.codes.size(), 2U);
  const auto longer = read("b.jpg", jpeg + QByteArray(300, 'x'));
  EXPECT_FALSE(longer.error);
  auto png = saved(two_labels(), "PNG");
  EXPECT_TRUE(read("a.png", png.left(png.size() - 12)).error);
}

QByteArray spoilt(QByteArray bytes, qsizetype from) {
  for (qsizetype i = from; i < from + 40; ++i)
    bytes[i] = static_cast<char>(bytes[i] ^ 0x5A);
  return bytes;
}

TEST_F(ReadPictures, SaysWhenTheMiddleIsSpoilt) {
  const auto png = saved(two_labels(), "PNG");
  const auto cut = read("a.png", spoilt(png, png.size() * 7 / 10));
  ASSERT_TRUE(cut.error);
  EXPECT_NE(cut.error->find("damaged"), std::string::npos) << *cut.error;
  // A JPEG has no checksums: now and then spoilt bytes read as other pixels and nothing tells.
  SceneWish wish;
  wish.width = 800;
  wish.height = 600;
  wish.labels = 2;
  const auto jpeg = saved(make_scene(wish, 600).picture, "JPG", 90);
  int told = 0;
  for (int tenth = 1; tenth <= 9; ++tenth)
    told += read("a.jpg", spoilt(jpeg, jpeg.size() * tenth / 10)).error ? 1 : 0;
  EXPECT_GE(told, 7);
  EXPECT_FALSE(read("b.jpg", jpeg).error);
}

TEST_F(ReadPictures, TakesPaddingForNoDamage) {
  auto jpeg = saved(two_labels(), "JPG");
  jpeg.insert(jpeg.size() - 2, QByteArray(16, '\0'));
  EXPECT_FALSE(read("padded.jpg", jpeg).error);
}

TEST_F(ReadPictures, RefusesWhatIsNoPicture) {
  for (const auto& bytes :
       {QByteArray(), QByteArray("just words\n"), QByteArray(4000, '\0'),
        QByteArray("\xFF\xD8\xFF"), QByteArray("\x89PNG\r\n\x1A\n"), QByteArray("GIF89a"),
        QByteArray("BM"), QByteArray("RIFF\0\0\0\0WEBP", 12), QByteArray("%PDF-1.4\n")}) {
    const auto result = read("file", bytes);
    EXPECT_TRUE(result.error);
    EXPECT_TRUE(result.codes.empty());
  }
  const std::vector<std::string> files{folder_.filePath("absent.png").toStdString(),
                                       folder_.path().toStdString(), "/dev/zero"};
  const auto results = read_pictures(files);
  ASSERT_EQ(results.size(), files.size());
  for (const auto& result : results)
    EXPECT_TRUE(result.error) << result.file;
}

TEST_F(ReadPictures, RefusesDrawingsAndPicturesThatAreTooLarge) {
  const auto drawing = read("a.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='90000' "
                                     "height='90000'><rect width='9' height='9'/></svg>");
  ASSERT_TRUE(drawing.error);
  EXPECT_NE(drawing.error->find("SVG"), std::string::npos);
  const auto marked = read("b.svg", "\xEF\xBB\xBF<?xml version='1.0'?>\n<!-- a sign --><svg/>");
  EXPECT_NE(marked.error.value_or("").find("SVG"), std::string::npos);
  const auto page = read("c.png", "<!DOCTYPE html><p>no picture here</p>");
  EXPECT_NE(page.error.value_or("").find("no picture of a known kind"), std::string::npos);
  // A PNG of a few bytes that says it is 40000 by 40000.
  auto png = saved(QImage(8, 8, QImage::Format_Grayscale8), "PNG");
  qToBigEndian<quint32>(40000, png.data() + 16);
  qToBigEndian<quint32>(40000, png.data() + 20);
  const auto declared = read("bomb.png", png);
  ASSERT_TRUE(declared.error);
  EXPECT_TRUE(declared.codes.empty());
  auto bmp = saved(QImage(8, 8, QImage::Format_RGB32), "BMP");
  qToLittleEndian<qint32>(30000, bmp.data() + 18);
  qToLittleEndian<qint32>(30000, bmp.data() + 22);
  EXPECT_TRUE(read("bomb.bmp", bmp).error);
  const auto map = read("bomb.ppm", "P6\n30000 30000\n255\n");
  ASSERT_TRUE(map.error);
  EXPECT_NE(map.error->find("780 million more"), std::string::npos) << *map.error;
}

TEST_F(ReadPictures, ReadsTheOthersBesideABadOne) {
  const std::vector<std::string> files{
      file("a.png", saved(two_labels(), "PNG")), file("b.png", "no picture"),
      file("c.png", saved(other_symbol("BARS-128", OtherSymbol::code_128, 3), "PNG")),
      file("d.png", saved(two_labels(), "PNG"))};
  const auto read = read_pictures(files);
  ASSERT_EQ(read.size(), 4U);
  EXPECT_EQ(read[0].codes.size(), 2U);
  EXPECT_TRUE(read[1].error);
  EXPECT_EQ(read[2].codes.size(), 1U);
  EXPECT_EQ(read[3].codes.size(), 2U);
  EXPECT_FALSE(read[3].error);
}

/// A JPEG as a telephone held upright writes it: the pixels lie, EXIF says how to turn them.
QByteArray with_turn(const QByteArray& jpeg, char turn) {
  const QByteArray tiff("II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 18);
  const QByteArray exif =
      QByteArray("Exif\0\0", 6) + tiff + QByteArray(1, turn) + QByteArray(7, '\0');
  const int length = static_cast<int>(exif.size()) + 2;
  QByteArray segment("\xFF\xE1", 2);
  segment.append(static_cast<char>(length / 256)).append(static_cast<char>(length % 256));
  return jpeg.left(2) + segment + exif + jpeg.mid(2);
}

TEST_F(ReadPictures, GivesPlacesAsThePictureIsShown) {
  const auto upright = read("up.jpg", saved(two_labels(), "JPG"));
  const auto lying = two_labels().transformed(QTransform().rotate(-90));
  const auto turned = read("turned.jpg", with_turn(saved(lying, "JPG"), 6)); // 6: turn to the right
  ASSERT_EQ(turned.codes.size(), 2U);
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_EQ(turned.codes[i].text, upright.codes[i].text);
    EXPECT_NEAR(turned.codes[i].x, upright.codes[i].x, 2);
    EXPECT_NEAR(turned.codes[i].y, upright.codes[i].y, 2);
  }
}

TEST_F(ReadPictures, SeesThroughToWhitePaper) {
  QImage clear(300, 300, QImage::Format_ARGB32);
  clear.fill(Qt::transparent);
  const auto symbol = other_symbol("T1742Q", OtherSymbol::qr, 6);
  for (int y = 0; y < symbol.height(); ++y)
    for (int x = 0; x < symbol.width(); ++x)
      if (qGray(symbol.pixel(x, y)) == 0)
        clear.setPixelColor(x + 40, y + 40, Qt::black);
  EXPECT_EQ(read("clear.png", saved(clear, "PNG")).codes.size(), 1U);
}

} // namespace
} // namespace coneline::labels
