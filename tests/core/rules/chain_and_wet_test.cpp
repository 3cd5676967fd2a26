// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

TEST(CordChained, LetsOneExtensionPassAndFlagsTwo) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("cord.chained"));
  site::Cord second = tiny.cord();
  second.id = site::CordId("x2");
  second.label = "C02";
  tiny.put(second);
  tiny.put(site::ExtensionUse{
      .id = site::ExtensionUseId("u2"), .cord = second.id, .socket = site::CordSocket{site::CordId("x1"), 0}});
  site::Hookup hookup = tiny.hookup();
  hookup.socket = site::CordSocket{second.id, 0};
  tiny.put(hookup);
  study::CordAnswer more = tiny.extensionGiven();
  more.id = second.id;
  more.use = site::ExtensionUseId("u2");
  tiny.given().cords.insert(tiny.given().cords.begin() + 1, more);
  const auto found = tiny.found("cord.chained");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subjects.front(), (Subject{SubjectKind::Cord, "x2"}));
}

TEST(WetUnprotected, AcceptsADeviceAnywhereOnTheWay) {
  TinySite dry;
  EXPECT_FALSE(dry.has("wet.unprotected"));
  TinySite tiny;
  site::Machine machine = tiny.machine();
  machine.wet = true;
  tiny.put(machine);
  EXPECT_TRUE(tiny.has("wet.unprotected"));

  TinySite atOutlet = tiny;
  site::Outlet outlet = tiny.outlet();
  outlet.groundFaultDevice = true;
  atOutlet.put(outlet);
  EXPECT_FALSE(atOutlet.has("wet.unprotected"));

  TinySite atBreaker = tiny;
  site::Circuit circuit = tiny.circuit();
  circuit.groundFault = true;
  atBreaker.put(circuit);
  EXPECT_FALSE(atBreaker.has("wet.unprotected"));

  TinySite inLine = tiny;
  site::Cord cord = tiny.cord();
  cord.make.groundFaultDevice = true;
  inLine.put(cord);
  EXPECT_FALSE(inLine.has("wet.unprotected"));
}

TEST(WetUnprotected, CountsAReceptacleUpstreamNotDownstream) {
  TinySite tiny;
  site::Machine machine = tiny.machine();
  machine.wet = true;
  tiny.put(machine);
  site::Outlet device = tiny.outlet();
  device.id = site::OutletId("o2");
  device.groundFaultDevice = true;
  tiny.put(device);
  const auto run = [](const char* id, std::optional<site::OutletId> from, const char* to) {
    return site::Run{.id = site::RunId(id), .circuit = site::CircuitId("c1"), .from = from, .to = site::OutletId(to)};
  };
  TinySite upstream = tiny;
  upstream.put(run("r1", {}, "o2"));
  upstream.put(run("r2", site::OutletId("o2"), "o1"));
  EXPECT_FALSE(upstream.has("wet.unprotected"));
  TinySite downstream = tiny;
  downstream.put(run("r1", {}, "o1"));
  downstream.put(run("r2", site::OutletId("o1"), "o2"));
  EXPECT_TRUE(downstream.has("wet.unprotected"));
}

}  // namespace
}  // namespace cordreach::rules
