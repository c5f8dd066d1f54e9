// SPDX-License-Identifier: GPL-3.0-or-later
#include "beginning.h"

#include "core/exchange/import_season.h"
#include "wording.h"

#include <QDir>
#include <QTemporaryDir>

#include <system_error>

namespace coneline::window {

namespace {

/// The demo's season travels inside the program.
bool unpack_demo(const QString& folder) {
  const QDir demo(QStringLiteral(":/demo/season"));
  for (const auto& file : demo.entryList(QDir::Files))
    if (!QFile::copy(demo.filePath(file), QDir(folder).filePath(file)))
      return false;
  return !demo.entryList(QDir::Files).isEmpty();
}

book::Title not_named_yet(Date day) {
  book::Title title; // the season's own title takes its place
  title.name = "season";
  title.made_on = day;
  return title;
}

} // namespace

bool Beginning::importSeason(const QString& folder, const QString& path) {
  return import_into(Session::path_of(folder), Session::path_of(path));
}

bool Beginning::openDemo() {
  const auto path =
      QFileInfo(Session::usualPath()).dir().filePath(QStringLiteral("invented-demo.coneline"));
  if (QFile::exists(path))
    return session_->openBook(path);
  const QTemporaryDir folder;
  if (!folder.isValid() || !unpack_demo(folder.path())) {
    refuse_with({fault("the demo cannot be unpacked", "See whether the disk has room.")});
    return false;
  }
  return import_into(folder.path().toStdString(), path.toStdString());
}

bool Beginning::import_into(const std::filesystem::path& folder,
                            const std::filesystem::path& path) {
  faults_.clear();
  emit faultsChanged();
  if (!session_->may_open())
    return false;
  std::error_code ignored;
  std::filesystem::create_directories(path.parent_path(), ignored);
  {
    auto book = store::Book::make(path, not_named_yet(session_->today()));
    if (!book) {
      refuse_with({book.error()});
      return false;
    }
    const auto came = exchange::import_season(folder, *book, exchange::Import::write);
    if (!came || !came->faults.none())
      refuse_with(came ? came->faults.listed() : std::vector{came.error()});
  }
  if (!faults_.isEmpty()) {
    // Made a moment ago and still empty.
    for (const auto* end : {"", "-wal", "-shm"})
      std::filesystem::remove(path.string() + end, ignored);
    return false;
  }
  return session_->openBook(QString::fromStdString(path.string()));
}

void Beginning::refuse_with(const std::vector<Fault>& faults) {
  constexpr std::size_t most_shown = 8;
  for (std::size_t i = 0; i < faults.size() && i < most_shown; ++i)
    faults_ << text(faults[i].text());
  if (faults.size() > most_shown)
    faults_ << phrased("and {} more", shown(std::int64_t(faults.size() - most_shown)));
  emit faultsChanged();
}

} // namespace coneline::window
