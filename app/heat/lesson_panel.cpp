// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/lesson_panel.h"

#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "heat/answer_button.h"
#include "heat/lesson_shelf.h"
#include "heat/lesson_words.h"
#include "io/lesson_file.h"
#include "look/look.h"
#include "panels/link_button.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

LessonPanel::LessonPanel(HeatModel& model, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(book), m_shelf(preparedLessons()), m_lessons(new ChoiceBox) {
  m_rows = new QVBoxLayout(this);
  m_rows->setContentsMargins(0, 0, 0, 0);
  m_rows->setSpacing(8);
  m_rows->addWidget(m_lessons);
  connect(m_lessons, &QComboBox::activated, this, &LessonPanel::choose);
  fill();
  build();
}

void LessonPanel::fill() {
  const QSignalBlocker quiet(m_lessons);
  m_lessons->clear();
  for (const planning::Lesson& lesson : m_shelf)
    m_lessons->addItem(QString::fromStdString(lessonText(m_book, lesson.title)));
  m_lessons->insertSeparator(m_lessons->count());
  m_lessons->addItem(say(m_book, "lesson.open"));
  m_lessons->setCurrentIndex(static_cast<int>(m_chosen));
  m_lessons->setAccessibleName(say(m_book, "lesson.choose.lesson"));
}

QLabel* LessonPanel::addLabel(const QString& words, bool bold) {
  auto* label = new QLabel(words, m_body);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setFont(look::font(bold ? look::Type::BodyBold : look::Type::Body));
  m_body->layout()->addWidget(label);
  return label;
}

void LessonPanel::build() {
  if (m_body != nullptr) {
    m_rows->removeWidget(m_body);
    m_body->hide();
    m_body->deleteLater();  // somebody may be telling each widget of a change
  }
  m_steps.clear();
  m_answers.clear();
  m_result = nullptr;
  m_body = new QWidget;
  auto* rows = new QVBoxLayout(m_body);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(8);
  m_rows->addWidget(m_body, 1);
  const planning::Lesson& lesson = m_model.lesson();
  addLabel(say(m_book, "lesson.watch_dont_try"), true);
  addLabel(say(m_book, "lesson.watch_for", {{"watch", lesson.watch}}), false);
  addSteps();
  if (lesson.question) addQuestion();
  addLabel(say(m_book, "lesson.shows", {{"shows", lesson.shows}}), false);
  rows->addStretch(1);
}

void LessonPanel::addSteps() {
  int number = 0;
  for (const planning::LessonStep& step : m_model.lesson().steps) {
    const base::Arguments arguments{{"n", std::to_string(++number)}, {"step", step.text}};
    auto* button = new LinkButton(say(m_book, "lesson.step", arguments), m_body);
    connect(button, &QAbstractButton::clicked, this, [this, step] { takeStep(step); });
    m_body->layout()->addWidget(button);
    m_steps.push_back(button);
  }
}

void LessonPanel::addQuestion() {
  const planning::LessonQuestion& question = *m_model.lesson().question;
  addLabel(QString::fromStdString(question.text), true);
  for (const planning::LessonAnswer& given : question.answers) {
    auto* button = new AnswerButton(QString::fromStdString(given.text), m_body);
    connect(button, &QPushButton::clicked, this, [this, given] { answer(given); });
    m_body->layout()->addWidget(button);
    m_answers.push_back(button);
  }
  m_result = addLabel({}, false);
  m_result->hide();
  if (m_given) answer(*m_given);
}

void LessonPanel::answer(const planning::LessonAnswer& given) {
  m_given = given;
  m_result->setText(say(m_book, given.right ? "lesson.answer.right" : "lesson.answer.wrong",
                        {{"because", m_model.lesson().question->because}}));
  m_result->show();
}

void LessonPanel::takeStep(const planning::LessonStep& step) {
  m_model.setPlaying(false);
  const std::vector<planning::LessonCase> sides = m_model.lesson().sides;
  if (step.a) m_model.setSide(0, sides.at(*step.a));
  if (step.b) m_model.setSide(1, sides.at(*step.b));
  if (step.at) m_model.setClock(*step.at);
}

void LessonPanel::choose(int index) {
  if (static_cast<std::size_t>(index) >= m_shelf.size()) {
    m_lessons->setCurrentIndex(static_cast<int>(m_chosen));
    return askForFile();
  }
  m_chosen = static_cast<std::size_t>(index);
  m_given.reset();
  m_model.open(worded());
  build();
}

void LessonPanel::openAt(std::size_t lesson) {
  m_lessons->setCurrentIndex(static_cast<int>(lesson));
  choose(m_lessons->currentIndex());
}

planning::Lesson LessonPanel::worded() const { return wordedLesson(m_book, m_shelf.at(m_chosen)); }

void LessonPanel::askForFile() {
  const QString path =
      QFileDialog::getOpenFileName(this, say(m_book, "lesson.open.title"), {}, say(m_book, "lesson.file_kind"));
  if (path.isEmpty()) return;
  const base::Result<base::Done> opened = openFile(path);
  if (!opened) {
    emit refused(QString::fromStdString(
                     text::errorSentenceIn(m_book, QFileInfo(path).fileName().toStdString(), opened.error())) +
                 '.');
  }
}

base::Result<base::Done> LessonPanel::openFile(const QString& path) {
  const base::Result<planning::Lesson> lesson = io::loadLesson(path.toStdString());
  if (!lesson) return lesson.error();
  m_shelf.push_back(lesson.value());
  m_chosen = m_shelf.size() - 1;
  fill();
  choose(static_cast<int>(m_chosen));
  return base::Done{};
}

void LessonPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) fill();
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) build();
}

}  // namespace cordreach::app
