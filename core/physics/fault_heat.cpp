// SPDX-License-Identifier: GPL-3.0-or-later
// Midpoint steps, short against the copper's own time constant and small in kelvin.
#include "physics/fault_heat.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {

namespace {

using Nodes = std::array<double, 3>;

constexpr double kReferenceC = 20.0;
constexpr double kLargestRiseK = 6.0;    // of the copper in a step
constexpr double kOfTimeConstant = 0.4;  // of the fastest: a midpoint step is stable to 2
constexpr double kLossHoldsForK = 10.0;  // of the body, until the surface is looked at anew

CordSection laidOut(CordSection section) {
  if (section.laying == tables::Laying::Coiled || section.laying == tables::Laying::Reel) {
    section.laying = tables::Laying::Floor;
    section.turns = 0.0;
  }
  return section;
}

bool isWound(const CordSection& section) {
  return section.laying == tables::Laying::Coiled || section.laying == tables::Laying::Reel;
}

class Heating {
 public:
  Heating(const FaultCord& cord, const FaultDrive& drive)
      : m_ladder(cord.ladder()), m_drive(drive), m_air(cord.air()), m_nodesC(cord.nodesC()) {
    const units::Temperature body = units::Temperature::fromCelsius(m_nodesC[2]);
    m_lossWPerM = cord.lossWPerM();
    m_lossAtC = m_nodesC[2];
    m_lossSlope = slopeAt(body);
    m_fastestS = m_ladder.capacityJPerMK[0] * m_ladder.resistance01;
  }

  [[nodiscard]] double conductorC() const { return m_nodesC[0]; }
  [[nodiscard]] units::Current current() const { return currentAt(m_nodesC); }

  // One step, of at most that long; answers how long it was.
  double step(double mostS) {
    const Nodes first = rates(m_nodesC);
    const double rise = std::abs(first[0]);
    const double h = std::min({mostS, kOfTimeConstant * m_fastestS, rise > 0.0 ? kLargestRiseK / rise : mostS});
    const Nodes second = rates(moved(m_nodesC, first, h / 2.0));
    m_nodesC = moved(m_nodesC, second, h);
    if (std::abs(m_nodesC[2] - m_lossAtC) > kLossHoldsForK) lookAtSurface();
    return h;
  }

 private:
  static Nodes moved(const Nodes& from, const Nodes& rate, double time) {
    return {from[0] + rate[0] * time, from[1] + rate[1] * time, from[2] + rate[2] * time};
  }

  [[nodiscard]] units::Current currentAt(const Nodes& nodesC) const {
    return m_drive.current(units::Temperature::fromCelsius(nodesC[0]));
  }

  [[nodiscard]] Nodes rates(const Nodes& nodesC) const {
    const double amps = currentAt(nodesC).si();
    const double made = amps * amps * m_ladder.ohmPerM20 * (1.0 + m_ladder.alphaPerK * (nodesC[0] - kReferenceC));
    const double flow01 = (nodesC[0] - nodesC[1]) / m_ladder.resistance01;
    const double flow12 = (nodesC[1] - nodesC[2]) / m_ladder.resistance12;
    const double loss = m_lossWPerM + m_lossSlope * (nodesC[2] - m_lossAtC);
    return {(made - flow01) / m_ladder.capacityJPerMK[0], (flow01 - flow12) / m_ladder.capacityJPerMK[1],
            (flow12 - loss) / m_ladder.capacityJPerMK[2]};
  }

  // Through the last resistance and the surface, which follows without delay.
  [[nodiscard]] double slopeAt(units::Temperature surface) const {
    const double outside = std::max(m_ladder.surface.slopeWPerMK(surface, m_air), 1e-9);
    return 1.0 / (m_ladder.resistance2s + 1.0 / outside);
  }

