// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_chart.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "heat/clock_paint.h"
#include "heat/heat_words.h"
#include "look/accessible_role.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
// Of the curves alone, whatever the text's size.
constexpr int kLeastPx = 120;
constexpr int kComfortablePx = 160;
}  // namespace

HeatChart::HeatChart(HeatModel& model, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(book) {
  look::setRole(this, QAccessible::Chart);
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  connect(&model, &HeatModel::sideChanged, this, &HeatChart::renew);
  connect(&model, &HeatModel::ticked, this, QOverload<>::of(&QWidget::update));
  connect(&model, &HeatModel::ticked, this, [this] {
    if (!m_model.isPlaying()) describe();
  });
  connect(&model, &HeatModel::playingChanged, this, &HeatChart::describe);
  connect(&model, &HeatModel::busyChanged, this, QOverload<>::of(&QWidget::update));
  describe();
}

QSize HeatChart::sizeHint() const { return {look::scaled(600), look::scaled(240)}; }
QSize HeatChart::minimumSizeHint() const {
  return {look::scaled(240),
          kLeastPx + HeatPlot::around().height() + CurveStrips::count(m_wishes) * CurveStrips::leastHeight()};
}

int HeatChart::comfortableHeight() const {
  return kComfortablePx + HeatPlot::around().height() + CurveStrips::count(m_wishes) * CurveStrips::usualHeight();
}

void HeatChart::setWishes(const PlotWishes& wishes) {
  m_wishes = wishes;
  updateGeometry();
  describe();
  renew();
}

void HeatChart::renew() {
  m_drawn = {};
  update();
}

void HeatChart::describe() {
  setAccessibleName(say(m_book, "lesson.chart.name"));
  if (!m_model.isWorkedOut()) return;
  base::Arguments arguments{{"time", clockWords(m_model.clock()).toStdString()}};
  const std::array names = {"a_degrees", "b_degrees"};
  for (std::size_t side = 0; side < kSides; ++side) {
    arguments.push_back({names.at(side), degrees(m_book, m_model.now(side).conductor).toStdString()});
  }
  QStringList lines{say(m_book, "lesson.chart.describe", arguments)};
  lines << CurveStrips::figures(m_model, m_book, m_wishes);
  setAccessibleDescription(lines.join(QStringLiteral(" ")));
}

int HeatChart::stripsHeight() const {
  const int count = CurveStrips::count(m_wishes);
  if (count == 0) return 0;
  const int each = CurveStrips::usualHeight() + (height() - comfortableHeight()) / (count + 2);
  return count * std::clamp(each, CurveStrips::leastHeight(), CurveStrips::mostHeight());
}

void HeatChart::build() {
  const int strips = stripsHeight();
  m_plot.build(m_model, m_book, m_wishes, QSizeF(width(), height() - strips));
  const QRectF area = m_plot.area();
  m_strips.build(m_model, m_book, m_wishes, QRectF(area.left(), height() - strips, area.width(), strips));
  const double ratio = devicePixelRatioF();
  m_drawn = QPixmap((QSizeF(size()) * ratio).toSize());
  m_drawn.setDevicePixelRatio(ratio);
  m_drawn.fill(Qt::transparent);
  QPainter painter(&m_drawn);
  m_plot.paint(painter);
  m_strips.paint(painter);
}

void HeatChart::paintEvent(QPaintEvent*) {
  if (!m_model.isWorkedOut()) return paintNothingYet();
  if (m_drawn.isNull()) build();
  QPainter painter(this);
  if (m_model.isOld()) painter.setOpacity(kOldOpacity);
  if (m_vector) {
    m_plot.paint(painter);
    m_strips.paint(painter);
  } else {
    painter.drawPixmap(0, 0, m_drawn);
  }
  paintClock(painter, {m_plot, m_model, m_book, m_wishes, static_cast<double>(width())});
  m_strips.paintClock(painter, m_model, m_book);
  if (!hasFocus() || m_vector) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look::tokens().select, 2));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

void HeatChart::paintNothingYet() {
  QPainter painter(this);
  painter.setFont(look::font(look::Type::Body));
  painter.setPen(look::tokens().ink2);
  painter.drawText(rect(), Qt::AlignCenter, say(m_book, "window.verdict.working"));
}

void HeatChart::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  renew();
}

void HeatChart::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const QEvent::Type type = event->type();
  if (type == QEvent::LanguageChange) describe();
  if (type == QEvent::FontChange) updateGeometry();
  if (type == QEvent::LanguageChange || type == QEvent::FontChange || type == QEvent::PaletteChange) renew();
}

void HeatChart::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !m_model.isWorkedOut()) return QWidget::mousePressEvent(event);
  m_model.setPlaying(false);
  m_model.setClock(m_plot.timeAt(event->position().x()));
}

void HeatChart::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton && m_model.isWorkedOut())
    m_model.setClock(m_plot.timeAt(event->position().x()));
}

void HeatChart::keyPressEvent(QKeyEvent* event) {
  const units::Duration step = event->modifiers() & Qt::ShiftModifier ? 10.0 * units::minute : units::minute;
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
      return m_model.setClock(m_model.clock() - step);
    case Qt::Key_Right:
    case Qt::Key_Up:
      return m_model.setClock(m_model.clock() + step);
    case Qt::Key_Home:
      return m_model.setClock({});
    case Qt::Key_End:
      return m_model.setClock(m_model.run());
    case Qt::Key_Space:
      return m_model.setPlaying(!m_model.isPlaying());
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace cordreach::app
