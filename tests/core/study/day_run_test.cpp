// SPDX-License-Identifier: GPL-3.0-or-later
// Planned days of small buildings, event by event.
#include "study/day_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "study/assess.h"
#include "support/small_site.h"

namespace cordreach::study {
namespace {

using tables::LoadClass;
using ::testing::ElementsAre;
using testing::SmallSite;
using units::ampere;
using units::hour;
using units::minute;

site::HookupId hookup(const char* id) { return site::HookupId(id); }

struct Told {
  double minuteOf;
  DayEventKind kind;
  DaySubject subject;

  friend bool operator==(const Told& a, const Told& b) {
    return std::abs(a.minuteOf - b.minuteOf) < 1e-6 && a.kind == b.kind && a.subject == b.subject;
  }
};

std::vector<Told> told(const DayRun& run) {
  std::vector<Told> all;
  for (const DayEvent& event : run.events) all.push_back({event.at.in(minute), event.kind, event.subject});
  return all;
}

const DayEvent* first(const DayRun& run, DayEventKind kind) {
  for (const DayEvent& event : run.events) {
    if (event.kind == kind) return &event;
  }
  return nullptr;
}

DayRun ran(const site::Site& site, double hours, double everyMinutes = 0.0) {
  DayRunOptions options;
  options.until = hours * hour;
  if (everyMinutes > 0.0) options.sampleEvery = everyMinutes * minute;
  return runDay(site, options);
}

double circuitA(const DayRun& run, std::size_t sample, std::size_t circuit = 0) {
  return run.samples[sample].circuits[circuit].in(ampere);
}

// One 10 A heater on a 20 A circuit, from 18:00 for two hours, its cord at the outlet.
SmallSite heater() {
  return SmallSite()
      .circuit("1", 20, 30)
      .machine("M", LoadClass::Resistance, 10)
      .plug("M", SmallSite::at("1"), {{18.0, 20.0}});
}

void happen(site::Site& site, site::Event event) { site.all<site::Event>().put(std::move(event)); }

TEST(DayRun, BeginsWithTheFirstHourAndFollowsTheHours) {
  auto building =
      heater().machine("N", LoadClass::Resistance, 5).plug("N", SmallSite::at("1", "lower"), {{18.5, 19.0}});
  const DayRun run = ran(building.site, 3);
  EXPECT_EQ(run.start.in(hour), 18.0);
  EXPECT_THAT(told(run),
              ElementsAre(Told{0, DayEventKind::On, hookup("HM")}, Told{30, DayEventKind::On, hookup("HN")},
                          Told{60, DayEventKind::Off, hookup("HN")}, Told{120, DayEventKind::Off, hookup("HM")}));
  EXPECT_NEAR(run.circuits[0].largest.in(ampere), 15.0, 1.0);
}

TEST(DayRun, LeavesACordAsWarmAsAssessHasItAtTheEndOfItsRun) {
  const auto building = SmallSite()
                            .circuit("1", 20, 60)
                            .machine("M", LoadClass::Induction, 12)
                            .cord("C", 16, 50)
                            .extension("C", "1", {tables::Laying::Coiled, 8.0, 5.0 * units::metre})
                            .plug("M", SmallSite::in("C"), {{18.0, 20.0}});
  const Answer answer = assess(building.site);
  const DayRun run = ran(building.site, 2);
  ASSERT_EQ(run.cords.size(), 2U);
  for (std::size_t i = 0; i < 2; ++i) {
    const CordAnswer& cord = answer.hookups[0].cords[i];
    EXPECT_NEAR(run.cords[i].conductor.celsius(), cord.conductor->likely.celsius(), 0.5) << i;
    EXPECT_NEAR(run.cords[i].surface.celsius(), cord.surface->likely.celsius(), 0.5) << i;
  }
  EXPECT_EQ(run.cords[0].subject, DaySubject(site::CordId("C")));
  ASSERT_TRUE(run.cords[0].limitAt.has_value());
  EXPECT_NEAR(run.cords[0].limitAt->in(minute), answer.hookups[0].cords[0].timeToLimit->in(minute), 0.5);
}

// It has warmed its breaker for ten minutes when the cooler comes on.
TEST(DayRun, TripsAfterWhatComesOnByItself) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .load("cooler", "1", 11, site::Cycle{12.0 * minute, 13.0 * minute, 18.0 * hour + 10.0 * minute})
                      .machine("M", LoadClass::Resistance, 15)
                      .plug("M", SmallSite::at("1"), {{18.0, 19.0}});
  const DayRun run = ran(building.site, 2);
  EXPECT_TRUE(run.guessedCycles.empty());
  const DayEvent* trip = first(run, DayEventKind::Trip);
  ASSERT_NE(trip, nullptr);
  EXPECT_EQ(trip->subject, DaySubject(site::CircuitId("1")));
  ASSERT_TRUE(trip->after.has_value());
  EXPECT_EQ(*trip->after, DaySubject(site::FixedLoadId("cooler")));
  EXPECT_NEAR((trip->at - trip->since).in(minute), 10.0, 1e-6);
  const auto before = physics::BreakerAir::panelIn(units::Temperature::fromCelsius(25.0));
  const auto expected = physics::trip({20.0 * ampere}, run.circuits[0].largest, 14.4 * ampere, before);
  EXPECT_NEAR(trip->since.si(), expected.likely->si(), 0.15 * expected.likely->si());
  EXPECT_EQ(run.circuits[0].trip->likely, trip->at);
  EXPECT_LT(run.circuits[0].trip->earliest, run.circuits[0].trip->likely);
}

TEST(DayRun, GuessesHalfAPauseWhereNobodyKnows) {
  auto building = heater().load("cooler", "1", 3, site::Cycle{7.0 * minute, 13.0 * minute});
  const DayRun run = ran(building.site, 0.5);
  EXPECT_THAT(run.guessedCycles, ElementsAre(site::FixedLoadId("cooler")));
  const site::FixedLoadId cooler("cooler");
  EXPECT_THAT(told(run), ElementsAre(Told{0, DayEventKind::On, hookup("HM")}, Told{6.5, DayEventKind::On, cooler},
                                     Told{13.5, DayEventKind::Off, cooler}, Told{26.5, DayEventKind::On, cooler}));
}

// The shift goes on; what was to come on later on the circuit that tripped draws nothing, and trips nothing.
TEST(DayRun, LeavesOutWhatComesAfterATrip) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .circuit("2", 20, 30)
                      .machine("M", LoadClass::Resistance, 15)
                      .machine("N", LoadClass::Resistance, 15)
                      .machine("L", LoadClass::Resistance, 8)
                      .plug("M", SmallSite::at("1"), {{18.0, 21.0}})
                      .plug("N", SmallSite::at("1", "lower"), {{18.25, 21.0}})
                      .plug("L", SmallSite::at("1", "lower"), {{19.5, 21.0}});
  const DayRun run = ran(building.site, 4, 5);
  const DayEvent* trip = first(run, DayEventKind::Trip);
  ASSERT_NE(trip, nullptr);
  EXPECT_GT(trip->at.in(minute), 15.0);
  for (std::size_t i = 0; i < run.samples.size(); ++i) {
    if (run.samples[i].at > trip->at) {
      EXPECT_EQ(circuitA(run, i), 0.0);
    }
  }
  for (const DayEvent& event : run.events) EXPECT_NE(event.subject, DaySubject(hookup("HL")));
  EXPECT_GT(*run.circuits[0].trip->latest, *run.circuits[0].trip->likely);
}

