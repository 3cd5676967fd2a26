// SPDX-License-Identifier: GPL-3.0-or-later
#include "pictures/cord_steps.h"

#include <QTest>

#include "desk/cord_place.h"
#include "desk/question_row.h"
#include "pictures/step_window.h"

namespace cordreach::guide {
namespace {

using namespace app;

class Steps {
 public:
  Steps(const QString& folder, look::Ground ground) : m_step(folder, ground, "cord") {
    m_step.window().files().showDemo();
  }

  bool draw() {
    ask("1-31", 62.0);
    const bool drawn = open(Ask::Machine, "cord-1-machine") && open(Ask::Distance, "cord-2-distance") &&
                       open(Ask::Outlet, "cord-3-outlet") && open(Ask::Cords, "cord-4-cords");
    ask("1-05", 62.0);
    return drawn && save("cord-5-shared");
  }

 private:
  [[nodiscard]] CordPlace& place() { return static_cast<CordPlace&>(*m_step.window().placeOf("cord")); }

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
    return m_step.save(name, [this] { return place().model().gridIsFresh(); });
  }

  StepWindow m_step;
};

}  // namespace

bool drawCordSteps(const QString& folder, look::Ground ground) { return Steps(folder, ground).draw(); }

}  // namespace cordreach::guide
