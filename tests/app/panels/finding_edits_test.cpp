// SPDX-License-Identifier: GPL-3.0-or-later
// Doing what a remedy says, and accepting a CAUTION.
#include "panels/finding_edits.h"

#include <gtest/gtest.h>

#include "app/panels/support.h"
#include "map/plug_edits.h"
#include "panels/details_text.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;
using testing::english;

// The demo judged once, with its remedies: every test reads it, none changes it.
const Verdict& judgedDemo() {
  static const Verdict verdict = [] {
    Verdict made;
    made.number = 1;
    made.site = std::make_shared<const site::Site>(demoBuilding());
    made.answer = study::assess(*made.site);
    made.findings = rules::judge(*made.site, made.answer);
    made.remedies = planning::remediesForAll(*made.site, made.findings);
    return made;
  }();
  return verdict;
}

std::size_t firstOf(rules::Severity severity, bool mendable) {
  for (std::size_t i = 0; i < judgedDemo().findings.size(); ++i) {
    if (judgedDemo().findings[i].severity != severity) continue;
    if (!mendable || !judgedDemo().remedies[i].empty()) return i;
  }
  throw std::runtime_error("none of that severity");
}

TEST(FindingEdits, ARemedyOfThisVerySiteIsItsEdit) {
  const std::size_t at = firstOf(rules::Severity::Warning, true);
  const auto edit = triedAgain(*judgedDemo().site, judgedDemo(), at, 0);
  ASSERT_TRUE(edit.ok());
  EXPECT_EQ(edit.value(), judgedDemo().remedies[at][0].edit);
}

TEST(FindingEdits, ARemedyStillHoldsWhenSomethingElseChanged) {
  const std::size_t at = firstOf(rules::Severity::Warning, true);
  site::Site present = *judgedDemo().site;
  ASSERT_TRUE(site::apply(testing::renaming(present, "Renamed"), present).ok());
  const auto edit = triedAgain(present, judgedDemo(), at, 0);
  ASSERT_TRUE(edit.ok()) << edit.error().code;
  ASSERT_TRUE(site::apply(edit.value(), present).ok());
  const rules::Finding& found = judgedDemo().findings[at];
  for (const rules::Finding& left : rules::judge(present, study::assess(present))) {
    EXPECT_FALSE(left.code == found.code && left.subjects.front() == found.subjects.front());
  }
}

TEST(FindingEdits, ARemedyIsRefusedOnceTheSiteHasMovedOn) {
  const std::size_t at = firstOf(rules::Severity::Warning, true);
  site::Site present = *judgedDemo().site;
  // Whatever plug it was to move is pulled meanwhile.
  const auto pulled = unplug(present, judgedDemo().findings[at].hookups.front());
  ASSERT_TRUE(pulled.ok());
  ASSERT_TRUE(site::apply(pulled.value(), present).ok());
  const auto edit = triedAgain(present, judgedDemo(), at, 0);
  ASSERT_FALSE(edit.ok());
  EXPECT_EQ(edit.error().code, "remedy.no_longer");
  EXPECT_FALSE(triedAgain(present, judgedDemo(), 9999, 0).ok());
}

TEST(FindingEdits, ACautionIsAcceptedByNameAndTakenBack) {
  const rules::Finding& caution = judgedDemo().findings[firstOf(rules::Severity::Caution, false)];
  site::Site site = demoBuilding();
  const site::Site before = site;
  EXPECT_EQ(acceptEdit(site, caution, {" ", "because"}).error().code, "accept.no_name");
  EXPECT_EQ(acceptEdit(site, caution, {"Ana", ""}).error().code, "accept.no_reason");
  const auto edit = acceptEdit(site, caution, {"Ana", "one night only", "2026-01-05"});
  ASSERT_TRUE(edit.ok());
  ASSERT_TRUE(site::apply(edit.value(), site).ok());
  const site::Acceptance* accepted = acceptanceOf(site, caution);
  ASSERT_NE(accepted, nullptr);
  EXPECT_EQ(accepted->who, "Ana");
  bool isListed = false;
  for (const rules::Finding& found : rules::judge(site, study::assess(site))) {
    if (found.code != caution.code || !(found.subjects.front() == caution.subjects.front())) continue;
    isListed = true;
    EXPECT_TRUE(found.accepted);
    EXPECT_FALSE(mayBeAccepted(found));
  }
  EXPECT_TRUE(isListed);
  const auto back = takeBackEdit(site, accepted->id);
  ASSERT_TRUE(back.ok());
  ASSERT_TRUE(site::apply(back.value(), site).ok());
  EXPECT_EQ(site, before);
}

TEST(FindingEdits, NothingWorseThanACautionCanBeAccepted) {
  for (const auto severity : {rules::Severity::Danger, rules::Severity::Warning, rules::Severity::Notice}) {
    const rules::Finding& found = judgedDemo().findings[firstOf(severity, false)];
    EXPECT_EQ(acceptEdit(*judgedDemo().site, found, {"Ana", "x"}).error().code, "accept.not_a_caution");
  }
}

TEST(FindingDetails, SayTheSourceAndEveryFigureInWords) {
  for (std::size_t i = 0; i < judgedDemo().findings.size(); ++i) {
    const auto groups = detailsOf(judgedDemo(), i, english());
    ASSERT_GE(groups.size(), 2U);
    EXPECT_EQ(groups.back().lines.front().label, judgedDemo().findings[i].source.text);
    EXPECT_FALSE(groups.back().lines.front().value.empty());
    for (const DetailGroup& group : groups) {
      for (const DetailLine& line : group.lines) {
        for (const std::string& words : {line.label, line.value, line.band}) {
          EXPECT_EQ(words.find("panel."), std::string::npos) << words;
          EXPECT_EQ(words.find("reason."), std::string::npos) << words;
        }
      }
    }
  }
}

TEST(FindingDetails, ShowTheBandOfWhatIsUncertain) {
  const std::size_t at = firstOf(rules::Severity::Warning, true);
  const auto groups = detailsOf(judgedDemo(), at, english());
  bool hasBand = false;
  for (const DetailGroup& group : groups) {
    for (const DetailLine& line : group.lines) hasBand = hasBand || !line.band.empty();
  }
  EXPECT_TRUE(hasBand);
}

}  // namespace
}  // namespace cordreach::app
