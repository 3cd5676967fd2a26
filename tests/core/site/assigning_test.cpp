// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/assigning.h"

#include <gtest/gtest.h>

#include "support/small_site.h"

namespace cordreach::site {
namespace {

RandomSource counting() {
  return [next = std::uint64_t{0}]() mutable { return next += 7919; };
}

Site twoCircuits() {
  Site site = testing::SmallSite().circuit("1", 20, 60).circuit("2", 20, 80).site;
  Outlet outlet = site.at<Outlet>(OutletId("1"));
  outlet.contacts[0].directory = "P-9, hand written";
  outlet.contacts[0].poles = {0};
  site.all<Outlet>().put(outlet);
  return site;
}

const HowFound kTraced{HowKnown::Traced, "Ana", "2026-03-01"};

TEST(Assigning, RecordsHowWhoAndWhenAndKeepsTheOldDirectory) {
  Site site = twoCircuits();
  const Edit edit = assignmentEdit(site, {{OutletId("1"), "upper"}}, CircuitId("2"), kTraced, counting());
  EXPECT_EQ(edit.code, "outlet.assign");
  ASSERT_TRUE(apply(edit, site).ok());
  const Outlet& outlet = site.at<Outlet>(OutletId("1"));
  EXPECT_EQ(outlet.contacts[0].assignment, (Assignment{CircuitId("2"), HowKnown::Traced, "Ana", "2026-03-01"}));
  EXPECT_EQ(outlet.contacts[0].directory, "P-9, hand written");
  EXPECT_TRUE(outlet.contacts[0].poles.empty());
  EXPECT_EQ(outlet.contacts[1].assignment->circuit, CircuitId("1"));
  ASSERT_EQ(site.all<HistoryEntry>().size(), 1U);
  const HistoryEntry& entry = *site.all<HistoryEntry>().begin();
  EXPECT_EQ(entry.kind, "assignment");
  EXPECT_EQ(entry.subject, "1");
  EXPECT_EQ(entry.who, "Ana");
  EXPECT_EQ(entry.when, "2026-03-01");
  EXPECT_EQ(entry.text, "upper: P-1 traced -> P-2 traced");
}

TEST(Assigning, SaysOnceWhatHappensToBothContactsAlike) {
  Site site = twoCircuits();
  const Edit edit =
      assignmentEdit(site, {{OutletId("1"), "upper"}, {OutletId("1"), "lower"}}, std::nullopt, kTraced, counting());
  ASSERT_TRUE(apply(edit, site).ok());
  EXPECT_FALSE(site.at<Outlet>(OutletId("1")).contacts[0].assignment.has_value());
  EXPECT_EQ(site.all<HistoryEntry>().begin()->text, "upper, lower: P-1 traced -> ?");
}

TEST(Assigning, OfWhatIsSoAlreadyIsNoEdit) {
  const Site site = twoCircuits();
  EXPECT_TRUE(assignmentEdit(site, {{OutletId("1"), "upper"}}, CircuitId("1"), kTraced, counting()).changes.empty());
  EXPECT_TRUE(assignmentEdit(site, {{OutletId("gone"), "upper"}}, CircuitId("1"), kTraced, counting()).changes.empty());
}

TEST(Assigning, BecomesSurerOnTheSameCircuit) {
  Site site = twoCircuits();
  const HowFound guess{HowKnown::Assumed, "Ben", "2026-03-02"};
  ASSERT_TRUE(apply(assignmentEdit(site, {{OutletId("1"), "upper"}}, CircuitId("1"), guess, counting()), site).ok());
  const Contact& contact = site.at<Outlet>(OutletId("1")).contacts[0];
  EXPECT_EQ(contact.assignment->how, HowKnown::Assumed);
  EXPECT_EQ(contact.assignment->who, "Ben");
  EXPECT_EQ(contact.poles.size(), 1U);
}

TEST(Assigning, UndoesWithItsHistory) {
  const Site before = twoCircuits();
  Site site = before;
  const Edit edit =
      assignmentEdit(site, {{OutletId("1"), "upper"}, {OutletId("2"), "lower"}}, CircuitId("2"), kTraced, counting());
  ASSERT_TRUE(apply(edit, site).ok());
  ASSERT_TRUE(apply(inverseOf(edit), site).ok());
  EXPECT_EQ(site, before);
}

}  // namespace
}  // namespace cordreach::site
