// SPDX-License-Identifier: GPL-3.0-or-later
// What it plugs into: an outlet of the building, or by hand what is known or seen of one. "Don't know" is an answer
// everywhere.
#pragma once

#include "desk/input_editor.h"

class QListWidget;

namespace cordreach::app {

class FacePicker;

class OutletEditor : public InputEditor {
  Q_OBJECT

 public:
  explicit OutletEditor(CordModel& model, QWidget* parent = nullptr);
  void begin(const QString& typed) override;
  void refresh() override;

 protected:
  void rename() override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fillList();
  void chosen(int row);
  void readHand();

  QLineEdit* m_find;
  QListWidget* m_list;
  ChoiceBox* m_breaker;
  FacePicker* m_face;
  ChoiceBox* m_colour;
  TickBox* m_device;
  QLineEdit* m_run;
  ChoiceBox* m_size;
  QLabel* m_fault;
};

}  // namespace cordreach::app
