// SPDX-License-Identifier: GPL-3.0-or-later
// How far the machine must reach: typed, drawn along a scale, paced, counted in tiles, or followed along the plan. The
// slack that is added stands under it.
#pragma once

#include "desk/input_editor.h"

class QPushButton;
class QSlider;

namespace cordreach::app {

class DistanceEditor : public InputEditor {
  Q_OBJECT

 public:
  explicit DistanceEditor(CordModel& model, QWidget* parent = nullptr);
  void begin(const QString& typed) override;
  void refresh() override;

 protected:
  void rename() override;

 private:
  void read(const QString& typed);
  void drawn(int value);
  void measured(int index);
  void follow();
  [[nodiscard]] QString shown() const;

  QLineEdit* m_line;
  ChoiceBox* m_measure;
  QSlider* m_scale;
  QPushButton* m_plan;
  QLabel* m_walk;
  QLabel* m_slack;
  QLabel* m_fault;
};

}  // namespace cordreach::app
