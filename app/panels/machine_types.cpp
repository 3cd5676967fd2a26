// SPDX-License-Identifier: GPL-3.0-or-later
// Machine types out of their table.
#include "panels/machine_types.h"

#include <algorithm>
#include <vector>

#include "site/file_words.h"
#include "tables/table.h"

namespace cordreach::app {

namespace {

template <class T>
site::Stated<T> guess(const tables::Row& row, const std::string& stem, const std::string& unit, T one) {
  const auto in = [&](const std::string& part) { return row.number(stem + part + unit) * one; };
  site::Stated<T> stated{in("_"), {}, {}, {}, "generic", {}, {}};
  if (in("_low_") < in("_high_")) {
    stated.low = in("_low_");
    stated.high = in("_high_");
  }
  return stated;
}

MachineType typeIn(const tables::Row& row) {
  MachineType type{.id = row.id(),
                   .kind = row.text("kind"),
                   .loadClass = *site::fromFileWord<tables::LoadClass>(row.text("class")),
                   .secondClass = site::fromFileWord<tables::LoadClass>(row.text("second_class")),
                   .plate = guess(row, "plate", "a", units::ampere),
                   .speed = {},
                   .cordSize = {},
                   .conductors = static_cast<int>(row.number("conductors")),
                   .cordLength = guess(row, "cord", "ft", units::foot),
                   .wet = row.text("wet") == "yes",
                   .from = &row.source()};
  if (!row.empty("speed_rpm")) type.speed = row.number("speed_rpm") / 60.0 * units::hertz;
  if (!row.empty("cord_awg")) type.cordSize = units::WireSize::awg(static_cast<int>(row.number("cord_awg")));
  return type;
}

}  // namespace

std::span<const MachineType> machineTypes() {
  static const std::vector<MachineType> all = [] {
    std::vector<MachineType> types;
    for (const tables::Row& row : tables::table("machine_types").rows()) types.push_back(typeIn(row));
    return types;
  }();
  return all;
}

const MachineType* machineType(std::string_view id) {
  const auto all = machineTypes();
  const auto found = std::ranges::find(all, id, &MachineType::id);
  return found == all.end() ? nullptr : &*found;
}

}  // namespace cordreach::app
