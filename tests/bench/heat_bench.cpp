// SPDX-License-Identifier: GPL-3.0-or-later
// What one frame of the place Heat costs while its clock plays at 600×: the clock advanced by a frame and the whole
// window painted that follows from it; a frame in which any of its parts was not painted ends the run. Each lesson at
// 1280 × 800, then one with every curve on. Prints the median and the 95th percentile in milliseconds, and ends with 1
// when one is over its bound of 12 ms. At another scale: QT_SCALE_FACTOR=2.
#include <QApplication>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <set>
#include <vector>

#include "heat/breaker_bars.h"
#include "heat/figure_table.h"
#include "heat/heat_place.h"
#include "heat/lesson_shelf.h"
#include "heat/lesson_words.h"
#include "heat/side_view.h"
#include "shell/main_window.h"

namespace {

using namespace cordreach;
using Clock = std::chrono::steady_clock;

constexpr int kFrames = 200;
constexpr double kBoundMs = 12.0;

double millisecondsSince(Clock::time_point from) {
  return std::chrono::duration<double, std::milli>(Clock::now() - from).count();
}

// Which of the parts were painted.
class Painted : public QObject {
 public:
  explicit Painted(app::HeatPlace& place) {
    m_parts = {place.chart(), place.findChild<app::FigureTable*>(), place.findChild<app::BreakerBars*>()};
    for (app::SideView* view : place.findChildren<app::SideView*>()) m_parts.push_back(view);
    for (QWidget* part : m_parts) part->installEventFilter(this);
  }
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::Paint) m_painted.insert(watched);
    return false;
  }
  void forget() { m_painted.clear(); }
  [[nodiscard]] bool all() const {
    return std::all_of(m_parts.begin(), m_parts.end(),
                       [&](QWidget* part) { return !part->isVisible() || m_painted.contains(part); });
  }

 private:
  std::vector<QWidget*> m_parts;
  std::set<QObject*> m_painted;
};

// False: over the bound, or not painted.
bool play(app::HeatPlace& place, Painted& painted, const char* name) {
  constexpr units::Duration kFrame = 0.016 * units::second;
  app::HeatModel& model = place.model();
  model.setClock({});
  model.setSpeed(600.0);
  place.window()->grab();  // caches
  QApplication::processEvents();
  std::vector<double> frames;
  for (int i = 0; i < kFrames; ++i) {
    if (model.clock() + kFrame * model.speed() >= model.run()) model.setClock({});
    painted.forget();
    const Clock::time_point from = Clock::now();
    model.advance(kFrame);
    QApplication::sendPostedEvents();
    QApplication::processEvents();  // paints what asked for it
    frames.push_back(millisecondsSince(from));
    if (!painted.all()) return std::puts("a frame was not painted"), false;
  }
  std::sort(frames.begin(), frames.end());
  const double p95 = frames[frames.size() * 95 / 100];
  std::printf("%-36s median %6.2f ms, p95 %6.2f ms\n", name, frames[frames.size() / 2], p95);
  return p95 <= kBoundMs;
}

void open(app::HeatPlace& place, const planning::Lesson& lesson) {
  const Clock::time_point from = Clock::now();
  place.model().open(lesson);
  const double held = millisecondsSince(from);
  while (place.model().isBusy()) QApplication::processEvents(QEventLoop::AllEvents, 5);
  std::printf("%-36s there in %.0f ms, the window held for %.1f ms\n", lesson.title.c_str(), millisecondsSince(from),
              held);
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
  std::printf("scale %.0f\n", window.devicePixelRatioF());
  Painted painted(*place);
  bool within = true;
  for (const planning::Lesson& raw : app::preparedLessons()) {
    const planning::Lesson lesson = app::wordedLesson(window.session().book, raw);
    open(*place, lesson);
    within &= play(*place, painted, lesson.title.c_str());
  }
  open(*place, app::wordedLesson(window.session().book, app::preparedLessons().front()));
  place->chart()->setWishes({true, true, true, true, true, true, true});
  within &= play(*place, painted, "every curve");
  return within ? 0 : 1;
}
