// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/leakage.h"

#include <gtest/gtest.h>

#include "physics/ground_fault.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::foot;
using units::milliampere;

// That many half-milliampere machines on two contacts and through strips of sockets, behind one receptacle device.
SmallSite machines(std::size_t count, double leakageMa, double cordFt = 0.01) {
  SmallSite building = SmallSite().circuit("1", 20, 60).cord("C", 12, 0.01, count).extension("C", "1");
  for (std::size_t i = 0; i < count; ++i) {
    const std::string name = "M" + std::to_string(i);
    building.machine(name, LoadClass::Resistance, 1, 14, cordFt).plug(name, SmallSite::in("C", i));
    site::Machine machine = building.site.at<site::Machine>(site::MachineId(name));
    machine.leakage = site::known(leakageMa * milliampere);
    building.site.all<site::Machine>().put(machine);
  }
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1"));
  outlet.groundFaultDevice = true;
  building.site.all<site::Outlet>().put(outlet);
  return building;
}

TEST(Leakage, EightMachinesOfHalfAMilliampereReachWhatADeviceMayTripAt) {
  const auto eight = leakagesOf(machines(8, 0.5).site);
  ASSERT_EQ(eight.size(), 1u);
  EXPECT_EQ(eight[0].outlet, site::OutletId("1"));
  EXPECT_EQ(eight[0].shares.size(), 8u);
  EXPECT_NEAR(eight[0].sum.likely.in(milliampere), 4.0, 0.01);
  EXPECT_EQ(physics::groundFaultAnswer(eight[0].sum.likely), physics::GroundFaultAnswer::MayTrip);
  EXPECT_EQ(physics::groundFaultAnswer(leakagesOf(machines(7, 0.5).site)[0].sum.likely),
            physics::GroundFaultAnswer::Holds);
  EXPECT_EQ(physics::groundFaultAnswer(leakagesOf(machines(12, 0.5).site)[0].sum.likely),
            physics::GroundFaultAnswer::Trips);
}

TEST(Leakage, AddsWhatTheCordsLeak) {
  const auto leakages = leakagesOf(machines(1, 0.5, 100.0).site);
  const auto cord = physics::cordLeakage(100.01 * foot, 120.0 * units::volt, 60.0 * units::hertz) +
                    physics::cordLeakage(0.01 * foot, 120.0 * units::volt, 60.0 * units::hertz);
  EXPECT_NEAR(leakages.at(0).sum.likely.in(milliampere), 0.5 + cord.in(milliampere), 1e-3);
}

TEST(Leakage, TakesWhatIsAllowedWhereNobodyMeasured) {
  SmallSite building = machines(1, 0.5);
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M0"));
  machine.leakage.reset();
  building.site.all<site::Machine>().put(machine);
  const LeakageAnswer unknown = leakagesOf(building.site).at(0);
  EXPECT_NEAR(unknown.sum.likely.in(milliampere), 0.5, 0.01);
  EXPECT_NEAR(unknown.sum.low.in(milliampere), 0.0, 0.01);
  EXPECT_FALSE(unknown.shares[0].stated);
  machine.doubleInsulated = true;
  building.site.all<site::Machine>().put(machine);
  EXPECT_NEAR(leakagesOf(building.site).at(0).sum.likely.in(milliampere), 0.25, 0.01);
}

TEST(Leakage, CountsOnTheBreakerAndInLineToo) {
  SmallSite building = machines(2, 0.5);
  site::Circuit circuit = building.site.at<site::Circuit>(site::CircuitId("1"));
  circuit.groundFault = true;
  building.site.all<site::Circuit>().put(circuit);
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M1"));
  machine.inlets[0].cord.groundFaultDevice = true;
  building.site.all<site::Machine>().put(machine);
  const auto leakages = leakagesOf(building.site);
  ASSERT_EQ(leakages.size(), 3u);
  for (const LeakageAnswer& device : leakages) {
    EXPECT_EQ(device.shares.size(), device.inLine ? 1u : 2u);
    if (device.inLine) {
      EXPECT_EQ(*device.inLine, site::HookupId("HM1"));
    }
  }
}

TEST(Leakage, OnlyWhatIsOnTogetherAddsUp) {
  SmallSite building = machines(2, 2.5);
  for (const auto& [id, from] : {std::pair{"HM0", 18.0}, {"HM1", 20.0}}) {
    site::Hookup hookup = building.site.at<site::Hookup>(site::HookupId(id));
    hookup.hours = site::Hours{from * units::hour, (from + 1.0) * units::hour};
    building.site.all<site::Hookup>().put(hookup);
  }
  EXPECT_NEAR(leakagesOf(building.site).at(0).sum.likely.in(milliampere), 2.5, 0.01);
}

TEST(Leakage, NothingAddsUpWhereNoDeviceIs) {
  EXPECT_TRUE(leakagesOf(SmallSite().circuit("1", 20, 60).load("L", "1", 5).site).empty());
}

}  // namespace
}  // namespace cordreach::study
