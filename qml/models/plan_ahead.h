// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// The months to come on the screen: every line of the forecast with its ranges, and what one number
// is made of. Drawn aside from the window's thread; it can be stopped.

#include "core/plan/forecast.h"
#include "plan_part.h"

namespace coneline::window {

class PlanAhead : public PlanPart {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(int horizon READ horizon WRITE set_horizon NOTIFY told)
  Q_PROPERTY(bool sowings READ sowings WRITE set_sowings NOTIFY told)
  Q_PROPERTY(QStringList months READ months NOTIFY told)
  Q_PROPERTY(coneline::window::Rows* rows READ rows CONSTANT)
  Q_PROPERTY(QStringList crowding READ crowding NOTIFY told)
  Q_PROPERTY(QStringList remarks READ remarks NOTIFY told)
  Q_PROPERTY(int opened READ opened WRITE open NOTIFY openedChanged)
  Q_PROPERTY(int month READ month WRITE look_at NOTIFY openedChanged)
  Q_PROPERTY(coneline::window::Rows* cells READ cells CONSTANT)
  Q_PROPERTY(coneline::window::Rows* lots READ lots CONSTANT)
  Q_PROPERTY(QString madeOf READ made_of NOTIFY openedChanged)

 public:
  explicit PlanAhead(QObject* parent = nullptr);
  void set_horizon(int months);
  /// Whether seed at hand and seed of ripening cones is counted in.
  void set_sowings(bool counted);
  void open(int row);      ///< -1: none
  void look_at(int month); ///< of the row that is open; -1: none

  /// Where a file of this ending would be put unless another path is typed.
  Q_INVOKABLE QString usualPath(const QString& ending) const;
  /// A PDF, a spreadsheet or CSV, by the path's ending.
  Q_INVOKABLE bool save(const QString& path);
  /// All lines of the forecast, or the one that is open, with tabs, for another program.
  Q_INVOKABLE void copy();

  [[nodiscard]] int horizon() const { return horizon_; }
  [[nodiscard]] bool sowings() const { return sowings_; }
  [[nodiscard]] QStringList months() const { return months_; }
  /// group, name, unit, happens, low, middle, high, capacity (below 0: none), highest, told
  [[nodiscard]] Rows* rows() { return &rows_; }
  [[nodiscard]] QStringList crowding() const { return crowding_; }
  [[nodiscard]] QStringList remarks() const { return remarks_; }
  [[nodiscard]] int opened() const; ///< the row of the line that is open; -1: none
  [[nodiscard]] int month() const { return month_; }
  [[nodiscard]] Rows* cells() { return &cells_; } ///< month, range
  [[nodiscard]] Rows* lots() { return &lots_; }   ///< code, value
  [[nodiscard]] QString made_of() const { return made_of_; }

 signals:
  void openedChanged();

 protected:
  void reckon() override;

 private:
  struct Drawn {
    plan::ForecastInput input;
    plan::Forecast forecast;
    std::vector<std::vector<plan::Likely>> ranges; ///< by series and month
  };
  void tell();
  void tell_rows();
  void tell_cells();
  void tell_lots();

  int horizon_ = 36;
  bool sowings_ = false;
  std::shared_ptr<const Drawn> drawn_;
  std::vector<std::size_t> series_; ///< by row
  QStringList months_;
  QStringList crowding_;
  QStringList remarks_;
  std::optional<plan::SeriesName> opened_; ///< by its name: rows come and go
  int month_ = -1;
  QString made_of_;
  Rows rows_;
  Rows cells_;
  Rows lots_;
};

} // namespace coneline::window
