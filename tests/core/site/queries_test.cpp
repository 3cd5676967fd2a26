// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/queries.h"

#include <gtest/gtest.h>

#include <set>

#include "site/new_id.h"
#include "support/random_site.h"

namespace cordreach {
namespace {

using testing::randomSite;

TEST(Chain, LeadsFromAnOutletOverEveryCordToTheMachine) {
  std::size_t links = 0;
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const site::Site site = randomSite(seed);
    for (const site::Hookup& hookup : site.all<site::Hookup>()) {
      const auto chain = site::chainOf(site, hookup);
      ASSERT_TRUE(chain.has_value());
      site::Socket end = chain->outlet;
      for (const site::ChainLink& link : chain->links) {
        EXPECT_EQ(link.extension->socket, end);
        end = site::CordSocket{link.extension->cord, 0};
        ++links;
      }
      EXPECT_EQ(hookup.socket, end);
    }
  }
  EXPECT_GT(links, 50u);
}

TEST(Chain, IsNothingWhenACordOfItIsNotPluggedIn) {
  site::Site site = randomSite(1);
  site.all<site::Cord>().put({.id = site::CordId("loose"), .sockets = {"5-15"}});
  site::Hookup hookup = *site.all<site::Hookup>().begin();
  hookup.socket = site::CordSocket{site::CordId("loose"), 0};
  EXPECT_FALSE(site::chainOf(site, hookup).has_value());
}

// A cord that lies at one outlet all day, but is at another for an hour of it.
TEST(Chain, TakesACordsOwnHoursBeforeItsStandingUse) {
  site::Site site{.id = site::SiteId("s")};
  const auto use = [&](const char* id, const char* outlet, std::optional<site::Hours> hours) {
    site.all<site::ExtensionUse>().put({site::ExtensionUseId(id),
                                        site::CordId("c"),
                                        site::OutletSocket{site::OutletId(outlet), "upper"},
                                        hours,
                                        {},
                                        {}});
  };
  use("a", "standing", std::nullopt);
  use("b", "evening", site::Hours{18.0 * units::hour, 19.0 * units::hour});
  site::Hookup hookup{.id = site::HookupId("h"),
                      .machine = site::MachineId("m"),
                      .inlet = "A",
                      .socket = site::CordSocket{site::CordId("c"), 0}};
  hookup.hours = site::Hours{18.0 * units::hour, 20.0 * units::hour};
  EXPECT_EQ(site::chainOf(site, hookup)->outlet.outlet.text(), "evening");
  hookup.hours = site::Hours{20.0 * units::hour, 21.0 * units::hour};
  EXPECT_EQ(site::chainOf(site, hookup)->outlet.outlet.text(), "standing");
  site.all<site::ExtensionUse>().remove(site::ExtensionUseId("a"));
  EXPECT_FALSE(site::chainOf(site, hookup).has_value());
  hookup.hours.reset();  // all day, and so in that hour too
  EXPECT_EQ(site::chainOf(site, hookup)->outlet.outlet.text(), "evening");
}

TEST(OutletsOfACircuit, ComeAfterWhatFeedsThem) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const site::Site site = randomSite(seed);
    for (const site::Circuit& circuit : site.all<site::Circuit>()) {
      std::set<site::OutletId> seen;
      for (const site::WiredOutlet& wired : site::outletsOf(site, circuit.id)) {
        EXPECT_TRUE(wired.run == nullptr || !wired.run->from || seen.count(*wired.run->from) == 1);
        EXPECT_TRUE(seen.insert(wired.outlet->id).second);
      }
      for (const site::Run& run : site.all<site::Run>()) {
        EXPECT_TRUE(run.circuit != circuit.id || seen.count(run.to) == 1);
      }
    }
  }
}

TEST(PluggedIn, HoldsTheExtensionsOfTheMachinesThatAreThere) {
  const site::Site site = randomSite(11);
  for (double hour = 0.0; hour < 24.0; hour += 0.25) {
    const site::PluggedIn there = site::pluggedInAt(site, hour * units::hour);
    std::set<const site::ExtensionUse*> needed;
    for (const site::Hookup* hookup : there.hookups) {
      const auto chain = site::chainOf(site, *hookup);
      for (const site::ChainLink& link : chain->links) needed.insert(link.extension);
    }
    EXPECT_EQ(needed, std::set<const site::ExtensionUse*>(there.extensions.begin(), there.extensions.end())) << hour;
  }
}

TEST(NewId, IsShortReadableAndNotInUse) {
  site::Site site = randomSite(1);
  std::uint64_t last = 0;
  // Every number twice, so that every second id is in use already.
  const auto random = [&last] { return (++last / 2) * 0x9E3779B97F4A7C15u; };
  for (int i = 0; i < 200; ++i) {
    const site::PadId id = site::newId<site::Pad>(site, random);
    EXPECT_EQ(id.text().size(), 6u);
    EXPECT_EQ(id.text().find_first_of("01iloOuIL"), std::string::npos);
    EXPECT_EQ(site.find<site::Pad>(id), nullptr);
    site.all<site::Pad>().put({.id = id});
  }
}

TEST(NewId, IsNotThatOfARemovedThingInTheHistory) {
  site::Site site = randomSite(1);
  const std::string first = site::randomIdText([] { return 5u; });
  site.all<site::HistoryEntry>().put({.id = site::HistoryId("h"), .subject = first});
  std::uint64_t number = 4;
  EXPECT_NE(site::newId<site::Cord>(site, [&] { return ++number; }).text(), first);
}

TEST(UseOf, IsTheStricterOfContactAndCircuit) {
  using enum site::UseClass;
  const auto of = [](site::UseClass contactSays, std::optional<site::UseClass> circuitSays) {
    site::Contact contact;
    contact.use = contactSays;
    site::Circuit circuit{.id = site::CircuitId("c"), .panel = site::PanelId("p")};
    circuit.use = circuitSays.value_or(Ordinary);
    return site::useOf(contact, circuitSays ? &circuit : nullptr);
  };
  EXPECT_EQ(of(Ordinary, Ordinary), Ordinary);
  EXPECT_EQ(of(AskFirst, Ordinary), AskFirst);
  EXPECT_EQ(of(Ordinary, AskFirst), AskFirst);
  EXPECT_EQ(of(Never, AskFirst), Never);
  EXPECT_EQ(of(AskFirst, Never), Never);
  EXPECT_EQ(of(Never, std::nullopt), Never);
  EXPECT_EQ(of(Ordinary, std::nullopt), Ordinary);
}

TEST(UseOf, AsksTheContactOfTheSocket) {
  site::Site site{.id = site::SiteId("s")};
  site::Outlet outlet{.id = site::OutletId("o")};
  outlet.contacts.resize(2);
  outlet.contacts[0].name = "upper";
  outlet.contacts[1].name = "lower";
  outlet.contacts[1].use = site::UseClass::Never;
  site.all<site::Outlet>().put(outlet);
  EXPECT_EQ(site::useOf(site, {outlet.id, "upper"}), site::UseClass::Ordinary);
  EXPECT_EQ(site::useOf(site, {outlet.id, "lower"}), site::UseClass::Never);
  EXPECT_EQ(site::useOf(site, {outlet.id, "none"}), site::UseClass::Ordinary);
}

}  // namespace
}  // namespace cordreach
