// SPDX-License-Identifier: GPL-3.0-or-later
// Right of the curves: the breaker warming beside them, and the lesson, which scrolls. Where the column is low all of
// it scrolls as one, so that nothing is cut.
#pragma once

#include <QWidget>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace cordreach::app {

class LessonPanel;

class HeatColumn : public QWidget {
  Q_OBJECT

 public:
  HeatColumn(HeatModel& model, const text::Phrasebook& book, QWidget* parent = nullptr);

  [[nodiscard]] LessonPanel* lesson() const { return m_lesson; }
  // Stands above the breaker until it is taken elsewhere.
  void take(QWidget* view);
  void reword();

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void makeMeanwhile();

  HeatModel& m_model;
  const text::Phrasebook& m_book;
  QWidget* m_meanwhile;  // the figures and the breaker
  QVBoxLayout* m_meanwhileRows;
  QLabel* m_head;
  QLabel* m_says;
  LessonPanel* m_lesson;
  QScrollArea* m_scroll;
  QVBoxLayout* m_rows;
  QVBoxLayout* m_scrolled;
};

}  // namespace cordreach::app
