// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cords_editor.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>

#include "panels/field_text.h"
#include "shell/say.h"
#include "tables/cord_legend.h"

namespace cordreach::app {

namespace {

const char* codeOf(CordsBy by) {
  switch (by) {
    case CordsBy::Cart:
      return "desk.cords.choose.cart";
    case CordsBy::Stock:
      return "desk.cords.choose.stock";
    case CordsBy::Jacket:
      break;
  }
  return "desk.cords.choose.jacket";
}

}  // namespace

CordsEditor::CordsEditor(CordModel& model, QWidget* parent) : InputEditor(model, parent) {
  auto* grid = new QGridLayout(this);
  for (const CordsBy by : {CordsBy::Cart, CordsBy::Stock, CordsBy::Jacket}) {
    auto* choice = new QRadioButton(this);
    grid->addWidget(choice, grid->rowCount(), 0, 1, 2);
    m_choices.emplace_back(choice, by);
    connect(choice, &QRadioButton::clicked, this, [this, by] { pick(by); });
  }
  m_legend = addLine(grid, "desk.cords.legend");
  m_length = addLine(grid, "desk.cords.length");
  m_fault = addNote(grid);
  showFault(m_fault, {});
  rename();
  for (QLineEdit* line : {m_legend, m_length}) connect(line, &QLineEdit::textEdited, this, &CordsEditor::readJacket);
}

void CordsEditor::rename() {
  InputEditor::rename();
  for (const auto& [choice, by] : m_choices) choice->setText(say(book(), codeOf(by)));
  m_legend->setPlaceholderText(QStringLiteral("SJTW 12/3 60C 300V"));
}

void CordsEditor::begin(const QString& typed) {
  refresh();
  if (!typed.isEmpty()) {
    m_legend->setFocus(Qt::OtherFocusReason);
    m_legend->setText(typed);
    readJacket();
    return;
  }
  for (const auto& [choice, by] : m_choices) {
    if (choice->isChecked()) choice->setFocus(Qt::OtherFocusReason);
  }
}

void CordsEditor::refresh() {
  const CordInputs& inputs = model().inputs();
  quietly([&] {
    for (const auto& [choice, by] : m_choices) {
      choice->setChecked(by == inputs.cordsBy);
      choice->setEnabled(by != CordsBy::Cart || !model().site().all<site::Cord>().empty());
    }
    put(m_legend, QString::fromStdString(inputs.jacket.legend));
    put(m_length, QString::fromStdString(knownText(book(), inputs.jacket.length)));
  });
}

void CordsEditor::pick(CordsBy by) {
  if (isRefreshing()) return;
  if (by == CordsBy::Jacket) return readJacket();
  showFault(m_fault, {});
  model().change([&](CordInputs& inputs) { inputs.cordsBy = by; });
}

void CordsEditor::readJacket() {
  if (isRefreshing()) return;
  const std::string printed = tidied(m_legend->text().toStdString());
  const std::string typed = tidied(m_length->text().toStdString());
  site::CordMake make;
  make.legend = printed;
  const tables::CordLegend legend = tables::readLegend(printed);
  if (legend.type) make.type = *legend.type;
  if (legend.size) make.size = site::known(*legend.size);
  if (legend.conductors) make.conductors = site::known(*legend.conductors);
  if (legend.rating) make.rating = site::known(*legend.rating);
  const auto length = readText<units::Length>(book(), typed);
  QString fault;
  if (!legend.size) {
    fault = sentenceOf(book(), {"console.no_cord_size", printed, {}});
  } else if (!length) {
    fault = sentenceOf(book(), length.error());
  } else if (length.value().si() <= 0.0) {
    fault = sentenceOf(book(), {"console.zero", typed, {}});
  } else {
    make.length = site::Stated<units::Length>{length.value(), {}, {}, typed, {}, {}, {}};
  }
  showFault(m_fault, fault);
  model().change([&](CordInputs& inputs) {
    inputs.cordsBy = CordsBy::Jacket;
    inputs.jacket = make;
  });
}

}  // namespace cordreach::app
