// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/more_below.h"

#include <QEvent>
#include <QScrollArea>
#include <QScrollBar>

#include "shell/say.h"

namespace cordreach::app {

MoreBelow::MoreBelow(QScrollArea& area, const text::Phrasebook& book, QWidget* parent)
    : LinkButton({}, parent), m_area(area), m_book(book) {
  setFocusPolicy(Qt::NoFocus);
  QScrollBar* bar = area.verticalScrollBar();
  connect(bar, &QScrollBar::rangeChanged, this, &MoreBelow::freshen);
  connect(bar, &QScrollBar::valueChanged, this, &MoreBelow::freshen);
  connect(this, &QAbstractButton::clicked, this, [bar] { bar->setValue(bar->value() + bar->pageStep()); });
  setReserved(true);
}

void MoreBelow::setReserved(bool reserved) {
  QSizePolicy policy = sizePolicy();
  policy.setRetainSizeWhenHidden(reserved);
  setSizePolicy(policy);
  freshen();
}

void MoreBelow::freshen() {
  setText(say(m_book, "desk.more_below"));
  const QScrollBar* bar = m_area.verticalScrollBar();
  setVisible(!m_area.isHidden() && bar->value() < bar->maximum());
}

void MoreBelow::changeEvent(QEvent* event) {
  LinkButton::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) freshen();
}

}  // namespace cordreach::app
