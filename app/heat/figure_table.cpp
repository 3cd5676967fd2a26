// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/figure_table.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

#include "heat/heat_words.h"
#include "look/look.h"
#include "shell/say.h"
#include "text/quantity_text.h"

namespace cordreach::app {

namespace {

constexpr int kGap = 14;
constexpr double kRowPx = 20;

// As wide as the figures ever get, so that nothing moves while the clock runs.
int valueWidth(const QFontMetrics& metrics) { return metrics.horizontalAdvance(QStringLiteral("18,000")) + 4; }

QString number(const text::Phrasebook& book, double value, int decimals) {
  return QString::fromStdString(text::numberText(book.locale(), value, decimals));
}

}  // namespace

FigureTable::FigureTable(HeatModel& model, const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(book) {
  connect(&model, &HeatModel::ticked, this, QOverload<>::of(&QWidget::update));
  connect(&model, &HeatModel::ticked, this, [this] {
    if (!m_model.isPlaying()) describe();
  });
  connect(&model, &HeatModel::playingChanged, this, &FigureTable::describe);
  connect(&model, &HeatModel::busyChanged, this, QOverload<>::of(&QWidget::update));
  describe();
}

std::vector<FigureTable::Row> FigureTable::rows() const {
  const bool there = m_model.isWorkedOut();
  using Point = study::DemonstrationPoint;
  const std::array points = {there ? m_model.now(0) : Point{}, there ? m_model.now(1) : Point{}};
  const bool us = m_book.locale().units == text::UnitSystem::Us;
  const auto row = [&](const char* code, auto value) {
    const QString name = say(m_book, code, {{"scale", us ? "f" : "c"}});
    return there ? Row{name, {value(points[0]), value(points[1])}} : Row{name, {}};
  };
  const auto degreesOf = [&](units::Temperature at) { return number(m_book, us ? at.fahrenheit() : at.celsius(), 0); };
  const QString none = QStringLiteral("–");
  return {row("lesson.row.inside",
              [&](const Point& point) { return point.conductor ? degreesOf(point.conductor->likely) : none; }),
          row("lesson.row.outside",
              [&](const Point& point) { return point.surface ? degreesOf(point.surface->likely) : none; }),
          row("lesson.row.plug", [&](const Point& point) { return degreesOf(point.plug); }),
          row("lesson.row.amps", [&](const Point& point) { return number(m_book, point.current.si(), 1); }),
          row("lesson.row.volts", [&](const Point& point) { return number(m_book, point.voltage.si(), 1); }),
          row("lesson.row.lost", [&](const Point& point) { return number(m_book, point.lost.si(), 1); }),
          row("lesson.row.watts", [&](const Point& point) { return number(m_book, point.heat.si(), 0); }),
          row("lesson.row.speed", [&](const Point& point) {
            return point.speedRpm ? number(m_book, std::round(*point.speedRpm / 10.0) * 10.0, 0) : none;
          })};
}

QSize FigureTable::sizeHint() const {
  const QFontMetrics names(look::font(look::Type::Body));
  const QFontMetrics values(look::font(look::Type::BodyBold));
  int width = 0;
  const std::vector<Row> all = rows();
  for (const Row& row : all) width = std::max(width, names.horizontalAdvance(row.name));
  return {width + static_cast<int>(kSides) * (kGap + valueWidth(values)) + 2,
          static_cast<int>(all.size() + 1) * look::scaled(kRowPx)};
}

void FigureTable::describe() {
  setAccessibleName(say(m_book, "lesson.table.name"));
  QStringList lines;
  for (const Row& row : rows()) lines << row.name + ": A " + row.values[0] + ", B " + row.values[1];
  setAccessibleDescription(lines.join(QStringLiteral("; ")));
}

void FigureTable::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) describe();
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) updateGeometry();
}

void FigureTable::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (m_model.isOld()) painter.setOpacity(kOldOpacity);
  const int row = look::scaled(kRowPx);
  const int value = valueWidth(QFontMetrics(look::font(look::Type::BodyBold)));
  const auto cell = [&](std::size_t side, int line) {
    const int right = width() - 2 - static_cast<int>(kSides - 1 - side) * (value + kGap);
    return QRect(right - value, line * row, value, row);
  };
  painter.setFont(look::font(look::Type::BodyBold));
  painter.setPen(look::tokens().ink);
  for (std::size_t side = 0; side < kSides; ++side) {
    painter.drawText(cell(side, 0), Qt::AlignRight | Qt::AlignVCenter, sideLetter(side));
  }
  int line = 1;
  for (const Row& each : rows()) {
    painter.setFont(look::font(look::Type::Body));
    painter.setPen(look::tokens().ink2);
    painter.drawText(QRect(0, line * row, width(), row), Qt::AlignLeft | Qt::AlignVCenter, each.name);
    painter.setFont(look::font(look::Type::BodyBold));
    painter.setPen(look::tokens().ink);
    for (std::size_t side = 0; side < kSides; ++side) {
      painter.drawText(cell(side, line), Qt::AlignRight | Qt::AlignVCenter, each.values[side]);
    }
    ++line;
  }
}

}  // namespace cordreach::app
