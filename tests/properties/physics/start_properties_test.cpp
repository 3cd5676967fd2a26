// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for the start of any machine behind any supply.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "core/physics/load_test_support.h"
#include "physics/plate_induction.h"
#include "physics/start_dc.h"
#include "physics/start_induction.h"
#include "physics/start_machine.h"

namespace cordreach::physics {
namespace {

double within(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1000001) / 1e6; }

StartMachine anyMachine() {
  StartMachine machine;
  machine.plate.model = *rc::gen::element(LoadModel::Induction, LoadModel::InductionFan, LoadModel::RectifiedDc,
                                          LoadModel::Universal, LoadModel::Compressor);
  machine.plate.current = within(2.0, 16.0) * units::ampere;
  machine.plate.torqueFactor = within(0.2, 1.3);
  machine.kind = *rc::gen::element<std::string>("burnisher", "slow-machine", "air-mover", "");
  if (*rc::gen::arbitrary<bool>()) machine.inertiaKgM2 = within(0.01, 2.0);
  return machine;
}

Thevenin anySupply() { return {within(105.0, 126.0), {within(0.05, 1.5), within(0.0, 0.2)}}; }
StartEdge anyEdge() { return *rc::gen::element(StartEdge::Low, StartEdge::Typical, StartEdge::High); }

double timeOf(const StartRun& run) { return run.time95 ? run.time95->si() : INFINITY; }

RC_GTEST_PROP(Start, ALongerCordNeverShortensItNorRaisesThePeak, ()) {
  const StartMachine machine = anyMachine();
  const StartEdge edge = anyEdge();
  const Thevenin supply = anySupply();
  Thevenin farther = supply;
  farther.ohm += std::complex<double>(within(0.0, 1.0), within(0.0, 0.05));
  const StartRun near = startOf(machine, edge, supply).value();
  const StartRun far = startOf(machine, edge, farther).value();
  RC_ASSERT(timeOf(far) >= timeOf(near) * (1.0 - 1e-6));
  RC_ASSERT(far.peak.si() <= near.peak.si() * (1.0 + 1e-9));
}

RC_GTEST_PROP(Start, MoreInertiaNeverShortensIt, ()) {
  StartMachine machine = anyMachine();
  const StartEdge edge = anyEdge();
  const Thevenin supply = anySupply();
  machine.inertiaKgM2 = within(0.01, 1.0);
  const StartRun light = startOf(machine, edge, supply).value();
  *machine.inertiaKgM2 *= within(1.0, 3.0);
  const StartRun heavy = startOf(machine, edge, supply).value();
  RC_ASSERT(timeOf(heavy) >= timeOf(light));
  RC_ASSERT(heavy.peak == light.peak);
}

RC_GTEST_PROP(Start, SamplesAreFiniteAndInOrder, ()) {
  const StartRun run = startOf(anyMachine(), anyEdge(), anySupply()).value();
  double last = -1.0;
  for (const StartSample& sample : run.samples) {
    RC_ASSERT(std::isfinite(sample.timeS) && sample.timeS > last);
    RC_ASSERT(std::isfinite(sample.totalRmsA) && sample.totalRmsA >= std::abs(sample.currentA) - 1e-9);
    RC_ASSERT(sample.voltageV >= 0.0 && sample.voltageV < 127.0);
    RC_ASSERT(sample.totalRmsA <= run.peak.si() * (1.0 + 1e-9));
    last = sample.timeS;
  }
}

InductionStart anyInduction() {
  Nameplate plate = plateOf(LoadModel::Induction, 115.0, within(4.0, 16.0));
  plate.speedRpm = within(150.0, 2000.0);
  InductionStart start{inductionLoadOf(plate).value(), 0.0, within(5.0, 8.0) * plate.current.si(), within(1.5, 3.5)};
  start.load.torqueFactor = within(0.0, 1.3);
  start.inertiaKgM2 = within(100.0, 1000.0) / std::pow(*plate.speedRpm / 9.55, 2.0);
  return start;
}

bool alike(const StartRun& a, const StartRun& b) {
  const auto close = [](double x, double y) { return std::abs(x - y) <= 1e-3 * std::abs(y) + 1e-9; };
  return a.completes() == b.completes() && (!a.completes() || close(timeOf(a), timeOf(b))) &&
         close(a.i2tA2S, b.i2tA2S) && close(a.peak.si(), b.peak.si());
}

RC_GTEST_PROP(Start, HalvingTheStepChangesNothingVisible, ()) {
  const Thevenin supply = anySupply();
  const InductionStart induction = anyInduction();
  RC_ASSERT(alike(startInduction(induction, supply), startInduction(induction, supply, 64)));
  const RectifiedStart dc{{115.0 * units::volt, within(4.0, 16.0) * units::ampere, 2000.0, within(0.0, 1.3)},
                          within(0.02, 0.3)};
  RC_ASSERT(alike(startRectified(dc, supply), startRectified(dc, supply, 64)));
}

void expectBalance(const StartEnergy& energy) {
  const double out = energy.lossJ + energy.kineticJ + energy.loadJ;
  RC_ASSERT(std::abs(energy.inputJ - out) <= 2e-3 * energy.inputJ);
}

// Electrical energy in = copper loss + kinetic energy + what drag and friction took.
RC_GTEST_PROP(Start, EnergyIsKept, ()) {
  const Thevenin supply = anySupply();
  expectBalance(startInduction(anyInduction(), supply).energy);
  const RectifiedStart dc{{115.0 * units::volt, within(4.0, 16.0) * units::ampere, 2000.0, within(0.0, 1.3)},
                          within(0.02, 0.3)};
  expectBalance(startRectified(dc, supply).energy);
}

}  // namespace
}  // namespace cordreach::physics
