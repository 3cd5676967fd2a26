// SPDX-License-Identifier: GPL-3.0-or-later
// The inside of HeatPlot: its chart, and the words that stand on it.
#pragma once

#include <QBrush>
#include <QChart>
#include <QFont>
#include <QGraphicsScene>
#include <QLineSeries>
#include <QPainterPath>
#include <QValueAxis>

#include "heat/heat_plot.h"
#include "heat/plot_limits.h"

namespace cordreach::app {

inline constexpr double kRampPx = 8;
inline constexpr double kLinePx = 4;

struct HeatPlot::Parts {
  QGraphicsScene scene;
  QChart* chart = nullptr;
  QRectF area;
  double minutes = 1.0;
  double coolC = 20.0;
  double hotC = 100.0;
  bool fahrenheit = false;
  QFont small;

  [[nodiscard]] double shown(units::Temperature at) const { return fahrenheit ? at.fahrenheit() : at.celsius(); }
  [[nodiscard]] double x(double minute) const { return area.left() + area.width() * minute / minutes; }
  [[nodiscard]] double y(units::Temperature at) const {
    return area.bottom() - area.height() * (at.celsius() - coolC) / (hotC - coolC);
  }

  void begin(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes, const QSizeF& size);
  QValueAxis* axis(Qt::Alignment where, double from, double to, double step);
  QBrush rampBrush() const;
  struct CurveLook {
    double widthPx;
    Qt::PenStyle style;
  };
  template <class Read>
  void addCurve(const study::Demonstration& demonstration, const CurveLook& how, Read read);
  void add(QAbstractSeries* series) const;
  void addBand(const study::Demonstration& demonstration);
  void addCurves(const HeatModel& model, const PlotWishes& wishes);
  void addLimits(const std::vector<PlotLimit>& limits);

  std::vector<QPainterPath> curves;  // outlines, from the area's corner
  std::vector<PlotLimit> limits;
  struct Mark {
    QPointF at;
    QString words;
    Qt::Alignment side;
    bool dot;
    bool bold;
  };
  std::vector<Mark> marks;
  std::vector<double> trips;  // x of them
  double degreeStep = 10.0;
  void paintDegrees(QPainter& painter) const;
  void markCurves(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes);
  void markEvents(const HeatModel& model, const text::Phrasebook& book);
  [[nodiscard]] QString limitWords(const text::Phrasebook& book, const PlotLimit& limit) const;
  void markLimits(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes);
  [[nodiscard]] bool isFree(const QRectF& box, const HeatModel& model, const PlotWishes& wishes) const;
  [[nodiscard]] QRectF boxOf(const Mark& mark) const;
  void paintMark(QPainter& painter, const Mark& mark) const;
};

}  // namespace cordreach::app
