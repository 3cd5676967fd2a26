// SPDX-License-Identifier: GPL-3.0-or-later
// The clock over the temperatures: its line and handle, a dot on every curve there and beside the dots what they read.
#pragma once

#include "heat/heat_model.h"
#include "heat/heat_plot.h"
#include "text/phrasebook.h"

class QPainter;

namespace cordreach::app {

struct ClockScene {
  const HeatPlot& plot;
  const HeatModel& model;
  const text::Phrasebook& book;
  const PlotWishes& wishes;
  double width;  // of the whole chart
};

void paintClock(QPainter& painter, const ClockScene& scene);

}  // namespace cordreach::app
