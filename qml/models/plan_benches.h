// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Where every lot is to stand in the year to come: moves, what fills each place, what finds no
// room, and the lots that the grower pinned to a place.

#include "core/plan/forecast.h"
#include "core/plan/placing.h"
#include "plan_part.h"

namespace coneline::window {

class PlanBenches : public PlanPart {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QString proof READ proof NOTIFY told)
  Q_PROPERTY(QStringList noRoom READ no_room NOTIFY told)
  Q_PROPERTY(QStringList months READ months NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* todo READ todo CONSTANT)
  Q_PROPERTY(coneline::window::Rows* places READ places CONSTANT)
  Q_PROPERTY(coneline::window::Rows* stands READ stands CONSTANT)
  Q_PROPERTY(coneline::window::Rows* pins READ pins CONSTANT)
  Q_PROPERTY(QStringList placeNames READ place_names NOTIFY told)
  Q_PROPERTY(int opened READ opened WRITE open NOTIFY openedChanged)
  Q_PROPERTY(QString openedName READ opened_name NOTIFY openedChanged)

 public:
  explicit PlanBenches(QObject* parent = nullptr);
  void open(int place); ///< of `places`; -1: none

  /// `place` by its name.
  Q_INVOKABLE bool pin(const QString& code, const QString& place);
  Q_INVOKABLE void unpin(const QString& code);
  Q_INVOKABLE QString usualPath(const QString& ending) const;
  Q_INVOKABLE bool save(const QString& path);
  Q_INVOKABLE void copy();

  [[nodiscard]] QString proof() const { return proof_; }
  [[nodiscard]] QStringList no_room() const { return no_room_; }
  [[nodiscard]] QStringList months() const { return months_; }
  [[nodiscard]] Rows* todo() { return &todo_; }     ///< month, code, what, from, to, begins
  [[nodiscard]] Rows* places() { return &places_; } ///< name, taken, told
  [[nodiscard]] Rows* stands() { return &stands_; } ///< code, what, months: of the opened place
  [[nodiscard]] Rows* pins() { return &pins_; }     ///< code, place
  [[nodiscard]] QStringList place_names() const { return place_names_; }
  [[nodiscard]] int opened() const; ///< of `places`; -1: none
  [[nodiscard]] QString opened_name() const;

 signals:
  void openedChanged();

 protected:
  void reckon() override;
  void kept() override; ///< pins: the forecast stays

 private:
  /// What the placing starts from, drawn once for a state of the book.
  struct Drawn {
    plan::ForecastInput input;
    plan::Forecast forecast;
  };
  struct Answer {
    std::shared_ptr<const Drawn> drawn;
    plan::PlacingInput input;
    std::optional<plan::Placing> placing;
    std::optional<Fault> fault;
    std::map<Code, std::string> pinned; ///< by lot, the place's name
  };
  void reckon_with(std::shared_ptr<const Drawn> drawn);
  void take(Answer answer);
  void tell_pins(const std::map<Code, std::string>& pinned);
  void tell_todo();
  void tell_places();
  void tell_stands();
  std::optional<Answer> answer_;
  std::vector<book::PlaceId> shown_places_;
  QString proof_;
  QStringList no_room_;
  QStringList months_;
  QStringList place_names_;
  std::optional<book::PlaceId> opened_; ///< by what it is: rows come and go
  Rows todo_;
  Rows places_;
  Rows stands_;
  Rows pins_;
};

} // namespace coneline::window
