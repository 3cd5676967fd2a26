// SPDX-License-Identifier: GPL-3.0-or-later
// Of the overlay Volts: as planned, or the volts that each outlet would have if one machine ran there. The trying is
// done off the window's thread, the floor that is shown first.
#pragma once

#include <memory>
#include <optional>

#include "compute/background_answer.h"
#include "map/overlay_bar.h"
#include "planning/test_machine.h"

namespace cordreach::app {

struct VoltsQuestion {
  std::shared_ptr<const site::Site> site;
  site::MachineId machine;
  std::optional<site::FloorId> first{};
};

struct VoltsAnswer {
  planning::TestedOutlets outlets{};
  bool whole = false;  // false: more are being tried
};

class VoltsBar : public OverlayBar {
  Q_OBJECT

 public:
  VoltsBar(MapCanvas& canvas, QWidget* parent);

  // An empty key: as planned.
  [[nodiscard]] ChoiceBox* machine() const { return m_machine; }
  void refresh() override;

 signals:
  void tested();  // all of them

 private:
  void withdraw() override;
  void forget() override { m_site.reset(); }
  void take(const VoltsAnswer& answer);

  ChoiceBox* m_machine;
  std::shared_ptr<const site::Site> m_site;  // what was asked for
  QString m_asked;
  BackgroundAnswer<VoltsQuestion, VoltsAnswer> m_test;
};

}  // namespace cordreach::app
