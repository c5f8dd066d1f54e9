// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What the parts of the season plan have in common: they are reckoned aside from the window's
// thread whenever the book changes, can be stopped, keep things in the book and save or copy what
// they tell. An answer that arrives after its book was closed is forgotten.

#include "aside.h"
#include "core/plan/forecast.h"
#include "core/report/plan_paper.h"
#include "session.h"

#include <QTimer>
#include <QVariantMap>

namespace coneline::window {

class PlanPart : public QObject {
  Q_OBJECT
  QML_ANONYMOUS
  Q_PROPERTY(coneline::window::Session* session READ session WRITE set_session NOTIFY told)
  Q_PROPERTY(bool busy READ busy NOTIFY progressed)
  Q_PROPERTY(double done READ done NOTIFY progressed)
  Q_PROPERTY(bool stopped READ stopped NOTIFY progressed)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(QString entryFault READ entry_fault NOTIFY entryTold)
  Q_PROPERTY(QString saved READ saved NOTIFY savedChanged)
  Q_PROPERTY(QString saveFault READ save_fault NOTIFY savedChanged)

 public:
  explicit PlanPart(QObject* parent);
  ~PlanPart() override;
  [[nodiscard]] Session* session() const { return session_; }
  void set_session(Session* session);

  Q_INVOKABLE void stop();
  /// Asks once more, as after a stop.
  Q_INVOKABLE void again() { reckon(); }

  [[nodiscard]] bool busy() const { return busy_; }
  [[nodiscard]] double done() const; ///< of 1; 0 where it cannot be said
  [[nodiscard]] bool stopped() const { return stopped_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString entry_fault() const { return entry_fault_; }
  [[nodiscard]] QString saved() const { return saved_; }
  [[nodiscard]] QString save_fault() const { return save_fault_; }

 signals:
  void told();
  void progressed();
  void entryTold();
  void savedChanged();

 protected:
  /// The book changed, or is another.
  virtual void reckon() = 0;
  /// Something was kept that no other page shows.
  virtual void kept() { reckon(); }

  /// `ask` takes a store::Reading& and the Course on another thread; `take` what its Result holds.
  /// A fault is blamed.
  template <class Ask, class Take>
  void ask(Ask ask, Take take) {
    if (!begin())
      return;
    aside_.ask(
        session_->path().toStdString(),
        [ask = std::move(ask), course = course_](store::Reading& reading) mutable {
          return ask(reading, *course);
        },
        [this, take = std::move(take)](auto answer) mutable {
          end();
          if (answer)
            take(*std::move(answer));
          else
            blame(answer.error());
          emit told();
          emit progressed();
        });
  }
  /// So many futures, always the same ones; `course` hears how far they are and can stop them.
  static plan::ForecastRuns futures(int runs, Course& course);
  /// What stands as the fault of the whole part, until something newer is asked. Of what was
  /// stopped there is none to tell.
  void blame(const Fault& fault);

  bool keep(const std::function<Result<void>(store::Writing&)>& write);
  /// Says why what was typed cannot be; false.
  bool refuse_entry(const Fault& fault);
  /// What was typed, without blanks at its ends.
  static QVariantMap trimmed(const QVariantMap& typed);

  /// Beside the book.
  [[nodiscard]] QString beside(const QString& name) const;
  bool tell_saved(const QString& path, const Result<void>& written);
  bool save_paper(const QString& path, const report::PlanPaper& paper);
  void copy_out(const std::string& tabs);

  Session* session_ = nullptr;
  QString entry_fault_;

 private:
  bool begin();
  void end();
  void book_changed();

  bool busy_ = false;
  bool stopped_ = false;
  std::shared_ptr<Course> course_;
  QString fault_;
  QString saved_;
  QString save_fault_;
  QTimer look_;
  Aside aside_;
};

} // namespace coneline::window
