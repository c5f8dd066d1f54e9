// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// Watches the keys of the whole window for a hand scanner, wherever the keyboard is: no letter of a
// scan gets into a form, no button takes its Return. A person's keys go on after a gap of 35 ms,
// which nobody feels. What one does with Ctrl, Alt or the arrows is never held.
//
// What counts is when a key was pressed, not when the window came to it: a window that is busy
// drawing in the middle of a scan neither cuts the scan in two nor lets its letters go.
//
// One scanned text that comes again within a moment is one scan.

#include "core/work/scan_text.h"
#include "key_burst.h"

#include <QElapsedTimer>
#include <QKeyEvent>
#include <QObject>
#include <QPointer>
#include <QTimer>
#include <QWindow>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <vector>

namespace coneline::window {

class KeyWatch : public QObject {
  Q_OBJECT
  QML_ELEMENT
  /// What the scanner is set to send first; may be missing in a scan.
  Q_PROPERTY(QString prefix MEMBER prefix_ NOTIFY prefixChanged)

 public:
  explicit KeyWatch(QObject* parent = nullptr);
  ~KeyWatch() override;
  bool eventFilter(QObject* object, QEvent* event) override;

 signals:
  /// The label's text, and what is odd about the scanner (usually nothing).
  void scanned(const QString& text, const QString& note);
  /// The same label again, within a moment.
  void again(const QString& text);
  void prefixChanged();

 private:
  struct Held {
    std::unique_ptr<QKeyEvent> press;
    bool released = false;
  };
  bool pressed(QWindow* window, const QKeyEvent& key);
  bool released(const QKeyEvent& key);
  /// Does what the verdict says; true where the key goes no further.
  bool follow(const KeyBurst::Verdict& verdict);
  void let_go();
  void take(const QString& raw);
  void rested();
  /// When the key was pressed; now, where the system does not say.
  [[nodiscard]] KeyBurst::Moment moment_of(const QKeyEvent& key) const;
  [[nodiscard]] KeyBurst::Moment now() const { return KeyBurst::Moment(clock_.elapsed()); }

  KeyBurst burst_;
  work::RepeatedScan repeated_{std::chrono::milliseconds(1500)};
  QElapsedTimer clock_;
  QTimer rest_;
  bool looked_again_ = false; ///< after the gap, keys that wait in the queue had their turn
  QPointer<QWindow> window_;
  std::vector<Held> held_;
  std::vector<int> swallowed_; ///< keys of a scan whose release is still to come
  bool letting_go_ = false;
  QString prefix_;
};

} // namespace coneline::window
