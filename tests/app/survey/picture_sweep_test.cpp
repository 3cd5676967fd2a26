// SPDX-License-Identifier: GPL-3.0-or-later
// Which plan pictures go when a site is opened, and which never do.
#include "survey/picture_sweep.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "app/survey/plans.h"
#include "survey/picture_files.h"

namespace cordreach::app {
namespace {

using testing::encoded;
using testing::planImage;

class PictureSweep : public ::testing::Test {
 protected:
  void SetUp() override {
    QDir(folder.path()).mkdir("recovery");
    site::Picture picture = storePicture(sitePath(), encoded(planImage({40, 20})), "png").value();
    m_hash = QString::fromStdString(picture.hash);
    m_name = pictureName(picture);
    write("site.json", "{\"version\": 2}");
  }
  [[nodiscard]] QString sitePath() const { return folder.path() + "/site.json"; }
  void write(const QString& name, const QByteArray& text) const {
    QFile file(folder.path() + "/" + name);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text);
  }
  [[nodiscard]] QByteArray mention() const { return "{\"picture\": \"" + m_hash.toLatin1() + "\"}"; }
  [[nodiscard]] QStringList sweep(const QString& held = {}) const {
    return sweepPictures({sitePath(), folder.path() + "/recovery",
                          [held](const QString& path) { return path.endsWith(held) && !held.isEmpty(); }});
  }
  [[nodiscard]] bool isThere() const { return QFile::exists(folder.path() + "/" + m_name); }

  QTemporaryDir folder;
  QString m_hash;
  QString m_name;
};

TEST_F(PictureSweep, WhatNothingMentionsGoes) {
  EXPECT_EQ(sweep(), QStringList{m_name});
  EXPECT_FALSE(isThere());
}

TEST_F(PictureSweep, WhatTheSiteShowsStays) {
  write("site.json", mention());
  EXPECT_TRUE(sweep().isEmpty());
  EXPECT_TRUE(isThere());
}

TEST_F(PictureSweep, WhatACopyOrAnotherSiteOfTheFolderShowsStays) {
  for (const char* name : {"other.json", "site.json.bak", ".site.json~"}) {
    write(name, "\n " + mention());
    EXPECT_TRUE(sweep().isEmpty()) << name;
    QFile::remove(folder.path() + "/" + name);
  }
  EXPECT_EQ(sweep().size(), 1);
}

TEST_F(PictureSweep, WhatAJournalMayBringBackStays) {
  write("recovery/1.journal", "{\"journal\":1}\n{}\n" + mention() + "\n");
  EXPECT_TRUE(sweep().isEmpty());
}

TEST_F(PictureSweep, AllStaysWhileAnotherWindowHasASiteOfTheFolderOpen) {
  write("other.json", "{}");
  EXPECT_TRUE(sweep("other.json").isEmpty());
  EXPECT_EQ(sweep().size(), 1);
}

TEST_F(PictureSweep, WhatIsNotOursStays) {
  const QString other = QString(64, QLatin1Char('a')) + ".png";
  write(other, "somebody's, under a name of 64 letters");
  write("holiday.png", encoded(planImage({40, 20})));
  EXPECT_EQ(sweep(), QStringList{m_name});
  EXPECT_TRUE(QFile::exists(folder.path() + "/" + other));
  EXPECT_TRUE(QFile::exists(folder.path() + "/holiday.png"));
}

}  // namespace
}  // namespace cordreach::app
