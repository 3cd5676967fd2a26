// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/question_row.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QTimer>
#include <algorithm>

#include "desk/cord_words.h"
#include "desk/cords_editor.h"
#include "desk/distance_editor.h"
#include "desk/machine_editor.h"
#include "desk/outlet_editor.h"
#include "desk/question_input.h"
#include "look/look.h"
#include "panels/flow_row.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr std::array kAsks = {Ask::Machine, Ask::Distance, Ask::Outlet, Ask::Cords};
constexpr std::array kNames = {"machine", "distance", "outlet", "cords"};
constexpr int kMargin = 24;
constexpr int kEditorWidth = 430;

std::size_t indexOf(Ask ask) { return static_cast<std::size_t>(ask); }

// Stands for an input in the sentence: a letter that no language writes.
QChar markOf(std::size_t ask) { return QChar(static_cast<char16_t>(0xE000 + ask)); }

QString sentenceOfQuestion(const text::Phrasebook& book) {
  base::Arguments arguments;
  for (std::size_t i = 0; i < kNames.size(); ++i) {
    arguments.push_back({kNames[i], QString(markOf(i)).toStdString()});
  }
  return say(book, "desk.question", arguments);
}

}  // namespace

QuestionRow::QuestionRow(CordModel& model, QWidget* place)
    : QWidget(place), m_model(model), m_place(place), m_line(new QWidget(this)) {
  for (const Ask ask : kAsks) {
    auto* input = new QuestionInput(m_line);
    m_inputs[indexOf(ask)] = input;
    connect(input, &QuestionInput::opened, this, [this, ask](const QString& typed) { open(ask, typed); });
  }
  m_editors = {new MachineEditor(model, place), new DistanceEditor(model, place), new OutletEditor(model, place),
               new CordsEditor(model, place)};
  for (InputEditor* editor : m_editors) connect(editor, &InputEditor::done, this, [this] { close(true); });
  auto* around = new QHBoxLayout(this);
  around->setContentsMargins(kMargin - 4, 10, kMargin, 10);
  around->addWidget(m_line);
  m_line->setLayout(new FlowRow(2));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  compose();
  connect(&model, &CordModel::inputsChanged, this, &QuestionRow::refresh);
  connect(qApp, &QApplication::focusChanged, this, [this](const QWidget*, const QWidget* now) { focusMoved(now); });
}

QuestionInput* QuestionRow::input(Ask ask) const { return m_inputs[indexOf(ask)]; }

InputEditor* QuestionRow::editor(Ask ask) const { return m_editors[indexOf(ask)]; }

// Words and inputs in the order of the present language.
void QuestionRow::compose() {
  while (QLayoutItem* item = m_line->layout()->takeAt(0)) delete item;
  for (QLabel* label : m_words) label->deleteLater();
  m_words.clear();
  const auto addWords = [this](const QString& words) {
    for (const QString& word : words.split(' ', Qt::SkipEmptyParts)) {
      auto* label = new QLabel(word, m_line);
      label->setFont(look::font(look::Type::Head));
      label->setMinimumHeight(m_inputs.front()->sizeHint().height());
      label->setContentsMargins(2, 0, 2, 0);
      m_words.push_back(label);
      m_line->layout()->addWidget(label);
      label->show();
    }
  };
  const QString sentence = sentenceOfQuestion(m_model.book());
  QString words;
  QWidget* before = nullptr;
  for (const QChar letter : sentence) {
    const int ask = letter.unicode() - 0xE000;
    if (ask < 0 || ask >= static_cast<int>(m_inputs.size())) {
      words += letter;
      continue;
    }
    addWords(words);
    words.clear();
    QuestionInput* input = m_inputs[static_cast<std::size_t>(ask)];
    m_line->layout()->addWidget(input);
    if (before != nullptr) setTabOrder(before, input);
    before = input;
  }
  addWords(words);
  refresh();
}

void QuestionRow::refresh() {
  const std::array<QString, 4> values = {machineText(m_model), distanceText(m_model), outletText(m_model),
                                         cordsText(m_model)};
  for (std::size_t i = 0; i < values.size(); ++i) {
    m_inputs[i]->setValue(say(m_model.book(), std::string("desk.ask.") + kNames[i]), values[i]);
  }
  if (m_open) editor(*m_open)->refresh();
  if (m_open) placeEditor();
}

void QuestionRow::open(Ask ask, const QString& typed) {
  const bool again = m_open == ask;
  close(again);
  if (again) return;
  m_open = ask;
  InputEditor* editor = this->editor(ask);
  editor->refresh();
  editor->show();
  placeEditor();
  // Shown for the first time its controls take on their style only now, and with it their heights.
  QTimer::singleShot(0, this, &QuestionRow::placeEditor);
  editor->raise();
  editor->begin(typed);
}

void QuestionRow::placeEditor() {
  if (!m_open) return;
  InputEditor* editor = this->editor(*m_open);
  const QuestionInput* under = input(*m_open);
  const int wide = std::min(look::scaled(kEditorWidth), m_place->width() - 2 * kMargin);
  const QPoint corner = under->mapTo(m_place, QPoint(0, under->height() + 4));
  const int left = std::clamp(corner.x(), kMargin, std::max(kMargin, m_place->width() - kMargin - wide));
  const int wanted = std::max(editor->sizeHint().height(), editor->heightForWidth(wide));
  const int room = m_place->height() - corner.y() - 4;
  editor->setGeometry(left, corner.y(), wide, std::min(wanted, std::max(room, look::scaled(120))));
}

void QuestionRow::close(bool backToInput) {
  if (!m_open) return;
  const Ask was = *m_open;
  m_open.reset();
  editor(was)->hide();
  if (backToInput) input(was)->setFocus(Qt::OtherFocusReason);
}

// A list that an editor has open is a window of its own and no leaving.
void QuestionRow::focusMoved(const QWidget* now) {
  if (!m_open || now == nullptr) return;
  const InputEditor* editor = this->editor(*m_open);
  const bool inside =
      editor == now || editor->isAncestorOf(now) || now == input(*m_open) || now->window() != m_place->window();
  if (!inside) close(false);
}

void QuestionRow::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), look::tokens().well);
}

void QuestionRow::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) compose();
}

}  // namespace cordreach::app
