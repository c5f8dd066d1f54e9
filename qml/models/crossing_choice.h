// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Which crosses could be made, the proposal, and what the grower fixed about it. The proposal is
// reckoned aside from the window's thread; until it is there, the one before is shown, with what
// was fixed meanwhile.

#include "aside.h"
#include "core/report/crossing_input.h"
#include "session.h"

#include <optional>
#include <set>

namespace coneline::window {

class CrossingChoice : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY asked)
  Q_PROPERTY(QString aim MEMBER aim_ NOTIFY asked) ///< one of `aims`
  Q_PROPERTY(QStringList aims READ aims CONSTANT)
  Q_PROPERTY(bool everyFemale MEMBER every_female_ NOTIFY asked)
  Q_PROPERTY(bool hybrids MEMBER hybrids_ NOTIFY asked)
  Q_PROPERTY(bool anyRoom MEMBER any_room_ NOTIFY asked)
  /// One a possible cross: key, code of the cone or female, cross, facts, plants in words, and as
  /// shares of the scale they all share (below 0 for none), state ("proposed", "pinned",
  /// "forbidden", ""), why it is not proposed, missing papers.
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(QStringList summary READ summary NOTIFY told) ///< of the proposal
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(QStringList remarks READ remarks NOTIFY told)
  Q_PROPERTY(bool fixed READ fixed NOTIFY told)
  Q_PROPERTY(bool reckoning READ reckoning NOTIFY told)

 public:
  explicit CrossingChoice(QObject* parent = nullptr);
  void set_session(Session* session);

  /// Fixes a cross by its key; a second time sets it free.
  Q_INVOKABLE void pin(const QString& key);
  Q_INVOKABLE void forbid(const QString& key);
  Q_INVOKABLE void freeAll();

  [[nodiscard]] static QStringList aims();
  [[nodiscard]] Rows* rows() { return &rows_; }
  [[nodiscard]] QStringList summary() const { return summary_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QStringList remarks() const { return remarks_; }
  [[nodiscard]] bool fixed() const { return !fixed_.pinned.empty() || !fixed_.forbidden.empty(); }
  [[nodiscard]] bool reckoning() const { return reckoning_; }

 signals:
  void asked();
  void told();

 private:
  /// Crosses by key, since the list may change.
  struct Fixed {
    std::set<QString> pinned;
    std::set<QString> forbidden;
  };
  struct Answer {
    plan::CrossingInput input;
    std::vector<plan::PossibleCross> possible;
    Result<plan::Proposal> proposal;
  };

  void read();
  void take(Result<Answer> answer);
  void show();
  void show_rows();
  void summarise(const plan::Proposal& proposal);
  [[nodiscard]] plan::CrossingWish wish() const;
  [[nodiscard]] static QString key_of(const plan::CrossingInput& input,
                                      const plan::PossibleCross& cross);
  static void fix(plan::CrossingWish& wish, const Fixed& fixed, const plan::CrossingInput& input,
                  const std::vector<plan::PossibleCross>& possible);

  Session* session_ = nullptr;
  Aside* aside_ = new Aside(this);
  QString aim_;
  bool every_female_ = false;
  bool hybrids_ = false;
  bool any_room_ = false;
  Fixed fixed_;
  std::optional<Answer> answer_; ///< the last there was
  Rows rows_;
  QStringList summary_;
  QString fault_;
  QStringList remarks_;
  bool reckoning_ = false;
};

} // namespace coneline::window
