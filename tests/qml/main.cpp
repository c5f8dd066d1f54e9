// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of the window run without a display. Charts need QApplication, so Google Test's own main
// does not do.
#include <QApplication>
#include <QLocale>
#include <gtest/gtest.h>

#include <iostream>

namespace {

/// What QML warns of is a fault in a page.
void take_message(QtMsgType type, const QMessageLogContext&, const QString& message) {
  std::cerr << message.toStdString() << '\n';
  if (type != QtDebugMsg && type != QtInfoMsg && message.startsWith("qrc:"))
    ADD_FAILURE() << message.toStdString();
}

} // namespace

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
    qputenv("QT_QUICK_BACKEND", "software");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  qInstallMessageHandler(take_message);
  const QApplication application(argc, argv);
  return RUN_ALL_TESTS();
}
