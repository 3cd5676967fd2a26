// SPDX-License-Identifier: GPL-3.0-or-later
// A button that looks like a link: underlined words that wrap and are never cut short, with a focus ring.
#pragma once

#include <QAbstractButton>

namespace cordreach::app {

class LinkButton : public QAbstractButton {
  Q_OBJECT

 public:
  explicit LinkButton(const QString& text, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  [[nodiscard]] QFont linkFont() const;
  [[nodiscard]] QRect textRect(int width) const;
};

}  // namespace cordreach::app
