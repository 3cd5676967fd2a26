// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/map_steps.h"

#include <QApplication>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "app/survey/plans.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/field_row.h"
#include "panels/new_things.h"
#include "shell/main_window.h"
#include "shell/map_place.h"
#include "shell/verdict_band.h"
#include "survey/floor_picture.h"
#include "survey/picture_desk.h"
#include "survey/picture_dialogs.h"
#include "survey/start_dialog.h"

namespace cordreach::guide {
namespace {

using namespace app;

constexpr QSize kWindow{1280, 800};

void type(const PlanDialog& dialog, const char* key, const QString& text) {
  qobject_cast<QLineEdit*>(dialog.row(key)->editor())->setText(text);
}

class Steps {
 public:
  explicit Steps(QString folder) : m_folder(std::move(folder)) {
    m_settings.setWindowGeometry({});
    m_settings.setPlace("map");
    m_window = std::make_unique<MainWindow>(m_settings, m_recovery.path());
    m_window->resize(kWindow);
    m_window->show();
  }

  bool draw() { return start() && plan() && row() && breakers(); }

 private:
  [[nodiscard]] MapCanvas& canvas() { return m_window->map()->view()->canvas(); }
  [[nodiscard]] Document& document() { return m_window->session().document; }
  [[nodiscard]] QPoint onPlan(double xM, double yM) {
    return canvas().toWidget(QPointF(xM, yM) * canvas().scale()).toPoint();
  }
  bool save(QWidget& widget, const char* name) {
    QTest::qWait(50);
    return widget.grab().save(m_folder + "/" + name + ".png");
  }
  bool saveWindow(const char* name) {
    const auto settled = [this] { return m_window->band()->isFresh() && !m_window->session().judge.isBusy(); };
    return QTest::qWaitFor(settled, 60000) && save(*m_window, name);
  }

  bool start() {
    StartDialog dialog(m_window->session().book);
    type(dialog, "name", "Elm House");
    type(dialog, "start_panels", "1A, 1B");
    type(dialog, "start_floors", "2");
    dialog.show();
    const bool drawn = save(dialog, "map-1-start");
    dialog.accept();
    document().replace(dialog.site(), {});
    return drawn;
  }

  bool plan() {
    bool drawn = false;
    QTimer look;  // the dialog comes once the plan was read
    QObject::connect(&look, &QTimer::timeout, m_window.get(), [&] {
      auto* dialog = qobject_cast<ScaleDialog*>(QApplication::activeModalWidget());
      if (dialog == nullptr) return;
      look.stop();
      dialog->view()->setPoints({{40, 300}, {1160, 300}}, {QString(), QString()});
      type(*dialog, "plan_distance", "112 ft");
      drawn = save(*dialog, "map-2-scale");
      dialog->accept();
    });
    look.start(5);
    MapView& map = *m_window->map()->view();
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

  QString m_folder;
  QTemporaryDir m_recovery;
  look::Settings m_settings;
  std::unique_ptr<MainWindow> m_window;
};

}  // namespace

bool drawMapSteps(const QString& folder, look::Ground ground) {
  const look::Choices plain{text::UnitSystem::Us, 1, ground, false, true};
  look::Settings settings;
  settings.setChoices(plain);
  look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(plain, false));
  return Steps(folder).draw();
}

}  // namespace cordreach::guide
