// SPDX-License-Identifier: GPL-3.0-or-later
// Which circuit is painted over outlets, how that is known and by whom; over the plan while that tool is in use.
#pragma once

#include <QWidget>

class QLabel;

namespace cordreach::app {

class ChoiceBox;
class FoundFields;
class MapCanvas;

class CircuitBar : public QWidget {
  Q_OBJECT

 public:
  // Shows itself while the canvas has that tool.
  CircuitBar(MapCanvas& canvas, QWidget* parent);

  [[nodiscard]] ChoiceBox* circuit() const { return m_circuit; }
  [[nodiscard]] FoundFields* found() const { return m_found; }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void follow();
  void fill();
  void take(int index);
  void reword();

  MapCanvas& m_canvas;
  QLabel* m_word;
  ChoiceBox* m_circuit;
  FoundFields* m_found;
};

}  // namespace cordreach::app
