// SPDX-License-Identifier: GPL-3.0-or-later
// Peak, time and what follows, by class.
#include "physics/start_envelope.h"

#include <algorithm>
#include <cmath>

namespace cordreach::physics {
namespace {

using Complex = std::complex<double>;

constexpr double kCompressorTorque = 1.6;
constexpr double kCompressorLoad = 0.9;
constexpr double kTimesTau = 3.0;  // T is three time constants: 95 % of the way
constexpr int kSamples = 48;

struct Drawn {
  Complex currentA;
  double totalRmsA = 0;
  double voltageV = 0;
};

// From the open volts down, halfway each time: converges for laws that any outlet feeds.
Drawn drawnBy(const LoadLaw& law, const Thevenin& supply) {
  constexpr int kRounds = 60;
  Complex voltage = supply.openV;
  LoadPoint point;
  for (int i = 0; i < kRounds; ++i) {
    point = law.at(std::abs(voltage));
    voltage = 0.5 * (voltage + supply.openV / (1.0 + supply.ohm * point.admittanceS));
  }
  const Complex current = point.admittanceS * voltage;
  return {current, std::hypot(std::abs(current), point.distortionA), std::abs(voltage)};
}

StartSample between(const Drawn& peak, const Drawn& running, double toPeak, double timeS, double share) {
  return {timeS, running.currentA + toPeak * (peak.currentA - running.currentA),
          running.totalRmsA + toPeak * (peak.totalRmsA - running.totalRmsA),
          running.voltageV + toPeak * (peak.voltageV - running.voltageV), share};
}

void decay(StartRun& run, const Drawn& peak, const Drawn& running, double lastsS) {
  for (int i = 0; i <= kSamples; ++i) {
    const double timeS = 2.0 * lastsS * i / kSamples;
    const double left = std::exp(-kTimesTau * timeS / lastsS);
    run.samples.push_back(between(peak, running, left, timeS, 1.0 - left));
  }
}

void hold(StartRun& run, const Drawn& peak, const Drawn& running, double lastsS) {
  run.samples.push_back(between(peak, running, 1.0, 0.0, 0.0));
  run.samples.push_back(between(peak, running, 1.0, lastsS, 0.95));
  run.samples.push_back(between(peak, running, 0.0, lastsS * (1.0 + 1e-6), 1.0));
}

double i2tUntil(const std::vector<StartSample>& samples, double endS) {
  double sum = 0;
  for (std::size_t i = 1; i < samples.size() && samples[i - 1].timeS < endS; ++i) {
    const double a = samples[i - 1].totalRmsA;
    const double b = samples[i].totalRmsA;
    sum += (a * a + a * b + b * b) / 3.0 * (std::min(endS, samples[i].timeS) - samples[i - 1].timeS);
  }
  return sum;
}

}  // namespace

std::optional<double> startStretch(LoadModel model, double voltageShare) {
  const double share = std::min(1.0, voltageShare);
  if (model == LoadModel::Universal) return share > 0.0 ? std::optional(1.0 / (share * share)) : std::nullopt;
  if (model == LoadModel::Compressor) return relativeRunUpTime(share, kCompressorTorque, kCompressorLoad);
  return 1.0;
}

base::Result<StartRun> startByClass(const Nameplate& plate, StartEdge edge, const Thevenin& supply) {
  const auto law = makeLoadLaw(plate);
  if (!law) return law.error();
  const Drawn peak = drawnBy(*makeStartLaw(plate, edge), supply);
  const Drawn running = drawnBy(*law.value(), supply);
  const auto stretch = startStretch(plate.model, peak.voltageV / plate.voltage.si());
  StartRun run;
  run.peak = units::Current::fromSi(std::max(peak.totalRmsA, running.totalRmsA));
  run.lowest = units::Voltage::fromSi(std::min(peak.voltageV, running.voltageV));
  if (!stretch) {
    run.samples.push_back(between(peak, running, 1.0, 0.0, 0.0));
    run.settled = run.peak;
    return run;
  }
  const double lastsS = startBand(plate).duration(edge).si() * *stretch;
  if (plate.model == LoadModel::Universal) {
    decay(run, peak, running, lastsS);
  } else {
    hold(run, peak, running, lastsS);
  }
  run.time95 = units::Duration::fromSi(lastsS);
  run.i2tA2S = i2tUntil(run.samples, lastsS);
  run.settled = units::Current::fromSi(running.totalRmsA);
  if (plate.speedRpm) run.endRpm = law.value()->at(running.voltageV).speedRpm;
  return run;
}

}  // namespace cordreach::physics
