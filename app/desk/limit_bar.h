// SPDX-License-Identifier: GPL-3.0-or-later
// How much of one limit is used: name, a bar up to the limit's tick, the value. Past the limit the bar crosses the tick
// and is hatched, so that it is not told by colour alone.
#pragma once

#include <QWidget>

#include "desk/cell_words.h"

namespace cordreach::app {

class LimitBar : public QWidget {
  Q_OBJECT

 public:
  using QWidget::QWidget;
  void setWords(const LimitWords& words, const QString& spoken);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] int textHeight(int width, const QString& text) const;
  LimitWords m_words;
};

}  // namespace cordreach::app
