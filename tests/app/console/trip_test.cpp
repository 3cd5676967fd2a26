// SPDX-License-Identifier: GPL-3.0-or-later
// `trip`: its JSON, its exits, its words.
#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "app/console/support.h"
#include "physics/breaker_trip.h"

namespace cordreach::console {
namespace {

using units::ampere;

TEST(Trip, JsonHoldsExactlyTheThreeTimesOfTheModel) {
  const Ran result =
      ran({"trip", "--breaker", "20A", "--amps", "27A", "--carrying", "12A", "--ambient", "86F", "--json"});
  const auto json = nlohmann::ordered_json::parse(result.out);
  const auto times = physics::trip({20.0 * ampere}, 27.0 * ampere, 12.0 * ampere,
                                   physics::BreakerAir::all(units::Temperature::fromCelsius(30.0)));
  ASSERT_EQ(json.size(), 3U);
  EXPECT_EQ(json.begin().key(), "earliest_s");
  EXPECT_NEAR(json["earliest_s"], times.earliest->si(), 1e-4 * times.earliest->si());
  EXPECT_NEAR(json["likely_s"], times.likely->si(), 1e-4 * times.likely->si());
  EXPECT_NEAR(json["latest_s"], times.latest->si(), 1e-4 * times.latest->si());
}

TEST(Trip, NeverIsNullInJsonAndNoGoodNewsInWords) {
  const Ran json = ran({"trip", "--breaker", "20A", "--amps", "19A", "--json"});
  EXPECT_EQ(json.out, "{\"earliest_s\":null,\"likely_s\":null,\"latest_s\":null}\n");
  EXPECT_EQ(json.exit, 0);
  const Ran page = ran({"trip", "--breaker", "20A", "--amps", "21A"});
  EXPECT_NE(page.out.find("this breaker will not act"), std::string::npos);
  std::string unwrapped = page.out;
  std::replace(unwrapped.begin(), unwrapped.end(), '\n', ' ');
  EXPECT_NE(unwrapped.find("will not protect the cord"), std::string::npos) << page.out;
  EXPECT_EQ(page.out.find("never"), std::string::npos);
}

TEST(Trip, ExitsOneWhereTheLikelyCurveTrips) {
  EXPECT_EQ(ran({"trip", "--breaker", "20A", "--amps", "27A"}).exit, 1);
  EXPECT_EQ(ran({"trip", "--breaker", "20A", "--amps", "23A"}).exit, 0);
  EXPECT_EQ(ran({"trip", "--breaker", "B16", "--amps", "27A"}).exit, 1);
}

TEST(Trip, TellsNoTimeWithoutSayingDontStart) {
  for (const char* amps : {"23A", "27A", "40A", "300A"}) {
    const Ran result = ran({"trip", "--breaker", "20A", "--amps", amps, "--ambient", "40C"});
    EXPECT_NE(result.out.find("don't start"), std::string::npos) << result.out;
    EXPECT_NE(result.out.find("Not a substitute for an electrician. Local code decides.\n"), std::string::npos);
  }
}

TEST(Trip, TakesAirBelowZero) {
  EXPECT_EQ(ran({"trip", "--breaker", "20A", "--amps", "12A", "--ambient", "-5C"}).exit, 0);
}

TEST(Trip, RefusesAirThatNoBreakerIsMadeFor) {
  for (const char* air : {"-31C", "71C", "300C"}) {
    const Ran result = ran({"trip", "--breaker", "20A", "--amps", "27A", "--ambient", air});
    EXPECT_EQ(result.exit, 2) << air;
    EXPECT_TRUE(result.out.empty());
    EXPECT_NE(result.error.find(air), std::string::npos) << result.error;
  }
  EXPECT_EQ(ran({"trip", "--breaker", "20A", "--amps", "12A", "--ambient", "-30C"}).exit, 0);
  EXPECT_EQ(ran({"trip", "--breaker", "20A", "--amps", "27A", "--ambient", "70C"}).exit, 1);
}

TEST(Trip, SetsBoldOnlyWhereColorIsWanted) {
  const std::vector<std::string> line{"trip", "--breaker", "20A", "--amps", "27A"};
  EXPECT_EQ(ran(line).out.find('\x1b'), std::string::npos);
  const Ran bold = ranIn(text::Phrasebook::load("en").value(), line, true);
  EXPECT_NE(bold.out.find("\x1b[1mCAUTION.\x1b[0m"), std::string::npos);
}

}  // namespace
}  // namespace cordreach::console
