// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// One deed as a form on the screen.

#include "deeds/deed.h"

#include <functional>
#include <map>

namespace coneline::window {

class Form : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ NOTIFY asked)
  Q_PROPERTY(QString deed MEMBER deed_ NOTIFY asked)
  Q_PROPERTY(QString code MEMBER code_ NOTIFY asked)
  Q_PROPERTY(QString title READ title NOTIFY told)
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* fields READ fields CONSTANT)
  Q_PROPERTY(coneline::window::Rows* pieces READ pieces CONSTANT)
  Q_PROPERTY(QString piecesTotal READ pieces_total NOTIFY split)
  Q_PROPERTY(QString fault READ fault NOTIFY refused)
  Q_PROPERTY(QString faultField READ fault_field NOTIFY refused)
  Q_PROPERTY(QStringList made READ made NOTIFY done)

 public:
  explicit Form(QObject* parent = nullptr);

  Q_INVOKABLE void set(const QString& field, const QString& value);
  Q_INVOKABLE QString valueOf(const QString& field) const;
  /// The book has something more to choose from, which is chosen in the field. What was written or
  /// chosen by hand stays.
  Q_INVOKABLE void renew(const QString& field, const QString& value);
  /// A day some days on from the one written in a field.
  Q_INVOKABLE QString dayMoved(const QString& written, int days) const;
  /// Whether these fields can be read; otherwise `fault` says of one of them why not.
  Q_INVOKABLE bool reads(const QStringList& fields);
  /// What stands in a field, as it is shown.
  Q_INVOKABLE QString shownOf(const QString& field) const;
  /// Makes the entry. True when it stands in the book; otherwise `fault` says why not.
  Q_INVOKABLE bool submit();

  [[nodiscard]] QString title() const;
  [[nodiscard]] QStringList cautions() const;
  [[nodiscard]] Rows* fields() { return &fields_; }
  [[nodiscard]] Rows* pieces() { return &pieces_; }
  [[nodiscard]] QString pieces_total() const { return total_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString fault_field() const { return fault_field_; }
  [[nodiscard]] QStringList made() const { return made_; }

 signals:
  void asked();
  void told();
  void split();
  void refused();
  void done();

 private:
  /// What was written or chosen by hand, and how it is written anew in another language or other
  /// units: what it was read as says more than its letters.
  struct Given {
    QString value;
    std::function<QString()> anew;
  };
  void begin();
  /// Filled in anew by another row of the register.
  void begin_with(const QString& row);
  void split_up();
  void say_anew();
  [[nodiscard]] Given given(const QString& field, const QString& value) const;
  void put_back(const std::map<QString, Given>& kept);
  void refuse_with(const Fault& fault);
  [[nodiscard]] Subject subject() const;

  Session* session_ = nullptr;
  QString deed_;
  QString code_;
  QString row_; ///< chosen in the form itself, where it is about a row of a register
  QVariantMap values_;
  std::map<QString, Given> by_hand_; ///< those of them that were written or chosen here
  std::vector<FieldSpec> specs_;
  Rows fields_;
  Rows pieces_;
  QString total_;
  QString fault_;
  QString fault_field_;
  QStringList made_;
};

} // namespace coneline::window
