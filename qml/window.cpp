// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/window.h"

#include "models/session.h"

#include <QApplication>
#include <QFont>
#include <QIcon>
#include <QQmlComponent>
#include <QSettings>
#include <QtQml/qqmlextensionplugin.h>

#include <iostream>

Q_IMPORT_QML_PLUGIN(ConelineWindowPlugin)

namespace coneline::window {

std::optional<Wanted> window_wanted(std::span<const std::string> arguments) {
  static const std::string book = "--book";
  static const std::string suffix = ".coneline"; // what a desktop hands over for a book
  if (arguments.empty())
    return Wanted{};
  if (arguments.size() == 2 && arguments[0] == book)
    return Wanted{arguments[1]};
  if (arguments.size() == 1 && arguments[0].starts_with(book + "="))
    return Wanted{arguments[0].substr(book.size() + 1)};
  if (arguments.size() == 1 && !arguments[0].starts_with("-") && arguments[0].ends_with(suffix))
    return Wanted{arguments[0]};
  return std::nullopt;
}

CompilingLate::CompilingLate() {
  static constexpr auto setting = "QV4_JIT_CALL_THRESHOLD"; // asked for by each engine that is made
  if (qEnvironmentVariableIsEmpty(setting))
    qputenv(setting, "100");
}

bool PageEngine::load(Session& session) {
  // What every text is made with before it has its own: a face that is looked up anyway.
  QFont usual(QStringLiteral("Noto Sans"));
  usual.setPixelSize(16);
  QGuiApplication::setFont(usual);
  addImportPath(QStringLiteral("qrc:/"));
  connect(session.speech(), &Speech::languageChanged, this, &QQmlEngine::retranslate);
  QQmlComponent made(this, QUrl(QStringLiteral("qrc:/ConelineWindow/frame/Main.qml")));
  auto* object = made.createWithInitialProperties(
      {{QStringLiteral("session"), QVariant::fromValue(&session)}});
  window_.reset(qobject_cast<QQuickWindow*>(object));
  if (!window_)
    qWarning("%s", qPrintable(made.errorString()));
  return window_ != nullptr;
}

namespace {

Date day_of_work() {
  const auto set = qEnvironmentVariable("CONELINE_TODAY");
  return Date::parse(set.toStdString()).value_or(Date::today());
}

QString book_of(const Wanted& wanted, const QSettings& settings) {
  if (wanted.book)
    return QString::fromStdString(*wanted.book);
  const auto set = qEnvironmentVariable("CONELINE_BOOK");
  return set.isEmpty() ? settings.value(QStringLiteral("book")).toString() : set;
}

QIcon icon() {
  QIcon own(QStringLiteral(":/icon/coneline-32.png"));
  own.addFile(QStringLiteral(":/icon/coneline-128.png"));
  return own;
}

/// Until the window is closed; nothing where it cannot be shown.
std::optional<int> show(Session& session) {
  PageEngine engine;
  if (!engine.load(session))
    return std::nullopt;
  return QApplication::exec();
}

} // namespace

int run(int argc, char** argv, const Wanted& wanted) {
  const QApplication application(argc, argv); // charts need more than QGuiApplication
  QApplication::setApplicationName(QStringLiteral("coneline"));
  QApplication::setApplicationDisplayName(QStringLiteral("Coneline"));
  QApplication::setDesktopFileName(QStringLiteral("coneline"));
  QApplication::setWindowIcon(icon());
  QSettings settings(QStringLiteral("coneline"), QStringLiteral("coneline"));
  Session session(day_of_work());
  session.set_look(settings.value(QStringLiteral("look"), session.look()).toString());
  auto& speech = *session.speech();
  speech.set_language(settings.value(QStringLiteral("language")).toString());
  speech.set_units(settings.value(QStringLiteral("units"), Speech::usual_units()).toString());
  speech.set_text_size(settings.value(QStringLiteral("text size"), 100).toInt());
  if (const auto book = book_of(wanted, settings); !book.isEmpty())
    session.openBook(book);
  const auto status = show(session);
  if (!status) {
    std::cerr << "The window could not be shown. Check that Qt's own modules are installed.\n";
    return 3;
  }
  session.end(); // a book that was moved meanwhile is the one opened last
  settings.setValue(QStringLiteral("look"), session.look());
  settings.setValue(QStringLiteral("language"), speech.language());
  settings.setValue(QStringLiteral("units"), speech.units());
  settings.setValue(QStringLiteral("text size"), speech.text_size());
  if (!session.path().isEmpty())
    settings.setValue(QStringLiteral("book"), session.path());
  return *status;
}

} // namespace coneline::window
