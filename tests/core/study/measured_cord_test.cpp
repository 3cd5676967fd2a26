// SPDX-License-Identifier: GPL-3.0-or-later
// What was measured or is worn on a site's own cords and contacts: a jacket's temperature, a loose contact.
#include <gtest/gtest.h>

#include "physics/cord_heat.h"
#include "study/assess.h"
#include "study/branch_heat.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using testing::SmallSite;
using units::ampere;
using units::kelvin;
using units::Temperature;
using units::volt;

site::CordMake measured(double surfaceC, double currentA, double airC) {
  site::CordMake make;
  make.type = "SJTW";
  make.size = site::known(units::WireSize::awg(16));
  make.conductors = site::known(3);
  make.length = site::known(50.0 * units::foot);
  site::JacketReading reading;
  reading.surface = Temperature::fromCelsius(surfaceC);
  reading.current = currentA * ampere;
  reading.air = Temperature::fromCelsius(airC);
  make.jacketReading = reading;
  return make;
}

TEST(MeasuredCord, ComesOutAsWarmAsItWasMeasured) {
  const site::CordMake make = measured(45.0, 13.0, 25.0);
  const auto section = sectionOf(make, {});
  EXPECT_NEAR(physics::steady(section, 13.0 * ampere, Temperature::fromCelsius(25.0))->surface.celsius(), 45.0, 1e-3);
  EXPECT_FALSE(isAtEnd(section.lossScale));
}

TEST(MeasuredCord, AReadingOfTheModelItselfChangesNothing) {
  const auto plain = physics::steady(sectionOf(measured(20.0, 13.0, 25.0), {}), 13.0 * ampere,
                                     Temperature::fromCelsius(25.0));  // colder than the air: says nothing
  EXPECT_NEAR(lossScaleOf(measured(plain->surface.celsius(), 13.0, 25.0)), 1.0, 1e-5);
  EXPECT_EQ(lossScaleOf(measured(20.0, 13.0, 25.0)), 1.0);
  EXPECT_EQ(lossScaleOf(measured(45.0, 0.0, 25.0)), 1.0);
}

TEST(MeasuredCord, AnUnbelievableReadingIsHeldAndSaid) {
  EXPECT_NEAR(lossScaleOf(measured(95.0, 13.0, 25.0)), 0.6, 1e-5);
  EXPECT_NEAR(lossScaleOf(measured(26.0, 13.0, 25.0)), 1.5, 1e-5);
  EXPECT_TRUE(isAtEnd(lossScaleOf(measured(95.0, 13.0, 25.0))));
  EXPECT_TRUE(isAtEnd(lossScaleOf(measured(26.0, 13.0, 25.0))));
}

TEST(MeasuredCord, IsHotterOnItsSiteWhenItWasMeasuredHotter) {
  auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::Resistance, 12).plug("M", SmallSite::at("1"));
  const auto before = assess(building.site).find(site::HookupId("HM"))->cords.back().conductor->likely;
  site::Machine machine = building.site.at<site::Machine>(site::MachineId("M"));
  site::JacketReading reading;
  reading.surface = Temperature::fromCelsius(44.0);
  reading.current = 12.0 * ampere;
  machine.inlets[0].cord.jacketReading = reading;
  building.site.all<site::Machine>().put(machine);
  const auto after = assess(building.site).find(site::HookupId("HM"))->cords.back().conductor->likely;
  EXPECT_GT((after - before).in(kelvin), 3.0);
}

SmallSite throughContact(bool loose) {
  auto building =
      SmallSite().circuit("1", 20, 60).machine("M", LoadClass::RectifiedDc, 12).plug("M", SmallSite::at("1"));
  site::Outlet outlet = building.site.at<site::Outlet>(site::OutletId("1"));
  outlet.contacts[0].loose = loose;
  building.site.all<site::Outlet>().put(outlet);
  return building;
}

TEST(LooseContact, CostsVoltsAndWarmsThePlug) {
  const Answer sound = assess(throughContact(false).site);
  const Answer loose = assess(throughContact(true).site);
  const HookupAnswer& before = *sound.find(site::HookupId("HM"));
  const HookupAnswer& after = *loose.find(site::HookupId("HM"));
  // Two contacts of 10 instead of 1 milliohm; the fundamental of 12 A is 0.90 of it.
  const double lostV = 2 * 0.009 * 0.9005 * after.current.likely.in(ampere);
  EXPECT_NEAR((before.voltage.likely - after.voltage.likely).in(volt), lostV, 0.02);
  EXPECT_GT(after.cords.front().plugRise.likely.in(kelvin), 9.0 * before.cords.front().plugRise.likely.in(kelvin));
}

TEST(LooseContact, OfAShortRunHasWarmedItsPlugOnlyPartOfTheWay) {
  auto building = throughContact(true);
  const double whole = assess(building.site).find(site::HookupId("HM"))->cords.front().plugRise.likely.in(kelvin);
  site::Hookup hookup = building.site.at<site::Hookup>(site::HookupId("HM"));
  hookup.hours = site::Hours{18.0 * units::hour, 18.0 * units::hour + 5.0 * units::minute};
  building.site.all<site::Hookup>().put(hookup);
  const double part = assess(building.site).find(site::HookupId("HM"))->cords.front().plugRise.likely.in(kelvin);
  EXPECT_LT(part, 0.8 * whole);
  EXPECT_GT(part, 0.1 * whole);
}

}  // namespace
}  // namespace cordreach::study
