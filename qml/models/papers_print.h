// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The papers of one thing, or of one of its sales, to a file for a permit office.

#include "core/report/papers.h"
#include "session.h"

namespace coneline::window {

class PapersPrint : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY asked)
  Q_PROPERTY(QString code MEMBER code_ NOTIFY asked)
  /// False for what has no papers: pollen, places.
  Q_PROPERTY(bool offered READ offered NOTIFY asked)
  /// What papers can be of: the thing itself, then its sales.
  Q_PROPERTY(QStringList subjects READ subjects NOTIFY read)
  Q_PROPERTY(QStringList missing READ missing NOTIFY told)
  Q_PROPERTY(QString told READ said NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)

 public:
  explicit PapersPrint(QObject* parent = nullptr);

  /// Reads what papers can be of; asked when the page is unfolded, since it walks over the sales.
  Q_INVOKABLE void open();
  /// Where the file would go unless another path is typed: beside the book.
  Q_INVOKABLE QString usualPath(const QString& subject) const;
  /// Says in `told` how many pages were written, and in `missing` what is missing; or in `fault`
  /// why not.
  Q_INVOKABLE bool save(const QString& subject, const QString& path);

  [[nodiscard]] bool offered() const;
  [[nodiscard]] QStringList subjects() const;
  [[nodiscard]] QStringList missing() const { return missing_; }
  [[nodiscard]] QString said() const { return told_; }
  [[nodiscard]] QString fault() const { return fault_; }

 signals:
  void asked();
  void read();
  void told();

 private:
  [[nodiscard]] std::optional<report::StandingSale> sale_of(const QString& subject) const;
  void say(const QString& told, const QString& fault);

  Session* session_ = nullptr;
  QString code_;
  std::vector<report::StandingSale> sales_;
  QStringList missing_;
  QString told_;
  QString fault_;
};

} // namespace coneline::window
