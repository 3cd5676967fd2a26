// SPDX-License-Identifier: GPL-3.0-or-later
// What one frame of the place Heat costs while its clock plays at 600×: the clock advanced by a frame, everything that
// follows it painted. Each lesson at 1280 × 800, at scale 1, then one with every curve on. Prints the median and the
// 95th percentile in milliseconds, and ends with 1 when one is over its bound of 12 ms.
#include <QApplication>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "heat/heat_place.h"
#include "heat/lesson_shelf.h"
#include "shell/main_window.h"

namespace {

using namespace cordreach;
using Clock = std::chrono::steady_clock;

constexpr int kFrames = 200;
constexpr double kBoundMs = 12.0;

double millisecondsSince(Clock::time_point from) {
  return std::chrono::duration<double, std::milli>(Clock::now() - from).count();
}

// False: over the bound.
bool play(app::HeatPlace& place, const char* name) {
  constexpr units::Duration kFrame = 0.016 * units::second;
  app::HeatModel& model = place.model();
  model.setClock({});
  model.setSpeed(600.0);
  place.window()->grab();  // caches
  std::vector<double> frames;
  for (int i = 0; i < kFrames; ++i) {
    const Clock::time_point from = Clock::now();
    model.advance(kFrame);
    QApplication::sendPostedEvents();
    QApplication::processEvents();  // paints what asked for it
    frames.push_back(millisecondsSince(from));
    if (model.clock() >= model.run()) model.setClock({});
  }
  std::sort(frames.begin(), frames.end());
  const double p95 = frames[frames.size() * 95 / 100];
  std::printf("%-36s median %6.2f ms, p95 %6.2f ms\n", name, frames[frames.size() / 2], p95);
  return p95 <= kBoundMs;
}

}  // namespace

int main(int argumentCount, char** arguments) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(argumentCount, arguments);
  const QTemporaryDir recovery;
  look::Settings settings;
  look::setPresent(application, {});
  app::MainWindow window(settings, recovery.path());
  window.resize(1280, 800);
  window.show();
  auto* place = dynamic_cast<app::HeatPlace*>(window.placeOf("heat"));
  window.showPlace(place);
  for (int i = 0; i < 20; ++i) QApplication::processEvents(QEventLoop::AllEvents, 10);  // layouts
  bool within = true;
  for (const planning::Lesson& lesson : app::preparedLessons()) {
    const Clock::time_point from = Clock::now();
    place->model().open(lesson);
    std::printf("%-36s opened in %.1f ms\n", lesson.title.c_str(), millisecondsSince(from));
    within &= play(*place, lesson.title.c_str());
  }
  place->chart()->setWishes({true, true, true, true});
  within &= play(*place, "every curve");
  return within ? 0 : 1;
}
