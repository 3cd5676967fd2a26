// SPDX-License-Identifier: GPL-3.0-or-later
// How the row tool places outlets, as its bar says.
#pragma once

#include <string>

#include "map/row_edits.h"
#include "units/quantity.h"

namespace cordreach::app {

struct RowSettings {
  units::Length spacing = 6.0 * units::foot;
  NumberBy by = NumberBy::Floor;
  std::string label{};       // of the next one, as typed; empty: it goes on by itself
  std::string receptacle{};  // empty: unknown
};

// The label that the next outlet there gets.
[[nodiscard]] inline std::string nextLabel(const RowSettings& row, const site::Site& site, const site::Place& place) {
  return row.label.empty() ? nextLabelBy(site, row.by, place) : row.label;
}

}  // namespace cordreach::app
