// SPDX-License-Identifier: GPL-3.0-or-later
// The least that Qt Quick can show: a window with a field and a word. Ends with its first frame.
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include <cstdlib>

int main(int argc, char** argv) {
  const QGuiApplication application(argc, argv);
  QQmlApplicationEngine engine;
  engine.loadData("import QtQuick\n"
                  "Window { width: 1280; height: 800; visible: true\n"
                  "Text { text: 'bare' }\nTextInput { y: 40; width: 200; focus: true } }\n");
  auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
  QObject::connect(window, &QQuickWindow::frameSwapped, [] { std::_Exit(0); });
  return QGuiApplication::exec();
}
