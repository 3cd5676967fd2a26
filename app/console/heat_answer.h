// SPDX-License-Identifier: GPL-3.0-or-later
// One cord at one current through a span of time: what `heat` prints.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/equipment.h"
#include "site/plan.h"
#include "study/band.h"
#include "text/phrasebook.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::console {

struct HeatQuestion {
  site::CordMake cord;
  site::LayingOfCord laying;
  units::Current amps;
  units::Temperature air;
  units::Duration run;
};

struct HeatPoint {
  units::Duration time;
  std::optional<study::Band<double>> conductorC;  // none: beyond the model
  std::optional<study::Band<double>> surfaceC;
};

struct HeatAnswer {
  std::optional<HeatPoint> steady;  // none: beyond the model
  double limitC = 0.0;
  std::optional<units::Duration> timeToLimit;       // likely; none: not within a day
  std::optional<units::Duration> timeToLimitEarly;  // on the adverse edge
  std::optional<units::Duration> timeToLimitLate;   // on the favourable one
  std::optional<units::Current> rated;              // what the table allows the cord; none: it has no row
  std::optional<double> lossScale;                  // of its heat given off, from a reading; none: without one
  std::vector<HeatPoint> series;                    // from 0 to the end of the run

  [[nodiscard]] const HeatPoint& last() const { return series.back(); }
};

[[nodiscard]] HeatAnswer answerHeat(const HeatQuestion& question);

}  // namespace cordreach::console
