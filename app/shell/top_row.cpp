// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/top_row.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QPainter>
#include <QToolButton>
#include <algorithm>

#include "look/look.h"
#include "shell/arrow_icon.h"
#include "shell/place_tabs.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr int kWidestName = 320;
}  // namespace

TopRow::TopRow(const Document& document, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent),
      m_document(document),
      m_book(book),
      m_menus(new QMenuBar(this)),
      m_places(new PlaceTabs(this)),
      m_name(new QLabel(this)),
      m_saved(new QLabel(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(14, 0, 24, 0);
  row->setSpacing(4);
  m_menus->setNativeMenuBar(false);
  m_menus->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  row->addWidget(m_menus, 0, Qt::AlignVCenter);
  row->addSpacing(20);
  row->addWidget(m_places, 0, Qt::AlignBottom);
  row->addStretch(1);
  row->addWidget(m_name, 0, Qt::AlignVCenter);
  row->addSpacing(4);
  row->addWidget(m_saved, 0, Qt::AlignVCenter);
  m_name->setTextFormat(Qt::PlainText);
  m_name->setMinimumWidth(1);  // it is cut before anything else is
  dress();
  refresh();
}

void TopRow::addArrow(QAction* action) {
  auto* button = new QToolButton(this);
  button->setDefaultAction(action);
  button->setAutoRaise(true);
  button->setFocusPolicy(Qt::TabFocus);
  auto* row = static_cast<QHBoxLayout*>(layout());
  row->insertWidget(row->indexOf(m_name), button, 0, Qt::AlignVCenter);
}

void TopRow::setUndoRedo(QAction* undo, QAction* redo) {
  m_undo = undo;
  m_redo = redo;
  addArrow(undo);
  addArrow(redo);
  auto* row = static_cast<QHBoxLayout*>(layout());
  row->insertSpacing(row->indexOf(m_name), 12);
  dress();
}

QString TopRow::title() const {
  const QString name = QString::fromStdString(m_document.site().name).simplified();
  return name.isEmpty() ? say(m_book, "window.unnamed") : name;
}

void TopRow::refresh() {
  m_name->setToolTip(m_document.path());
  m_saved->setText(say(m_book, m_document.isDirty()          ? "window.state.unsaved"
                               : m_document.path().isEmpty() ? "window.state.untitled"
                                                             : "window.state.saved"));
  fitName();
}

// Into what the rest of the row leaves.
void TopRow::fitName() {
  m_name->clear();
  const int left = width() - layout()->sizeHint().width();
  m_name->setText(
      m_name->fontMetrics().elidedText(title(), Qt::ElideRight, std::clamp(left, 0, look::scaled(kWidestName))));
}

void TopRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitName();
}

void TopRow::dress() {
  m_menus->setFont(look::font(look::Type::Body));
  m_name->setFont(look::font(look::Type::BodyBold));
  m_saved->setFont(look::font(look::Type::Body));
  QPalette quiet = m_saved->palette();
  quiet.setColor(QPalette::WindowText, look::tokens().ink2);
  m_saved->setPalette(quiet);
  setFixedHeight(look::scaled(44));
  if (m_undo == nullptr) return;
  const QSize side(look::scaled(18), look::scaled(18));
  for (QToolButton* button : findChildren<QToolButton*>(Qt::FindDirectChildrenOnly)) button->setIconSize(side);
  m_undo->setIcon(arrowIcon(false));
  m_redo->setIcon(arrowIcon(true));
}

void TopRow::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) dress();
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) refresh();
}

void TopRow::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.fillRect(rect(), look::tokens().desk);
  if (!look::tokens().highContrast) return;
  painter.fillRect(QRect(0, height() - 1, width(), 1), look::tokens().ink);
}

}  // namespace cordreach::app
