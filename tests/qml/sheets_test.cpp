// SPDX-License-Identifier: GPL-3.0-or-later
// Every page in three sizes, three looks and two languages, laid out as sheets for people to look
// at, and checked: no text cut, no controls over each other, every control named. The same checks
// once more with text at 200 %. One command makes them all:
//
//   tests/sheets        sheets in build/release/pictures/sheets
#include "tests/qml/pages.h"
#include "tests/qml/sound_page.h"

#include <QPainter>
#include <gtest/gtest.h>

namespace coneline::window {
namespace {

constexpr std::array looks{"day", "night", "sun"};

struct Shape {
  const char* language;
  QSize size;
};

/// Pictures of pages in rows, one look a column, under their names.
class Sheet {
 public:
  explicit Sheet(QString name) : name_(std::move(name)) {}
  ~Sheet() { save(); }
  Sheet(const Sheet&) = delete;
  Sheet& operator=(const Sheet&) = delete;

  /// The first picture is kept in its own size as well.
  void add(const QString& page, const std::vector<QImage>& pictures) {
    QDir folder(pictures_folder().filePath("sheets/" + name_));
    folder.mkpath(QStringLiteral("."));
    EXPECT_TRUE(pictures.front().save(folder.filePath(page + ".png")));
    rows_.push_back({page, {}});
    for (const auto& picture : pictures)
      rows_.back().second.push_back(picture.scaledToWidth(wide, Qt::SmoothTransformation));
    if (rows_.size() == rows_a_sheet)
      save();
  }

 private:
  static constexpr int wide = 420;
  static constexpr int gap = 12;
  static constexpr int title = 24;
  static constexpr std::size_t rows_a_sheet = 6;

  void save() {
    if (rows_.empty())
      return;
    const int high = rows_.front().second.front().height() + title + gap;
    QImage sheet(int(looks.size()) * (wide + gap) + gap, int(rows_.size()) * high + gap,
                 QImage::Format_RGB32);
    sheet.fill(Qt::lightGray);
    QPainter painter(&sheet);
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      const int y = gap + int(row) * high;
      painter.drawText(gap, y + title - 8, rows_[row].first);
      for (std::size_t look = 0; look < rows_[row].second.size(); ++look)
        painter.drawImage(gap + int(look) * (wide + gap), y + title, rows_[row].second[look]);
    }
    painter.end();
    QDir folder(pictures_folder().filePath(QStringLiteral("sheets")));
    folder.mkpath(QStringLiteral("."));
    EXPECT_TRUE(sheet.save(folder.filePath(QStringLiteral("%1-%2.png").arg(name_).arg(++saved_))));
    rows_.clear();
  }

  QString name_;
  int saved_ = 0;
  std::vector<std::pair<QString, std::vector<QImage>>> rows_;
};

void is_sound(ShownWindow& shown) {
  no_text_is_cut(shown);
  no_controls_overlap(shown);
  controls_are_named(shown);
  controls_are_large(shown);
}

QString named(const Shape& shape) {
  return QStringLiteral("%1-%2x%3")
      .arg(QString::fromLatin1(shape.language))
      .arg(shape.size.width())
      .arg(shape.size.height());
}

void lay_out(ShownWindow& shown, Sheet& sheet, const char* page) {
  SCOPED_TRACE(page);
  std::vector<QImage> pictures;
  for (const auto* look : looks) {
    shown.session().set_look(QString::fromLatin1(look));
    shown.settle();
    pictures.push_back(shown.window().grabWindow());
    is_not_blank(pictures.back());
  }
  is_sound(shown);
  sheet.add(QString::fromLatin1(page), pictures);
}

/// The steps of the first cone, to the last before it is entered.
void lay_out_first_cone(ShownWindow& shown, Sheet& sheet) {
  shown.find("nursery")->setProperty("text", "Hill nursery");
  shown.tap("coneNext");
  lay_out(shown, sheet, "start-cone-plant");
  shown.tap("coneNext"); // what is still missing is said
  lay_out(shown, sheet, "start-cone-fault");
  shown.type("Cycas revoluta"); // the keyboard is at the name
  shown.press(Qt::Key_Tab);
  shown.type("Cycas revoluta");
  shown.tap("coneNext");
  shown.tap("field-scales-loose");
  lay_out(shown, sheet, "start-cone-cone");
  shown.tap("coneNext");
  lay_out(shown, sheet, "start-cone-pollen");
  shown.tap("field-pollen-of a male plant I know");
  shown.tap("coneNext");
  lay_out(shown, sheet, "start-cone-pass");
  shown.find("field-male")->childItems().constFirst()->forceActiveFocus();
  shown.type("Tall Piet");
  shown.tap("coneNext");
  lay_out(shown, sheet, "start-cone-all");
}

class Sheets : public testing::TestWithParam<Shape> {};

TEST_P(Sheets, OfEveryPage) {
  const auto& shape = GetParam();
  ShownWindow shown(With::demo_season, shape.size);
  shown.session().speech()->set_language(QString::fromLatin1(shape.language));
  Sheet sheet(named(shape));
  for (const auto& page : every_page()) {
    page.go(shown);
    lay_out(shown, sheet, page.name);
  }
}

TEST_P(Sheets, OfTheStart) {
  const auto& shape = GetParam();
  ShownWindow shown(With::no_book, shape.size);
  shown.session().speech()->set_language(QString::fromLatin1(shape.language));
  Sheet sheet("start-" + named(shape));
  lay_out(shown, sheet, "start");
  shown.tap("way-cone");
  lay_out(shown, sheet, "start-cone");
  lay_out_first_cone(shown, sheet);
}

TEST_P(Sheets, OfTheStartWithTextTwiceAsLarge) {
  const auto& shape = GetParam();
  ShownWindow shown(With::no_book, shape.size);
  shown.session().speech()->set_language(QString::fromLatin1(shape.language));
  shown.session().speech()->set_text_size(200);
  Sheet sheet("large-start-" + named(shape));
  lay_out(shown, sheet, "start");
  shown.tap("way-cone");
  lay_out(shown, sheet, "start-cone");
  lay_out_first_cone(shown, sheet);
}

TEST_P(Sheets, WithTextTwiceAsLarge) {
  const auto& shape = GetParam();
  ShownWindow shown(With::demo_season, shape.size);
  shown.session().speech()->set_language(QString::fromLatin1(shape.language));
  shown.session().speech()->set_text_size(200);
  Sheet sheet("large-" + named(shape));
  for (const auto& page : every_page()) {
    SCOPED_TRACE(page.name);
    page.go(shown);
    shown.settle();
    is_sound(shown);
    sheet.add(QString::fromLatin1(page.name), {shown.window().grabWindow()});
  }
}

INSTANTIATE_TEST_SUITE_P(All, Sheets,
                         testing::Values(Shape{"en", {800, 1280}}, Shape{"en", {1280, 800}},
                                         Shape{"en", {1920, 1080}}, Shape{"es", {800, 1280}},
                                         Shape{"es", {1280, 800}}, Shape{"es", {1920, 1080}}),
                         [](const auto& each) {
                           return named(each.param).replace('-', '_').toStdString();
                         });

} // namespace
} // namespace coneline::window
