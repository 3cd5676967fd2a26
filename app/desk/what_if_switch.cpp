// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/what_if_switch.h"

#include <QPainter>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr int kPillWidth = 34;
constexpr int kPillHeight = 18;
constexpr int kGap = 8;
constexpr int kRing = 4;
constexpr int kHeight = 32;

}  // namespace

QSize WhatIfSwitch::sizeHint() const {
  const QFontMetrics metrics(look::font(look::Type::BodyBold));
  const int words = metrics.horizontalAdvance(text()) + 2;
  return {look::scaled(2 * kRing + kPillWidth + kGap) + words, look::scaled(kHeight)};
}

void WhatIfSwitch::paintEvent(QPaintEvent* /*event*/) {
  const look::Tokens& t = look::tokens();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const double wide = look::scaled(kPillWidth);
  const double high = look::scaled(kPillHeight);
  const QRectF pill(look::scaled(kRing), (height() - high) / 2, wide, high);
  painter.setPen(QPen(isChecked() ? t.ink : t.line, 1.5));
  painter.setBrush(isChecked() ? t.ink : underMouse() ? t.selbg : t.room);
  painter.drawRoundedRect(pill, high / 2, high / 2);
  painter.setPen(Qt::NoPen);
  painter.setBrush(isChecked() ? t.sheet : t.line);
  const double radius = high / 2 - 4;
  const double x = isChecked() ? pill.right() - high / 2 : pill.left() + high / 2;
  painter.drawEllipse(QPointF(x, pill.center().y()), radius, radius);
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(t.select, 2));
    painter.drawRoundedRect(pill.adjusted(-3, -3, 3, 3), high / 2 + 3, high / 2 + 3);
  }
  painter.setPen(t.ink);
  painter.setFont(look::font(isChecked() ? look::Type::BodyBold : look::Type::Body));
  painter.drawText(rect().adjusted(static_cast<int>(pill.right()) + look::scaled(kGap), 0, 0, 0),
                   Qt::AlignLeft | Qt::AlignVCenter, text());
}

}  // namespace cordreach::app
