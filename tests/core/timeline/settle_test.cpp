// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/settle.h"

#include <gtest/gtest.h>

#include <cmath>

#include "physics/load_impedance.h"
#include "physics/load_nameplate.h"

namespace cordreach::timeline {
namespace {

// A branch whose resistance grows with the square of its current, as warm wire's does.
class SquareHeat : public BranchHeat {
 public:
  SquareHeat(double coldOhm, double perA2) : m_coldOhm(coldOhm), m_perA2(perA2) {}
  network::Branch warm(double poleRmsA, double) const override {
    const double ohm = m_coldOhm * (1.0 + m_perA2 * poleRmsA * poleRmsA);
    return {ohm, 0.0};
  }

 private:
  double m_coldOhm;
  double m_perA2;
};

network::Network behindOneWire(std::shared_ptr<const physics::LoadLaw> law, double coldOhm) {
  network::Network network;
  network.panels.push_back({"panel", std::nullopt, {}, {120.0}, {}});
  network::Circuit circuit{"circuit", 0, {0}, {{"bus", 0, {}}, {"end", 0, {coldOhm, 0.0}}}, {}};
  circuit.loads.push_back({"load", 1, 0, std::nullopt, std::move(law)});
  network.circuits.push_back(std::move(circuit));
  return network;
}

TEST(Settle, FindsTheVoltageThatItsOwnHeatLeaves) {
  const Settled settled =
      settle(behindOneWire(physics::makeImpedanceLaw(10.0), 1.0), {{0, 1, std::make_shared<SquareHeat>(1.0, 1e-3)}});
  ASSERT_TRUE(settled.atRest);
  const double currentA = std::abs(settled.warm.circuits[0].loads[0].currentA);
  EXPECT_NEAR(currentA * (10.0 + 1.0 + 1e-3 * currentA * currentA), 120.0, 1e-3);
  EXPECT_LT(std::abs(settled.warm.circuits[0].loads[0].voltageV), std::abs(settled.cold.circuits[0].loads[0].voltageV));
}

TEST(Settle, StopsAtTheInstantWhenAWarmCordStallsItsMotor) {
  physics::Nameplate plate;
  plate.model = physics::LoadModel::Induction;
  plate.voltage = 120.0 * units::volt;
  plate.current = 15.0 * units::ampere;
  const auto motor = physics::makeLoadLaw(plate).value();
  const Settled settled = settle(behindOneWire(motor, 1.2), {{0, 1, std::make_shared<SquareHeat>(1.2, 2e-3)}});
  EXPECT_FALSE(settled.cold.circuits[0].loads[0].stalled);
  EXPECT_TRUE(settled.warm.circuits[0].loads[0].stalled);
  EXPECT_FALSE(settled.atRest);
}

}  // namespace
}  // namespace cordreach::timeline
