// SPDX-License-Identifier: GPL-3.0-or-later
#include "labels/print/without_display.h"
#include "labels/round/bench_pictures.h"
#include "tests/core/store/scratch.h"
#include "tests/qml/label_picture.h"

#include <QBuffer>
#include <gtest/gtest.h>

#include <fstream>
#include <libexif/exif-data.h>
#include <memory>

namespace coneline::labels {
namespace {

Code tray(std::int64_t number) {
  return Code::of(Kind::tray, 37, number).value();
}

/// The part of a JPEG file that says when it was taken.
std::string exif_of(const std::string& when) {
  const std::unique_ptr<ExifData, void (*)(ExifData*)> data(exif_data_new(), exif_data_unref);
  exif_data_set_option(data.get(), EXIF_DATA_OPTION_FOLLOW_SPECIFICATION);
  exif_data_set_data_type(data.get(), EXIF_DATA_TYPE_COMPRESSED);
  exif_data_set_byte_order(data.get(), EXIF_BYTE_ORDER_INTEL);
  auto* entry = exif_entry_new();
  exif_content_add_entry(data->ifd[EXIF_IFD_EXIF], entry);
  exif_entry_initialize(entry, EXIF_TAG_DATE_TIME_ORIGINAL);
  std::copy(when.begin(), when.end(), entry->data);
  exif_entry_unref(entry);
  unsigned char* bytes = nullptr;
  unsigned int size = 0;
  exif_data_save_data(data.get(), &bytes, &size);
  std::string text(reinterpret_cast<char*>(bytes), size);
  free(bytes);
  return text;
}

void save(const std::filesystem::path& path, const std::vector<Code>& codes,
          const std::string& when) {
  QByteArray jpeg;
  QBuffer buffer(&jpeg);
  buffer.open(QIODevice::WriteOnly);
  ASSERT_TRUE(tests::label_picture(codes).save(&buffer, "JPG", 90));
  std::string file = jpeg.toStdString();
  if (!when.empty()) {
    const auto exif = exif_of(when);
    const auto size = exif.size() + 2;
    file.insert(2, std::string("\xFF\xE1") + static_cast<char>(size >> 8) +
                       static_cast<char>(size & 255) + exif);
  }
  std::ofstream(path, std::ios::binary) << file;
}

class BenchPictures : public testing::Test {
 protected:
  std::vector<BenchPicture> read() {
    const auto files = pictures_in(scratch.at("")).value();
    return read_bench_pictures(files, [](std::size_t) {});
  }
  WithoutDisplay fonts;
  tests::Scratch scratch;
};

TEST_F(BenchPictures, SayTheirDayAndTheirLabels) {
  save(scratch.at("a.jpg"), {tray(1), tray(2)}, "2026:11:18 09:30:00");
  save(scratch.at("b.jpg"), {tray(3)}, "");
  std::ofstream(scratch.at("c.jpg")) << "no picture";
  const auto pictures = read();
  ASSERT_EQ(pictures.size(), 3U);
  EXPECT_EQ(pictures[0].taken, Date::parse("2026-11-18").value());
  auto texts = pictures[0].texts;
  std::ranges::sort(texts);
  EXPECT_EQ(texts, (std::vector{tray(1).text(), tray(2).text()}));
  EXPECT_FALSE(pictures[1].taken);
  EXPECT_EQ(pictures[1].texts, std::vector{tray(3).text()});
  EXPECT_TRUE(pictures[2].error);
}

TEST_F(BenchPictures, WithoutADayAreNamed) {
  save(scratch.at("a.jpg"), {tray(1)}, "");
  const auto today = Date::parse("2026-11-20").value();
  const auto refused = labels_read(read(), {}, today);
  ASSERT_FALSE(refused);
  EXPECT_NE(refused.error().text().find("a.jpg"), std::string::npos);
  const auto given = labels_read(read(), Date::parse("2026-11-19").value(), today);
  ASSERT_TRUE(given);
  EXPECT_EQ(given->front().on.iso(), "2026-11-19");
}

TEST_F(BenchPictures, OfADayThatIsNotYetAreRefused) {
  save(scratch.at("a.jpg"), {tray(1)}, "2031:01:01 00:00:00");
  EXPECT_FALSE(labels_read(read(), {}, Date::parse("2026-11-20").value()));
}

TEST_F(BenchPictures, OfACameraWithoutAClockSayNone) {
  save(scratch.at("a.jpg"), {tray(1)}, "0000:00:00 00:00:00");
  EXPECT_FALSE(read().front().taken);
}

} // namespace
} // namespace coneline::labels
