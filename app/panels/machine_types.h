// SPDX-License-Identifier: GPL-3.0-or-later
// Generic kinds of corded machine with the trade's figures for them, each a guess with its band until a plate is read.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "site/known.h"
#include "tables/load_class.h"
#include "tables/source.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::app {

struct MachineType {
  std::string id;    // also that of its words: "machine_type.<id>"
  std::string kind;  // of site::Machine
  tables::LoadClass loadClass;
  std::optional<tables::LoadClass> secondClass;  // of a second supply cord
  site::Stated<units::Current> plate;
  std::optional<units::Frequency> speed;
  std::optional<units::WireSize> cordSize;
  int conductors;
  site::Stated<units::Length> cordLength;
  bool wet;
  const tables::Source* from;
};

[[nodiscard]] std::span<const MachineType> machineTypes();
[[nodiscard]] const MachineType* machineType(std::string_view id);  // null: none of that id

}  // namespace cordreach::app