TEST(DayRun, GoesOnBehindABreakerThatDoesNotAct) {
  auto building = SmallSite()
                      .circuit("1", 15, 30)
                      .machine("M", LoadClass::Resistance, 30, 12)
                      .plug("M", SmallSite::at("1"), {{18.0, 19.0}});
  EXPECT_NE(first(ran(building.site, 1), DayEventKind::Trip), nullptr);
  DayRunOptions stuck;
  stuck.until = 1.0 * hour;
  stuck.breakersAct = false;
  const DayRun run = runDay(building.site, stuck);
  EXPECT_EQ(first(run, DayEventKind::Trip), nullptr);
  EXPECT_TRUE(run.circuits[0].trip->likely.has_value());
  site::Circuit circuit = building.site.at<site::Circuit>(site::CircuitId("1"));
  circuit.mayNotTrip = true;
  building.site.all<site::Circuit>().put(circuit);
  EXPECT_EQ(first(ran(building.site, 1), DayEventKind::Trip), nullptr);
}

TEST(DayRun, SwitchesAndPullsByEvents) {
  auto building = heater();
  const auto at = [](double minutes) { return 18.0 * hour + minutes * minute; };
  happen(building.site,
         {.id = site::EventId("e1"), .kind = site::EventKind::Stop, .at = at(20), .hookup = hookup("HM")});
  happen(building.site,
         {.id = site::EventId("e2"), .kind = site::EventKind::Start, .at = at(30), .hookup = hookup("HM")});
  happen(building.site,
         {.id = site::EventId("e3"), .kind = site::EventKind::Unplug, .at = at(50), .hookup = hookup("HM")});
  happen(building.site,
         {.id = site::EventId("e4"), .kind = site::EventKind::PlugIn, .at = at(70), .hookup = hookup("HM")});
  EXPECT_THAT(told(ran(building.site, 2)),
              ElementsAre(Told{0, DayEventKind::On, hookup("HM")}, Told{20, DayEventKind::Off, hookup("HM")},
                          Told{30, DayEventKind::On, hookup("HM")}, Told{50, DayEventKind::Off, hookup("HM")},
                          Told{70, DayEventKind::On, hookup("HM")}));
}

