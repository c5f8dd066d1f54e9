// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// How the window speaks: its language, the units people reckon in, and how large its text is.
// Numbers and days follow the system where it has the language, or where none is chosen.

#include "core/base/quantity.h"

#include <QObject>
#include <QTranslator>
#include <QtQml/qqmlregistration.h>

namespace coneline::window {

class Speech : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of the session")
  /// "en", "es"; empty for the system's, English where the window does not speak it.
  Q_PROPERTY(QString language READ language WRITE set_language NOTIFY changed)
  Q_PROPERTY(QString units READ units WRITE set_units NOTIFY changed) ///< "metric", "us"
  /// Of the text, in percent: 100 to 200.
  Q_PROPERTY(int textSize READ text_size WRITE set_text_size NOTIFY textSizeChanged)
  Q_PROPERTY(QString volumeUnit READ volume_unit NOTIFY changed)
  Q_PROPERTY(QString lengthUnit READ length_unit NOTIFY changed)
  Q_PROPERTY(QString temperatureUnit READ temperature_unit NOTIFY changed)

 public:
  explicit Speech(QObject* parent = nullptr);
  ~Speech() override;
  Speech(const Speech&) = delete;
  Speech& operator=(const Speech&) = delete;

  [[nodiscard]] QString language() const { return language_; }
  void set_language(const QString& language);
  [[nodiscard]] QString units() const;
  void set_units(const QString& units);
  [[nodiscard]] int text_size() const { return text_size_; }
  void set_text_size(int percent);

  [[nodiscard]] QString volume_unit() const;
  [[nodiscard]] QString length_unit() const;
  [[nodiscard]] QString area_unit() const;
  [[nodiscard]] QString temperature_unit() const;

  /// Those that people of this system usually reckon in.
  static QString usual_units();

 signals:
  void changed();
  void languageChanged(); ///< before `changed`, so that texts are translated anew first
  void textSizeChanged();

 private:
  QString language_ = QStringLiteral("en");
  int text_size_ = 100;
  QTranslator translator_;
};

} // namespace coneline::window
