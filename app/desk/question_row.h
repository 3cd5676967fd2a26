// SPDX-License-Identifier: GPL-3.0-or-later
// The question: one sentence with its four inputs in it, in whatever order the language has them. An editor opens under
// its input; opening another closes it.
#pragma once

#include <QWidget>
#include <array>
#include <vector>

#include "desk/cord_model.h"

class QLabel;

namespace cordreach::app {

class FlowRow;
class InputEditor;
class QuestionInput;

enum class Ask { Machine, Distance, Outlet, Cords };

class QuestionRow : public QWidget {
  Q_OBJECT

 public:
  // Editors lie over `place`.
  QuestionRow(CordModel& model, QWidget* place);

  [[nodiscard]] QuestionInput* input(Ask ask) const;
  [[nodiscard]] InputEditor* editor(Ask ask) const;
  void open(Ask ask, const QString& typed);
  void close(bool backToInput);
  // Keeps the open editor under its input.
  void placeEditor();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void compose();
  void refresh();
  void focusMoved(const QWidget* now);

  CordModel& m_model;
  QWidget* m_place;
  QWidget* m_line;  // holds the sentence
  std::array<QuestionInput*, 4> m_inputs{};
  std::array<InputEditor*, 4> m_editors{};
  std::vector<QLabel*> m_words;
  std::optional<Ask> m_open;
};

}  // namespace cordreach::app