TEST(DayRun, SwitchesContactsAndFixedLoadsByEvents) {
  auto building = heater().load("lamp", "1", 2).load("cooler", "1", 3, site::Cycle{7.0 * minute, 13.0 * minute});
  const auto at = [](double minutes) { return 18.0 * hour + minutes * minute; };
  happen(building.site, {.id = site::EventId("e1"),
                         .kind = site::EventKind::ContactOff,
                         .at = at(15),
                         .outlet = site::OutletId("1"),
                         .contact = "upper"});
  happen(building.site, {.id = site::EventId("e2"),
                         .kind = site::EventKind::ContactOn,
                         .at = at(25),
                         .outlet = site::OutletId("1"),
                         .contact = "upper"});
  const site::FixedLoadId lamp("lamp");
  const site::FixedLoadId cooler("cooler");
  happen(building.site, {.id = site::EventId("e3"), .kind = site::EventKind::LoadOff, .at = at(40), .load = lamp});
  happen(building.site, {.id = site::EventId("e4"), .kind = site::EventKind::LoadOn, .at = at(2), .load = cooler});
  const DayRun run = ran(building.site, 1, 1);
  EXPECT_THAT(told(run), ElementsAre(Told{0, DayEventKind::On, hookup("HM")}, Told{2, DayEventKind::On, cooler},
                                     Told{15, DayEventKind::Off, hookup("HM")},
                                     Told{25, DayEventKind::On, hookup("HM")}, Told{40, DayEventKind::Off, lamp}));
  EXPECT_NEAR(circuitA(run, 20), 5.0, 0.3);  // lamp and cooler
  EXPECT_NEAR(circuitA(run, 50), circuitA(run, 30) - 2.0, 0.3);
}

