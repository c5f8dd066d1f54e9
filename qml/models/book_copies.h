// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The copies of one book, and the way back to one of them. Each is read whole to see whether it is
// good, and going back copies a whole book; both are done aside from the window's thread.

#include "aside.h"
#include "core/store/copies.h"
#include "session.h"

namespace coneline::window {

class BookCopies : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY changed)
  Q_PROPERTY(QString path READ path WRITE set_path NOTIFY changed)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(bool looking READ looking NOTIFY changed)
  Q_PROPERTY(bool undoable READ undoable NOTIFY changed)
  Q_PROPERTY(QString told READ told NOTIFY changed)
  Q_PROPERTY(QString fault READ fault NOTIFY changed)

 public:
  explicit BookCopies(QObject* parent = nullptr);

  /// Puts a copy of `rows` in the book's place and opens it, aside from the window's thread; it
  /// goes on where this is left. On failure, and where it was stopped, `fault` says why, and the
  /// book is as it was.
  Q_INVOKABLE void restore(const QString& file);
  /// Puts back what the last restore replaced.
  Q_INVOKABLE void undo();

  [[nodiscard]] QString path() const { return path_; }
  void set_path(const QString& path);
  [[nodiscard]] Rows* rows() { return &rows_; }
  [[nodiscard]] bool looking() const { return looking_; } ///< the rows are not known yet
  [[nodiscard]] bool undoable() const { return undoable_; }
  [[nodiscard]] QString told() const { return told_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void changed();

 private:
  void bring_back(std::function<Result<void>(const std::filesystem::path&, const Progress&)> bring);
  void brought_back(const QString& path, const Result<void>& done);
  struct Seen {
    store::Copy copy;
    store::CopyState state;
  };
  void read_anew();
  void tell(const std::vector<Seen>& seen);

  Session* session_ = nullptr;
  QString path_;
  Rows rows_;
  bool looking_ = false;
  bool undoable_ = false;
  QString told_;
  QString fault_;
  Aside aside_;
};

} // namespace coneline::window
