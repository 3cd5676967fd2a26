// SPDX-License-Identifier: GPL-3.0-or-later
// Which cords there are: the building's cart, common stock, or the one in hand by what is printed on its jacket.
#pragma once

#include "desk/input_editor.h"

class QRadioButton;

namespace cordreach::app {

class CordsEditor : public InputEditor {
  Q_OBJECT

 public:
  explicit CordsEditor(CordModel& model, QWidget* parent = nullptr);
  void begin(const QString& typed) override;
  void refresh() override;

 protected:
  void rename() override;

 private:
  void pick(CordsBy by);
  void readJacket();

  std::vector<std::pair<QRadioButton*, CordsBy>> m_choices;
  QLineEdit* m_legend;
  QLineEdit* m_length;
  QLabel* m_fault;
};

}  // namespace cordreach::app
