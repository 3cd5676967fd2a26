// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/site_store.h"

#include <gtest/gtest.h>
#include <sys/resource.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <csignal>

#include "app/support/demo.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;

class SiteStoreTest : public ::testing::Test {
 protected:
  void write(const QByteArray& content) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(content);
  }
  [[nodiscard]] QByteArray content() const {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
  }

  QTemporaryDir folder;
  QString path = folder.path() + "/site.json";
  SiteStore store{folder.path()};
};

TEST_F(SiteStoreTest, ReadsBackWhatItWrote) {
  const site::Site site = demoBuilding();
  ASSERT_TRUE(store.save(path, site));
  EXPECT_EQ(store.open(path).value(), site);
}

TEST_F(SiteStoreTest, SeesThatTheFileWasChangedUnderneath) {
  ASSERT_TRUE(store.save(path, demoBuilding()));
  EXPECT_EQ(store.underneath(), Underneath::Same);
  const QByteArray same = content();
  write(same);
  EXPECT_EQ(store.underneath(), Underneath::Same) << "written again with the same content";
  write(same + "\n");
  EXPECT_EQ(store.underneath(), Underneath::Changed);
  QFile::remove(path);
  EXPECT_EQ(store.underneath(), Underneath::Gone);
}

TEST_F(SiteStoreTest, SeesAChangeOfTheSameSizeAndTime) {
  ASSERT_TRUE(store.save(path, demoBuilding()));
  QByteArray other = content();
  const QDateTime when = QFileInfo(path).lastModified();
  other.replace("Tern Street", "Fern Street");
  write(other);
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  file.setFileTime(when.addMSecs(1), QFileDevice::FileModificationTime);
  file.close();
  EXPECT_EQ(store.underneath(), Underneath::Changed);
}

TEST_F(SiteStoreTest, TellsASecondWindowThatTheFileIsOpen) {
  ASSERT_TRUE(store.save(path, demoBuilding()));
  EXPECT_FALSE(store.isHeldElsewhere(path));
  SiteStore other(folder.path());
  EXPECT_TRUE(other.isHeldElsewhere(path));
  QFile::link(path, folder.path() + "/link.json");
  EXPECT_TRUE(other.isHeldElsewhere(folder.path() + "/link.json"));
  store.close();
  EXPECT_FALSE(other.isHeldElsewhere(path));
}

// Killed with the file open: its mark is stale, and the next window takes it over.
TEST_F(SiteStoreTest, TakesOverFromAProcessThatDied) {
  site::Site site = demoBuilding();
  site.name = "0";
  ASSERT_TRUE(io::saveSite(path.toStdString(), site));
  QProcess victim;
  victim.start(CORDREACH_VICTIM, {folder.path(), path});
  ASSERT_TRUE(victim.waitForReadyRead(20000));
  EXPECT_TRUE(store.isHeldElsewhere(path));
  victim.kill();
  ASSERT_TRUE(victim.waitForFinished(20000));
  ASSERT_FALSE(QDir(folder.path()).entryList({"*.lock"}).isEmpty()) << "it left no mark to be taken over";
  EXPECT_FALSE(store.isHeldElsewhere(path));
  ASSERT_TRUE(store.open(path));
  SiteStore other(folder.path());
  EXPECT_TRUE(other.isHeldElsewhere(path));
}

TEST_F(SiteStoreTest, LeavesTheOldFileWhenTheNewOneCannotBeWritten) {
  ASSERT_TRUE(store.save(path, demoBuilding()));
  const QByteArray before = content();
  // A limit on how large a file may get stands in for a full disk: the write fails midway.
  rlimit old{};
  ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &old), 0);
  const auto handler = std::signal(SIGXFSZ, SIG_IGN);
  const rlimit small{4096, old.rlim_max};
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
  site::Site other = demoBuilding();
  other.name = "Other";
  const auto refused = store.save(path, other);
  setrlimit(RLIMIT_FSIZE, &old);
  std::signal(SIGXFSZ, handler);
  EXPECT_FALSE(refused);
  EXPECT_EQ(content(), before);
  EXPECT_EQ(store.underneath(), Underneath::Same);
}

TEST_F(SiteStoreTest, RefusesAFolderThatIsNotThere) {
  const auto refused = store.save(folder.path() + "/nowhere/site.json", demoBuilding());
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "io.not_found");
}

}  // namespace
}  // namespace cordreach::app
