// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/place_tabs.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "look/look.h"

namespace cordreach::app {

namespace {
constexpr int kHeight = 36;
constexpr double kRadius = 8;
}  // namespace

PlaceTabs::PlaceTabs(QWidget* parent) : QTabBar(parent) {
  setDrawBase(false);
  setExpanding(false);
  setFocusPolicy(Qt::TabFocus);
}

QSize PlaceTabs::tabSizeHint(int index) const {
  const int words = QFontMetrics(look::font(look::Type::HeadBold)).horizontalAdvance(tabText(index));
  return {std::max(look::scaled(64), words + look::scaled(40)), look::scaled(kHeight)};
}

void PlaceTabs::paintEvent(QPaintEvent* /*event*/) {
  const look::Tokens& t = look::tokens();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  for (int i = 0; i < count(); ++i) {
    const QRectF box = tabRect(i);
    const bool current = i == currentIndex();
    if (current) {
      QPainterPath shape;
      shape.setFillRule(Qt::WindingFill);
      shape.addRoundedRect(box.adjusted(0, 0, 0, kRadius), kRadius, kRadius);
      painter.fillPath(shape, t.sheet);
      // The band along its top edge follows the corners.
      painter.save();
      painter.setClipRect(QRectF(box.left(), box.top(), box.width(), 3));
      painter.fillPath(shape, t.ink);
      painter.restore();
    }
    if (current && hasFocus()) {
      painter.setPen(QPen(t.select, 2));
      painter.drawRoundedRect(box.adjusted(4, 6, -4, -4), 4, 4);
    }
    painter.setPen(current ? t.ink : t.ink2);
    painter.setFont(look::font(current ? look::Type::HeadBold : look::Type::Head));
    painter.drawText(box, Qt::AlignCenter | Qt::TextShowMnemonic, tabText(i));
  }
}

}  // namespace cordreach::app
