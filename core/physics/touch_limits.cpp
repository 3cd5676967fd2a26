// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the limits from their table.
#include "physics/touch_limits.h"

#include "tables/table.h"

namespace cordreach::physics {
namespace {

TemperatureLimit limit(std::string_view id) {
  const tables::Row& row = tables::table("touch_limits").at(id);
  return {units::Temperature::fromCelsius(row.number("value")), row.source()};
}

}  // namespace

TemperatureLimit jacketWarm() { return limit("jacket.warm"); }
TemperatureLimit jacketTooHotToHold() { return limit("jacket.warn"); }
TemperatureLimit jacketTooHotToTouch() { return limit("jacket.stop"); }
TemperatureLimit unmarkedCordRating() { return limit("cord.unmarked"); }
TemperatureLimit conductorDamage() { return limit("conductor.damage"); }
TemperatureLimit conductorShortCircuit() { return limit("conductor.short_circuit"); }

JacketFeel jacketFeel(units::Temperature surface) {
  if (surface > jacketTooHotToTouch().value) return JacketFeel::TooHotToTouch;
  if (surface > jacketTooHotToHold().value) return JacketFeel::TooHotToHold;
  return surface > jacketWarm().value ? JacketFeel::WarmToHold : JacketFeel::Cool;
}

TemperatureLimit burnThreshold(TouchMaterial material, double contactS) {
  constexpr double kMinuteS = 60.0;
  constexpr double kTenMinutesS = 600.0;
  constexpr double kEightHoursS = 28800.0;
  const bool metal = material == TouchMaterial::BareMetal;
  if (contactS >= kEightHoursS) return limit("any.8h");
  if (contactS >= kTenMinutesS) return limit("any.10min");
  if (contactS >= kMinuteS) return limit(metal ? "metal.1min" : "plastic.1min");
  return limit(metal ? "metal.10s" : "plastic.10s");
}

}  // namespace cordreach::physics
