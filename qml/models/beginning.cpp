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

std::vector<Fault> import_into(const std::filesystem::path& folder,
                               const std::filesystem::path& path, Date today,
                               const Progress& progress) {
  std::error_code ignored;
  std::filesystem::create_directories(path.parent_path(), ignored);
  const auto came = exchange::import_new(folder, path, today, progress);
  return came ? came->faults.listed() : std::vector{came.error()};
}

std::vector<Fault> demo_into(const std::filesystem::path& path, Date today,
                             const Progress& progress) {
  const QTemporaryDir folder;
  if (!folder.isValid() || !unpack_demo(folder.path()))
    return {fault("the demo cannot be unpacked", "See whether the disk has room.")};
  return import_into(folder.path().toStdString(), path, today, progress);
}

} // namespace

void Beginning::importSeason(const QString& folder, const QString& path) {
  const auto into = Session::path_of(path);
  begin(into, [from = Session::path_of(folder), into, today = session_->today()](
                  const Progress& progress) { return import_into(from, into, today, progress); });
}

void Beginning::openDemo() {
  const auto path =
      QFileInfo(Session::usualPath()).dir().filePath(QStringLiteral("invented-demo.coneline"));
  if (QFile::exists(path)) {
    session_->openBook(path);
    return;
  }
  const auto into = Session::path_of(path);
  begin(into, [into, today = session_->today()](const Progress& progress) {
    return demo_into(into, today, progress);
  });
}

void Beginning::begin(const std::filesystem::path& path,
                      std::function<std::vector<Fault>(const Progress&)> make) {
  faults_.clear();
  emit faultsChanged();
  const auto came_in = [self = QPointer(this), session = session_,
                        path](const std::vector<Fault>& faults) {
    if (faults.empty())
      session->openBook(text(path.string()));
    else if (self)
      self->refuse_with(faults);
    else
      session->set_fault(faults.front());
  };
  const auto course = std::make_shared<Course>();
  session_->work_long(
      tr("The season comes into a new book …"), Touches::nothing, course,
      [make = std::move(make), course] { return make(told_to(course)); }, came_in);
}

void Beginning::refuse_with(const std::vector<Fault>& faults) {
  constexpr std::size_t most_shown = 8;
  for (std::size_t i = 0; i < faults.size() && i < most_shown; ++i)
    faults_ << fault_shown(faults[i]);
  if (faults.size() > most_shown)
    faults_ << phrased("and {} more", shown(std::int64_t(faults.size() - most_shown)));
  emit faultsChanged();
}

} // namespace coneline::window
