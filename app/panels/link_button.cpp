// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/link_button.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr int kMarginPx = 3;  // the focus ring stands in it
constexpr int kFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
constexpr int kTallPx = 4000;

}  // namespace

LinkButton::LinkButton(const QString& text, QWidget* parent) : QAbstractButton(parent) {
  setText(text);
  setCursor(Qt::PointingHandCursor);
  setFocusPolicy(Qt::StrongFocus);
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

QFont LinkButton::linkFont() const {
  QFont font = look::font(look::Type::Caption);
  font.setUnderline(true);
  return font;
}

QRect LinkButton::textRect(int width) const {
  return QFontMetrics(linkFont()).boundingRect(QRect(0, 0, width - 2 * kMarginPx, kTallPx), kFlags, text());
}

QSize LinkButton::sizeHint() const {
  const QFontMetrics metrics(linkFont());
  return {metrics.horizontalAdvance(text()) + 2 * kMarginPx + 2, metrics.height() + 2 * kMarginPx};
}

QSize LinkButton::minimumSizeHint() const {
  const QFontMetrics metrics(linkFont());
  int widest = 0;
  for (const QString& word : text().split(QLatin1Char(' '))) {
    widest = std::max(widest, metrics.horizontalAdvance(word));
  }
  return {widest + 2 * kMarginPx + 2, metrics.height() + 2 * kMarginPx};
}

int LinkButton::heightForWidth(int width) const { return textRect(width).height() + 2 * kMarginPx; }

void LinkButton::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const look::Tokens& tokens = look::tokens();
  painter.setFont(linkFont());
  painter.setPen(!isEnabled() ? tokens.ink3 : isDown() ? tokens.ink : tokens.link);
  painter.drawText(rect().adjusted(kMarginPx, kMarginPx, -kMarginPx, -kMarginPx), kFlags, text());
  if (!hasFocus()) return;
  painter.setPen(QPen(tokens.select, 2));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 3, 3);
}

void LinkButton::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) updateGeometry();
  QAbstractButton::changeEvent(event);
}

}  // namespace cordreach::app
