// SPDX-License-Identifier: GPL-3.0-or-later
// Machines with their supply cords, and pads.
#include <algorithm>

#include "panels/cord_make_fields.h"
#include "panels/equipment_state.h"
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/place_fields.h"

namespace cordreach::app {

namespace {

using MachineMaker = FieldMaker<site::Machine>;

struct InletAt {
  std::size_t index;

  bool operator()(const site::Machine& machine) const { return index < machine.inlets.size(); }
  auto& in(auto& machine) const { return machine.inlets[index]; }
};

std::vector<FieldChoice> kindChoices(const text::Phrasebook& book) {
  std::vector<FieldChoice> choices;
  for (const char* kind : {"burnisher", "slow-machine", "vacuum-upright", "vacuum-backpack", "vacuum-wide",
                           "vacuum-wet", "extractor", "air-mover", "generic"}) {
    choices.push_back({kind, book.say(std::string("field.kind.") + kind)});
  }
  return choices;
}

FieldGroup inletFields(const MachineMaker& maker, const FieldContext& in, std::size_t index) {
  const InletAt at{index};
  const bool isOnly = maker.thing().inlets.size() == 1;
  const std::string name = at.in(maker.thing()).name;
  const std::string prefix = "inlet." + name + ".";
  FieldGroup group{isOnly ? in.book.say("field.group.inlet") : in.book.say("field.group.inlet_of", {{"inlet", name}}),
                   {}};
  group.fields.push_back(maker.known(
      prefix + "plate", [at](auto& m) -> auto& { return at.in(m).plate; }));
  group.fields.push_back(maker.known(
      prefix + "plate_voltage", [at](auto& m) -> auto& { return at.in(m).plateVoltage; }));
  group.fields.push_back(maker.known(
      prefix + "running", [at](auto& m) -> auto& { return at.in(m).running; }));
  group.fields.push_back(maker.choice(
      prefix + "class", [at](auto& m) -> auto& { return at.in(m).loadClass; }));
  addMakeFields(
      maker, prefix, [at](auto& m) -> auto& { return at.in(m).cord; }, group.fields);
  for (Field& field : group.fields) field = maker.onlyWhile(at, std::move(field));
  return group;
}

}  // namespace

FieldGroups machineFields(const FieldContext& in, const site::MachineId& id) {
  const MachineMaker maker(in.site, in.book, id, "machine.change");
  FieldGroup machine;
  machine.fields.push_back(maker.text(
      "name", [](auto& m) -> auto& { return m.name; }));
  machine.fields.push_back(maker.key(
      "kind", [](auto& m) -> auto& { return m.kind; }, kindChoices(in.book)));
  machine.fields.push_back(serviceField(maker));
  machine.fields.push_back(maker.known(
      "speed", [](auto& m) -> auto& { return m.speed; }));
  machine.fields.push_back(maker.known(
      "shaft", [](auto& m) -> auto& { return m.shaftPower; }));
  machine.fields.push_back(maker.reference(
      "pad", [](auto& m) -> auto& { return m.pad; }, padChoices(in)));
  machine.fields.push_back(maker.flag(
      "wet", [](auto& m) -> auto& { return m.wet; }));
  machine.fields.push_back(maker.flag(
      "double_insulated", [](auto& m) -> auto& { return m.doubleInsulated; }));
  // While it works somewhere the map shows it there, not where it is kept.
  const bool isAtWork = std::ranges::any_of(in.site.all<site::Hookup>(), [&](const site::Hookup& hookup) {
    return hookup.machine == id && hookup.place.has_value();
  });
  if (!isAtWork) {
    for (Field& field : placeFields(maker)) machine.fields.push_back(std::move(field));
  }
  FieldGroups groups = pluggingFields(in, id);
  groups.push_back(std::move(machine));
  for (std::size_t i = 0; i < maker.thing().inlets.size(); ++i) groups.push_back(inletFields(maker, in, i));
  return groups;
}

FieldGroups padFields(const FieldContext& in, const site::PadId& id) {
  const FieldMaker<site::Pad> maker(in.site, in.book, id, "pad.change");
  FieldGroup group;
  group.fields.push_back(maker.text(
      "name", [](auto& p) -> auto& { return p.name; }));
  group.fields.push_back(maker.known(
      "rated_speed", [](auto& p) -> auto& { return p.ratedSpeed; }));
  group.fields.push_back(maker.known(
      "drag_factor", [](auto& p) -> auto& { return p.dragFactor; }));
  return {std::move(group)};
}

}  // namespace cordreach::app
