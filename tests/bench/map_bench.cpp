// SPDX-License-Identifier: GPL-3.0-or-later
// How long a repaint of the plan takes with 5,000 outlets in view: 100 steps of panning and zooming at 1280 × 800, at
// scale 1 and 2. Prints the median and the 95th percentile in milliseconds, and ends with 1 when one is over its bound.
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

#include "look/look.h"
#include "map/map_canvas.h"
#include "map/reach_area.h"

namespace {

using namespace cordreach;

constexpr int kColumns = 100;
constexpr int kRows = 50;
constexpr int kSteps = 100;

// Outlets every 2.4 m, 25 a circuit with drawn runs, a room each 20, walls between them.
site::Site largeSite() {
  site::Site site{site::SiteId("bench")};
  site.all<site::Supply>().put({site::SupplyId("S")});
  site::Panel panel{site::PanelId("P"), "P", site::SupplyId("S")};
  const site::FloorId floorId("F");
  panel.place = site::Place{floorId, {1, 1}};
  site.all<site::Panel>().put(panel);
  site::Floor floor{floorId, "Floor"};
  for (int row = 0; row < kRows; ++row) {
    for (int block = 0; block < kColumns / 20; ++block) {
      const double x = block * 48.0;
      const double y = row * 2.4 - 1.2;
      floor.walls.push_back({{x, y}, {x + 46, y}});
      site::Room room{site::RoomId("R" + std::to_string(row * 10 + block)), floorId, "Room"};
      room.outline = {{x, y}, {x + 48, y}, {x + 48, y + 2.4}, {x, y + 2.4}};
      site.all<site::Room>().put(room);
    }
    for (int part = 0; part < kColumns / 25; ++part) {
      const std::string name = std::to_string(row) + "." + std::to_string(part);
      site::Circuit circuit{site::CircuitId(name), panel.id, name, {0}};
      site.all<site::Circuit>().put(circuit);
      std::optional<site::OutletId> before;
      for (int i = 0; i < 25; ++i) {
        const int column = part * 25 + i;
        const std::string label = std::to_string(row) + "-" + std::to_string(column);
        site::Outlet outlet{site::OutletId(label), label};
        outlet.place = site::Place{floorId, {column * 2.4, row * 2.4 - 1.0}};
        for (const char* contact : {"upper", "lower"}) {
          outlet.contacts.push_back({contact, site::Assignment{circuit.id, site::HowKnown::Traced, {}, {}}});
        }
        site.all<site::Outlet>().put(outlet);
        site.all<site::Run>().put({site::RunId(label), circuit.id, before, outlet.id});
        before = outlet.id;
      }
    }
  }
  site.all<site::Floor>().put(floor);
  site::Machine machine{site::MachineId("M"), "Machine"};
  machine.inlets.push_back({.name = "A"});
  machine.inlets.front().cord.length = site::known(50.0 * units::foot);
  site.all<site::Machine>().put(machine);
  return site;
}

struct Times {
  double median;
  double high;
};

Times measure(app::MapCanvas& canvas, double screenScale) {
  QImage image(canvas.size() * screenScale, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(screenScale);
  canvas.fit();
  canvas.render(&image);  // the first fills the caches
  std::vector<double> times;
  for (int step = 0; step < kSteps; ++step) {
    const auto from = std::chrono::steady_clock::now();
    if (step % 2 == 0) {
      canvas.panBy(QPointF(step % 8 < 4 ? 3 : -3, step % 4 < 2 ? 2 : -2));
    } else {
      canvas.zoomBy(step % 8 < 4 ? 0.985 : 1 / 0.985, QPointF(640, 400));
    }
    canvas.render(&image);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - from;
    times.push_back(took.count());
  }
  std::sort(times.begin(), times.end());
  return {times[times.size() / 2], times[times.size() * 95 / 100]};
}

bool isFastEnough(app::MapCanvas& canvas, const char* what) {
  bool sound = true;
  for (const double scale : {1.0, 2.0}) {
    const Times times = measure(canvas, scale);
    const double bound = scale < 1.5 ? 12.0 : 25.0;
    std::printf("scale %.0f%s: median %.1f ms, p95 %.1f ms (at most %.0f)\n", scale, what, times.median, times.high,
                bound);
    sound = sound && times.high <= bound;
  }
  return sound;
}

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  look::setPresent(application, {});
  app::Document document(largeSite());
  app::JudgeService judge;
  app::Selection selection;
  const auto book = text::Phrasebook::load("en").value();
  app::Session session{document, judge, selection, book};
  app::MapMoment moment;
  app::MapCanvas canvas(session, moment);
  canvas.resize(1280, 800);
  canvas.setFloor(site::FloorId("F"));
  const bool sound = isFastEnough(canvas, "");
  canvas.showReach(app::areaOf(planning::reachOf({document.site(), site::FloorId("F"), site::MachineId("M")})));
  return isFastEnough(canvas, ", with the reach from every outlet") && sound ? 0 : 1;
}
