// SPDX-License-Identifier: GPL-3.0-or-later
// The dc loop, and its line side behind a bridge.
#include "physics/start_dc.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/contract.h"
#include "physics/load_model.h"

namespace cordreach::physics {
namespace {

constexpr double kRadPerSecondPerRpm = std::numbers::pi / 30.0;

struct DcLoop {
  DcStart start;
  double openV;
  double ohm;  // in front of the armature

  [[nodiscard]] double topRadPerS() const { return openV / start.motor.constantVsPerRad; }

  [[nodiscard]] RunUpPoint at(double speed) const {
    const double k = start.motor.constantVsPerRad;
    const double armatureOhm = start.motor.armature.si();
    const double amps = (openV - k * speed) / (ohm + armatureOhm);
    RunUpPoint point;
    point.currentA = amps;
    point.totalRmsA = amps;
    point.voltageV = openV - amps * ohm;
    point.motorNm = k * amps;
    point.loadNm = start.load.si();
    point.inputW = point.voltageV * amps;
    point.lossW = amps * amps * armatureOhm;
    return point;
  }
};

// The line's side of a dc point: fundamental in phase with the volts at the terminals, which Z in front shares.
void toLine(RunUpPoint& point, const Thevenin& supply, double distortion) {
  point.totalRmsA = kLineRmsPerDcAmp * point.totalRmsA;
  const double amps = point.totalRmsA / std::hypot(1.0, distortion);
  const double across = supply.ohm.imag() * amps;
  const double along = std::sqrt(std::max(0.0, supply.openV * supply.openV - across * across));
  point.voltageV = std::max(0.0, along - supply.ohm.real() * amps);
  point.currentA = supply.openV > 0.0 ? amps * std::complex<double>(along, -across) / supply.openV : 0.0;
}

}  // namespace

units::Duration startTimeConstant(const DcStart& start, units::Resistance inFront) {
  const double k = start.motor.constantVsPerRad;
  return units::Duration::fromSi(start.inertiaKgM2 * (start.motor.armature + inFront).si() / (k * k));
}

StartRun startDc(const DcStart& start, units::Voltage open, units::Resistance inFront, int pieces) {
  const DcLoop loop{start, open.si(), inFront.si()};
  return integrate(
      {start.inertiaKgM2, [&loop](double speed) { return loop.at(speed); }, loop.topRadPerS(), 0.0, {}, pieces});
}

DcStart dcBehindBridge(const RectifiedStart& start) {
  CORDREACH_EXPECTS(start.motor.speedRpm.has_value());
  const double dcV = kBridgeMeanOfRms * start.motor.voltage.si() - kBridgeDropV;
  const double dcA = start.motor.current.si() / kLineRmsPerDcAmp;
  const double armatureOhm = kArmatureDropShare * dcV / dcA;
  const double k = (dcV - dcA * armatureOhm) / (*start.motor.speedRpm * kRadPerSecondPerRpm);
  const double share = kLossTorqueShare + (1.0 - kLossTorqueShare) * start.motor.torqueFactor;
  return {{k, units::Resistance::fromSi(armatureOhm)}, start.inertiaKgM2, units::Torque::fromSi(k * dcA * share)};
}

StartRun startRectified(const RectifiedStart& start, const Thevenin& supply, int pieces) {
  const DcStart dc = dcBehindBridge(start);
  const double openV = kBridgeMeanOfRms * supply.openV - kBridgeDropV;
  if (openV <= 0.0) {
    StartRun standing;
    standing.samples.push_back({0.0, 0.0, 0.0, supply.openV, 0.0});
    standing.lowest = units::Voltage::fromSi(supply.openV);
    return standing;
  }
  const DcLoop loop{dc, openV, supply.ohm.real()};
  const double loopOhm = loop.ohm + dc.motor.armature.si();
  const double k = dc.motor.constantVsPerRad;
  const double endRadPerS = (openV - dc.load.si() / k * loopOhm) / k;
  const double distortion = modelDistortion(LoadModel::RectifiedDc).total;
  return integrate({dc.inertiaKgM2,
                    [&](double speed) {
                      RunUpPoint point = loop.at(speed);
                      const double share = endRadPerS > 0.0 ? std::clamp(speed / endRadPerS, 0.0, 1.0) : 0.0;
                      toLine(point, supply, distortion * share);
                      return point;
                    },
                    loop.topRadPerS(),
                    0.0,
                    {},
                    pieces});
}

}  // namespace cordreach::physics
