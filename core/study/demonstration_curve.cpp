// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a demonstration: between its points, and where it passes a limit.
#include <algorithm>

#include "study/demonstration.h"

namespace cordreach::study {

namespace {

using units::Duration;
using units::Temperature;

// First crossing upwards of one edge of the conductor's band, in proportion between two points.
template <class Read>
std::optional<Duration> firstOver(const Demonstration& demonstration, Temperature limit, Read read) {
  const DemonstrationPoint* before = nullptr;
  for (const DemonstrationPoint& point : demonstration.points) {
    const bool over = !point.conductor || read(*point.conductor) > limit;
    if (over && (before == nullptr || !point.conductor)) return point.time;
    if (over) {
      const units::TemperatureRise whole = read(*point.conductor) - read(*before->conductor);
      return before->time + (point.time - before->time) * ((limit - read(*before->conductor)) / whole);
    }
    before = &point;
  }
  return std::nullopt;
}

template <class Value>
Value between(Value a, Value b, double share) {
  return a + (b - a) * share;
}

std::optional<Band<Temperature>> between(const std::optional<Band<Temperature>>& a,
                                         const std::optional<Band<Temperature>>& b, double share) {
  if (!a || !b) return share < 1.0 ? a : b;
  return Band<Temperature>{between(a->likely, b->likely, share), between(a->low, b->low, share),
                           between(a->high, b->high, share)};
}

DemonstrationPoint between(const DemonstrationPoint& a, const DemonstrationPoint& b, double share) {
  DemonstrationPoint point = a;
  point.time = between(a.time, b.time, share);
  point.conductor = between(a.conductor, b.conductor, share);
  point.surface = between(a.surface, b.surface, share);
  point.plug = between(a.plug, b.plug, share);
  for (std::size_t i = 0; i < point.warmth.size(); ++i) point.warmth[i] = between(a.warmth[i], b.warmth[i], share);
  if (a.powered != b.powered) return point;  // volts and amps end at once
  point.voltage = between(a.voltage, b.voltage, share);
  point.lost = between(a.lost, b.lost, share);
  point.current = between(a.current, b.current, share);
  point.heat = between(a.heat, b.heat, share);
  if (a.speedRpm && b.speedRpm) point.speedRpm = between(*a.speedRpm, *b.speedRpm, share);
  return point;
}

}  // namespace

DemonstrationPoint Demonstration::at(units::Duration time) const {
  const double place = std::clamp(time / step, 0.0, static_cast<double>(points.size() - 1));
  const auto before = std::min(static_cast<std::size_t>(place), points.size() - 1);
  const double share = place - static_cast<double>(before);
  return share > 0.0 ? between(points[before], points[before + 1], share) : points[before];
}

std::optional<units::Duration> Demonstration::conductorOver(units::Temperature over) const {
  return firstOver(*this, over, [](const Band<Temperature>& band) { return band.likely; });
}

std::optional<units::Duration> Demonstration::conductorOverEarly(units::Temperature over) const {
  return firstOver(*this, over, [](const Band<Temperature>& band) { return band.high; });
}

std::optional<units::Duration> Demonstration::conductorOverLate(units::Temperature over) const {
  return firstOver(*this, over, [](const Band<Temperature>& band) { return band.low; });
}

}  // namespace cordreach::study
