// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/remedy_button.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr int kRing = 4;  // the focus ring stands outside the button's ground
constexpr int kSidePadding = 14;
constexpr double kRadius = 6;

QColor mixed(const QColor& a, const QColor& b, double share) {
  const auto part = [share](int x, int y) { return static_cast<int>(x + (y - x) * share); };
  return {part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue())};
}

}  // namespace

RemedyButton::RemedyButton(QWidget* parent) : QAbstractButton(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

QFont RemedyButton::fontFor(int width) const {
  const QFont usual = look::font(look::Type::HeadBold);
  const int room = width - 2 * (kRing + kSidePadding);
  if (QFontMetrics(usual).horizontalAdvance(text()) <= room) return usual;
  return look::font(look::Type::BodyBold);
}

int RemedyButton::heightForWidth(int width) const {
  const QFont font = fontFor(width);
  const QRect words = QFontMetrics(font).boundingRect(QRect(0, 0, width - 2 * (kRing + kSidePadding), 1000),
                                                      Qt::AlignCenter | Qt::TextWordWrap, text());
  return std::max(look::scaled(48), words.height() + look::scaled(16)) + 2 * kRing;
}

QSize RemedyButton::sizeHint() const { return {look::scaled(300), heightForWidth(look::scaled(300))}; }

void RemedyButton::paintEvent(QPaintEvent* /*event*/) {
  const look::Tokens& t = look::tokens();
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QRectF ground = QRectF(rect()).adjusted(kRing, kRing, -kRing, -kRing);
  if (hasFocus()) {
    painter.setPen(QPen(t.select, 2));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), kRadius + 2, kRadius + 2);
  }
  const bool pressed = isDown();
  painter.setPen(isEnabled() ? Qt::NoPen : QPen(t.rule, 1.5));
  painter.setBrush(!isEnabled()
                       ? QBrush(Qt::NoBrush)
                       : QBrush(pressed || underMouse() ? mixed(t.button, t.sheet, pressed ? 0.25 : 0.12) : t.button));
  painter.drawRoundedRect(ground, kRadius, kRadius);
  painter.setPen(isEnabled() ? t.onButton : t.ink3);
  painter.setFont(fontFor(width()));
  painter.drawText(ground.adjusted(kSidePadding, 0, -kSidePadding, 0), Qt::AlignCenter | Qt::TextWordWrap, text());
}

void RemedyButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  if (isEnabled()) emit previewed(true);
}

void RemedyButton::leaveEvent(QEvent* event) {
  QAbstractButton::leaveEvent(event);
  if (!hasFocus()) emit previewed(false);
}

void RemedyButton::focusInEvent(QFocusEvent* event) {
  QAbstractButton::focusInEvent(event);
  emit previewed(true);
}

void RemedyButton::focusOutEvent(QFocusEvent* event) {
  QAbstractButton::focusOutEvent(event);
  if (!underMouse()) emit previewed(false);
}

}  // namespace cordreach::app
