// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/limit_bar.h"

#include <QPainter>
#include <algorithm>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr int kBar = 7;
constexpr int kTick = 15;
constexpr int kGap = 3;
constexpr double kLimitAt = 0.8;  // where along the widget the limit stands, to leave room beyond it
constexpr int kFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

}  // namespace

void LimitBar::setWords(const LimitWords& words, const QString& spoken) {
  m_words = words;
  setAccessibleName(spoken);
  setToolTip(words.source);
  updateGeometry();
  update();
}

int LimitBar::textHeight(int width, const QString& text) const {
  return QFontMetrics(look::font(look::Type::Caption)).boundingRect(QRect(0, 0, width, 4000), kFlags, text).height();
}

int LimitBar::heightForWidth(int width) const {
  return textHeight(width, m_words.name + ": " + m_words.value) + look::scaled(kGap + kTick);
}

QSize LimitBar::sizeHint() const { return {look::scaled(200), heightForWidth(look::scaled(200))}; }

void LimitBar::paintEvent(QPaintEvent* /*event*/) {
  const look::Tokens& t = look::tokens();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(look::font(look::Type::Caption));
  painter.setPen(t.ink);
  painter.drawText(rect(), kFlags, m_words.name + ": " + m_words.value);
  const double limit = width() * kLimitAt;
  const double middle = height() - look::scaled(kTick) / 2.0;
  const double high = look::scaled(kBar);
  const QRectF ground(0, middle - high / 2, limit, high);
  // In high contrast a hairline's colour is ink, and what is free would look used up.
  painter.setPen(t.highContrast ? QPen(t.ink, 1) : QPen(Qt::NoPen));
  painter.setBrush(t.highContrast ? t.sheet : t.rule);
  painter.drawRoundedRect(ground, 3, 3);
  painter.setPen(Qt::NoPen);
  const double used = m_words.used.value_or(width() / limit);
  QRectF bar = ground;
  bar.setWidth(std::min<double>(width(), limit * std::max(0.0, used)));
  painter.setBrush(t.ink2);
  painter.drawRoundedRect(bar, 3, 3);
  if (used > 1) {
    painter.save();
    painter.setClipRect(QRectF(limit, bar.top(), bar.right() - limit, high));
    painter.setPen(QPen(t.sheet, 1.5));
    for (double x = limit; x < bar.right() + high; x += 5)
      painter.drawLine(QPointF(x - high, bar.bottom()), QPointF(x, bar.top()));
    painter.restore();
  }
  painter.setPen(QPen(t.ink, 3));
  painter.drawLine(QPointF(limit, middle - look::scaled(kTick) / 2.0 + 1),
                   QPointF(limit, middle + look::scaled(kTick) / 2.0 - 1));
}

}  // namespace cordreach::app