TEST(DayRun, CoilsACordAtItsTime) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .machine("M", LoadClass::Resistance, 12)
                      .cord("C", 16, 50)
                      .extension("C", "1")
                      .plug("M", SmallSite::in("C"), {{18.0, 21.0}});
  EXPECT_EQ(first(ran(building.site, 3), DayEventKind::OverRating), nullptr);
  happen(building.site, {.id = site::EventId("e1"),
                         .kind = site::EventKind::Lay,
                         .at = 19.0 * hour,
                         .extension = site::ExtensionUseId("XC"),
                         .laying = {tables::Laying::Coiled, 12.0, {}}});
  const DayRun run = ran(building.site, 3);
  const DayEvent* over = first(run, DayEventKind::OverRating);
  ASSERT_NE(over, nullptr);
  EXPECT_GT(over->at.in(minute), 60.0);
  EXPECT_EQ(over->subject, DaySubject(site::CordId("C")));
  EXPECT_EQ(first(run, DayEventKind::Lay)->at.in(minute), 60.0);
}

TEST(DayRun, ChangesThePadAtItsTime) {
  auto building = SmallSite()
                      .circuit("1", 20, 30)
                      .machine("M", LoadClass::RectifiedDc, 12)
                      .plug("M", SmallSite::at("1"), {{18.0, 20.0}});
  site::Pad heavy{.id = site::PadId("P"), .name = "Coarse"};
  heavy.dragFactor = site::known(1.4);
  building.site.all<site::Pad>().put(heavy);
  happen(building.site, {.id = site::EventId("e1"),
                         .kind = site::EventKind::ChangePad,
                         .at = 19.0 * hour,
                         .hookup = hookup("HM"),
                         .pad = heavy.id});
  const DayRun run = ran(building.site, 2, 30);
  EXPECT_GT(circuitA(run, 3), 1.2 * circuitA(run, 1));
}

TEST(DayRun, LetsAChargerTaper) {
  auto building = SmallSite().circuit("1", 20, 30).load("charger", "1", 8);
  site::FixedLoad charger = building.site.at<site::FixedLoad>(site::FixedLoadId("charger"));
  charger.hours = site::Hours{18.0 * hour, 24.0 * hour};
  charger.charge = site::Charge{1.0 * hour, 2.0 * hour};
  building.site.all<site::FixedLoad>().put(charger);
  const DayRun run = ran(building.site, 5, 30);
  EXPECT_EQ(run.start.in(hour), 18.0);
  const double fullA = circuitA(run, 1);
  EXPECT_NEAR(fullA, 8.0, 0.3);
  EXPECT_NEAR(circuitA(run, 4) / fullA, std::pow(0.05, 0.5), 0.03);  // half-way through its taper
  EXPECT_NEAR(circuitA(run, 8) / fullA, 0.05, 0.005);
}

TEST(DayRun, CarriesACordWithItsHeatFromOutletToOutlet) {
  auto building = SmallSite().circuit("1", 20, 30).circuit("2", 20, 30).machine("M", LoadClass::Resistance, 14, 16);
  building.plug("M", SmallSite::at("1"), {{18.0, 19.0}});
  site::Hookup second = building.site.at<site::Hookup>(hookup("HM"));
  second.id = hookup("HM2");
  second.socket = SmallSite::at("2");
  second.hours = site::Hours{19.0 * hour, 20.0 * hour};
  building.site.all<site::Hookup>().put(second);
  const DayRun run = ran(building.site, 2, 1);
  ASSERT_EQ(run.cords.size(), 1U);
  EXPECT_EQ(run.cords[0].subject, DaySubject(OwnCord{site::MachineId("M"), "A"}));
  EXPECT_NEAR(run.samples[61].conductors[0].celsius(), run.samples[59].conductors[0].celsius(), 0.5);
  EXPECT_GT(run.samples[61].conductors[0].celsius(), 35.0);
  EXPECT_EQ(circuitA(run, 61, 0), 0.0);
  EXPECT_GT(circuitA(run, 61, 1), 12.0);
}

}  // namespace
}  // namespace cordreach::study
