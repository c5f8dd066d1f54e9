// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of the window run without a display. Charts need QApplication, so Google Test's own main
// does not do.
#include <gtest/gtest.h>
#include <QApplication>
#include <QLocale>

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  if (qEnvironmentVariableIsEmpty("QT_QUICK_BACKEND"))
    qputenv("QT_QUICK_BACKEND", "software");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  const QApplication application(argc, argv);
  return RUN_ALL_TESTS();
}
