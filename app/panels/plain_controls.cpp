// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/plain_controls.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QStyleOptionComboBox>
#include <QStylePainter>
#include <QWheelEvent>

#include "look/look.h"
#include "panels/choice_words.h"

namespace cordreach::app {

namespace {

constexpr double kBoxPx = 18;
constexpr double kRingPx = 3;  // around the box, for the focus
constexpr double kBarPx = 24;  // a scroll bar and its margin
constexpr int kFewLetters = 6;

}  // namespace

QSize TickBox::sizeHint() const {
  const int side = look::scaled(kBoxPx + 2 * kRingPx);
  return {side, side};
}

void TickBox::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const look::Tokens& tokens = look::tokens();
  const double unit = look::scaled(kBoxPx) / kBoxPx;
  const QRectF box(kRingPx * unit, (height() - kBoxPx * unit) / 2, kBoxPx * unit, kBoxPx * unit);
  painter.setPen(QPen(isEnabled() ? tokens.line : tokens.rule, 1.5));
  painter.setBrush(underMouse() && isEnabled() ? tokens.selbg : tokens.room);
  painter.drawRoundedRect(box, 3, 3);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(tokens.ink, 2 * unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const auto at = [&](double x, double y) { return box.topLeft() + QPointF(x, y) * unit; };
  if (checkState() == Qt::Checked) painter.drawPolyline(QPolygonF{{at(4, 9.5), at(7.5, 13), at(14, 5)}});
  if (checkState() == Qt::PartiallyChecked) painter.drawLine(at(5, 9), at(13, 9));
  if (!hasFocus()) return;
  painter.setPen(QPen(tokens.select, 2));
  painter.drawRoundedRect(box.adjusted(-2, -2, 2, 2), 4, 4);
}

ChoiceBox::ChoiceBox(QWidget* parent) : QComboBox(parent) {
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(kFewLetters);
  setFocusPolicy(Qt::StrongFocus);
}

// Letters that are cut in half read as others: what does not fit is put shorter.
void ChoiceBox::paintEvent(QPaintEvent* /*event*/) {
  QStylePainter painter(this);
  QStyleOptionComboBox option;
  initStyleOption(&option);
  const int room = style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this).width();
  const QString brief = currentData(kShortWordsRole).toString();
  const bool fits = fontMetrics().horizontalAdvance(option.currentText) <= room;
  if (!fits && !brief.isEmpty()) option.currentText = brief;
  option.currentText = fontMetrics().elidedText(option.currentText, Qt::ElideRight, room);
  painter.drawComplexControl(QStyle::CC_ComboBox, option);
  painter.drawControl(QStyle::CE_ComboBoxLabel, option);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF tip(width() - 11.0, height() / 2.0 + 2.5);
  painter.setPen(QPen(isEnabled() ? look::tokens().ink2 : look::tokens().ink3, 1.5));
  painter.drawPolyline(QPolygonF{{tip + QPointF(-4, -4), tip, tip + QPointF(4, -4)}});
}

void ChoiceBox::showPopup() {
  view()->setMinimumWidth(view()->sizeHintForColumn(0) + look::scaled(kBarPx));
  QComboBox::showPopup();
}

void ChoiceBox::wheelEvent(QWheelEvent* event) { event->ignore(); }

}  // namespace cordreach::app
