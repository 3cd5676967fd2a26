// SPDX-License-Identifier: GPL-3.0-or-later
// A switch with its words beside it, which wrap and are never cut short.
#pragma once

#include <QCheckBox>

namespace cordreach::app {

class WhatIfSwitch : public QCheckBox {
  Q_OBJECT

 public:
  using QCheckBox::QCheckBox;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  [[nodiscard]] bool hitButton(const QPoint& at) const override { return rect().contains(at); }
};

}  // namespace cordreach::app
