// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/circuit_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <algorithm>

#include "look/look.h"
#include "map/map_canvas.h"
#include "panels/field_kinds.h"
#include "panels/found_fields.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kFewLetters = 14;
const QString kUnknownKey = QStringLiteral("?");

}  // namespace

CircuitBar::CircuitBar(MapCanvas& canvas, QWidget* parent)
    : QWidget(parent),
      m_canvas(canvas),
      m_word(new QLabel(this)),
      m_circuit(new ChoiceBox(this)),
      m_found(new FoundFields(canvas.brush().surveyor, canvas.session().book, this)) {
  m_circuit->setMinimumContentsLength(kFewLetters);
  m_word->setBuddy(m_circuit);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(6);
  row->addWidget(m_word);
  row->addWidget(m_circuit);
  row->addSpacing(10);
  row->addWidget(m_found);
  row->addStretch(1);
  connect(m_circuit, &QComboBox::activated, this, &CircuitBar::take);
  connect(&canvas, &MapCanvas::toolChanged, this, &CircuitBar::follow);
  connect(&canvas.session().document, &Document::changed, this, [this] {
    if (isVisible()) fill();
  });
  reword();
  hide();
}

void CircuitBar::reword() {
  m_word->setText(say(m_canvas.session().book, "field.circuit"));
  m_circuit->setAccessibleName(m_word->text());
  m_found->reword();
  fill();
}

// A circuit that is chosen already is what somebody wants to paint with.
void CircuitBar::follow() {
  const bool wanted = m_canvas.tool() == ToolKind::Circuit;
  if (wanted) {
    const auto single = m_canvas.session().selection.single();
    CircuitBrush& brush = m_canvas.brush();
    if (single && single->kind == rules::SubjectKind::Circuit) {
      brush.isChosen = true;
      brush.circuit = site::CircuitId(single->id);
    }
    fill();
  }
  setVisible(wanted);
}

void CircuitBar::fill() {
  const Session& session = m_canvas.session();
  const QSignalBlocker quiet(m_circuit);
  m_circuit->clear();
  m_circuit->addItem(say(session.book, "map.circuit.none"), QString());
  m_circuit->addItem(say(session.book, "panel.dont_know"), kUnknownKey);
  for (const FieldChoice& choice : circuitChoices({session.document.site(), session.book})) {
    m_circuit->addItem(QString::fromStdString(choice.text), QString::fromStdString(choice.key));
  }
  const CircuitBrush& brush = m_canvas.brush();
  const QString key = brush.circuit    ? QString::fromStdString(brush.circuit->text())
                      : brush.isChosen ? kUnknownKey
                                       : QString();
  m_circuit->setCurrentIndex(std::max(m_circuit->findData(key), 0));
}

void CircuitBar::take(int index) {
  const QString key = m_circuit->itemData(index).toString();
  CircuitBrush& brush = m_canvas.brush();
  brush.isChosen = !key.isEmpty();
  brush.circuit.reset();
  if (brush.isChosen && key != kUnknownKey) brush.circuit = site::CircuitId(key.toStdString());
  m_canvas.setFocus();
}

void CircuitBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const auto type = event->type();
  if (type == QEvent::LanguageChange || type == QEvent::FontChange) reword();
}

}  // namespace cordreach::app
