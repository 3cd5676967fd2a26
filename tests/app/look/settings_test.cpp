// SPDX-License-Identifier: GPL-3.0-or-later
#include "look/settings.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QStandardPaths>

namespace cordreach::look {
namespace {

QString settingsFile() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + "/cordreach/settings.ini";
}

class SettingsTest : public ::testing::Test {
 protected:
  SettingsTest() { QFile::remove(settingsFile()); }
  ~SettingsTest() override { QFile::remove(settingsFile()); }
};

TEST_F(SettingsTest, KeepsWhatWasChosen) {
  const Choices chosen{text::UnitSystem::Metric, 1.5, Ground::Dark, true, true};
  Settings().setChoices(chosen);
  EXPECT_EQ(Settings().choices(), chosen);
}

TEST_F(SettingsTest, RemembersWhoGoesRound) {
  EXPECT_TRUE(Settings().surveyor().empty());
  Settings().setSurveyor("Ana; \"the tall one\"");
  EXPECT_EQ(Settings().surveyor(), "Ana; \"the tall one\"");
}

TEST_F(SettingsTest, TakesTheNearestTextSizeFromABadFile) {
  {
    QSettings bad(settingsFile(), QSettings::IniFormat);
    bad.setValue("text_scale", 37);
    bad.setValue("ground", "purple");
  }
  EXPECT_EQ(Settings().choices().textScale, 2);
  EXPECT_EQ(Settings().choices().ground, Ground::System);
}

TEST_F(SettingsTest, RemembersTheLastFilesOnceEachNewestFirst) {
  Settings settings;
  for (int i = 0; i < 12; ++i) settings.addRecentFile(QString("/buildings/%1.json").arg(i));
  settings.addRecentFile("/buildings/8.json");
  EXPECT_EQ(settings.recentFiles().size(), 8);
  EXPECT_EQ(settings.recentFiles().first(), "/buildings/8.json");
  EXPECT_EQ(settings.recentFiles().count("/buildings/8.json"), 1);
  settings.removeRecentFile("/buildings/8.json");
  EXPECT_EQ(settings.recentFiles().first(), "/buildings/11.json");
}

TEST(Look, FollowsTheDesktopUnlessToldOtherwise) {
  Choices choices;
  EXPECT_TRUE(lookOf(choices, true).theme.dark);
  EXPECT_FALSE(lookOf(choices, false).theme.dark);
  choices.ground = Ground::Light;
  EXPECT_FALSE(lookOf(choices, true).theme.dark);
}

TEST(Look, ScalesTypeAndLayoutTogether) {
  auto& application = *static_cast<QApplication*>(QApplication::instance());
  setPresent(application, {{}, 2, true});
  EXPECT_EQ(font(Type::Verdict).pixelSize(), 48);
  EXPECT_EQ(scaled(44), 88);
  setPresent(application, {});
  EXPECT_EQ(font(Type::Verdict).pixelSize(), 24);
  EXPECT_EQ(font(Type::Body).family(), "DejaVu Sans");
}

TEST(Look, MovesNothingWhereLessMotionIsWanted) {
  auto& application = *static_cast<QApplication*>(QApplication::instance());
  setPresent(application, {{}, 1, false});
  EXPECT_EQ(motionMs(260), 0);
  setPresent(application, {});
  EXPECT_EQ(motionMs(260), 260);
}

}  // namespace
}  // namespace cordreach::look
