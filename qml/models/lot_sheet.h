// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the page of one thing says: a lot, a cone, a pollen lot, a plant, a place.

#include "session.h"

namespace coneline::window {

class LotSheet : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString code MEMBER code_ NOTIFY asked)
  Q_PROPERTY(bool there READ there NOTIFY told)
  Q_PROPERTY(QString kind READ kind NOTIFY told)
  Q_PROPERTY(QString title READ title NOTIFY told)
  Q_PROPERTY(QString taxon READ taxon NOTIFY told)
  Q_PROPERTY(QString holds READ holds NOTIFY told)
  Q_PROPERTY(QString place READ place NOTIFY told)
  Q_PROPERTY(QString note READ note NOTIFY told)
  Q_PROPERTY(QStringList deeds READ deeds NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* line READ line CONSTANT)
  Q_PROPERTY(coneline::window::Rows* history READ history CONSTANT)
  Q_PROPERTY(coneline::window::Rows* here READ here CONSTANT)

 public:
  explicit LotSheet(QObject* parent = nullptr);
  void set_session(Session* session);

  [[nodiscard]] bool there() const { return there_; }
  [[nodiscard]] QString kind() const { return kind_; }
  [[nodiscard]] QString title() const { return title_; }
  [[nodiscard]] QString taxon() const { return taxon_; }
  [[nodiscard]] QString holds() const { return holds_; }
  [[nodiscard]] QString place() const { return place_; }
  [[nodiscard]] QString note() const { return note_; }
  [[nodiscard]] QStringList deeds() const { return deeds_; }
  [[nodiscard]] Rows* line() { return &line_; }
  [[nodiscard]] Rows* history() { return &history_; }
  [[nodiscard]] Rows* here() { return &here_; }

 signals:
  void asked();
  void told();

 private:
  void read();
  void tell(const Standing& standing, const Code& code);
  void tell_lot(const Standing& standing, const work::LotLine& line);
  void tell_cone(const Standing& standing, const work::ConeLine& line);
  void tell_plant(const Standing& standing, const book::Plant& plant);
  void tell_pollen(const Standing& standing, const work::PollenLine& line);
  void tell_place(const Standing& standing, const book::Place& place);

  Session* session_ = nullptr;
  QString code_;
  bool there_ = false;
  QString kind_, title_, taxon_, holds_, place_, note_;
  QStringList deeds_;
  Rows line_;
  Rows history_;
  Rows here_;
};

} // namespace coneline::window
