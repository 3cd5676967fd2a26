// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/breaker_bars.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <algorithm>
#include <array>

#include "heat/heat_words.h"
#include "look/look.h"
#include "shell/say.h"
#include "text/quantity_text.h"

namespace cordreach::app {

namespace {

constexpr double kBarPx = 9;
constexpr double kRowPx = 17;    // one side's bar
constexpr double kGroupPx = 10;  // between curves
constexpr std::array kCurveNames = {"lesson.breaker.earliest", "lesson.breaker.likely", "lesson.breaker.latest"};

}  // namespace

BreakerBars::BreakerBars(HeatModel& model, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(book) {
  connect(&model, &HeatModel::ticked, this, QOverload<>::of(&QWidget::update));
  connect(&model, &HeatModel::ticked, this, [this] {
    if (!m_model.isPlaying()) describe();
  });
  connect(&model, &HeatModel::playingChanged, this, &BreakerBars::describe);
  connect(&model, &HeatModel::busyChanged, this, QOverload<>::of(&QWidget::update));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  setSizePolicy(policy);
  describe();
}

QSize BreakerBars::sizeHint() const {
  const int name = QFontMetrics(look::font(look::Type::Body)).height();
  const int group = name + static_cast<int>(kSides) * look::scaled(kRowPx) + look::scaled(kGroupPx);
  return {look::scaled(220), static_cast<int>(kCurveNames.size()) * group};
}

QSize BreakerBars::minimumSizeHint() const { return {look::scaled(160), sizeHint().height()}; }

bool BreakerBars::hasTripped(std::size_t side, std::size_t curve) const {
  const auto& trip = m_model.side(side).demonstration.trips.at(curve);
  return trip && *trip <= m_model.clock();
}

QString BreakerBars::stateOf(std::size_t side, std::size_t curve) const {
  if (hasTripped(side, curve)) return say(m_book, "lesson.breaker.tripped");
  const double warmth = m_model.now(side).warmth.at(curve);
  return QString::fromStdString(text::quantityText(m_book, "value_percent", 100.0 * warmth));
}

void BreakerBars::describe() {
  setAccessibleName(say(m_book, "lesson.breaker.name"));
  if (!m_model.isWorkedOut()) return;
  QStringList parts;
  for (std::size_t curve = 0; curve < kCurveNames.size(); ++curve) {
    parts << say(m_book, kCurveNames[curve]) + ": A " + stateOf(0, curve) + ", B " + stateOf(1, curve);
  }
  setAccessibleDescription(parts.join(QStringLiteral("; ")));
}

void BreakerBars::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) describe();
  if (event->type() == QEvent::FontChange) updateGeometry();
}

void BreakerBars::paintBar(QPainter& painter, const QRect& row, std::size_t side, std::size_t curve) const {
  const look::Tokens& tokens = look::tokens();
  painter.setFont(look::font(look::Type::CaptionBold));
  const QFontMetrics bold(painter.font());
  const int letter = bold.horizontalAdvance(QStringLiteral("B")) + 8;
  const int state = std::max(bold.horizontalAdvance(QStringLiteral("100 %")),
                             bold.horizontalAdvance(say(m_book, "lesson.breaker.tripped"))) +
                    8;
  painter.setPen(tokens.ink);
  painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, sideLetter(side));
  painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, stateOf(side, curve));
  const double height = look::scaled(kBarPx);
  const QRectF whole(letter, row.center().y() - height / 2, row.width() - letter - state, height);
  const double share = hasTripped(side, curve) ? 1.0 : std::clamp(m_model.now(side).warmth.at(curve), 0.0, 1.0);
  painter.fillRect(whole, tokens.rule);
  painter.fillRect(QRectF(whole.topLeft(), QSizeF(whole.width() * share, height)),
                   side == 0 ? tokens.ink2 : tokens.line);
  painter.fillRect(QRectF(whole.right() - 3, whole.top() - 3, 3, height + 6), tokens.ink);
}

void BreakerBars::paintEvent(QPaintEvent*) {
  if (!m_model.isWorkedOut()) return;
  QPainter painter(this);
  if (m_model.isOld()) painter.setOpacity(kOldOpacity);
  const int name = QFontMetrics(look::font(look::Type::Body)).height();
  const int row = look::scaled(kRowPx);
  int y = 0;
  for (std::size_t curve = 0; curve < kCurveNames.size(); ++curve) {
    painter.setFont(look::font(look::Type::Body));
    painter.setPen(look::tokens().ink);
    painter.drawText(QRect(0, y, width(), name), Qt::AlignLeft | Qt::AlignVCenter, say(m_book, kCurveNames[curve]));
    y += name;
    for (std::size_t side = 0; side < kSides; ++side) {
      paintBar(painter, QRect(0, y, width(), row), side, curve);
      y += row;
    }
    y += look::scaled(kGroupPx);
  }
}

}  // namespace cordreach::app
