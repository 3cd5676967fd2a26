// SPDX-License-Identifier: GPL-3.0-or-later
// A site file read and written: nothing is lost, nothing moves.
#include "io/site_file.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

#include "site/edit.h"
#include "site/invariants.h"
#include "support/random_site.h"
#include "support/test_files.h"

namespace cordreach {
namespace {

using testing::fileText;
using testing::randomSite;

site::Site readGood(std::string_view text) {
  auto read = io::readSite(text);
  if (!read) throw std::runtime_error(read.error().code + " at " + read.error().place);
  return std::move(read).value();
}

std::vector<std::string> linesOf(const std::string& text) {
  std::istringstream stream(text);
  std::vector<std::string> lines;
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

TEST(SiteFile, IsWrittenAsItWasRead) {
  const std::string text = fileText("zoo/good/small.json");
  EXPECT_EQ(io::writeSite(readGood(text)), text);
}

TEST(SiteFile, OfARandomBuildingReadsBackIdentical) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const site::Site site = randomSite(seed);
    const std::string text = io::writeSite(site);
    const auto read = io::readSite(text);
    ASSERT_TRUE(read.ok()) << seed << ": " << read.error().code << " at " << read.error().place;
    EXPECT_EQ(read.value(), site) << seed;
    EXPECT_EQ(io::writeSite(read.value()), text) << seed;
  }
}

TEST(SiteFile, ChangesByAFewLinesAfterOneEdit) {
  site::Site site = randomSite(7);
  const auto before = linesOf(io::writeSite(site));
  const site::Hookup old = *site.all<site::Hookup>().begin();
  site::Hookup moved = old;
  moved.asked = !old.asked;
  ASSERT_TRUE(site::apply({"hookup.ask", {site::Change<site::Hookup>{old, moved}}}, site).ok());
  const auto after = linesOf(io::writeSite(site));
  ASSERT_EQ(after.size(), before.size());
  std::size_t differing = 0;
  for (std::size_t i = 0; i < after.size(); ++i) differing += after[i] != before[i] ? 1 : 0;
  EXPECT_EQ(differing, 1u);
}

TEST(SiteFile, SortsWhatWasWrittenInAnyOrder) {
  const site::Site site = readGood(R"({"version": 1, "id": "x", "pads": [{"id": "b"}, {"id": "a"}]})");
  const std::string text = io::writeSite(site);
  EXPECT_LT(text.find("\"a\""), text.find("\"b\""));
}

TEST(SiteFile, NamesThePlaceAsItStandsInTheFile) {
  const auto read = io::readSite(R"({"version": 1, "id": "x",
    "machines": [{"id": "b", "pad": "gone"}, {"id": "a"}]})");
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "site.dangling_id");
  EXPECT_EQ(read.error().place, "/machines/0/pad");
}

TEST(SiteFile, TakesAnEarlierUntilForTheNextDay) {
  std::string text = fileText("zoo/good/small.json");
  text.replace(text.find("26:15"), 5, "02:15");
  const site::Site site = readGood(text);
  EXPECT_EQ(site.all<site::Hookup>().begin()->hours->until, 26.25 * units::hour);
}

TEST(SiteFile, PrefersAKnownFieldToAnUnknownKeyOfThatName) {
  site::Site site = readGood(R"({"version": 1, "id": "x", "cords": [{"id": "C1", "length_typed": "about 50 ft"}]})");
  EXPECT_NE(io::writeSite(site).find("about 50 ft"), std::string::npos);
  site::Cord cord = *site.all<site::Cord>().begin();
  cord.make.length = site::known(15.0 * units::metre);
  cord.make.length->typed = "15 m";
  site.all<site::Cord>().put(cord);
  const std::string text = io::writeSite(site);
  EXPECT_EQ(text.find("about 50 ft"), std::string::npos);
  EXPECT_TRUE(io::readSite(text).ok());
}

TEST(SiteFile, WritesTheShortestNumbers) {
  site::Site site{.id = site::SiteId("x")};
  site.ambient.room = site::known(units::Temperature::fromCelsius(24.1));
  site.all<site::Pad>().put({.id = site::PadId("P"), .ratedSpeed = site::known(1600.0 / 60.0 * units::hertz)});
  const std::string text = io::writeSite(site);
  EXPECT_NE(text.find("\"room_c\": 24.1}"), std::string::npos) << text;
  EXPECT_NE(text.find("\"rated_speed_rpm\": 1600}"), std::string::npos) << text;
}

}  // namespace
}  // namespace cordreach
