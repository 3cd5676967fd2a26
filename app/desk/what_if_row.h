// SPDX-License-Identifier: GPL-3.0-or-later
// One switch for each thing that could be worse than planned.
#pragma once

#include <QWidget>
#include <vector>

#include "desk/cord_model.h"

class QLabel;

namespace cordreach::app {

class WhatIfSwitch;

class WhatIfRow : public QWidget {
  Q_OBJECT

 public:
  explicit WhatIfRow(CordModel& model, QWidget* parent = nullptr);
  // "coiled", "hot_day", "tired_breaker", "low_supply", "chained", "second_machine".
  [[nodiscard]] WhatIfSwitch* of(const std::string& name) const;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void rename();
  void refresh();

  CordModel& m_model;
  QLabel* m_head;
  std::vector<WhatIfSwitch*> m_switches;  // in the order of the table in the .cpp
};

}  // namespace cordreach::app
