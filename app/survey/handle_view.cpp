// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/handle_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <utility>

#include "look/accessible_role.h"
#include "look/look.h"

namespace cordreach::app {
namespace {

constexpr double kMarginPx = 14;
constexpr double kHandlePx = 7;
constexpr double kLoupePx = 120;
constexpr double kLoupeTimes = 3;  // larger than in the view
constexpr double kGrabPx = 40;     // farther off a press takes none
constexpr double kFarNudge = 10;   // times, with Shift
constexpr QSize kWantedSize{620, 420};

}  // namespace

HandleView::HandleView(QImage image, const QSize& sheet, Joined joined, QWidget* parent)
    : QWidget(parent), m_image(std::move(image)), m_sheet(sheet), m_joined(joined) {
  look::setRole(this, QAccessible::Graphic);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumSize(300, 220);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void HandleView::setPoints(const std::vector<QPointF>& points, const QStringList& names) {
  m_points = points;
  m_names = names;
  take(0);
}

QSize HandleView::sizeHint() const { return kWantedSize; }

QRectF HandleView::frame() const {
  const QRectF room = QRectF(rect()).adjusted(kMarginPx, kMarginPx, -kMarginPx, -kMarginPx);
  const QSizeF size = QSizeF(m_sheet).scaled(room.size(), Qt::KeepAspectRatio);
  QRectF frame(QPointF(), size);
  frame.moveCenter(room.center());
  return frame;
}

QPointF HandleView::toWidget(const QPointF& pixel) const {
  const QRectF box = frame();
  return box.topLeft() +
         QPointF(pixel.x() * box.width() / m_sheet.width(), pixel.y() * box.height() / m_sheet.height());
}

QPointF HandleView::toSheet(const QPointF& widget) const {
  const QRectF box = frame();
  return {(widget.x() - box.left()) * m_sheet.width() / box.width(),
          (widget.y() - box.top()) * m_sheet.height() / box.height()};
}

void HandleView::moveActive(const QPointF& pixel) {
  if (m_points.empty()) return;
  m_points[static_cast<std::size_t>(m_active)] = {std::clamp(pixel.x(), 0.0, static_cast<double>(m_sheet.width())),
                                                  std::clamp(pixel.y(), 0.0, static_cast<double>(m_sheet.height()))};
  take(m_active);
  emit moved();
}

// A screen reader hears which one it is and where.
void HandleView::take(int index) {
  m_active = index;
  if (index < m_names.size()) {
    const QPointF at = m_points[static_cast<std::size_t>(index)];
    setAccessibleDescription(QStringLiteral("%1: %2, %3").arg(m_names[index]).arg(qRound(at.x())).arg(qRound(at.y())));
  }
  update();
}

void HandleView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  double nearest = kGrabPx;
  for (std::size_t i = 0; i < m_points.size(); ++i) {
    const double distance = QLineF(toWidget(m_points[i]), event->position()).length();
    if (distance >= nearest) continue;
    nearest = distance;
    take(static_cast<int>(i));
  }
  m_isHeld = nearest < kGrabPx;
  if (m_isHeld) moveActive(toSheet(event->position()));
}

void HandleView::mouseMoveEvent(QMouseEvent* event) {
  if (m_isHeld) moveActive(toSheet(event->position()));
}

void HandleView::mouseReleaseEvent(QMouseEvent*) { m_isHeld = false; }

// Tab goes from point to point before it leaves.
bool HandleView::event(QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    const int step = key->key() == Qt::Key_Tab ? 1 : key->key() == Qt::Key_Backtab ? -1 : 0;
    const int next = m_active + step;
    if (step != 0 && next >= 0 && next < static_cast<int>(m_points.size())) {
      take(next);
      return true;
    }
  }
  if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) update();
  return QWidget::event(event);
}

// One screen pixel a press, ten with Shift, as the picture is seen.
void HandleView::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  const int digit = key - Qt::Key_1;
  if (digit >= 0 && digit < static_cast<int>(m_points.size())) return take(digit);
  QPointF way;
  if (key == Qt::Key_Left) way = {-1, 0};
  if (key == Qt::Key_Right) way = {1, 0};
  if (key == Qt::Key_Up) way = {0, -1};
  if (key == Qt::Key_Down) way = {0, 1};
  if (way.isNull() || m_points.empty()) return QWidget::keyPressEvent(event);
  const double pixel = m_sheet.width() / frame().width();
  const double times = event->modifiers().testFlag(Qt::ShiftModifier) ? kFarNudge : 1.0;
  moveActive(m_points[static_cast<std::size_t>(m_active)] + way * pixel * times);
}

// In the corner that is farthest from the point in hand.
QRectF HandleView::loupe() const {
  const double side = look::scaled(kLoupePx);
  const QPointF at = toWidget(m_points[static_cast<std::size_t>(m_active)]);
  return {at.x() < width() / 2.0 ? width() - side : 0.0, at.y() < height() / 2.0 ? height() - side : 0.0, side, side};
}

void HandleView::paintLoupe(QPainter& painter) {
  const QRectF box = loupe();
  const QPointF pixel = m_points[static_cast<std::size_t>(m_active)];
  const double perSheet = static_cast<double>(m_image.width()) / m_sheet.width();
  const double across = box.width() / kLoupeTimes * m_image.width() / frame().width();
  QRectF source(QPointF(), QSizeF(across, across));
  source.moveCenter(pixel * perSheet);
  painter.fillRect(box, look::tokens().well);
  painter.drawImage(box, m_image, source);
  painter.setPen(QPen(look::tokens().ink, 1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5));
  painter.setPen(QPen(look::tokens().select, 1));
  painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
  painter.drawLine(QPointF(box.center().x(), box.top()), QPointF(box.center().x(), box.bottom()));
}

void HandleView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
  painter.fillRect(rect(), look::tokens().well);
  painter.drawImage(frame(), m_image);
  QPolygonF line;
  for (const QPointF& point : m_points) line << toWidget(point);
  if (line.isEmpty()) return;
  if (m_joined == Joined::Outline) line << line.first();
  // A light line within a dark one is seen on any plan.
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(Qt::white, 4));
  painter.drawPolyline(line);
  painter.setPen(QPen(look::tokens().select, 2));
  painter.drawPolyline(line);
  for (std::size_t i = 0; i < m_points.size(); ++i) {
    const bool isActive = static_cast<int>(i) == m_active;
    painter.setPen(QPen(look::tokens().select, isActive && hasFocus() ? 3 : 2));
    painter.setBrush(isActive ? look::tokens().select : QColor(Qt::white));
    painter.drawEllipse(line[static_cast<qsizetype>(i)], kHandlePx, kHandlePx);
  }
  paintLoupe(painter);
}

}  // namespace cordreach::app
