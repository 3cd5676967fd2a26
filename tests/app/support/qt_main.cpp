// SPDX-License-Identifier: GPL-3.0-or-later
// The main of the tests that need Qt: no screen, and no file of the user's own.
#include <gtest/gtest.h>

#include <QApplication>
#include <QStandardPaths>

#include "look/look.h"

int main(int argumentCount, char** arguments) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  testing::InitGoogleTest(&argumentCount, arguments);
  QApplication::setApplicationName("cordreach");
  QApplication application(argumentCount, arguments);
  cordreach::look::setPresent(application, {});
  return RUN_ALL_TESTS();
}
