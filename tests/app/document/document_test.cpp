// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "app/support/demo.h"

namespace cordreach::app {
namespace {

using testing::changing;
using testing::demoBuilding;
using testing::renaming;

TEST(Document, BeginsCleanWithNothingToUndo) {
  const Document document(demoBuilding());
  EXPECT_FALSE(document.isDirty());
  EXPECT_FALSE(document.canUndo());
  EXPECT_FALSE(document.canRedo());
}

TEST(Document, TakesAnEditBackAndMakesItAgain) {
  const site::Site before = demoBuilding();
  Document document(before);
  ASSERT_TRUE(document.apply(renaming(before, "Other")));
  const site::Site after = document.site();
  EXPECT_EQ(document.undoCode(), "site.rename");
  document.undo();
  EXPECT_EQ(document.site(), before);
  EXPECT_EQ(document.redoCode(), "site.rename");
  document.redo();
  EXPECT_EQ(document.site(), after);
}

TEST(Document, StaysAsItWasWhenAnEditDoesNotFit) {
  const site::Site before = demoBuilding();
  Document document(before);
  site::Site elsewhere = before;
  elsewhere.name = "Elsewhere";
  QSignalSpy changes(&document, &Document::changed);
  const auto refused = document.apply(renaming(elsewhere, "Other"));
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "edit.stale");
  EXPECT_EQ(document.site(), before);
  EXPECT_EQ(changes.count(), 0);
  EXPECT_FALSE(document.canUndo());
}

TEST(Document, MakesOneStepOfTypingInOneField) {
  const site::Site before = demoBuilding();
  Document document(before);
  for (const char* typed : {"N", "Ne", "New"}) ASSERT_TRUE(document.apply(renaming(document.site(), typed), "name"));
  EXPECT_EQ(document.site().name, "New");
  document.undo();
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.canUndo());
  document.redo();
  EXPECT_EQ(document.site().name, "New");
}

TEST(Document, KeepsStepsOfDifferentFieldsApart) {
  Document document(demoBuilding());
  ASSERT_TRUE(document.apply(renaming(document.site(), "A"), "one"));
  ASSERT_TRUE(document.apply(renaming(document.site(), "B"), "other"));
  document.undo();
  EXPECT_EQ(document.site().name, "A");
}

TEST(Document, DoesNotMergeIntoWhatWasSaved) {
  Document document(demoBuilding());
  ASSERT_TRUE(document.apply(renaming(document.site(), "A"), "name"));
  document.markSaved("a.json");
  ASSERT_TRUE(document.apply(renaming(document.site(), "AB"), "name"));
  EXPECT_TRUE(document.isDirty());
  document.undo();
  EXPECT_FALSE(document.isDirty());
  EXPECT_EQ(document.site().name, "A");
}

TEST(Document, IsCleanAgainAtTheSavedStateAndNeverElsewhere) {
  Document document(demoBuilding());
  ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
  document.markSaved("a.json");
  EXPECT_FALSE(document.isDirty());
  document.undo();
  EXPECT_TRUE(document.isDirty());
  document.redo();
  EXPECT_FALSE(document.isDirty());
  document.undo();
  // The saved state is on a branch that can't be reached any more.
  ASSERT_TRUE(document.apply(renaming(document.site(), "B")));
  EXPECT_TRUE(document.isDirty());
  document.undo();
  EXPECT_TRUE(document.isDirty());
}

TEST(Document, AnEditThatChangesNothingIsNoStep) {
  Document document(demoBuilding());
  ASSERT_TRUE(document.apply(renaming(document.site(), document.site().name)));
  EXPECT_FALSE(document.canUndo());
  EXPECT_FALSE(document.isDirty());
}

TEST(Document, SupposingLeavesNoTrace) {
  const site::Site before = demoBuilding();
  Document document(before);
  QSignalSpy committed(&document, &Document::committed);
  QSignalSpy supposed(&document, &Document::supposed);
  document.suppose(renaming(before, "Tried"));
  EXPECT_EQ(document.shown()->name, "Tried");
  EXPECT_EQ(document.site(), before);
  document.suppose(renaming(before, "Tried again"));
  document.dropSupposition();
  EXPECT_EQ(*document.shown(), before);
  EXPECT_FALSE(document.canUndo());
  EXPECT_FALSE(document.isDirty());
  EXPECT_EQ(committed.count(), 0);
  EXPECT_EQ(supposed.count(), 3);
}

TEST(Document, ReleasingWhatWasSupposedIsOneStep) {
  Document document(demoBuilding());
  document.suppose(renaming(document.site(), "Tried"));
  ASSERT_TRUE(document.apply(renaming(document.site(), "Tried")));
  EXPECT_FALSE(document.isSupposing());
  EXPECT_EQ(document.site().name, "Tried");
  document.undo();
  EXPECT_FALSE(document.canUndo());
}

TEST(Document, SupposingWhatDoesNotFitShowsTheSiteItself) {
  Document document(demoBuilding());
  site::Site elsewhere = document.site();
  elsewhere.name = "Elsewhere";
  document.suppose(renaming(document.site(), "Tried"));
  document.suppose(renaming(elsewhere, "Other"));
  EXPECT_FALSE(document.isSupposing());
}

TEST(Document, TellsExactlyWhatChanged) {
  Document document(demoBuilding());
  std::vector<DocumentChange> heard;
  QObject::connect(&document, &Document::changed, [&](const DocumentChange& change) { heard.push_back(change); });
  const site::Edit edit = renaming(document.site(), "A");
  ASSERT_TRUE(document.apply(edit));
  document.undo();
  document.replace(demoBuilding(), "b.json");
  ASSERT_EQ(heard.size(), 3U);
  EXPECT_EQ(heard[0].changes, edit.changes);
  EXPECT_EQ(heard[1].changes, site::inverseOf(edit).changes);
  EXPECT_TRUE(heard[2].reset);
}

}  // namespace
}  // namespace cordreach::app
