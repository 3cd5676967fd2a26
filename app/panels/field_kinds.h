// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of each kind of thing, and the choices they share. One kind a file: fields_<kind>.cpp.
#pragma once

#include <vector>

#include "panels/field.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct FieldContext {
  const site::Site& site;
  const text::Phrasebook& book;
};

[[nodiscard]] FieldGroups outletFields(const FieldContext& in, const site::OutletId& id);
[[nodiscard]] FieldGroups panelFields(const FieldContext& in, const site::PanelId& id);
[[nodiscard]] FieldGroups circuitFields(const FieldContext& in, const site::CircuitId& id);
[[nodiscard]] FieldGroups loadFields(const FieldContext& in, const site::FixedLoadId& id);
[[nodiscard]] FieldGroups machineFields(const FieldContext& in, const site::MachineId& id);
[[nodiscard]] FieldGroups cordFields(const FieldContext& in, const site::CordId& id);
[[nodiscard]] FieldGroups padFields(const FieldContext& in, const site::PadId& id);
[[nodiscard]] FieldGroups roomFields(const FieldContext& in, const site::RoomId& id);
[[nodiscard]] std::vector<FieldChoice> roomUses(const text::Phrasebook& book);  // what a room is for
[[nodiscard]] bool isCorridor(std::string_view use);                            // the key of such a choice
// How a machine is plugged in: one group a hookup, and one for each supply cord that hangs free.
[[nodiscard]] FieldGroups pluggingFields(const FieldContext& in, const site::MachineId& id);
// The wires that lead to an outlet.
[[nodiscard]] FieldGroups wiringFields(const FieldContext& in, const site::OutletId& id);
[[nodiscard]] FieldGroup hookupFields(const FieldContext& in, const site::HookupId& id);

[[nodiscard]] std::vector<FieldChoice> circuitChoices(const FieldContext& in);
enum class OffLimits { Hidden, Shown };
// Keys are the outlet's id and the contact's name, a line each. A plan is not offered circuits that are off limits;
// what stands in the building may be on them.
[[nodiscard]] std::vector<FieldChoice> outletChoices(const FieldContext& in, OffLimits offLimits = OffLimits::Hidden);
[[nodiscard]] std::vector<FieldChoice> padChoices(const FieldContext& in);
[[nodiscard]] std::vector<FieldChoice> receptacleChoices();
[[nodiscard]] std::vector<FieldChoice> cordTypeChoices();

}  // namespace cordreach::app
