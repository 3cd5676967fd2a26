// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "tiny_site.h"

namespace cordreach::rules {
namespace {

TEST(CircuitNever, HasNoOverride) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("circuit.never"));
  site::Circuit circuit = tiny.circuit();
  circuit.use = site::UseClass::Never;
  tiny.put(circuit);
  tiny.put(site::Acceptance{.id = site::AcceptanceId("a1"), .finding = "circuit.never", .subject = "h1"});
  ASSERT_TRUE(tiny.has("circuit.never"));
  EXPECT_FALSE(tiny.found("circuit.never")[0].accepted);
}

TEST(CircuitAskFirst, IsSilentOnceAsked) {
  TinySite tiny;
  site::Circuit circuit = tiny.circuit();
  circuit.use = site::UseClass::AskFirst;
  tiny.put(circuit);
  EXPECT_TRUE(tiny.has("circuit.ask_first"));
  site::Hookup hookup = tiny.hookup();
  hookup.asked = true;
  tiny.put(hookup);
  EXPECT_FALSE(tiny.has("circuit.ask_first"));
}

TEST(CircuitNever, HoldsForASocketThatIsMarkedSo) {
  TinySite tiny;
  tiny.markContacts(site::UseClass::Never);
  ASSERT_TRUE(tiny.has("circuit.never"));
  EXPECT_FALSE(tiny.has("circuit.ask_first"));
  ASSERT_EQ(tiny.found("circuit.never")[0].why.size(), 1U);
  EXPECT_EQ(tiny.found("circuit.never")[0].why[0].code, "contact.marked");
  tiny.forgetBreaker();
  EXPECT_TRUE(tiny.has("circuit.never"));
}

TEST(CircuitAskFirst, HoldsForASocketThatIsMarkedSoAndGivesWayToNever) {
  TinySite tiny;
  tiny.markContacts(site::UseClass::AskFirst);
  EXPECT_TRUE(tiny.has("circuit.ask_first"));
  site::Circuit circuit = tiny.circuit();
  circuit.use = site::UseClass::Never;
  tiny.put(circuit);
  EXPECT_FALSE(tiny.has("circuit.ask_first"));
  EXPECT_TRUE(tiny.has("circuit.never"));
}

TEST(CircuitOverRating, StartsJustAboveTheBreaker) {
  TinySite tiny;
  tiny.circuitGiven().plateSum = 20.0 * ampere;
  tiny.circuitGiven().current = sharp(20.0 * ampere);
  EXPECT_FALSE(tiny.has("circuit.over_rating"));
  tiny.circuitGiven().plateSum = 20.1 * ampere;
  EXPECT_TRUE(tiny.has("circuit.over_rating"));
  tiny.circuitGiven().plateSum = 10.0 * ampere;
  tiny.circuitGiven().current = sharp(20.1 * ampere);
  EXPECT_TRUE(tiny.has("circuit.over_rating"));
}

TEST(CircuitOverRating, SaysHowOftenEverythingIsOnTogetherWhereSomethingCycles) {
  const auto has = [](const Finding& finding, std::string_view name) {
    return std::any_of(finding.arguments.begin(), finding.arguments.end(),
                       [&](const base::Argument& argument) { return argument.name == name; });
  };
  TinySite tiny;
  tiny.circuitGiven().plateSum = 21.0 * ampere;
  EXPECT_FALSE(has(tiny.found("circuit.over_rating").at(0), "together_percent"));
  tiny.circuitGiven().together = 0.35;
  tiny.circuitGiven().likelyCurrent = 12.0 * ampere;
  EXPECT_TRUE(has(tiny.found("circuit.over_rating").at(0), "together_percent"));
  EXPECT_TRUE(has(tiny.found("circuit.over_rating").at(0), "usual_a"));
}

TEST(DeviceOverWire, FollowsTheSmallConductorRule) {
  TinySite tiny;
  EXPECT_FALSE(tiny.has("device.over_wire"));
  site::Circuit circuit = tiny.circuit();
  circuit.size = site::known(units::WireSize::awg(14));
  tiny.put(circuit);
  EXPECT_TRUE(tiny.has("device.over_wire"));
  circuit.rating = site::known(15.0 * ampere);
  tiny.put(circuit);
  EXPECT_FALSE(tiny.has("device.over_wire"));
  circuit.rating = site::known(20.0 * ampere);
  circuit.size = site::known(units::WireSize::awg(12));
  circuit.metal = site::Metal::Aluminium;
  tiny.put(circuit);
  EXPECT_TRUE(tiny.has("device.over_wire"));
}

TEST(CodeEightyPercent, HoldsOneMachineAgainstASharedCircuit) {
  TinySite tiny;
  site::Machine machine = tiny.machine();
  machine.inlets[0].plate = site::known(16.0 * ampere);
  tiny.put(machine);
  EXPECT_FALSE(tiny.has("code.eighty_percent"));
  machine.inlets[0].plate = site::known(16.1 * ampere);
  tiny.put(machine);
  EXPECT_TRUE(tiny.has("code.eighty_percent"));
  site::Outlet outlet = tiny.outlet();
  outlet.contacts.pop_back();
  tiny.put(outlet);
  EXPECT_FALSE(tiny.has("code.eighty_percent"));
}

TEST(CodeEightyPercent, HoldsWhatLastsAgainstAnyCircuit) {
  TinySite tiny;
  tiny.circuitGiven().continuousSum = 16.0 * ampere;
  EXPECT_FALSE(tiny.has("code.eighty_percent"));
  tiny.circuitGiven().continuousSum = 16.1 * ampere;
  EXPECT_TRUE(tiny.has("code.eighty_percent"));
}

TEST(NeutralOverRating, LooksAtSharedNeutralsOnceAGroup) {
  TinySite tiny;
  tiny.circuitGiven().neutral = 20.1 * ampere;
  EXPECT_FALSE(tiny.has("neutral.over_rating"));
  site::Circuit other = tiny.circuit();
  other.id = site::CircuitId("c2");
  other.sharesNeutralWith = {site::CircuitId("c1")};
  tiny.put(other);
  site::Circuit circuit = tiny.circuit();
  circuit.sharesNeutralWith = {other.id};
  tiny.put(circuit);
  study::CircuitAnswer more = tiny.circuitGiven();
  more.id = other.id;
  tiny.answer.circuits.push_back(more);
  EXPECT_EQ(tiny.found("neutral.over_rating").size(), 1u);
  tiny.circuitGiven().neutral = 20.0 * ampere;
  EXPECT_FALSE(tiny.has("neutral.over_rating"));
}

}  // namespace
}  // namespace cordreach::rules
