// SPDX-License-Identifier: GPL-3.0-or-later
// The only filled button in the window: the change that mends the verdict. Its text wraps into two lines and is never
// cut short.
#pragma once

#include <QAbstractButton>

namespace cordreach::app {

class RemedyButton : public QAbstractButton {
  Q_OBJECT

 public:
  explicit RemedyButton(QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 signals:
  // It has focus or the pointer: what it would do is shown on the map.
  void previewed(bool on);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  [[nodiscard]] QFont fontFor(int width) const;
};

}  // namespace cordreach::app
