// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/cord_place.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "desk/cell_panel.h"
#include "desk/cord_verdict.h"
#include "desk/field_view.h"
#include "desk/more_below.h"
#include "desk/question_input.h"
#include "desk/question_row.h"
#include "desk/what_if_row.h"
#include "look/accessible_role.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr int kMargin = 24;
constexpr int kGap = 28;
}  // namespace

CordPlace::CordPlace(Session& session, QWidget* parent)
    : Place(parent),
      m_model(session),
      m_verdict(new CordVerdict(m_model, this)),
      m_question(new QuestionRow(m_model, this)),
      m_head(new QLabel(this)),
      m_note(new QLabel(this)),
      m_field(new FieldView(m_model, this)),
      m_cell(new CellPanel(m_model, *m_field)),
      m_sheet(new QScrollArea(this)),
      m_column(new QScrollArea(this)),
      m_moreCells(new MoreBelow(*m_sheet, m_model.book(), this)),
      m_moreCords(new MoreBelow(*m_column, m_model.book(), this)),
      m_whatIfs(new WhatIfRow(m_model, this)) {
  m_column->setWidget(m_cell);
  m_column->setWidgetResizable(true);
  m_column->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_column->setFocusPolicy(Qt::TabFocus);
  look::setRole(m_column, QAccessible::Grouping);
  auto* sheet = new QWidget;
  auto* left = new QVBoxLayout(sheet);
  left->setContentsMargins(0, 0, 0, 0);
  left->setSpacing(6);
  left->addWidget(m_head);
  left->addWidget(m_field, 1);
  left->addWidget(m_note);
  left->addSpacing(8);
  left->addWidget(m_whatIfs);
  auto* row = new QHBoxLayout;
  row->setContentsMargins(kMargin, 0, kMargin, 4);
  row->setSpacing(kGap);
  m_sheet->setWidget(sheet);
  m_sheet->setWidgetResizable(true);
  m_sheet->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_sheet->setFocusPolicy(Qt::NoFocus);
  auto* cells = new QVBoxLayout;
  cells->setSpacing(0);
  cells->addWidget(m_sheet, 1);
  cells->addWidget(m_moreCells);
  auto* cords = new QVBoxLayout;
  cords->setSpacing(0);
  cords->addWidget(m_column, 1);
  cords->addWidget(m_moreCords);
  row->addLayout(cells, 1);
  row->addLayout(cords);
  setTabOrder(m_field, m_column);
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(14);
  rows->addWidget(m_question);
  rows->addLayout(row, 1);
  m_note->setWordWrap(true);
  dress();
}

VerdictSource* CordPlace::verdict() const { return m_verdict; }

QWidget* CordPlace::work() const { return m_question->input(Ask::Machine); }

QWidget* CordPlace::column() const { return m_column; }

void CordPlace::setColumn(int width, bool visible) {
  m_column->setFixedWidth(width);
  m_moreCords->setFixedWidth(width);
  m_column->setVisible(visible);
  m_moreCords->setReserved(visible);
}

void CordPlace::dress() {
  m_head->setFont(look::font(look::Type::HeadBold));
  m_head->setText(say(m_model.book(), "desk.field.head"));
  m_note->setFont(look::font(look::Type::Caption));
  m_note->setText(say(m_model.book(), "desk.field.note"));
  m_column->setAccessibleName(say(m_model.book(), "desk.column"));
  setAccessibleName(say(m_model.book(), "window.place.cord"));
}

void CordPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  dress();  // what stands in a scroll area has lost its type when the area was first polished
  m_model.setAwake(true);
}

void CordPlace::hideEvent(QHideEvent* event) {
  Place::hideEvent(event);
  m_model.setAwake(false);
}

void CordPlace::resizeEvent(QResizeEvent* event) {
  Place::resizeEvent(event);
  m_question->placeEditor();
}

void CordPlace::changeEvent(QEvent* event) {
  Place::changeEvent(event);
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) dress();
  if (event->type() == QEvent::LanguageChange) m_verdict->reword();
}

}  // namespace cordreach::app
