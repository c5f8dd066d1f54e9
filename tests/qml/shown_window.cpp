// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/shown_window.h"

#include "core/exchange/import_season.h"
#include "qml/models/aside.h"
#include "qml/window.h"

#include <QKeyEvent>
#include <QTest>

#include <algorithm>
#include <functional>
#include <stdexcept>

namespace coneline::window {

namespace {

void each_visible(QQuickItem* item, const std::function<void(QQuickItem*)>& take) {
  if (!item->isVisible() || item->opacity() == 0)
    return;
  take(item);
  for (auto* child : item->childItems())
    each_visible(child, take);
}

/// A book with the demo's season in it.
std::filesystem::path imported(const tests::Scratch& scratch) {
  const auto path = scratch.at("demo.coneline");
  auto book = store::Book::make(path, {"Amberfold", 17, true, Date::parse("2024-01-01").value()});
  if (!book)
    throw std::runtime_error(book.error().text());
  const auto came = exchange::import_season(CONELINE_DEMO_SEASON, *book, exchange::Import::write);
  if (!came)
    throw std::runtime_error(came.error().text());
  if (!came->faults.none())
    throw std::runtime_error("the demo's season has faults");
  return path;
}

} // namespace

ShownWindow::ShownWindow(With with, QSize size) : session_(Date::parse("2026-11-20").value()) {
  if (with == With::demo_season &&
      !session_.openBook(QString::fromStdString(imported(scratch_).string())))
    throw std::runtime_error(session_.fault().toStdString());
  if (!engine_.load(session_))
    throw std::runtime_error("the window does not load");
  window_ = engine_.window();
  resize(size);
  static_cast<void>(QTest::qWaitForWindowExposed(window_));
  settle();
}

QQuickItem* ShownWindow::find(const QString& name) {
  for (auto* item : items())
    if (item->objectName() == name)
      return item;
  return nullptr;
}

std::vector<QQuickItem*> ShownWindow::items() {
  std::vector<QQuickItem*> all;
  each_visible(window_->contentItem(), [&](QQuickItem* item) { all.push_back(item); });
  return all;
}

void ShownWindow::tap(const QString& name) {
  auto* item = find(name);
  if (!item)
    throw std::runtime_error("nothing is called " + name.toStdString());
  tap(item);
}

namespace {

/// A person scrolls until the thing is in sight.
void bring_in_sight(QQuickItem* item) {
  for (auto* around = item->parentItem(); around != nullptr; around = around->parentItem()) {
    if (!around->inherits("QQuickFlickable"))
      continue;
    const double top = item->mapToItem(around, {0, 0}).y();
    const double room = around->height();
    if (top >= 0 && top + item->height() <= room)
      continue;
    const double wanted =
        around->property("contentY").toDouble() + top - std::max(0.0, (room - item->height()) / 2);
    const double least = around->property("originY").toDouble(); // a list's head lies above 0
    const double most = least + std::max(0.0, around->property("contentHeight").toDouble() - room);
    around->setProperty("contentY", std::clamp(wanted, least, most));
  }
}

} // namespace

void ShownWindow::tap(QQuickItem* item) {
  bring_in_sight(item);
  const auto middle = item->mapToScene({item->width() / 2, item->height() / 2}).toPoint();
  QTest::mouseClick(window_, Qt::LeftButton, Qt::NoModifier, middle);
  settle();
}

void ShownWindow::scan(const QString& text) {
  // The keys say when they were pressed, so that a busy machine is no slow scanner.
  constexpr std::uint64_t between_keys = 8;
  static std::uint64_t pressed = 1'000'000'000;
  pressed += 10'000;
  const auto send = [&](int key, const QString& letter) {
    pressed += between_keys;
    for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
      QKeyEvent event(type, key, Qt::NoModifier, letter);
      event.setTimestamp(pressed);
      QCoreApplication::sendEvent(window_, &event);
    }
  };
  for (const auto character : text)
    send(character.toUpper().unicode(), QString(character));
  send(Qt::Key_Return, QStringLiteral("\r"));
  settle();
}

void ShownWindow::type(const QString& text) {
  constexpr int between_letters = 60; // ms; a hand scanner's come closer than 35
  for (const auto character : text) {
    QTest::keyClick(window_, character.toLatin1());
    QTest::qWait(between_letters);
  }
}

void ShownWindow::press(Qt::Key key) {
  QTest::keyClick(window_, key);
  settle();
}

void ShownWindow::resize(QSize size) {
  window_->resize(size);
  settle();
}

void ShownWindow::settle() {
  QTest::qWait(60);
  if (Aside::any_running() && QTest::qWaitFor([] { return !Aside::any_running(); }, 60'000))
    QTest::qWait(60);
}

void ShownWindow::set(const char* property, const QVariant& value) {
  window_->setProperty(property, value);
  settle();
}

const work::LotLine& ShownWindow::lot_with(Kind kind, book::State state) {
  for (const auto& line : session_.standing().lots)
    if (line.lot.code.kind() == kind && line.on_hand.contains(state))
      return line;
  throw std::runtime_error("the demo has no such lot");
}

} // namespace coneline::window
