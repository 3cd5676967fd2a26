// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/input_editor.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>

#include "look/look.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr double kBorder = 1.5;
}

InputEditor::InputEditor(CordModel& model, QWidget* parent) : QFrame(parent), m_model(model) {
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  hide();
}

QLabel* InputEditor::addHeading(QGridLayout* grid, const char* code) {
  auto* label = new QLabel(this);
  label->setFont(look::font(look::Type::BodyBold));
  label->setWordWrap(true);
  grid->addWidget(label, grid->rowCount(), 0, 1, 2);
  m_labels.emplace_back(label, code);
  return label;
}

void InputEditor::addRow(QGridLayout* grid, const char* code, QWidget* control) {
  const int row = grid->rowCount();
  auto* label = new QLabel(this);
  label->setBuddy(control);
  label->setWordWrap(true);
  grid->addWidget(label, row, 0);
  grid->addWidget(control, row, 1);
  m_labels.emplace_back(label, code);
  m_named.emplace_back(control, code);
}

QLineEdit* InputEditor::addLine(QGridLayout* grid, const char* code) {
  auto* line = new QLineEdit(this);
  addRow(grid, code, line);
  return line;
}

ChoiceBox* InputEditor::addChoice(QGridLayout* grid, const char* code) {
  auto* choice = new ChoiceBox(this);
  addRow(grid, code, choice);
  return choice;
}

TickBox* InputEditor::addTick(QGridLayout* grid, const char* code) {
  auto* tick = new TickBox(this);
  addRow(grid, code, tick);
  return tick;
}

QLabel* InputEditor::addNote(QGridLayout* grid) {
  auto* note = new QLabel(this);
  note->setWordWrap(true);
  grid->addWidget(note, grid->rowCount(), 0, 1, 2);
  return note;
}

void InputEditor::showFault(QLabel* note, const QString& sentence) {
  note->setText(sentence);
  note->setVisible(!sentence.isEmpty());
  QPalette palette = note->palette();
  palette.setColor(QPalette::WindowText, look::severityColors(rules::Severity::Warning, look::tokens().dark).asText);
  note->setPalette(palette);
}

void InputEditor::put(QLineEdit* line, const QString& text) {
  if (!line->hasFocus() && line->text() != text) line->setText(text);
}

void InputEditor::rename() {
  for (const auto& [label, code] : m_labels) label->setText(say(book(), code));
  for (const auto& [widget, code] : m_named) widget->setAccessibleName(say(book(), code));
}

void InputEditor::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), look::tokens().room);
  painter.setPen(QPen(look::tokens().ink2, kBorder));
  painter.drawRect(QRectF(rect()).adjusted(kBorder / 2, kBorder / 2, -kBorder / 2, -kBorder / 2));
}

void InputEditor::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter) {
    emit done();
    return;
  }
  QFrame::keyPressEvent(event);
}

void InputEditor::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) {
    rename();
    refresh();
  }
}

}  // namespace cordreach::app
