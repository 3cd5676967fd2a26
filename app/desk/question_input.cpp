// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/question_input.h"

#include <QEvent>
#include <QKeyEvent>
#include <QPainter>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr int kHeight = 34;
constexpr int kMark = 20;  // for the mark that it opens
constexpr int kSide = 4;

}  // namespace

QuestionInput::QuestionInput(QWidget* parent) : QAbstractButton(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAttribute(Qt::WA_Hover);
  connect(this, &QAbstractButton::clicked, this, [this] { emit opened({}); });
}

void QuestionInput::setValue(const QString& what, const QString& value) {
  setText(value);
  setAccessibleName(what);
  setAccessibleDescription(value);
  updateGeometry();
  update();
}

QSize QuestionInput::sizeHint() const {
  const QFontMetrics metrics(look::font(look::Type::HeadBold));
  return {metrics.horizontalAdvance(text()) + look::scaled(kMark + 2 * kSide), look::scaled(kHeight)};
}

void QuestionInput::paintEvent(QPaintEvent* /*event*/) {
  const look::Tokens& t = look::tokens();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
  if (underMouse() || isDown()) painter.fillRect(box, isDown() ? t.rule : t.selbg);
  const double side = look::scaled(kSide);
  painter.setPen(t.ink);
  painter.setFont(look::font(look::Type::HeadBold));
  painter.drawText(box.adjusted(side, 0, -look::scaled(kMark), 0), Qt::AlignLeft | Qt::AlignVCenter, text());
  painter.setPen(QPen(t.ink, 2));
  painter.drawLine(QPointF(side, height() - 3.0), QPointF(width() - side, height() - 3.0));
  const double unit = look::scaled(4);
  const QPointF tip(width() - side - 2 * unit, height() / 2.0 + unit / 2);
  painter.setPen(QPen(t.ink2, 1.5));
  painter.drawPolyline(QPolygonF{{tip + QPointF(-unit, -unit), tip, tip + QPointF(unit, -unit)}});
  if (!hasFocus()) return;
  painter.setPen(QPen(t.select, 2));
  painter.drawRoundedRect(box, 4, 4);
}

void QuestionInput::keyPressEvent(QKeyEvent* event) {
  const bool opens = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Down;
  const bool types = !event->text().isEmpty() && event->text().front().isLetterOrNumber() &&
                     (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) == 0;
  if (opens || types) {
    emit opened(types ? event->text() : QString());
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void QuestionInput::changeEvent(QEvent* event) {
  QAbstractButton::changeEvent(event);
  if (event->type() == QEvent::FontChange) updateGeometry();
}

}  // namespace cordreach::app
