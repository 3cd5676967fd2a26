// SPDX-License-Identifier: GPL-3.0-or-later
// One circuit below the switch, another above, both behind the supply.
#include "physics/start_induction.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

using Complex = std::complex<double>;

class Machine {
 public:
  Machine(const InductionStart& start, const Thevenin& supply)
      : m_load(start.load),
        m_supply(supply),
        m_winding(startWindingOf(start)),
        m_admittance(admittanceOfRotor(start.load.fit.circuit)),
        m_topRadPerS(*start.load.fullLoadRpm / (1.0 - start.load.fullLoadSlip) * std::numbers::pi / 30.0) {}

  [[nodiscard]] double topRadPerS() const { return m_topRadPerS; }
  [[nodiscard]] double switchRadPerS() const { return kStartSwitchShare * m_topRadPerS; }

  // Where the running circuit's torque is greatest, with the supply in series with its stator.
  [[nodiscard]] double pullOutRadPerS() const {
    InductionCircuit behind = m_load.fit.circuit;
    behind.r1Ohm += m_supply.ohm.real();
    behind.x1Ohm += m_supply.ohm.imag();
    const RotorView view = rotorView(behind);
    return m_topRadPerS * (1.0 - std::min(1.0, behind.r2Ohm / std::hypot(view.rOhm, view.xOhm)));
  }

  [[nodiscard]] RunUpPoint at(double speed) const {
    const double slip = std::max(1e-6, 1.0 - speed / m_topRadPerS);
    RunUpPoint point = speed < switchRadPerS() ? withStartWinding(slip) : running(slip);
    const double fundamentalA = std::abs(point.currentA);
    point.totalRmsA = std::hypot(fundamentalA, m_load.distortion.total * fundamentalA);
    point.loadNm = loadNm(speed);
    return point;
  }

 private:
  [[nodiscard]] RunUpPoint drawing(Complex machineOhm, double statorOhm) const {
    RunUpPoint point;
    point.currentA = m_supply.openV / (m_supply.ohm + machineOhm);
    point.voltageV = std::abs(point.currentA * machineOhm);
    point.inputW = std::norm(point.currentA) * machineOhm.real();
    point.lossW = std::norm(point.currentA) * statorOhm;
    return point;
  }

  void addRotor(RunUpPoint& point, double rotorA, double r2Ohm, double slip) const {
    point.lossW += rotorA * rotorA * r2Ohm;
    point.motorNm = rotorA * rotorA * r2Ohm / slip / m_topRadPerS;
  }

  [[nodiscard]] RunUpPoint withStartWinding(double slip) const {
    RunUpPoint point = drawing({m_winding.r1Ohm + m_winding.r2Ohm / slip, m_winding.xOhm}, m_winding.r1Ohm);
    addRotor(point, std::abs(point.currentA), m_winding.r2Ohm, slip);
    return point;
  }

  [[nodiscard]] RunUpPoint running(double slip) const {
    const InductionCircuit& circuit = m_load.fit.circuit;
    RunUpPoint point = drawing(1.0 / m_admittance.at(circuit.r2Ohm / slip), circuit.r1Ohm);
    const Complex magnetizing(0.0, circuit.xmOhm);
    const Complex rotor(circuit.r2Ohm / slip, circuit.x2Ohm);
    addRotor(point, std::abs(point.currentA * magnetizing / (magnetizing + rotor)), circuit.r2Ohm, slip);
    return point;
  }

  [[nodiscard]] double loadNm(double speed) const {
    const double share = speed / m_topRadPerS / (1.0 - m_load.fullLoadSlip);
    const double shape = m_load.shaft == ShaftLoad::Fan ? share * share : 1.0;
    return (m_load.fit.lossAirGapW + m_load.torqueFactor * shape * m_load.fit.loadAirGapW) / m_topRadPerS;
  }

  const InductionLoad& m_load;
  Thevenin m_supply;
  StartWinding m_winding;
  AdmittanceOfRotor m_admittance;
  double m_topRadPerS;
};

}  // namespace

StartWinding startWindingOf(const InductionStart& start) {
  CORDREACH_EXPECTS(start.lockedRotorA > 0.0 && start.lockedRotorRatio > 0.0);
  const double ohm = start.load.plateV / start.lockedRotorA;
  const double resistanceOhm = kLockedRotorPowerFactor * ohm;
  const double airGapW = start.lockedRotorRatio * start.load.fit.loadAirGapW + start.load.fit.lossAirGapW;
  constexpr double kMostOfRotor = 0.9;
  const double rotorOhm = std::min(airGapW / (start.lockedRotorA * start.lockedRotorA), kMostOfRotor * resistanceOhm);
  const double sine = std::sqrt(1.0 - kLockedRotorPowerFactor * kLockedRotorPowerFactor);
  return {resistanceOhm - rotorOhm, rotorOhm, sine * ohm};
}

StartRun startInduction(const InductionStart& start, const Thevenin& supply, int pieces) {
  CORDREACH_EXPECTS(start.load.fullLoadRpm.has_value() && start.load.plateV > 0.0);
  const Machine machine(start, supply);
  return integrate({start.inertiaKgM2, [&machine](double speed) { return machine.at(speed); }, machine.topRadPerS(),
                    machine.pullOutRadPerS(), machine.switchRadPerS(), pieces});
}

}  // namespace cordreach::physics
