// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/start_machine.h"

#include <gtest/gtest.h>

#include "core/physics/load_test_support.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

const Thevenin kOutlet{120.0, {0.5, 0.05}};

StartMachine machineOf(LoadModel model, double amps, const char* kind) { return {plateOf(model, 115.0, amps), kind}; }

TEST(StartMachine, EveryEndOfItsBandIsOrdered) {
  for (const auto& machine :
       {machineOf(LoadModel::Induction, 12.0, "slow-machine"), machineOf(LoadModel::Induction, 14.5, "burnisher"),
        machineOf(LoadModel::RectifiedDc, 14.6, "burnisher"), machineOf(LoadModel::InductionFan, 4.0, "air-mover"),
        machineOf(LoadModel::Universal, 9.5, "vacuum-upright")}) {
    const StartRun easy = startOf(machine, StartEdge::Low, kOutlet).value();
    const StartRun likely = startOf(machine, StartEdge::Typical, kOutlet).value();
    const StartRun hard = startOf(machine, StartEdge::High, kOutlet).value();
    ASSERT_TRUE(easy.completes() && likely.completes()) << machine.kind;
    EXPECT_LT(*easy.time95, *likely.time95) << machine.kind;
    EXPECT_TRUE(!hard.completes() || *hard.time95 > *likely.time95) << machine.kind;
    EXPECT_LE(easy.peak, hard.peak) << machine.kind;
  }
}

TEST(StartMachine, TakesWhatIsStatedOverTheTable) {
  StartMachine machine = machineOf(LoadModel::RectifiedDc, 14.6, "burnisher");
  const double usual = startOf(machine, StartEdge::Typical, kOutlet).value().time95->si();
  machine.inertiaKgM2 = 0.214;
  EXPECT_NEAR(startOf(machine, StartEdge::Typical, kOutlet).value().time95->si(), 2.0 * usual, 1e-6);
  EXPECT_EQ(startOf(machine, StartEdge::High, kOutlet).value().peak,
            startOf(machine, StartEdge::Low, kOutlet).value().peak);
}

TEST(StartMachine, ReadsACodeLetterWithItsPower) {
  StartMachine machine = machineOf(LoadModel::Induction, 15.0, "");
  machine.plate.shaftPower = 1.5 * units::horsepower;
  machine.codeLetter = 'L';
  EXPECT_NEAR(startAmps(machine, StartEdge::Low).value().si(), 117.4, 0.1);
  EXPECT_NEAR(startAmps(machine, StartEdge::High).value().si(), 130.3, 0.1);
  machine.plate.lockedRotorCurrent = 80.0 * units::ampere;
  EXPECT_EQ(startAmps(machine, StartEdge::High).value().si(), 80.0);
  machine.plate.lockedRotorCurrent.reset();
  machine.codeLetter = 'Q';
  EXPECT_EQ(startOf(machine, StartEdge::Typical, kOutlet).error().code, "motor.unknown_code_letter");
}

TEST(StartMachine, RefusesAnAbsurdPlate) {
  EXPECT_EQ(startOf(machineOf(LoadModel::Induction, 0.0, ""), StartEdge::Low, kOutlet).error().code,
            "load.current_out_of_range");
}

TEST(StartMachine, OnlyBurnishersStartTipped) {
  EXPECT_TRUE(startsTipped(machineOf(LoadModel::RectifiedDc, 14.6, "burnisher")));
  EXPECT_TRUE(startsTipped(machineOf(LoadModel::Induction, 14.5, "burnisher")));
  EXPECT_FALSE(startsTipped(machineOf(LoadModel::Induction, 12.0, "slow-machine")));
  EXPECT_FALSE(startsTipped(machineOf(LoadModel::Universal, 9.5, "vacuum-upright")));
}

TEST(StartInertiaTable, IsInOrder) {
  for (const auto& row : tables::table("start_inertia").rows()) {
    EXPECT_LE(row.number("inertia_low"), row.number("inertia_likely")) << row.id();
    EXPECT_LE(row.number("inertia_likely"), row.number("inertia_high")) << row.id();
    EXPECT_LE(row.number("drag_low"), row.number("drag_likely")) << row.id();
    EXPECT_LE(row.number("drag_likely"), row.number("drag_high")) << row.id();
    if (row.empty("torque_likely")) continue;
    EXPECT_LE(row.number("torque_low"), row.number("torque_likely")) << row.id();
    EXPECT_LE(row.number("torque_likely"), row.number("torque_high")) << row.id();
  }
}

}  // namespace
}  // namespace cordreach::physics
