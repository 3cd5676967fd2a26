// SPDX-License-Identifier: GPL-3.0-or-later
// Of the overlay Reach: which machine, on which extension, gets how far from the outlet that is chosen, or from all of
// the floor. The walking is done off the window's thread.
#pragma once

#include <memory>
#include <optional>

#include "compute/background_answer.h"
#include "map/overlay_bar.h"
#include "map/reach_area.h"
#include "planning/reach.h"

namespace cordreach::app {

struct ReachQuestion {
  std::shared_ptr<const site::Site> site;
  site::FloorId floor;
  site::MachineId machine;
  std::optional<site::CordMake> extension{};
  std::optional<site::OutletId> outlet{};

  friend bool operator==(const ReachQuestion&, const ReachQuestion&) = default;
};

struct DrawnReach {
  planning::Reach reach;
  ReachArea area;
};

class ReachBar : public OverlayBar {
  Q_OBJECT

 public:
  ReachBar(MapCanvas& canvas, QWidget* parent);

  [[nodiscard]] ChoiceBox* machine() const { return m_machine; }
  // Keys: empty, an id of a cord, or "stock" and a length in feet.
  [[nodiscard]] ChoiceBox* extension() const { return m_extension; }
  void refresh() override;

 signals:
  void walked();  // what was found is on the plan

 private:
  void withdraw() override;
  void forget() override { m_asked.reset(); }
  void fillChoices();
  void followSelection();
  [[nodiscard]] std::optional<site::CordMake> chosenExtension(const site::Machine& machine) const;
  [[nodiscard]] std::optional<ReachQuestion> question() const;
  void take(const DrawnReach& drawn);
  [[nodiscard]] QString refusal() const;

  ChoiceBox* m_machine;
  ChoiceBox* m_extension;
  std::optional<ReachQuestion> m_asked;
  std::optional<rules::Subject> m_followed;
  BackgroundAnswer<ReachQuestion, DrawnReach> m_walk;
};

}  // namespace cordreach::app
