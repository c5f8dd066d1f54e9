// SPDX-License-Identifier: GPL-3.0-or-later
// Tables on paper, as another program reads the pages.
#include "labels/print/sections_pdf.h"

#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace coneline::labels {
namespace {

/// The lines of a page, its words one blank apart; none where there is no such page.
std::vector<std::string> lines_of(const std::string& path, int page) {
  QProcess reader;
  const auto number = QString::number(page);
  reader.start("pdftotext",
               {"-layout", "-f", number, "-l", number, QString::fromStdString(path), "-"});
  if (!reader.waitForFinished() || reader.exitCode() != 0)
    return {};
  std::vector<std::string> lines;
  for (const auto& line : QString::fromUtf8(reader.readAllStandardOutput()).split('\n'))
    if (const auto words = line.simplified(); !words.isEmpty())
      lines.push_back(words.toStdString());
  return lines;
}

std::ptrdiff_t count_of(const std::vector<std::string>& lines, const std::string& line) {
  return std::ranges::count(lines, line);
}

class SectionsPdf : public testing::Test {
 protected:
  /// The pages of a paper of these sections.
  std::vector<std::vector<std::string>> pages(std::vector<report::PapersSection> sections) {
    const auto path = folder_.filePath("paper.pdf").toStdString();
    const auto count = sections_pdf(path, {"paper", "the foot", std::move(sections)});
    EXPECT_TRUE(count) << count.error().text();
    std::vector<std::vector<std::string>> read;
    for (int page = 1; page <= count.value_or(0); ++page)
      read.push_back(lines_of(path, page));
    return read;
  }

  QTemporaryDir folder_;
};

report::PapersSection table(int rows) {
  report::PapersSection section{"Lots", {}, {"month", "lot", "pot"}, {}, false};
  for (int row = 0; row < rows; ++row)
    section.rows.push_back({"2026-12", "G" + std::to_string(1000 + row), "Deep pot"});
  return section;
}

TEST_F(SectionsPdf, ATableHasItsHeadOnEveryPage) {
  const auto read = pages({table(150)});
  ASSERT_GE(read.size(), 3U);
  std::ptrdiff_t rows = 0;
  for (std::size_t page = 0; page < read.size(); ++page) {
    EXPECT_EQ(count_of(read[page], "month lot pot"), 1) << "page " << page + 1;
    EXPECT_EQ(count_of(read[page], "Lots, continued"), page == 0 ? 0 : 1) << "page " << page + 1;
    rows += std::ranges::count_if(
        read[page], [](const std::string& line) { return line.starts_with("2026-12 G"); });
  }
  EXPECT_EQ(rows, 150);
  EXPECT_EQ(read[1][0], "Lots, continued");
  EXPECT_EQ(read[1][1], "month lot pot");
}

std::string words(int count) {
  std::string text;
  for (int word = 0; word < count; ++word)
    text += "word ";
  return text;
}

TEST_F(SectionsPdf, AHeadIsNotLeftAloneAtTheFootOfAPage) {
  const report::PapersSection notes{
      "Notes", {}, {"day", "note"}, {{"2026-12-01", words(150)}}, false};
  bool on_second = false;
  for (int filled = 30; filled <= 50; ++filled) {
    report::PapersSection lines{"Lines", {}, {}, {}, false};
    for (int line = 0; line < filled; ++line)
      lines.lines.emplace_back("", "a line");
    const auto read = pages({lines, notes});
    on_second = on_second || read.size() == 2;
    for (const auto& page : read) {
      const auto rows = std::ranges::count_if(
          page, [](const std::string& line) { return line.starts_with("2026-12-01 word"); });
      EXPECT_EQ(count_of(page, "day note"), rows) << filled;
      EXPECT_EQ(count_of(page, "Notes"), rows) << filled;
      EXPECT_EQ(count_of(page, "Notes, continued"), 0) << filled;
    }
  }
  EXPECT_TRUE(on_second) << "the table never came to the foot of the page";
}

TEST_F(SectionsPdf, ARowLongerThanAPageGoesOnBelowItsHead) {
  const auto read = pages({{"Notes", {}, {"day", "note"}, {{"2026-12-01", words(2000)}}, false}});
  ASSERT_GE(read.size(), 2U);
  for (const auto& page : read)
    EXPECT_EQ(count_of(page, "day note"), 1);
  EXPECT_TRUE(read.front().size() > 10) << "it begins on the page of its title";
}

TEST_F(SectionsPdf, WordsStayWholeWhereThereIsRoom) {
  report::PapersSection section{"Room", {}, {"place"}, {{"Heated bench"}, {"Fern corner"}}, false};
  for (int month = 1; month <= 12; ++month) {
    section.header.push_back(month < 10 ? "2027-0" + std::to_string(month)
                                        : "2027-" + std::to_string(month));
    for (auto& row : section.rows)
      row.emplace_back("100");
  }
  const auto read = pages({section});
  ASSERT_EQ(read.size(), 1U);
  std::string all;
  for (const auto& line : read[0])
    all += line + "\n";
  for (const auto* word : {"Heated", "bench", "Fern", "corner"})
    EXPECT_NE(all.find(word), std::string::npos) << word << " in\n" << all;
  // Not all months have room side by side: they break after the year.
  EXPECT_NE(all.find("2027- 2027- 2027-"), std::string::npos) << all;
}

TEST_F(SectionsPdf, AWordWiderThanThePageIsBroken) {
  const std::string digest(200, 'd');
  const auto read = pages({{"Links", {}, {"link", "of"}, {{digest, "the book"}}, false}});
  ASSERT_EQ(read.size(), 1U);
  std::size_t letters = 0;
  for (const auto& line : read[0])
    if (line.starts_with("ddd"))
      letters += static_cast<std::size_t>(std::ranges::count(line, 'd'));
  EXPECT_EQ(letters, digest.size());
}

} // namespace
} // namespace coneline::labels
