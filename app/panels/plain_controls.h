// SPDX-License-Identifier: GPL-3.0-or-later
// A tick box and a list whose marks are drawn in our own ink, large enough for the present text size and dark enough
// for either ground.
#pragma once

#include <QCheckBox>
#include <QComboBox>

namespace cordreach::app {

class TickBox : public QCheckBox {
  Q_OBJECT

 public:
  using QCheckBox::QCheckBox;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  [[nodiscard]] bool hitButton(const QPoint& at) const override { return rect().contains(at); }
};

// Turns of the wheel over it scroll what it stands in: a list that nobody opened must not change.
class ChoiceBox : public QComboBox {
  Q_OBJECT

 public:
  explicit ChoiceBox(QWidget* parent = nullptr);
  void showPopup() override;  // as wide as its words

 protected:
  void paintEvent(QPaintEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
};

}  // namespace cordreach::app
