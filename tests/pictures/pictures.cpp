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

#include "desk/cord_place.h"
#include "heat/heat_place.h"
#include "heat/lesson_panel.h"
#include "listings/listings_view.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "pictures/cord_steps.h"
#include "pictures/map_steps.h"
#include "shell/main_window.h"
#include "shell/map_place.h"
#include "shell/verdict_band.h"

namespace {

using namespace cordreach;

struct Picture {
  const char* name;
  QSize size;
  look::Choices choices;
  const char* place = "map";
  app::MapSide side = app::MapSide::Plan;
  app::Overlay overlay = app::Overlay::Wiring;
  std::size_t lesson = 0;
  bool strips = false;
};

std::vector<Picture> pictures() {
  using enum text::UnitSystem;
  using enum look::Ground;
  return {
      {"map", {1280, 800}, {Us, 1, Light, false, true}},
      {"map-dark", {1280, 800}, {Us, 1, Dark, false, true}},
      {"map-contrast", {1280, 800}, {Us, 1, Light, true, true}},
      {"map-small", {1024, 700}, {Metric, 1, Light, false, true}},
      {"map-large-type", {1600, 1000}, {Us, 1.5, Light, false, true}},
      {"map-reach", {1280, 800}, {Us, 1, Light, false, true}, "map", app::MapSide::Plan, app::Overlay::Reach},
      {"lists", {1280, 800}, {Us, 1, Light, false, true}, "map", app::MapSide::Lists},
      {"lists-dark", {1280, 800}, {Metric, 1, Dark, false, true}, "map", app::MapSide::Lists},
      {"panels", {1280, 800}, {Us, 1, Light, false, true}, "map", app::MapSide::Panels},
      {"cord", {1280, 800}, {Us, 1, Light, false, true}, "cord"},
      {"cord-dark", {1280, 800}, {Us, 1, Dark, false, true}, "cord"},
      {"cord-projector", {1024, 768}, {Metric, 1.25, Light, false, true}, "cord"},
      {"heat", {1280, 800}, {Us, 1, Light, false, true}, "heat"},
      {"heat-dark", {1280, 800}, {Metric, 1, Dark, false, true}, "heat"},
      {.name = "heat-curves",
       .size = {1280, 800},
       .choices = {Us, 1, Light, false, true},
       .place = "heat",
       .lesson = 1,
       .strips = true},
      {.name = "heat-pin", .size = {1280, 800}, .choices = {Us, 1, Light, false, true}, .place = "heat", .lesson = 7},
      {"heat-projector", {1024, 768}, {Us, 1.5, Light, false, true}, "heat"}};
}

// A job that shows where the edge is: a machine of the building, farther off than its own cord reaches.
void askAboutACord(app::CordPlace& place) {
  place.model().change([](app::CordInputs& inputs) {
    inputs.machineBy = app::MachineBy::Site;
    inputs.machine = site::MachineId("M3");
    inputs.inletName = "A";
    inputs.outletBy = app::OutletBy::Site;
    inputs.outlet = site::OutletSocket{site::OutletId("1-31"), "upper"};
    inputs.measure = app::Measure::Length;
    inputs.distance = 62.0 * units::foot;
  });
}

// How far the first machine gets from an outlet in the corridor.
bool walkFromAnOutlet(app::MainWindow& window) {
  window.session().selection.choose({{rules::SubjectKind::Outlet, "1-05"}});
  app::MapView& view = *window.map()->view();
  view.showOverlay(app::Overlay::Reach);
  return QTest::qWaitFor([&] { return !view.canvas().state().area.stretched.isEmpty(); }, 60000);
}

// Some way into it, where its sides have parted.
void showLesson(app::HeatPlace& place, const Picture& picture) {
  if (picture.lesson > 0) place.lesson()->openAt(picture.lesson);
  app::PlotWishes wishes = place.chart()->wishes();
  wishes.volts = wishes.speed = wishes.watts = picture.strips;
  place.chart()->setWishes(wishes);
  place.model().setClock(40.0 * units::minute);
}

bool draw(const Picture& picture, const QString& folder) {
  const QTemporaryDir recovery;
  look::Settings settings;
  settings.setWindowGeometry({});
  settings.setChoices(picture.choices);
  look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(picture.choices, false));
  app::MainWindow window(settings, recovery.path());
  window.files().showDemo();
  window.showPlace(window.placeOf(picture.place));
  window.map()->showSide(picture.side);
  window.map()->lists()->show(app::ListingKind::Outlets);
  window.resize(picture.size);
  window.show();
  auto* heat = dynamic_cast<app::HeatPlace*>(window.place());
  if (heat != nullptr) showLesson(*heat, picture);
  auto* cord = dynamic_cast<app::CordPlace*>(window.place());
  if (cord != nullptr) askAboutACord(*cord);
  const auto settled = [&] {
    const bool drawn = cord == nullptr || cord->model().gridIsFresh();
    const bool worked = heat == nullptr || (heat->model().isWorkedOut() && !heat->model().isBusy());
    return drawn && worked && window.band()->isFresh() && !window.session().judge.isBusy();
  };
  if (!QTest::qWaitFor(settled, 60000)) return false;
  if (picture.overlay == app::Overlay::Reach && !walkFromAnOutlet(window)) return false;
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
  if (!guide::drawMapSteps(QString::fromLocal8Bit(arguments[1]), look::Ground::Light)) {
    std::fputs("pictures: the steps of the map were not drawn\n", stderr);
    return 1;
  }
  if (!guide::drawCordSteps(QString::fromLocal8Bit(arguments[1]), look::Ground::Light)) {
    std::fputs("pictures: the steps of the cord were not drawn\n", stderr);
    return 1;
  }
  return 0;
}
