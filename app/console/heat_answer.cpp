// SPDX-License-Identifier: GPL-3.0-or-later
// The hottest stretch decides: where the cord is coiled or covered, if any of it is.
#include "console/heat_answer.h"

#include <array>
#include <cmath>

#include "physics/cord_heat.h"
#include "physics/cord_transient.h"
#include "rules/ratings.h"
#include "study/assumptions.h"
#include "study/branch_heat.h"
#include "tables/cord_types.h"

namespace cordreach::console {

namespace {

using physics::Corner;
using study::Band;

constexpr units::Duration kHorizon = 24.0 * units::hour;
constexpr std::size_t kMostPoints = 120;
// Steps that people count in.
constexpr std::array kStepsS{1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0};

double limitOf(const site::CordMake& cord) {
  const tables::CordType* type = tables::cordType(cord.type);
  if (!cord.rating && type != nullptr) return type->rating.celsius();
  return study::ratingOf(cord).celsius();
}

units::Duration stepFor(units::Duration run) {
  for (const double stepS : kStepsS) {
    if (run.si() / stepS <= static_cast<double>(kMostPoints)) return units::Duration::fromSi(stepS);
  }
  return run / static_cast<double>(kMostPoints);
}

HeatPoint pointOf(units::Duration time, const std::optional<physics::HeatResult>& low,
                  const std::optional<physics::HeatResult>& likely, const std::optional<physics::HeatResult>& high) {
  HeatPoint point{time, std::nullopt, std::nullopt};
  if (!low || !likely) return point;
  // Where only the adverse edge has left the model, the band ends at the model's own end.
  const double beyondC = physics::beyondModelTemperature().celsius();
  point.conductorC =
      Band<double>{likely->conductor.celsius(), low->conductor.celsius(), high ? high->conductor.celsius() : beyondC};
  point.surfaceC =
      Band<double>{likely->surface.celsius(), low->surface.celsius(), high ? high->surface.celsius() : beyondC};
  return point;
}

std::optional<physics::HeatResult> nowOf(const physics::CordTransient& cord) {
  return cord.beyondModel() ? std::nullopt : std::optional(cord.now());
}

}  // namespace

HeatAnswer answerHeat(const HeatQuestion& question) {
  const physics::CordSection section = study::sectionOf(question.cord, question.laying);
  HeatAnswer answer;
  answer.limitC = limitOf(question.cord);
  if (question.cord.jacketReading) answer.lossScale = study::lossScaleOf(question.cord);
  answer.rated = rules::cordAmpacity(question.cord, question.air);

  const physics::HeatBand band = physics::steadyBand(section, question.amps, question.air);
  const HeatPoint steady = pointOf(question.run, band.low, band.likely, band.high);
  if (steady.conductorC) answer.steady = steady;

  physics::CordTransient low(section, question.air, Corner::Low);
  physics::CordTransient likely(section, question.air, Corner::Likely);
  physics::CordTransient high(section, question.air, Corner::High);
  const units::Temperature limit = units::Temperature::fromCelsius(answer.limitC);
  answer.timeToLimit = likely.timeToReach(limit, question.amps, kHorizon);
  answer.timeToLimitEarly = high.timeToReach(limit, question.amps, kHorizon);
  answer.timeToLimitLate = low.timeToReach(limit, question.amps, kHorizon);

  const units::Duration step = stepFor(question.run);
  units::Duration time{};
  answer.series.push_back(pointOf(time, nowOf(low), nowOf(likely), nowOf(high)));
  while (time < question.run) {
    const units::Duration next = std::min(step, question.run - time);
    for (physics::CordTransient* cord : {&low, &likely, &high}) cord->advance(question.amps, next);
    time = question.run - time <= step ? question.run : time + next;
    answer.series.push_back(pointOf(time, nowOf(low), nowOf(likely), nowOf(high)));
  }
  return answer;
}

}  // namespace cordreach::console
