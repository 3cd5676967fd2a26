// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/cord_steps.h"

#include <QApplication>
#include <QTemporaryDir>
#include <QTest>

#include "desk/cord_place.h"
#include "desk/question_row.h"
#include "shell/main_window.h"

namespace cordreach::guide {
namespace {

using namespace app;

constexpr QSize kWindow{1280, 800};

class Steps {
 public:
  explicit Steps(QString folder) : m_folder(std::move(folder)) {
    m_settings.setWindowGeometry({});
    m_settings.setPlace("cord");
    m_window = std::make_unique<MainWindow>(m_settings, m_recovery.path());
    m_window->files().showDemo();
    m_window->resize(kWindow);
    m_window->show();
  }

  bool draw() {
    ask("1-31", 62.0);
    const bool drawn = open(Ask::Machine, "cord-1-machine") && open(Ask::Distance, "cord-2-distance") &&
                       open(Ask::Outlet, "cord-3-outlet") && open(Ask::Cords, "cord-4-cords");
    ask("1-05", 62.0);
    return drawn && save("cord-5-shared");
  }

 private:
  [[nodiscard]] CordPlace& place() { return static_cast<CordPlace&>(*m_window->placeOf("cord")); }

  void ask(const char* outlet, double feet) {
    place().model().change([&](CordInputs& inputs) {
      inputs.machineBy = MachineBy::Site;
      inputs.machine = site::MachineId("M3");
      inputs.inletName = "A";
      inputs.outletBy = OutletBy::Site;
      inputs.outlet = site::OutletSocket{site::OutletId(outlet), "upper"};
      inputs.measure = Measure::Length;
      inputs.distance = feet * units::foot;
    });
  }
  bool open(Ask ask, const char* name) {
    place().question()->open(ask, {});
    const bool drawn = save(name);
    place().question()->close(true);
    return drawn;
  }
  bool save(const char* name) {
    const auto settled = [this] { return place().model().gridIsFresh() && !m_window->session().judge.isBusy(); };
    if (!QTest::qWaitFor(settled, 120000)) return false;
    QTest::qWait(50);
    return m_window->grab().save(m_folder + "/" + name + ".png");
  }

  QString m_folder;
  QTemporaryDir m_recovery;
  look::Settings m_settings;
  std::unique_ptr<MainWindow> m_window;
};

}  // namespace

bool drawCordSteps(const QString& folder, look::Ground ground) {
  const look::Choices plain{text::UnitSystem::Us, 1, ground, false, true};
  look::Settings settings;
  settings.setChoices(plain);
  look::setPresent(*static_cast<QApplication*>(QApplication::instance()), look::lookOf(plain, false));
  return Steps(folder).draw();
}

}  // namespace cordreach::guide
