// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_key.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

#include "look/look.h"
#include "look/temperature_ramp.h"
#include "map/cord_curve.h"
#include "map/map_figures.h"
#include "text/quantity_text.h"

namespace cordreach::app {
namespace {

using look::scaled;
using look::Type;

constexpr double kHeadY = 12;
constexpr double kRowY = 27;
constexpr double kFootY = 48;

}  // namespace

MapKey::MapKey(const text::Phrasebook& book, QWidget* parent) : QWidget(parent), m_book(book) {
  setAccessibleName(say(book, "map.key.name"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize MapKey::sizeHint() const { return {scaled(700), scaled(58)}; }

void MapKey::setScale(double pxPerMetre) {
  if (pxPerMetre == m_scale) return;
  m_scale = pxPerMetre;
  update();
}

void MapKey::write(QPainter& painter, double x, double y, const QString& text, bool bold) {
  painter.setFont(look::font(bold ? Type::CaptionBold : Type::Caption));
  painter.setPen(look::tokens().ink2);
  painter.drawText(QPointF(x, y), text);
}

void MapKey::paintTemperatures(QPainter& painter, double left) {
  write(painter, left, scaled(kHeadY), say(m_book, "map.key.temperature"));
  const double wide = scaled(176);
  const QRectF bar(left, scaled(kRowY) - scaled(8), wide, scaled(9));
  painter.setPen(Qt::NoPen);
  painter.setBrush(look::temperatureGradient(bar.topLeft(), bar.topRight(), look::tokens().dark));
  painter.drawRoundedRect(bar, 2, 2);
  const QFontMetricsF metrics(look::font(Type::Caption));
  for (int c = 20; c <= 100; c += 20) {
    const double x = left + wide * (c - look::kRampLowC) / (look::kRampHighC - look::kRampLowC);
    painter.setPen(QPen(look::tokens().line, 1));
    painter.drawLine(QPointF(x, bar.bottom()), QPointF(x, bar.bottom() + 3));
    const QString text = degreesText(m_book, units::Temperature::fromCelsius(c));
    const QString number = c == 100 ? text : text.section(QChar(0x202f), 0, 0);
    const double shift = c == 20 ? 0 : metrics.horizontalAdvance(text.section(QChar(0x202f), 0, 0)) / 2;
    write(painter, x - shift, scaled(kFootY), number);
  }
}

void MapKey::paintThickness(QPainter& painter, double left) {
  write(painter, left, scaled(kHeadY), say(m_book, "map.key.thickness"));
  static constexpr std::array<int, 5> kGauges{18, 16, 14, 12, 10};
  double x = left;
  for (const int gauge : kGauges) {
    const units::WireSize size = units::WireSize::awg(gauge);
    const double width = cordWidth(size.area().in(units::squareMillimetre));
    painter.setPen(QPen(look::tokens().ink, width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, scaled(kRowY) - 4), QPointF(x + scaled(28), scaled(kRowY) - 4));
    write(painter, x + scaled(5), scaled(kFootY), QString::number(gauge));
    x += scaled(42);
  }
}

void MapKey::paintKnown(QPainter& painter, double left) {
  write(painter, left, scaled(kHeadY), say(m_book, "map.key.known"));
  const double y = scaled(kRowY) + 1;
  const std::array<std::pair<const char*, const char*>, 3> items{
      {{"7", "map.trust.traced"}, {"8", "map.trust.assumed"}, {"?", "map.trust.nobody"}}};
  double x = left;
  for (std::size_t i = 0; i < items.size(); ++i) {
    painter.setFont(look::font(i == 0 ? Type::CaptionBold : Type::Caption));
    painter.setPen(look::tokens().ink);
    if (i == 2) {
      QPen dashed(look::tokens().ink, 1.2);
      dashed.setDashPattern({2.6, 1.8});
      painter.setPen(dashed);
      painter.setBrush(Qt::NoBrush);
      painter.drawEllipse(QPointF(x + 4, y - 4), 7, 7);
      painter.setPen(look::tokens().ink);
    }
    painter.drawText(QPointF(x, y), QLatin1String(items[i].first));
    const QString words = say(m_book, items[i].second);
    write(painter, x + scaled(15), y, words);
    x += scaled(15) + QFontMetricsF(look::font(Type::Caption)).horizontalAdvance(words) + scaled(16);
  }
}

// The longest round length that fits in 100 px.
void MapKey::paintScale(QPainter& painter, double right) {
  const bool feet = m_book.locale().units == text::UnitSystem::Us;
  const double unitM = feet ? 0.3048 : 1.0;
  double length = 1;
  for (const double step : {1., 2., 5., 10., 20., 50., 100., 200., 500., 1000.}) {
    if (step * unitM * m_scale <= scaled(100)) length = step;
  }
  const double px = length * unitM * m_scale;
  const double left = right - px;
  const double y = scaled(kRowY) - 1;
  write(painter, left, scaled(kHeadY), say(m_book, "map.key.scale"));
  painter.setPen(QPen(look::tokens().ink2, 1));
  painter.drawLine(QPointF(left, y), QPointF(right, y));
  painter.drawLine(QPointF(left, y), QPointF(left, y - 6));
  painter.drawLine(QPointF(right, y), QPointF(right, y - 6));
  const QString text = QString::fromStdString(text::quantityText(m_book, "length_m", length * unitM));
  write(painter, right - QFontMetricsF(look::font(Type::Caption)).horizontalAdvance(text), scaled(kFootY), text);
}

void MapKey::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintTemperatures(painter, 2);
  if (width() > scaled(470)) paintThickness(painter, scaled(234));
  if (width() > scaled(780)) paintKnown(painter, scaled(476));
  paintScale(painter, width() - 2);
}

}  // namespace cordreach::app
