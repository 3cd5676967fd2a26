// SPDX-License-Identifier: GPL-3.0-or-later
// What a building is made from, piece by piece: each function answers with the edit that adds one kind of thing.
// Texts are as typed; errors are those of reading them, and new.no_panel, new.no_circuit, new.no_supply,
// new.bad_count {most}, new.no_type.
#pragma once

#include <optional>
#include <string>

#include "base/result.h"
#include "rules/finding.h"
#include "site/edit.h"
#include "site/site.h"
#include "text/phrasebook.h"

namespace cordreach::app {

using NewEdit = base::Result<site::Edit>;

inline constexpr int kMostBreakers = 84;  // positions of the largest panelboards in common use

struct NewSite {
  std::string name{};
  std::string supplyName{};
  std::string floorName{};
  site::WiringSystem system = site::WiringSystem::SplitPhase120;
};
// The least that can be worked in: one utility supply, one floor.
[[nodiscard]] site::Site newSite(const NewSite& wanted);

struct NewPanel {
  std::string name{};
  std::optional<site::SupplyId> supply{};  // none: the first of the site
  std::optional<site::Place> place{};
};
[[nodiscard]] NewEdit addPanel(const site::Site& site, const NewPanel& wanted);

// So many one-pole breakers behind the last number; phases go round as the positions of a panelboard do, two a row.
struct NewBreakers {
  site::PanelId panel;
  int count = 1;
  site::Known<units::Current> rating{};
};
[[nodiscard]] NewEdit addBreakers(const site::Site& site, const NewBreakers& wanted);

struct NewOutlet {
  std::string label{};
  std::optional<site::Place> place{};
  std::string receptacle{};  // empty: unknown
  bool single = false;       // else a duplex
  std::optional<site::CircuitId> circuit{};
};
[[nodiscard]] NewEdit addOutlet(const site::Site& site, const NewOutlet& wanted);

struct NewLoad {
  std::string name{};
  site::CircuitId circuit;
  tables::LoadClass loadClass = tables::LoadClass::Resistance;
  site::Known<units::Current> plate{};
  std::optional<site::Place> place{};
};
[[nodiscard]] NewEdit addLoad(const site::Site& site, const NewLoad& wanted);

struct NewMachine {
  std::string type{};  // of machineTypes()
  std::string name{};
  site::Known<units::Current> plate{};  // absent: the type's guess
  std::optional<site::Place> place{};
};
[[nodiscard]] NewEdit addMachine(const site::Site& site, const NewMachine& wanted);

struct NewCord {
  std::string label{};
  std::string legend{};  // what is printed on the jacket
  site::Known<units::Length> length{};
  site::Known<units::Current> tag{};
  std::string plug{};  // its sockets are of the same kind; empty: unknown
  int sockets = 1;
};
[[nodiscard]] NewEdit addCord(const site::Site& site, const NewCord& wanted);

struct NewPad {
  std::string name{};
  site::Known<units::Frequency> ratedSpeed{};
};
[[nodiscard]] NewEdit addPad(const site::Site& site, const NewPad& wanted);

// The next free one in the row: "1-14" after "1-13", "C13" after "C12".
[[nodiscard]] std::string nextOutletLabel(const site::Site& site);
[[nodiscard]] std::string nextCordLabel(const site::Site& site);

// What an edit adds or changes, to be chosen afterwards: the first thing that a selection can hold.
[[nodiscard]] std::optional<rules::Subject> addedBy(const site::Edit& edit);
[[nodiscard]] std::optional<rules::Subject> changedBy(const site::Edit& edit);

// The same again beside it: outlets, machines, cords, pads, fixed loads; others are left out. Plugged in nowhere.
[[nodiscard]] site::Edit copyOf(const site::Site& site, const std::vector<rules::Subject>& subjects);

}  // namespace cordreach::app
