// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/plot_limits.h"

#include <algorithm>

#include "physics/touch_limits.h"

namespace cordreach::app {

using study::Demonstration;
using study::DemonstrationPoint;

std::vector<PlotLimit> limitsOf(const HeatModel& model, const PlotWishes& wishes) {
  std::vector<PlotLimit> limits{{model.side(0).demonstration.limit, "lesson.limit.printed", true}};
  if (model.side(1).demonstration.limit != limits.front().at) {
    limits.push_back({model.side(1).demonstration.limit, "lesson.limit.printed_b", true});
  }
  if (wishes.hand) {
    limits.push_back({physics::jacketWarm().value, "lesson.limit.warm", false});
    if (limits.front().at != physics::jacketTooHotToHold().value) {
      limits.push_back({physics::jacketTooHotToHold().value, "lesson.limit.hold", false});
    }
    limits.push_back({physics::jacketTooHotToTouch().value, "lesson.limit.touch", false});
    limits.push_back({physics::conductorDamage().value, "lesson.limit.damage", false});
  }
  return limits;
}

double hottestC(const Demonstration& demonstration, const PlotWishes& wishes) {
  double hottest = 0.0;
  for (const DemonstrationPoint& point : demonstration.points) {
    if (!point.conductor) return kHottestShownC;
    hottest = std::max(hottest, (wishes.bands ? point.conductor->high : point.conductor->likely).celsius());
    if (wishes.plug) hottest = std::max(hottest, point.plug.celsius());
  }
  return hottest;
}

double stepFor(double span, int most) {
  for (const double step : {1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 40.0, 60.0}) {
    if (span / step <= most) return step;
  }
  return 100.0;
}

}  // namespace cordreach::app
