// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_chart.h"

#include <QEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "heat/heat_words.h"
#include "look/accessible_role.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr double kHandleWidthPx = 64;
constexpr double kHandleHeightPx = 24;
constexpr double kDotPx = 5;
constexpr int kLeastHeightPx = 84;  // whatever the text's size
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
  describe();
}

QSize HeatChart::sizeHint() const { return {look::scaled(600), look::scaled(240)}; }
QSize HeatChart::minimumSizeHint() const { return {look::scaled(240), kLeastHeightPx}; }

void HeatChart::setWishes(const PlotWishes& wishes) {
  m_wishes = wishes;
  renew();
}

void HeatChart::renew() {
  m_drawn = {};
  update();
}

void HeatChart::describe() {
  setAccessibleName(say(m_book, "lesson.chart.name"));
  base::Arguments arguments{{"time", clockWords(m_model.clock()).toStdString()}};
  const std::array names = {"a_degrees", "b_degrees"};
  for (std::size_t side = 0; side < kSides; ++side) {
    arguments.push_back({names.at(side), degrees(m_book, m_model.now(side).conductor).toStdString()});
  }
  setAccessibleDescription(say(m_book, "lesson.chart.describe", arguments));
}

void HeatChart::paintClock(QPainter& painter) const {
  const look::Tokens& tokens = look::tokens();
  const double x = m_plot.xOf(m_model.clock());
  const QRectF area = m_plot.area();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(tokens.select, 2));
  painter.drawLine(QLineF(x, area.top() - 4, x, area.bottom() + 4));
  painter.setPen(QPen(tokens.ink, 2));
  painter.setBrush(tokens.sheet);
  for (std::size_t side = 0; side < kSides; ++side) {
    const study::DemonstrationPoint point = m_model.now(side);
    if (point.conductor) painter.drawEllipse(QPointF(x, m_plot.yOf(point.conductor->likely)), kDotPx, kDotPx);
    if (m_wishes.outside && point.surface) {
      painter.drawEllipse(QPointF(x, m_plot.yOf(point.surface->likely)), kDotPx * 0.7, kDotPx * 0.7);
    }
  }
  const double width = look::scaled(kHandleWidthPx);
  QRectF handle(x - width / 2, area.top() - look::scaled(kHandleHeightPx) - 4, width, look::scaled(kHandleHeightPx));
  handle.moveLeft(std::clamp(handle.left(), 2.0, this->width() - width - 2.0));
  painter.setPen(Qt::NoPen);
  painter.setBrush(tokens.select);
  painter.drawRoundedRect(handle, 5, 5);
  painter.setFont(look::font(look::Type::BodyBold));
  painter.setPen(tokens.sheet);
  painter.drawText(handle, Qt::AlignCenter, clockWords(m_model.clock()));
  if (!hasFocus()) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(tokens.select, 2));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

void HeatChart::paintEvent(QPaintEvent*) {
  if (m_drawn.isNull()) {
    m_plot.build(m_model, m_book, m_wishes, size());
    const double ratio = devicePixelRatioF();
    m_drawn = QPixmap((QSizeF(size()) * ratio).toSize());
    m_drawn.setDevicePixelRatio(ratio);
    m_drawn.fill(Qt::transparent);
    QPainter painter(&m_drawn);
    m_plot.paint(painter);
  }
  QPainter painter(this);
  if (m_vector) {
    m_plot.paint(painter);
  } else {
    painter.drawPixmap(0, 0, m_drawn);
  }
  paintClock(painter);
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
  if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
  m_model.setPlaying(false);
  m_model.setClock(m_plot.timeAt(event->position().x()));
}

void HeatChart::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) m_model.setClock(m_plot.timeAt(event->position().x()));
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
