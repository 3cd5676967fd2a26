// SPDX-License-Identifier: GPL-3.0-or-later
// A tick box drawn as a switch with its words beside it, which wrap and are never cut short.
#pragma once

#include "panels/plain_controls.h"

namespace cordreach::app {

class WhatIfSwitch : public TickBox {
  Q_OBJECT

 public:
  using TickBox::TickBox;
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace cordreach::app