  void lookAtSurface() {
    const units::Temperature body = units::Temperature::fromCelsius(m_nodesC[2]);
    const units::Temperature surface = surfaceTemperature(m_ladder.surface, body, m_ladder.resistance2s, m_air);
    m_lossWPerM = m_ladder.surface.lossWPerM(surface, m_air);
    m_lossAtC = m_nodesC[2];
    m_lossSlope = slopeAt(surface);
  }

  const CordLadder& m_ladder;
  const FaultDrive& m_drive;
  units::Temperature m_air;
  Nodes m_nodesC;
  double m_lossWPerM = 0.0;
  double m_lossAtC = 0.0;
  double m_lossSlope = 0.0;
  double m_fastestS = 1.0;
};

}  // namespace

units::Current FaultDrive::current(units::Temperature conductor) const {
  const double ratio = 1.0 + alphaPerK * (conductor.celsius() - kReferenceC);
  const std::complex<double> cord{cordOhm20.real() * ratio, cordOhm20.imag()};
  return voltage / (std::abs(restOhm + cord) * units::ohm);
}

FaultCord::FaultCord(CordSection section, Corner corner, const HeatResult& before, units::Temperature air)
    : m_ladder(ladderOf(laidOut(section), corner)), m_air(air) {
  const double conductorC = before.conductor.celsius();
  if (isWound(section)) {
    m_nodesC.fill(conductorC);
  } else {
    const double dropK = conductorC - before.surface.celsius();
    const double whole = m_ladder.resistance01 + m_ladder.resistance12 + m_ladder.resistance2s;
    m_nodesC = {conductorC, conductorC - dropK * m_ladder.resistance01 / whole,
                before.surface.celsius() + dropK * m_ladder.resistance2s / whole};
  }
  const units::Temperature body = units::Temperature::fromCelsius(m_nodesC[2]);
  const units::Temperature surface = surfaceTemperature(m_ladder.surface, body, m_ladder.resistance2s, air);
  m_lossWPerM = m_ladder.surface.lossWPerM(surface, air);
}

FaultHeat faultHeat(const FaultCord& cord, const FaultDrive& drive, units::Duration horizon) {
  CORDREACH_EXPECTS(horizon.si() >= 0.0);
  const double beyondC = beyondModelTemperature().celsius();
  const double untilS = std::min(horizon, faultHorizon()).in(units::second);
  Heating heating(cord, drive);
  FaultHeat heat;
  const auto note = [&](double timeS) {
    heat.push_back({timeS * units::second, units::Temperature::fromCelsius(heating.conductorC()), heating.current()});
  };
  double timeS = 0.0;
  note(timeS);
  while (timeS < untilS && heating.conductorC() < beyondC) {
    timeS += heating.step(untilS - timeS);
    note(timeS);
  }
  return heat;
}

units::Duration faultHorizon() {
  static const double horizonS = tables::table("fault_constants").at("run.horizon").number("value");
  return horizonS * units::second;
}

std::optional<units::Duration> timeToPass(const FaultHeat& heat, units::Temperature limit) {
  CORDREACH_EXPECTS(!heat.empty());
  if (heat.front().conductor > limit) return units::Duration{};
  const auto at = std::find_if(heat.begin(), heat.end(), [&](const FaultPoint& p) { return p.conductor > limit; });
  if (at == heat.end()) return std::nullopt;
  const FaultPoint& before = *(at - 1);
  const double part = (limit - before.conductor) / (at->conductor - before.conductor);
  return before.time + part * (at->time - before.time);
}

units::Temperature conductorAt(const FaultHeat& heat, units::Duration time) {
  CORDREACH_EXPECTS(!heat.empty());
  const auto at = std::find_if(heat.begin(), heat.end(), [&](const FaultPoint& p) { return p.time > time; });
  if (at == heat.end()) return heat.back().conductor;
  if (at == heat.begin()) return at->conductor;
  const FaultPoint& before = *(at - 1);
  return before.conductor + ((time - before.time) / (at->time - before.time)) * (at->conductor - before.conductor);
}

}  // namespace cordreach::physics
