// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/journal.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/support/demo.h"
#include "document/recovery.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;
using testing::renaming;

class JournalTest : public ::testing::Test {
 protected:
  [[nodiscard]] QByteArray text(const Journal& journal) const {
    QFile file(journal.path());
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
  }
  // As the journal of a process that is no longer there.
  QString leaveBehind(const QByteArray& journal) {
    const QString path = folder.path() + "/left.journal";
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(journal);
    return path;
  }

  QTemporaryDir folder;
  Document document{demoBuilding()};
};

TEST_F(JournalTest, IsThereOnlyWhileSomethingIsUnsaved) {
  const Journal journal(document, folder.path());
  EXPECT_FALSE(QFile::exists(journal.path()));
  ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
  EXPECT_TRUE(QFile::exists(journal.path()));
  document.markSaved("a.json");
  EXPECT_FALSE(QFile::exists(journal.path()));
}

TEST_F(JournalTest, HoldsEveryEditAtOnce) {
  const Journal journal(document, folder.path());
  for (const char* name : {"A", "B", "C"}) {
    ASSERT_TRUE(document.apply(renaming(document.site(), name)));
    const auto read = readJournal(text(journal));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->site, document.site());
  }
  document.undo();
  EXPECT_EQ(readJournal(text(journal))->site, document.site());
  document.redo();
  EXPECT_EQ(readJournal(text(journal))->site, document.site());
}

TEST_F(JournalTest, KnowsWhichFileItWasOpenedFrom) {
  document.markSaved("/a folder/bü \"x\".json");
  const Journal journal(document, folder.path());
  ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
  EXPECT_EQ(readJournal(text(journal))->sitePath, document.path());
}

TEST_F(JournalTest, WhatIsSupposedIsNotWritten) {
  const Journal journal(document, folder.path());
  document.suppose(renaming(document.site(), "Tried"));
  EXPECT_FALSE(QFile::exists(journal.path()));
}

TEST_F(JournalTest, EndsCleanWithItsWindow) {
  {
    const Journal journal(document, folder.path());
    ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
  }
  EXPECT_TRUE(findRecoverable(folder.path()).empty());
  EXPECT_TRUE(QDir(folder.path()).entryList(QDir::Files).isEmpty());
}

TEST_F(JournalTest, ALivingProcessKeepsItsOwn) {
  const Journal journal(document, folder.path());
  ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
  EXPECT_TRUE(findRecoverable(folder.path()).empty());
}

TEST_F(JournalTest, CutAnywhereGivesAStateThatWas) {
  const Journal journal(document, folder.path());
  std::vector<site::Site> states;
  for (const char* name : {"A", "B", "C"}) {
    ASSERT_TRUE(document.apply(renaming(document.site(), name)));
    states.push_back(document.site());
  }
  const QByteArray whole = text(journal);
  const qsizetype firstEdit = whole.indexOf('\n', whole.indexOf('\n') + 1) + 1;
  for (qsizetype cut = firstEdit; cut <= whole.size(); ++cut) {
    const auto read = readJournal(whole.left(cut));
    ASSERT_TRUE(read) << cut;
    ASSERT_EQ(read->site, states[static_cast<std::size_t>(read->edits)]) << cut;
  }
  EXPECT_EQ(readJournal(whole)->edits, 2);
  EXPECT_FALSE(readJournal(whole.left(firstEdit - 1)));
}

TEST_F(JournalTest, LeftBehindIsFoundOnceAndGoesWhenDiscarded) {
  QByteArray journal;
  {
    const Journal writing(document, folder.path());
    ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
    journal = text(writing);
  }
  leaveBehind(journal);
  const std::vector<Recoverable> found = findRecoverable(folder.path());
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].site, document.site());
  EXPECT_TRUE(findRecoverable(folder.path()).empty()) << "another window took what is claimed already";
  discard(found[0]);
  EXPECT_TRUE(findRecoverable(folder.path()).empty());
}

TEST_F(JournalTest, UnreadableIsPutAsideNotDeleted) {
  const QString path = leaveBehind("no journal\n");
  EXPECT_TRUE(findRecoverable(folder.path()).empty());
  EXPECT_TRUE(QFile::exists(path + ".unreadable"));
}

TEST_F(JournalTest, SaysOnceThatItCannotBeWrittenAndGoesOnLater) {
  const QString path = folder.path();
  Journal journal(document, path);
  QDir(path).removeRecursively();
  QSignalSpy failed(&journal, &Journal::failed);
  ASSERT_TRUE(document.apply(renaming(document.site(), "A")));
  ASSERT_TRUE(document.apply(renaming(document.site(), "B")));
  EXPECT_EQ(failed.count(), 1);
  QDir().mkpath(path);
  ASSERT_TRUE(document.apply(renaming(document.site(), "C")));
  EXPECT_EQ(readJournal(text(journal))->site, document.site());
}

}  // namespace
}  // namespace cordreach::app
