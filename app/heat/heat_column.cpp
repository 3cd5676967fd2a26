// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_column.h"

#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QVBoxLayout>

#include "heat/breaker_bars.h"
#include "heat/lesson_panel.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr int kLow = 500;  // below: the breaker scrolls with the lesson, after it
constexpr int kBarGapPx = 8;
}  // namespace

HeatColumn::HeatColumn(HeatModel& model, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent),
      m_model(model),
      m_book(book),
      m_meanwhile(new QWidget),
      m_meanwhileRows(new QVBoxLayout(m_meanwhile)),
      m_head(new QLabel),
      m_says(new QLabel),
      m_lesson(new LessonPanel(model, book)),
      m_scroll(new QScrollArea),
      m_rows(new QVBoxLayout(this)) {
  makeMeanwhile();
  auto* inner = new QWidget;
  m_scrolled = new QVBoxLayout(inner);
  m_scrolled->setContentsMargins(0, 0, kBarGapPx, 0);
  m_scrolled->setSpacing(8);
  m_scrolled->addWidget(m_lesson, 1);
  m_scroll->setWidget(inner);
  m_scroll->setWidgetResizable(true);
  m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_scroll->setFocusPolicy(Qt::NoFocus);
  m_rows->setContentsMargins(0, 0, 0, 0);
  m_rows->setSpacing(8);
  m_rows->addWidget(m_meanwhile);
  m_rows->addWidget(m_scroll, 1);
  reword();
}

void HeatColumn::makeMeanwhile() {
  m_meanwhileRows->setContentsMargins(0, 0, 0, 0);
  m_meanwhileRows->setSpacing(8);
  m_says->setWordWrap(true);
  m_meanwhileRows->addWidget(m_head);
  m_meanwhileRows->addWidget(m_says);
  m_meanwhileRows->addWidget(new BreakerBars(m_model, m_book));
}

void HeatColumn::take(QWidget* view) { m_meanwhileRows->insertWidget(0, view); }

void HeatColumn::reword() {
  m_head->setWordWrap(true);
  m_head->setFont(look::font(look::Type::HeadBold));
  m_head->setText(say(m_book, "lesson.breaker.head", {{"rating_a", m_model.chosen(0).breaker.si()}}));
  m_says->setText(say(m_book, "lesson.breaker.says"));
}

void HeatColumn::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  const bool scrolls = height() < look::scaled(kLow);
  const bool isScrolled = m_meanwhile->parentWidget() != this;
  if (scrolls && !isScrolled) m_scrolled->addWidget(m_meanwhile);  // the lesson first
  if (!scrolls && isScrolled) m_rows->insertWidget(0, m_meanwhile);
}

}  // namespace cordreach::app
