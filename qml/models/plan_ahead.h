// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The months to come on the screen: every line of the forecast with its ranges, and what one number
// is made of. Drawn aside from the window's thread; it can be stopped.

#include "aside.h"
#include "core/plan/forecast.h"
#include "session.h"

#include <QTimer>

namespace coneline::window {

class PlanAhead : public QObject {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(coneline::window::Session* session MEMBER session_ WRITE set_session NOTIFY told)
  Q_PROPERTY(int horizon READ horizon WRITE set_horizon NOTIFY told)
  Q_PROPERTY(bool sowings READ sowings WRITE set_sowings NOTIFY told)
  Q_PROPERTY(bool busy READ busy NOTIFY progressed)
  Q_PROPERTY(double done READ done NOTIFY progressed)
  Q_PROPERTY(bool stopped READ stopped NOTIFY progressed)
  Q_PROPERTY(QStringList months READ months NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(QStringList crowding READ crowding NOTIFY told)
  Q_PROPERTY(QStringList remarks READ remarks NOTIFY told)
  Q_PROPERTY(QString fault READ fault NOTIFY told)
  Q_PROPERTY(int opened READ opened WRITE open NOTIFY openedChanged)
  Q_PROPERTY(int month READ month WRITE look_at NOTIFY openedChanged)
  Q_PROPERTY(coneline::window::Rows* cells READ cells CONSTANT)
  Q_PROPERTY(coneline::window::Rows* lots READ lots CONSTANT)
  Q_PROPERTY(QString madeOf READ made_of NOTIFY openedChanged)
  Q_PROPERTY(QString saved READ saved NOTIFY savedChanged)
  Q_PROPERTY(QString saveFault READ save_fault NOTIFY savedChanged)

 public:
  explicit PlanAhead(QObject* parent = nullptr);
  ~PlanAhead() override;
  void set_session(Session* session);
  void set_horizon(int months);
  /// Whether seed at hand and seed of ripening cones is counted in.
  void set_sowings(bool counted);
  void open(int row);      ///< -1: none
  void look_at(int month); ///< of the row that is open; -1: none

  Q_INVOKABLE void draw();
  Q_INVOKABLE void stop();
  /// Where a file of this ending would be put unless another path is typed.
  Q_INVOKABLE QString usualPath(const QString& ending) const;
  /// A PDF, a spreadsheet or CSV, by the path's ending.
  Q_INVOKABLE bool save(const QString& path);
  /// All lines of the forecast, or the one that is open, with tabs, for another program.
  Q_INVOKABLE void copy();

  [[nodiscard]] int horizon() const { return horizon_; }
  [[nodiscard]] bool sowings() const { return sowings_; }
  [[nodiscard]] bool busy() const { return busy_; }
  [[nodiscard]] double done() const;
  [[nodiscard]] bool stopped() const { return stopped_; }
  [[nodiscard]] QStringList months() const { return months_; }
  /// group, name, unit, happens, low, middle, high, capacity (below 0: none), highest, told
  [[nodiscard]] Rows* rows() { return &rows_; }
  [[nodiscard]] QStringList crowding() const { return crowding_; }
  [[nodiscard]] QStringList remarks() const { return remarks_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] int opened() const { return opened_; }
  [[nodiscard]] int month() const { return month_; }
  [[nodiscard]] Rows* cells() { return &cells_; } ///< month, range
  [[nodiscard]] Rows* lots() { return &lots_; }   ///< code, value
  [[nodiscard]] QString made_of() const { return made_of_; }
  [[nodiscard]] QString saved() const { return saved_; }
  [[nodiscard]] QString save_fault() const { return save_fault_; }

 signals:
  void told();
  void progressed();
  void openedChanged();
  void savedChanged();

 private:
  struct Drawn {
    plan::ForecastInput input;
    plan::Forecast forecast;
  };
  struct Course {
    std::atomic<int> done = 0;
    std::atomic<bool> stop = false;
  };
  void take(Result<std::shared_ptr<const Drawn>> drawn);
  void tell();
  void tell_rows();
  void tell_cells();
  void tell_lots();

  Session* session_ = nullptr;
  int horizon_ = 36;
  bool sowings_ = false;
  bool busy_ = false;
  bool stopped_ = false;
  std::shared_ptr<Course> course_;
  std::shared_ptr<const Drawn> drawn_;
  std::vector<std::size_t> series_; ///< by row
  QStringList months_;
  QStringList crowding_;
  QStringList remarks_;
  QString fault_;
  int opened_ = -1;
  int month_ = -1;
  QString made_of_;
  QString saved_;
  QString save_fault_;
  Rows rows_;
  Rows cells_;
  Rows lots_;
  QTimer look_;
  Aside aside_;
};

} // namespace coneline::window
