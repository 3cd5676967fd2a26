// SPDX-License-Identifier: GPL-3.0-or-later
// Edits change a site whole or not at all, and their inverse takes them back.
#include "site/edit.h"

#include <gtest/gtest.h>

#include <limits>

#include "site/kinds.h"
#include "support/random_site.h"

namespace cordreach {
namespace {

using site::Change;
using testing::randomSite;

std::string codeOf(const base::Result<base::Done>& result) { return result ? "" : result.error().code; }

// All events and hookups away, all cords relabelled, a pad more, a new name.
site::Edit largeEdit(const site::Site& site) {
  site::Edit edit{"test.large", {}};
  for (const site::Event& event : site.all<site::Event>()) {
    edit.changes.push_back(Change<site::Event>{event, std::nullopt});
  }
  for (const site::Hookup& hookup : site.all<site::Hookup>()) {
    edit.changes.push_back(Change<site::Hookup>{hookup, std::nullopt});
  }
  for (const site::Cord& cord : site.all<site::Cord>()) {
    site::Cord relabelled = cord;
    relabelled.label += "*";
    edit.changes.push_back(Change<site::Cord>{cord, relabelled});
  }
  edit.changes.push_back(Change<site::Pad>{std::nullopt, site::Pad{.id = site::PadId("new")}});
  edit.changes.push_back(site::HeadingChange{{site.name, site.ambient}, {"Renamed", {}}});
  return edit;
}

TEST(Edit, IsTakenBackByItsInverse) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const site::Site before = randomSite(seed);
    site::Site site = before;
    const site::Edit edit = largeEdit(site);
    ASSERT_EQ(codeOf(site::apply(edit, site)), "");
    EXPECT_NE(site, before);
    ASSERT_EQ(codeOf(site::apply(site::inverseOf(edit), site)), "");
    EXPECT_EQ(site, before);
  }
}

TEST(Edit, OfTwoChangesToOneThingIsTakenBackInReverse) {
  site::Site site = randomSite(1);
  const site::Site before = site;
  const site::Pad first{.id = site::PadId("p"), .name = "first"};
  const site::Pad second{.id = site::PadId("p"), .name = "second"};
  const site::Edit edit{"test", {Change<site::Pad>{std::nullopt, first}, Change<site::Pad>{first, second}}};
  ASSERT_EQ(codeOf(site::apply(edit, site)), "");
  ASSERT_EQ(codeOf(site::apply(site::inverseOf(edit), site)), "");
  EXPECT_EQ(site, before);
}

TEST(Edit, ThatIsStaleLeavesTheSiteAsItWas) {
  site::Site site = randomSite(2);
  site::Edit edit = largeEdit(site);
  site.all<site::Pad>().put(site::Pad{.id = site::PadId("new"), .name = "already there"});
  const site::Site before = site;
  EXPECT_EQ(codeOf(site::apply(edit, site)), "edit.stale");
  EXPECT_EQ(site, before);
}

TEST(Edit, ThatBreaksAnInvariantLeavesTheSiteAsItWas) {
  site::Site site = randomSite(3);
  const site::Site before = site;
  const site::Panel panel = *site.all<site::Panel>().begin();
  EXPECT_EQ(codeOf(site::apply({"test", {Change<site::Panel>{panel, std::nullopt}}}, site)), "site.dangling_id");
  EXPECT_EQ(site, before);
}

TEST(Edit, OfSomethingThatIsNoNumberLeavesTheSiteAsItWas) {
  site::Site site = randomSite(4);
  const site::Site before = site;
  const site::Pad pad = *site.all<site::Pad>().begin();
  site::Pad broken = pad;
  broken.dragFactor = site::known(std::numeric_limits<double>::quiet_NaN());
  EXPECT_EQ(codeOf(site::apply({"test", {Change<site::Pad>{pad, broken}}}, site)), "site.not_finite");
  EXPECT_EQ(site, before);
}

TEST(Edit, MayNotChangeAnId) {
  site::Site site = randomSite(5);
  const site::Pad pad = *site.all<site::Pad>().begin();
  EXPECT_EQ(codeOf(site::apply({"test", {Change<site::Pad>{pad, site::Pad{.id = site::PadId("other")}}}}, site)),
            "edit.id_changed");
}

}  // namespace
}  // namespace cordreach
