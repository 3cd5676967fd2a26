// SPDX-License-Identifier: GPL-3.0-or-later
// The places as index tabs cut from the sheet: the current one is one with the sheet below it.
#pragma once

#include <QTabBar>

namespace cordreach::app {

class PlaceTabs : public QTabBar {
  Q_OBJECT

 public:
  explicit PlaceTabs(QWidget* parent = nullptr);

 protected:
  [[nodiscard]] QSize tabSizeHint(int index) const override;
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace cordreach::app
