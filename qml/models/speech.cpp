// SPDX-License-Identifier: GPL-3.0-or-later
#include "speech.h"

#include "core/base/phrase.h"
#include "wording.h"

#include <QCoreApplication>
#include <QLocale>

#include <atomic>

namespace coneline::window {

namespace {

constexpr const char* catalogue = "core";
const QString spanish = QStringLiteral("es");

/// What core says, through the translators that are installed.
class Spoken final : public Language {
 public:
  [[nodiscard]] std::string text(std::string_view english) const override {
    const std::string source(english);
    return QCoreApplication::translate(catalogue, source.c_str()).toStdString();
  }
  [[nodiscard]] std::string counted(std::int64_t count, std::string_view one,
                                    std::string_view many) const override {
    if (!translated)
      return Language::counted(count, one, many);
    const std::string source(many);
    return QCoreApplication::translate(catalogue, source.c_str(), nullptr, static_cast<int>(count))
        .toStdString();
  }
  [[nodiscard]] std::string day(Date day) const override { return plain(shown(day)); }
  [[nodiscard]] std::string decimal(std::string written) const override {
    return QString::fromStdString(written).replace('.', QLocale().decimalPoint()).toStdString();
  }
  [[nodiscard]] std::string code() const override {
    return translated ? plain(spanish) : Language::code();
  }
  [[nodiscard]] UnitSystem units() const override { return system; }

  std::atomic<bool> translated = false;
  std::atomic<UnitSystem> system = UnitSystem::metric;
};

/// Core asks from threads that may end after the window, so this stays as long as the process.
Spoken& spoken() {
  static Spoken only;
  return only;
}

QString word_of(Quantity quantity) {
  return text(unit_word(spoken().system, quantity));
}

/// The system's own locale where it has the language; else that of the language alone.
QLocale locale_for(const QString& language) {
  const auto own = QLocale::system();
  if (language.isEmpty() || own.name().startsWith(language))
    return own;
  return QLocale(language);
}

} // namespace

Speech::Speech(QObject* parent) : QObject(parent) {}

Speech::~Speech() {
  QCoreApplication::removeTranslator(&translator_);
  spoken().translated = false;
  spoken().system = UnitSystem::metric;
  speak(nullptr);
}

void Speech::set_language(const QString& language) {
  language_ = language;
  const auto locale = locale_for(language);
  QLocale::setDefault(locale);
  const bool speaks_spanish = locale.name().startsWith(spanish);
  QCoreApplication::removeTranslator(&translator_);
  const auto file = speaks_spanish ? QStringLiteral(":/translations/coneline_es.qm")
                                   : QStringLiteral(":/translations/coneline_en.qm");
  if (translator_.load(file))
    QCoreApplication::installTranslator(&translator_);
  spoken().translated = speaks_spanish;
  speak(&spoken());
  emit languageChanged();
  emit changed();
}

QString Speech::units() const {
  return spoken().system == UnitSystem::us ? QStringLiteral("us") : QStringLiteral("metric");
}

void Speech::set_units(const QString& units) {
  spoken().system = units == QLatin1String("us") ? UnitSystem::us : UnitSystem::metric;
  speak(&spoken());
  emit changed();
}

void Speech::set_text_size(int percent) {
  text_size_ = std::clamp(percent, 100, 200);
  emit textSizeChanged();
}

QString Speech::volume_unit() const {
  return word_of(Quantity::litres);
}
QString Speech::length_unit() const {
  return word_of(Quantity::millimetres);
}
QString Speech::area_unit() const {
  return word_of(Quantity::square_metres);
}
QString Speech::temperature_unit() const {
  return word_of(Quantity::celsius);
}

QString Speech::usual_units() {
  return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
             ? QStringLiteral("us")
             : QStringLiteral("metric");
}

} // namespace coneline::window
