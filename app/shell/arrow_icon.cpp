// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/arrow_icon.h"

#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include "look/look.h"

namespace cordreach::app {

namespace {

// At four times the size, so that it stays sharp on dense screens and in large type.
QPixmap drawn(bool forward, const QColor& color) {
  constexpr int side = 18;
  constexpr int dense = 4;
  QPixmap pixmap(side * dense, side * dense);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.scale(dense, dense);
  if (forward) {
    painter.translate(side, 0);
    painter.scale(-1, 1);
  }
  painter.setPen(QPen(color, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  QPainterPath path(QPointF(5.5, 3.5));
  path.lineTo(2.5, 6.5);
  path.lineTo(5.5, 9.5);
  path.moveTo(2.5, 6.5);
  path.lineTo(10.5, 6.5);
  path.arcTo(QRectF(6.25, 6.5, 8.5, 8), 90, -180);
  path.lineTo(7, 14.5);
  painter.drawPath(path);
  return pixmap;
}

}  // namespace

QIcon arrowIcon(bool forward) {
  QIcon icon;
  icon.addPixmap(drawn(forward, look::tokens().ink), QIcon::Normal);
  // A line this thin at a text's least contrast would be lost; it keeps the contrast of an outline.
  icon.addPixmap(drawn(forward, look::tokens().line), QIcon::Disabled);
  return icon;
}

}  // namespace cordreach::app
