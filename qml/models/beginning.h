// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The ways to begin other than by hand: a season folder, and the demo that comes with the program.
// What comes in does so aside from the window's thread, and is opened whatever page is looked at.

#include "session.h"

namespace coneline::window {

class Beginning : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY sessionChanged)
  Q_PROPERTY(QStringList faults READ faults NOTIFY faultsChanged)

 public:
  explicit Beginning(QObject* parent = nullptr) : QObject(parent) {}

  /// Makes a new book from a season folder and opens it. Where anything in the folder is at fault
  /// there is no book, and `faults` has what, where and what to do.
  Q_INVOKABLE void importSeason(const QString& folder, const QString& path);

  /// Opens the book of the invented nursery, made anew where it is not there yet.
  Q_INVOKABLE void openDemo();

  [[nodiscard]] QStringList faults() const { return faults_; }

 signals:
  void sessionChanged();
  void faultsChanged();

 private:
  /// `make` makes the book at `path` on another thread, or says what is wrong.
  void begin(const std::filesystem::path& path,
             std::function<std::vector<Fault>(const Progress&)> make);
  void refuse_with(const std::vector<Fault>& faults);

  Session* session_ = nullptr;
  QStringList faults_;
};

} // namespace coneline::window
