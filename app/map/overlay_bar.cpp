// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/overlay_bar.h"

#include <QAccessible>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

#include "look/look.h"
#include "map/map_canvas.h"
#include "panels/link_button.h"
#include "panels/plain_controls.h"
#include "shell/say.h"
#include "site/natural_order.h"

namespace cordreach::app {

namespace {
constexpr int kFewLetters = 18;
}

OverlayBar::OverlayBar(MapCanvas& canvas, QWidget* parent)
    : QWidget(parent), m_canvas(canvas), m_row(new QBoxLayout(QBoxLayout::LeftToRight)), m_said(new QLabel(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addLayout(m_row);
  column->addWidget(m_said);
  m_row->setSpacing(8);
  m_row->addStretch(1);
  m_said->setTextFormat(Qt::PlainText);
  m_said->setWordWrap(true);
  hide();
}

void OverlayBar::setInFront(bool inFront) {
  if (inFront == m_isInFront) return;
  m_isInFront = inFront;
  setVisible(inFront);
  if (inFront) {
    reword();
  } else {
    withdraw();
  }
}

QString OverlayBar::said() const { return m_said->text(); }

Session& OverlayBar::session() const { return m_canvas.session(); }
const text::Phrasebook& OverlayBar::book() const { return m_canvas.session().book; }

void OverlayBar::reword() {
  for (const Worded& one : m_worded) {
    const QString words = say(book(), one.code);
    if (auto* label = qobject_cast<QLabel*>(one.widget)) {
      label->setText(words);
      if (label->buddy() != nullptr) label->buddy()->setAccessibleName(words);
    }
    if (auto* link = qobject_cast<LinkButton*>(one.widget)) link->setText(words);
  }
  m_said->setFont(look::font(look::Type::Caption));
  if (!m_isInFront) return;
  forget();
  refresh();
}

ChoiceBox* OverlayBar::addChoice(const char* code) {
  auto* word = new QLabel(this);
  word->setTextFormat(Qt::PlainText);
  auto* box = new ChoiceBox(this);
  box->setMinimumContentsLength(kFewLetters);
  word->setBuddy(box);
  m_row->insertWidget(m_row->count() - 1, word);
  m_row->insertWidget(m_row->count() - 1, box);
  m_worded.push_back({word, code});
  connect(box, &QComboBox::activated, this, [this] { refresh(); });
  return box;
}

void OverlayBar::addLink(const char* code, const std::function<void()>& act) {
  auto* link = new LinkButton({}, this);
  m_row->insertWidget(m_row->count() - 1, link);
  m_worded.push_back({link, code});
  connect(link, &LinkButton::clicked, this, act);
}

void OverlayBar::tell(const QString& sentence) {
  if (sentence == m_said->text()) return;
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
  setAccessibleDescription(sentence);
}

void OverlayBar::fill(ChoiceBox* box, const std::vector<FieldChoice>& choices) {
  const QSignalBlocker quiet(box);
  const QVariant before = box->currentData();
  box->clear();
  for (const FieldChoice& choice : choices) {
    box->addItem(QString::fromStdString(choice.text), QString::fromStdString(choice.key));
  }
  box->setCurrentIndex(std::max(box->findData(before), choices.empty() ? -1 : 0));
}

void OverlayBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const auto type = event->type();
  if (type == QEvent::LanguageChange || type == QEvent::FontChange) reword();
}

std::vector<FieldChoice> machinesInService(const site::Site& site) {
  std::vector<FieldChoice> choices;
  for (const site::Machine& machine : site.all<site::Machine>()) {
    if (machine.outOfService || machine.inlets.empty()) continue;
    choices.push_back({machine.id.text(), machine.name.empty() ? machine.id.text() : machine.name});
  }
  std::ranges::stable_sort(
      choices, [](const FieldChoice& a, const FieldChoice& b) { return site::comesBefore(a.text, b.text); });
  return choices;
}

}  // namespace cordreach::app
