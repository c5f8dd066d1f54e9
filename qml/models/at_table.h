// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// A batch on the harvest table: what is counted now, the split to the seed, and the ranges as they
// would be with it.

#include "core/report/harvest_view.h"
#include "session.h"

namespace coneline::window {

class AtTable : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString batch MEMBER batch_ NOTIFY asked)
  /// What the two counters count: "lost", "float", "again", "sinkers", "floaters".
  Q_PROPERTY(QString doing READ doing WRITE set_doing NOTIFY doingChanged)
  Q_PROPERTY(QStringList doings READ doings NOTIFY told)
  Q_PROPERTY(QString first_says READ first_says NOTIFY doingChanged)
  Q_PROPERTY(QString second_says READ second_says NOTIFY doingChanged)
  Q_PROPERTY(int first MEMBER first_ NOTIFY counted)
  Q_PROPERTY(int second MEMBER second_ NOTIFY counted)
  Q_PROPERTY(bool pending READ pending NOTIFY counted)
  Q_PROPERTY(QString title READ title NOTIFY told)
  Q_PROPERTY(QString next READ next NOTIFY told)
  Q_PROPERTY(QString floatTold READ float_told NOTIFY told)
  Q_PROPERTY(QString suggestion READ suggestion NOTIFY told)
  Q_PROPERTY(QString decision READ decision NOTIFY told)
  Q_PROPERTY(QString total READ total NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* pieces READ pieces CONSTANT)
  Q_PROPERTY(coneline::window::Rows* ranges READ ranges CONSTANT)
  Q_PROPERTY(coneline::window::Rows* choices READ choices CONSTANT)

 public:
  explicit AtTable(QObject* parent = nullptr);
  void set_session(Session* session);

  /// Enters what the counters say; they go back to 0. False where it is refused; `fault` says why.
  Q_INVOKABLE bool record();
  /// Makes the suggestion the taxon's setting.
  Q_INVOKABLE bool accept();

  [[nodiscard]] QString doing() const { return doing_; }
  void set_doing(const QString& doing);
  [[nodiscard]] QStringList doings() const { return doings_; }
  [[nodiscard]] QString first_says() const;
  [[nodiscard]] QString second_says() const;
  [[nodiscard]] bool pending() const { return first_ + second_ > 0; }
  [[nodiscard]] QString title() const { return title_; }
  [[nodiscard]] QString next() const { return next_; }
  [[nodiscard]] QString float_told() const { return float_told_; }
  [[nodiscard]] QString suggestion() const { return suggestion_; }
  [[nodiscard]] QString decision() const { return decision_; }
  [[nodiscard]] QString total() const { return total_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] Rows* pieces() { return &pieces_; }
  [[nodiscard]] Rows* ranges() { return &ranges_; }
  [[nodiscard]] Rows* choices() { return &choices_; }

 signals:
  void asked();
  void doingChanged();
  void counted();
  void told();

 private:
  void begin();
  void reset();  ///< the counters, and what is counted
  void load();   ///< the ground, from the book
  void read();   ///< that, and what is told of it
  void reckon(); ///< with what is on the counters
  [[nodiscard]] std::optional<work::TableCount> counting() const;
  void tell(const report::HarvestView& view);
  void tell_pieces(const work::HarvestTable& table);
  void tell_ranges(const report::HarvestView& view);
  void tell_choices(const report::HarvestView& view);
  void offer_doings(const work::HarvestTable& table);

  Session* session_ = nullptr;
  QString batch_;
  QString doing_;
  QStringList doings_;
  int first_ = 0;
  int second_ = 0;
  std::optional<report::HarvestGround> ground_; ///< as the book has it
  QString title_, next_, float_told_, suggestion_, decision_, total_, fault_;
  Rows pieces_;
  Rows ranges_;
  Rows choices_;
};

} // namespace coneline::window
