// SPDX-License-Identifier: GPL-3.0-or-later
// The lesson in words: which one, what to watch for, its steps, a question, what it shows. A step chosen sets the clock
// and the two sides. Without an answer the question shows no result.
#pragma once

#include <QWidget>
#include <vector>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

class QAbstractButton;
class QLabel;
class QVBoxLayout;

namespace cordreach::app {

class ChoiceBox;
class LinkButton;

class LessonPanel : public QWidget {
  Q_OBJECT

 public:
  LessonPanel(HeatModel& model, const text::Phrasebook& book, QWidget* parent = nullptr);

  // Says which sentence stands against a file; an opened lesson joins the list.
  [[nodiscard]] base::Result<base::Done> openFile(const QString& path);
  // The chosen lesson in the present words.
  [[nodiscard]] planning::Lesson worded() const;
  // That one of the list.
  void openAt(std::size_t lesson);
  [[nodiscard]] ChoiceBox* lessons() const { return m_lessons; }
  [[nodiscard]] const std::vector<LinkButton*>& steps() const { return m_steps; }
  [[nodiscard]] const std::vector<QAbstractButton*>& answers() const { return m_answers; }
  [[nodiscard]] QLabel* result() const { return m_result; }

 signals:
  void refused(const QString& sentence);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void fill();
  void build();
  QLabel* addLabel(const QString& words, bool bold);
  void addSteps();
  void addQuestion();
  void takeStep(const planning::LessonStep& step);
  void answer(const planning::LessonAnswer& given);
  void choose(int index);
  void askForFile();

  HeatModel& m_model;
  const text::Phrasebook& m_book;
  std::vector<planning::Lesson> m_shelf;
  std::size_t m_chosen = 0;
  QVBoxLayout* m_rows;
  ChoiceBox* m_lessons;
  QWidget* m_body = nullptr;
  std::vector<LinkButton*> m_steps;
  std::vector<QAbstractButton*> m_answers;
  QLabel* m_result = nullptr;
  std::optional<planning::LessonAnswer> m_given;
};

}  // namespace cordreach::app
