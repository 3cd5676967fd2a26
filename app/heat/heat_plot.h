// SPDX-License-Identifier: GPL-3.0-or-later
// The curves of both sides over the run: inside and outside, their bands, the limits with their names. Made once for
// each change, and kept: the clock that runs over it costs no curve.
#pragma once

#include <QRectF>
#include <QSize>
#include <memory>

#include "heat/heat_model.h"
#include "text/phrasebook.h"

class QPainter;

namespace cordreach::app {

// What stands on the chart besides two lines and one limit.
struct PlotWishes {
  bool outside = false;
  bool bands = true;
  bool plug = false;
  bool hand = false;   // the limits of the hand and of the plastic
  bool volts = false;  // at the machine: this and the next two each in a strip below
  bool speed = false;
  bool watts = false;
};

class HeatPlot {
 public:
  HeatPlot();
  ~HeatPlot();

  void build(const HeatModel& model, const text::Phrasebook& book, const PlotWishes& wishes, const QSizeF& size);
  void paint(QPainter& painter) const;
  // What the scales and the clock's handle take of the size, in the present text size.
  [[nodiscard]] static QSize around();
  // Of the curves, within the size.
  [[nodiscard]] QRectF area() const;
  [[nodiscard]] double xOf(units::Duration time) const;
  [[nodiscard]] double yOf(units::Temperature temperature) const;
  [[nodiscard]] units::Duration timeAt(double x) const;

 private:
  struct Parts;
  std::unique_ptr<Parts> m_parts;
};

}  // namespace cordreach::app
