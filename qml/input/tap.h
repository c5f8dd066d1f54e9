// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
// What is tapped: by a finger, the mouse, Space, Return, or through a screen reader. A tap leaves
// the keyboard where it is; Tab comes here.
//
// The window's own, since the controls that Qt brings are a library of sixty types, and reading it
// took a twelfth part of a start.

#include <QQuickItem>

namespace coneline::window {

class Tap : public QQuickItem {
  Q_OBJECT
  QML_ELEMENT
  /// Lies behind everything else and fills it.
  Q_PROPERTY(QQuickItem* background READ background WRITE set_background NOTIFY backgroundChanged)
  /// Fills it but for the paddings.
  Q_PROPERTY(QQuickItem* contentItem READ content WRITE set_content NOTIFY contentItemChanged)
  Q_PROPERTY(qreal leftPadding READ left_padding WRITE set_left_padding NOTIFY paddingChanged)
  Q_PROPERTY(qreal rightPadding READ right_padding WRITE set_right_padding NOTIFY paddingChanged)
  /// A finger or a key is on it, and lets go of it here or elsewhere.
  Q_PROPERTY(bool down READ is_down NOTIFY downChanged)
  /// How far inside its edges the ring lies that shows where the keyboard is; outside where
  /// negative.
  Q_PROPERTY(qreal ringMargin MEMBER ring_margin_ NOTIFY ringMarginChanged)

 public:
  explicit Tap(QQuickItem* parent = nullptr);

  [[nodiscard]] QQuickItem* background() const { return background_; }
  void set_background(QQuickItem* item);
  [[nodiscard]] QQuickItem* content() const { return content_; }
  void set_content(QQuickItem* item);
  [[nodiscard]] qreal left_padding() const { return left_padding_; }
  void set_left_padding(qreal padding);
  [[nodiscard]] qreal right_padding() const { return right_padding_; }
  void set_right_padding(qreal padding);
  [[nodiscard]] bool is_down() const { return down_; }

  /// What a screen reader calls; Qt looks it up by this name.
  Q_INVOKABLE void accessiblePressAction();

 signals:
  void clicked();
  void backgroundChanged();
  void contentItemChanged();
  void paddingChanged();
  void downChanged();
  void ringMarginChanged();

 protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseUngrabEvent() override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void geometryChange(const QRectF& now, const QRectF& before) override;
  void itemChange(ItemChange change, const ItemChangeData& data) override;

 private:
  void fit();
  void set_down(bool down);
  void show_ring(bool shows);
  [[nodiscard]] QQuickItem* new_ring();

  QQuickItem* background_ = nullptr;
  QQuickItem* content_ = nullptr;
  qreal left_padding_ = 0;
  qreal right_padding_ = 0;
  bool down_ = false;
  bool key_down_ = false; ///< Space, which acts when it is let go of
  bool by_key_ = false;   ///< how the keyboard came here, kept while another window is worked in
  QQuickItem* ring_ = nullptr; ///< made when the keyboard first comes here
  qreal ring_margin_ = -3;
};

} // namespace coneline::window
