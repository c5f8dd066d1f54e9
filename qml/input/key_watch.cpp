// SPDX-License-Identifier: GPL-3.0-or-later
#include "key_watch.h"

#include <QCoreApplication>

#include <algorithm>

namespace coneline::window {

namespace {

bool ends_a_scan(int key) {
  return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab;
}

bool is_shift(int key) {
  return key == Qt::Key_Shift || key == Qt::Key_CapsLock;
}

} // namespace

KeyWatch::KeyWatch(QObject* parent) : QObject(parent) {
  clock_.start();
  rest_.setSingleShot(true);
  rest_.setTimerType(Qt::PreciseTimer);
  rest_.setInterval(KeyBurst::gap);
  connect(&rest_, &QTimer::timeout, this, &KeyWatch::rested);
  QCoreApplication::instance()->installEventFilter(this);
}

KeyWatch::~KeyWatch() = default;

bool KeyWatch::eventFilter(QObject* object, QEvent* event) {
  if (letting_go_ || !object->isWindowType())
    return false;
  if (event->type() == QEvent::KeyPress)
    return pressed(static_cast<QWindow*>(object), *static_cast<QKeyEvent*>(event));
  if (event->type() == QEvent::KeyRelease)
    return released(*static_cast<QKeyEvent*>(event));
  if (event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin)
    follow(burst_.other()); // what was typed before a tap comes before it
  return false;
}

void KeyWatch::rested() {
  // The window may have been busy for the whole gap, with the rest of a scan waiting behind it.
  if (!looked_again_) {
    looked_again_ = true;
    rest_.start(0);
    return;
  }
  follow(burst_.rest());
}

KeyBurst::Moment KeyWatch::moment_of(const QKeyEvent& key) const {
  return key.timestamp() > 0 ? KeyBurst::Moment(key.timestamp()) : now();
}

bool KeyWatch::pressed(QWindow* window, const QKeyEvent& key) {
  if (is_shift(key.key()))
    return false;
  const auto other_modifiers =
      key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
  if (other_modifiers || key.isAutoRepeat())
    return follow(burst_.other());
  if (ends_a_scan(key.key())) {
    const bool taken = follow(burst_.end(moment_of(key)));
    if (taken)
      swallowed_.push_back(key.key());
    return taken;
  }
  if (key.text().isEmpty() || !key.text().front().isPrint())
    return follow(burst_.other());
  follow(burst_.letter(key.text(), moment_of(key)));
  window_ = window;
  held_.push_back({std::unique_ptr<QKeyEvent>(key.clone()), false});
  looked_again_ = false;
  rest_.start(KeyBurst::gap);
  return true;
}

bool KeyWatch::released(const QKeyEvent& key) {
  if (key.isAutoRepeat())
    return false;
  for (auto& each : held_)
    if (each.press->key() == key.key() && !each.released) {
      each.released = true;
      return true;
    }
  const auto found = std::ranges::find(swallowed_, key.key());
  if (found == swallowed_.end())
    return false;
  swallowed_.erase(found);
  return true;
}

bool KeyWatch::follow(const KeyBurst::Verdict& verdict) {
  if (verdict.release)
    let_go();
  if (verdict.scan) {
    for (const auto& each : held_)
      if (!each.released)
        swallowed_.push_back(each.press->key());
    held_.clear();
    take(*verdict.scan);
  }
  if (!burst_.holds())
    rest_.stop();
  return verdict.hold;
}

void KeyWatch::let_go() {
  const auto held = std::exchange(held_, {});
  letting_go_ = true;
  for (const auto& each : held) {
    if (!window_)
      break;
    QCoreApplication::sendEvent(window_, each.press.get());
    if (each.released && window_) {
      QKeyEvent release(QEvent::KeyRelease, each.press->key(), each.press->modifiers(),
                        each.press->text());
      QCoreApplication::sendEvent(window_, &release);
    }
  }
  letting_go_ = false;
}

void KeyWatch::take(const QString& raw) {
  const auto scan = work::scan_text(raw.toStdString(), prefix_.toStdString());
  const auto text = QString::fromStdString(scan.text);
  if (repeated_.is_new(scan.text, now()))
    emit scanned(text, QString::fromStdString(scan.note));
  else
    emit again(text);
}

} // namespace coneline::window
