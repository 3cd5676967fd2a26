// SPDX-License-Identifier: GPL-3.0-or-later
// A button as wide as there is room, whose words wrap where they are longer than that.
#pragma once

#include <QPushButton>

namespace cordreach::app {

class AnswerButton : public QPushButton {
  Q_OBJECT

 public:
  explicit AnswerButton(const QString& text, QWidget* parent = nullptr);
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace cordreach::app
