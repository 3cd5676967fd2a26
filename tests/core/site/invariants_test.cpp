// SPDX-License-Identifier: GPL-3.0-or-later
// What files can't show: pluggings whose hours do not meet are sound, and large sites are checked quickly. The faults
// themselves are files in tests/zoo.
#include "site/invariants.h"

#include <gtest/gtest.h>

#include <chrono>

#include "support/random_site.h"

namespace cordreach {
namespace {

using site::Hours;

Hours hours(double from, double until) { return {from * units::hour, until * units::hour}; }

// One outlet with two contacts, two machines, two cords.
class Pluggings : public ::testing::Test {
 protected:
  Pluggings() {
    m_site.all<site::Outlet>().put({.id = m_outlet, .contacts = {{.name = "upper"}, {.name = "lower"}}});
    for (const char* id : {"M1", "M2"}) {
      m_site.all<site::Machine>().put({.id = site::MachineId(id), .inlets = {{.name = "A"}}});
    }
    for (const char* id : {"C1", "C2"}) m_site.all<site::Cord>().put({.id = site::CordId(id), .sockets = {"5-15", ""}});
  }
  void hookup(const char* id, const char* machine, site::Socket socket, std::optional<Hours> when) {
    m_site.all<site::Hookup>().put({.id = site::HookupId(id),
                                    .machine = site::MachineId(machine),
                                    .inlet = "A",
                                    .socket = std::move(socket),
                                    .hours = when});
  }
  void extension(const char* id, const char* cord, site::Socket socket, std::optional<Hours> when) {
    m_site.all<site::ExtensionUse>().put(
        {.id = site::ExtensionUseId(id), .cord = site::CordId(cord), .socket = std::move(socket), .hours = when});
  }
  [[nodiscard]] site::Socket contact(const char* name) const { return site::OutletSocket{m_outlet, name}; }
  [[nodiscard]] static site::Socket socketOf(const char* cord, std::size_t socket = 0) {
    return site::CordSocket{site::CordId(cord), socket};
  }
  [[nodiscard]] std::string fault() const {
    const auto sound = site::checkInvariants(m_site);
    return sound ? "" : sound.error().code;
  }

  site::OutletId m_outlet{"O1"};
  site::Site m_site{.id = site::SiteId("x")};
};

TEST_F(Pluggings, OneAfterTheOtherShareAContact) {
  hookup("H1", "M1", contact("upper"), hours(18, 19));
  hookup("H2", "M2", contact("upper"), hours(19, 20));
  EXPECT_EQ(fault(), "");
  hookup("H2", "M2", contact("upper"), hours(18.99, 20));
  EXPECT_EQ(fault(), "site.socket_taken_twice");
}

TEST_F(Pluggings, WithoutHoursAreAlwaysThere) {
  hookup("H1", "M1", contact("upper"), std::nullopt);
  hookup("H2", "M1", contact("lower"), hours(18, 19));
  EXPECT_EQ(fault(), "site.plug_in_two_sockets");
}

TEST_F(Pluggings, AnExtensionWithoutHoursIsThereWithWhatHangsOnIt) {
  extension("E1", "C1", contact("upper"), std::nullopt);
  hookup("H1", "M1", socketOf("C1"), hours(18, 19));
  hookup("H2", "M2", contact("upper"), hours(19, 20));
  EXPECT_EQ(fault(), "");
  hookup("H2", "M2", contact("upper"), hours(18.5, 20));
  EXPECT_EQ(fault(), "site.socket_taken_twice");
}

TEST_F(Pluggings, AnExtensionBehindAnotherHoldsItThere) {
  extension("E1", "C1", contact("upper"), std::nullopt);
  extension("E2", "C2", socketOf("C1"), std::nullopt);
  hookup("H1", "M1", socketOf("C2"), hours(18, 19));
  hookup("H2", "M2", contact("upper"), hours(18.5, 20));
  EXPECT_EQ(fault(), "site.socket_taken_twice");
}

TEST_F(Pluggings, TwoMachinesMayHangOnOneExtension) {
  extension("E1", "C1", contact("upper"), std::nullopt);
  hookup("H1", "M1", socketOf("C1", 0), hours(18, 19));
  hookup("H2", "M2", socketOf("C1", 1), hours(18, 19));
  EXPECT_EQ(fault(), "");
}

TEST_F(Pluggings, CordsMayTradePlacesAtAnotherHour) {
  extension("E1", "C1", contact("upper"), hours(18, 19));
  extension("E2", "C2", socketOf("C1"), hours(18, 19));
  extension("E3", "C2", contact("upper"), hours(20, 21));
  extension("E4", "C1", socketOf("C2"), hours(20, 21));
  EXPECT_EQ(fault(), "");
  extension("E1", "C1", socketOf("C2", 1), hours(18, 19));
  EXPECT_EQ(fault(), "site.plugging_loop");
}

TEST(Invariants, HoldForRandomBuildings) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const auto sound = site::checkInvariants(testing::randomSite(seed));
    EXPECT_TRUE(sound.ok()) << seed << ": " << sound.error().code << " at " << sound.error().place;
  }
}

TEST(Invariants, AreCheckedQuicklyEvenOfALargeSite) {
  const site::Site site =
      testing::randomSite(1, {.panels = 20, .circuits = 800, .outletsPerCircuit = 10, .machines = 2000, .cords = 1000});
  const auto start = std::chrono::steady_clock::now();
  EXPECT_TRUE(site::checkInvariants(site).ok());
  EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(60));
}

}  // namespace
}  // namespace cordreach
