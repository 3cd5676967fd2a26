// SPDX-License-Identifier: GPL-3.0-or-later
// Kills a program that edits and saves, at random moments, and looks at what it leaves.
#include <gtest/gtest.h>

#include <QDeadlineTimer>
#include <QDir>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <random>

#include "app/support/demo.h"
#include "document/recovery.h"

namespace cordreach::app {
namespace {

constexpr int kKills = 200;
constexpr int kLongestLifeMs = 90;

int numberIn(const QByteArray& output) {
  const auto end = output.lastIndexOf('\n');
  const auto begin = output.lastIndexOf('\n', end - 1) + 1;
  return end < 0 ? 0 : output.mid(begin, end - begin).toInt();
}

class Killing {
 public:
  Killing() {
    site::Site site = testing::demoBuilding();
    site.name = "0";
    EXPECT_TRUE(io::saveSite(m_file.toStdString(), site));
  }

  // Lets it live for a moment after its first edit; answers the number of the last edit that it told of.
  int runAndKill(int lifeMs) {
    QProcess process;
    process.start(CORDREACH_VICTIM, {m_folder.path(), m_file});
    EXPECT_TRUE(process.waitForReadyRead(20000));
    QByteArray told = process.readAllStandardOutput();
    const QDeadlineTimer end(lifeMs);
    while (!end.hasExpired()) {
      if (process.waitForReadyRead(std::max<int>(1, static_cast<int>(end.remainingTime())))) {
        told += process.readAllStandardOutput();
      }
    }
    process.kill();
    process.waitForFinished(20000);
    return numberIn(told + process.readAllStandardOutput());
  }

  // The number of the newest state that a new start would find; the site file is whole in any case.
  int numberLeft() const {
    const base::Result<site::Site> saved = io::loadSite(m_file.toStdString());
    EXPECT_TRUE(saved);
    int number = saved ? std::stoi(saved.value().name) : -1;
    for (const Recoverable& one : findRecoverable(m_folder.path())) number = std::max(number, std::stoi(one.site.name));
    return number;
  }

  [[nodiscard]] QStringList unreadable() const { return QDir(m_folder.path()).entryList({"*.unreadable"}); }

 private:
  QTemporaryDir m_folder;
  QString m_file = m_folder.path() + "/site.json";
};

TEST(KilledWhileEditingAndSaving, LosesNothingAndLeavesNoHalfFile) {
  Killing killing;
  std::mt19937 random(20260101);
  std::uniform_int_distribution<int> life(0, kLongestLifeMs);
  int told = 0;
  for (int kill = 0; kill < kKills; ++kill) {
    const int last = std::max(told, killing.runAndKill(life(random)));
    ASSERT_GT(last, told) << "it made no edit after kill " << kill;
    told = last;
    const int left = killing.numberLeft();
    ASSERT_GE(left, told) << "after kill " << kill;
    // It may have been killed between an edit and telling of it, never more than one ahead.
    ASSERT_LE(left, told + 1) << "after kill " << kill;
    told = left;
  }
  EXPECT_TRUE(killing.unreadable().isEmpty());
}

}  // namespace
}  // namespace cordreach::app
