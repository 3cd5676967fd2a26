// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/answer_button.h"

#include <QFontMetrics>
#include <QStyleOptionButton>
#include <QStylePainter>
#include <algorithm>

#include "look/look.h"

namespace cordreach::app {

namespace {

constexpr int kPaddingPx = 12;  // at each side
constexpr double kTopPx = 8;
constexpr int kTallPx = 4000;

}  // namespace

AnswerButton::AnswerButton(const QString& text, QWidget* parent) : QPushButton(text, parent) {
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

QSize AnswerButton::minimumSizeHint() const {
  int widest = 0;
  for (const QString& word : text().split(QLatin1Char(' '))) {
    widest = std::max(widest, fontMetrics().horizontalAdvance(word));
  }
  return {widest + 2 * kPaddingPx, fontMetrics().height() + 2 * look::scaled(kTopPx)};
}

int AnswerButton::heightForWidth(int width) const {
  const QRect room(0, 0, std::max(width - 2 * kPaddingPx, 1), kTallPx);
  const int words = fontMetrics().boundingRect(room, Qt::TextWordWrap, text()).height();
  return std::max(words, fontMetrics().height()) + 2 * look::scaled(kTopPx);
}

void AnswerButton::paintEvent(QPaintEvent*) {
  QStylePainter painter(this);
  QStyleOptionButton option;
  initStyleOption(&option);
  option.text.clear();
  painter.drawControl(QStyle::CE_PushButton, option);
  painter.setPen(isEnabled() ? look::tokens().ink : look::tokens().ink3);
  painter.drawText(rect().adjusted(kPaddingPx, 0, -kPaddingPx, 0), Qt::AlignCenter | Qt::TextWordWrap, text());
}

}  // namespace cordreach::app
