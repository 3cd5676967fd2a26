// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/launch.h"

#include <QApplication>
#include <QFileInfo>
#include <QScreen>
#include <QTimer>

#include "document/journal.h"
#include "look/look.h"
#include "look/settings.h"
#include "shell/main_window.h"

namespace cordreach::app {

namespace {

void openFirst(MainWindow& window, const look::Settings& settings, const Launch& launch) {
  if (!launch.file.empty() && window.files().openPath(QString::fromStdString(launch.file))) return;
  const QStringList recent = settings.recentFiles();
  const bool hasLast = !recent.isEmpty() && QFileInfo::exists(recent.first());
  if (launch.file.empty() && !launch.inSourceTree && hasLast && window.files().openPath(recent.first())) return;
  window.files().showDemo();
}

constexpr int kTitleBarPx = 40;  // own: of usual window managers

// For the first time the window has a usual size; a screen that can't hold it with its title bar is filled.
void showFirst(MainWindow& window, const look::Settings& settings) {
  const QSize room = window.screen()->availableSize() - QSize(0, kTitleBarPx);
  const bool fits = window.width() <= room.width() && window.height() <= room.height();
  if (settings.windowGeometry().isEmpty() && !fits) return window.showMaximized();
  window.show();
}

}  // namespace

int runWindow(int& argumentCount, char** arguments, const Launch& launch) {
  QApplication::setApplicationName("cordreach");
  QApplication::setApplicationDisplayName("Cordreach");
  QApplication::setDesktopFileName("cordreach");
  QApplication application(argumentCount, arguments);
  look::Settings settings;
  look::setPresent(application, look::lookOf(settings.choices(), look::systemIsDark()));
  MainWindow window(settings, recoveryFolder());
  openFirst(window, settings, launch);
  showFirst(window, settings);
  // After the window stands, so that the question has something to stand on.
  QTimer::singleShot(0, &window, [&window] { window.files().offerRecovery(recoveryFolder()); });
  return QApplication::exec();
}

}  // namespace cordreach::app
