// SPDX-License-Identifier: GPL-3.0-or-later
// Volts at the machine, its speed, and watts lost in the cord, each in a strip of its own below the temperatures and
// over the same time: A solid, B dashed. Beside each name stand the figures at the clock's time.
#pragma once

#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <array>
#include <vector>

#include "heat/heat_model.h"
#include "heat/heat_plot.h"
#include "text/phrasebook.h"

class QPainter;

namespace cordreach::app {

class CurveStrips {
 public:
  [[nodiscard]] static int count(const PlotWishes& wishes);
  [[nodiscard]] static int leastHeight();  // of one
  [[nodiscard]] static int usualHeight();
  [[nodiscard]] static int mostHeight();

  // Below one another in the box, whose left and right edges are those of the time.
  void build(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes, const QRectF& box);
  void paint(QPainter& painter) const;
  void paintClock(QPainter& painter, const HeatModel& model, const text::Phrasebook& book) const;
  // "Volts at the machine: A 108.8, B 109.2", for a screen reader.
  [[nodiscard]] static QStringList figures(const HeatModel& model, const text::Phrasebook& book,
                                           const PlotWishes& wishes);

 private:
  struct Strip {
    std::size_t quantity;
    QRectF area;  // of the curves
    double least;
    double most;
    std::array<QPolygonF, kSides> curves;
    QString name;

    [[nodiscard]] double y(double value) const;
  };
  void addStrip(const HeatModel& model, const text::Phrasebook& book, std::size_t quantity, const QRectF& box);

  std::vector<Strip> m_strips;
  double m_minutes = 1.0;
};

}  // namespace cordreach::app
