// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/map_steps.h"

#include <QLineEdit>
#include <QTest>
#include <QTimer>

#include "app/survey/plans.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/field_row.h"
#include "panels/new_things.h"
#include "pictures/step_window.h"
#include "shell/map_place.h"
#include "shell/verdict_band.h"
#include "survey/floor_picture.h"
#include "survey/picture_desk.h"
#include "survey/picture_dialogs.h"
#include "survey/start_dialog.h"

namespace cordreach::guide {
namespace {

using namespace app;

void type(const PlanDialog& dialog, const char* key, const QString& text) {
  qobject_cast<QLineEdit*>(dialog.row(key)->editor())->setText(text);
}

class Steps {
 public:
  Steps(const QString& folder, look::Ground ground) : m_step(folder, ground, "map") {}

  bool draw() { return start() && plan() && row() && breakers(); }

 private:
  [[nodiscard]] MapCanvas& canvas() { return m_step.window().map()->view()->canvas(); }
  [[nodiscard]] Document& document() { return m_step.window().session().document; }
  [[nodiscard]] QPoint onPlan(double xM, double yM) {
    return canvas().toWidget(QPointF(xM, yM) * canvas().scale()).toPoint();
  }
  bool saveWindow(const char* name) {
    return m_step.save(name, [this] { return m_step.window().band()->isFresh(); });
  }

  bool start() {
    StartDialog dialog(m_step.window().session().book);
    type(dialog, "name", "Elm House");
    type(dialog, "start_panels", "1A, 1B");
    type(dialog, "start_floors", "2");
    dialog.show();
    const bool drawn = m_step.save(dialog, "map-1-start");
    dialog.accept();
    document().replace(dialog.site(), {});
    return drawn;
  }

  bool plan() {
    bool drawn = false;
    QTimer look;  // the dialog comes once the plan was read
    QObject::connect(&look, &QTimer::timeout, &m_step.window(), [&] {
      auto* dialog = qobject_cast<ScaleDialog*>(QApplication::activeModalWidget());
      if (dialog == nullptr) return;
      look.stop();
      dialog->view()->setPoints({{40, 300}, {1160, 300}}, {QString(), QString()});
      type(*dialog, "plan_distance", "112 ft");
      drawn = m_step.save(*dialog, "map-2-scale");
      dialog->accept();
    });
    look.start(5);
    MapView& map = *m_step.window().map()->view();
    map.pictures().bringIn(testing::encoded(testing::planImage()));
    canvas().fit();
    const bool isShown = QTest::qWaitFor([&map] { return !map.picture().isReading(); });
    return drawn && isShown && saveWindow("map-3-plan");
  }

  bool row() {
    canvas().use(ToolKind::Row);
    canvas().fit();
    QTest::mousePress(&canvas(), Qt::LeftButton, {}, onPlan(2, 7.8));
    QTest::mouseMove(&canvas(), onPlan(20, 7.8));
    QTest::mouseMove(&canvas(), onPlan(33, 7.8));
    const bool drawn = saveWindow("map-4-row");
    QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, onPlan(33, 7.8));
    return drawn;
  }

  bool breakers() {
    canvas().use(ToolKind::Panel);
    QTest::mouseClick(&canvas(), Qt::LeftButton, {}, onPlan(2.5, 9.2));
    const site::Site& site = document().site();
    const auto edit = addBreakers(site, {site.all<site::Panel>().begin()->id, 12, site::known(20.0 * units::ampere)});
    if (!edit || !document().apply(edit.value())) return false;
    canvas().use(ToolKind::Select);
    QTest::mousePress(&canvas(), Qt::LeftButton, {}, onPlan(1.5, 7.1));
    QTest::mouseMove(&canvas(), onPlan(8, 8.5));
    QTest::mouseMove(&canvas(), onPlan(12, 8.5));
    QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, onPlan(12, 8.5));
    return saveWindow("map-5-breakers");
  }

  StepWindow m_step;
};

}  // namespace

bool drawMapSteps(const QString& folder, look::Ground ground) { return Steps(folder, ground).draw(); }

}  // namespace cordreach::guide
