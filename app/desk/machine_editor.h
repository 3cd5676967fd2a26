// SPDX-License-Identifier: GPL-3.0-or-later
// Which machine: one of the building, a common kind, or what its plate says.
#pragma once

#include "desk/input_editor.h"

class QListWidget;

namespace cordreach::app {

class TickBox;

class MachineEditor : public InputEditor {
  Q_OBJECT

 public:
  explicit MachineEditor(CordModel& model, QWidget* parent = nullptr);
  void begin(const QString& typed) override;
  void refresh() override;

 protected:
  void rename() override;

 private:
  void fillList();
  void chosen(int row);
  void readPlate();

  QListWidget* m_list;
  QLineEdit* m_amps;
  ChoiceBox* m_class;
  ChoiceBox* m_size;
  QLineEdit* m_length;
  TickBox* m_wet;
  QLabel* m_fault;
};

}  // namespace cordreach::app
