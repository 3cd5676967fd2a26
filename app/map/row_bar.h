// SPDX-License-Identifier: GPL-3.0-or-later
// Spacing, numbers and receptacle of the outlets that the row tool places; over the plan while that tool is in use.
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace cordreach::app {

class ChoiceBox;
class MapCanvas;

class RowBar : public QWidget {
  Q_OBJECT

 public:
  RowBar(MapCanvas& canvas, QWidget* parent = nullptr);

  void reword();
  // What the tool and the floor say now.
  void refresh();
  [[nodiscard]] QLineEdit* spacing() const { return m_spacing; }
  [[nodiscard]] QLineEdit* label() const { return m_label; }

 private:
  void takeSpacing();
  void fillChoices();

  MapCanvas& m_canvas;
  QLabel* m_spacingWord;
  QLineEdit* m_spacing;
  QLabel* m_byWord;
  ChoiceBox* m_by;
  QLabel* m_labelWord;
  QLineEdit* m_label;
  QLabel* m_receptacleWord;
  ChoiceBox* m_receptacle;
};

}  // namespace cordreach::app
