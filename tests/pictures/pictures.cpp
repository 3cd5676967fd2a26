// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the pictures of the guide from the running windows, so that they never show what the program is not.
//   pictures FOLDER
#include <QApplication>
#include <QElapsedTimer>
#include <QPixmap>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>

#include "shell/main_window.h"
#include "shell/verdict_band.h"

namespace {

using namespace cordreach;

struct Picture {
  const char* name;
  QSize size;
  look::Choices choices;
};

std::vector<Picture> pictures() {
  using enum text::UnitSystem;
  using enum look::Ground;
  return {{"map", {1280, 800}, {Us, 1, Light, false, true}},
          {"map-dark", {1280, 800}, {Us, 1, Dark, false, true}},
          {"map-contrast", {1280, 800}, {Us, 1, Light, true, true}},
          {"map-small", {1024, 700}, {Metric, 1, Light, false, true}},
          {"map-large-type", {1600, 1000}, {Us, 1.5, Light, false, true}}};
}

bool draw(const Picture& picture, const QString& folder) {
  const QTemporaryDir recovery;
  look::Settings settings;
  settings.setWindowGeometry({});
  settings.setChoices(picture.choices);
  look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(picture.choices, false));
  app::MainWindow window(settings, recovery.path());
  window.files().showDemo();
  window.resize(picture.size);
  window.show();
  const auto settled = [&] { return window.band()->isFresh() && !window.session().judge.isBusy(); };
  if (!QTest::qWaitFor(settled, 60000)) return false;
  QTest::qWait(50);
  return window.grab().save(folder + "/" + picture.name + ".png");
}

}  // namespace

int main(int argumentCount, char** arguments) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(argumentCount, arguments);
  if (argumentCount != 2) {
    std::fputs("usage: pictures FOLDER\n", stderr);
    return 2;
  }
  for (const Picture& picture : pictures()) {
    if (draw(picture, QString::fromLocal8Bit(arguments[1]))) continue;
    std::fprintf(stderr, "pictures: %s was not drawn\n", picture.name);
    return 1;
  }
  return 0;
}
