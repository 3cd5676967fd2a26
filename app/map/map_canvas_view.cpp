// SPDX-License-Identifier: GPL-3.0-or-later
// What of the plan is in sight, and the way there.
#include <QVariantAnimation>
#include <algorithm>

#include "look/look.h"
#include "map/map_canvas.h"
#include "map/map_labels.h"

namespace cordreach::app {
namespace {

constexpr double kSmallestScale = 1.5;  // px a metre
constexpr double kLargestScale = 240;
constexpr double kLeastShownM = 10;    // of a floor on which there is little yet
constexpr double kReadableScale = 34;  // px a metre, at which what is shown has room for its words
constexpr double kAround = 1.3;        // of a room, so that its neighbours are seen
constexpr int kGlideMs = 260;
constexpr int kRingMs = 900;

}  // namespace

void MapCanvas::relayout(double scale) {
  m_layout = layoutOf(m_content, std::clamp(scale, kSmallestScale, kLargestScale));
  m_words.region = {};
  emit scaleChanged();
  update();
}

void MapCanvas::fit() {
  const QRectF extent = this->extent();
  const double wide = std::max(1.0, width() - 2 * planMargin());
  const double high = std::max(1.0, height() - 2 * planMargin());
  const double scale =
      std::min(wide / std::max(extent.width(), kLeastShownM), high / std::max(extent.height(), kLeastShownM));
  relayout(scale);
  m_origin = extent.center() * m_layout.scale - QPointF(width() / 2.0, height() / 2.0);
  m_fitted = true;
  update();
}

void MapCanvas::setView(double scale, const QPointF& topLeftPx) {
  if (scale != m_layout.scale) relayout(scale);
  m_origin = topLeftPx;
  m_fitted = false;
  update();
}

void MapCanvas::zoomBy(double factor, const QPointF& around) {
  const double before = m_layout.scale;
  const double after = std::clamp(before * factor, kSmallestScale, kLargestScale);
  if (after == before) return;
  const QPointF fixed = toPlan(around) / before;
  setView(after, fixed * after - around);
}

void MapCanvas::panBy(const QPointF& pixels) { setView(m_layout.scale, m_origin + pixels); }

void MapCanvas::keepInSight(const QPointF& plan) {
  const QRectF inner = QRectF(m_origin, QSizeF(size())).adjusted(40, 40, -40, -40);
  if (!inner.contains(plan)) setView(m_layout.scale, plan - QPointF(width() / 2.0, height() / 2.0));
}

void MapCanvas::sayWhere(const QString& sentence) {
  setAccessibleDescription(sentence);
  emit penMoved(sentence);
}

void MapCanvas::reveal(const rules::Subject& subject) {
  const auto item = itemFor(subject);
  if (!item) return;
  m_state.focus = item;
  const double scale = std::max(m_layout.scale, kReadableScale);
  glideTo(scale, layoutOf(m_content, scale).at(*item) / scale);  // symbols don't lie at the same metres at every scale
  if (const auto stands = subjectOf(m_content, *item)) ringOnce(*stands);
}

void MapCanvas::revealArea(const QRectF& metres) {
  const double wide = std::max(1.0, metres.width()) * kAround;
  const double high = std::max(1.0, metres.height()) * kAround;
  glideTo(std::clamp(std::min(width() / wide, height() / high), kSmallestScale, kReadableScale), metres.center());
}

void MapCanvas::glideTo(double scale, const QPointF& middleM) {
  m_glide->stop();
  const QPointF half(width() / 2.0, height() / 2.0);
  const double before = m_layout.scale;
  const QPointF from = (m_origin + half) / before;
  const auto step = [this, half, before, from, scale, middleM](double t) {
    const double now = before + (scale - before) * t;
    setView(now, (from + (middleM - from) * t) * now - half);
  };
  if (look::motionMs(kGlideMs) == 0 || !isVisible()) return step(1);
  m_glide->disconnect(this);
  m_glide->setDuration(look::motionMs(kGlideMs));
  m_glide->setEasingCurve(QEasingCurve::InOutCubic);
  m_glide->setStartValue(0.0);
  m_glide->setEndValue(1.0);
  connect(m_glide.get(), &QVariantAnimation::valueChanged, this,
          [step](const QVariant& value) { step(value.toDouble()); });
  m_glide->start();
}

void MapCanvas::ringOnce(const rules::Subject& subject) {
  m_ring->stop();
  m_state.ring.reset();
  m_state.showFocus = true;
  if (look::motionMs(kRingMs) == 0) return update();
  m_state.ring = ShowRing{subject, 0};
  m_ring->disconnect(this);
  m_ring->setDuration(look::motionMs(kRingMs));
  m_ring->setStartValue(0.0);
  m_ring->setEndValue(1.0);
  connect(m_ring.get(), &QVariantAnimation::valueChanged, this, [this](const QVariant& value) {
    if (m_state.ring) m_state.ring->progress = value.toDouble();
    update();
  });
  connect(m_ring.get(), &QVariantAnimation::finished, this, [this] {
    m_state.ring.reset();
    update();
  });
  m_ring->start();
}

}  // namespace cordreach::app
