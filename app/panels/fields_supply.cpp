// SPDX-License-Identifier: GPL-3.0-or-later
// Panels and circuits.
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/names.h"
#include "panels/phases_text.h"
#include "panels/place_fields.h"

namespace cordreach::app {

namespace {

std::vector<FieldChoice> supplyChoices(const FieldContext& in) {
  std::vector<FieldChoice> choices;
  for (const site::Supply& supply : in.site.all<site::Supply>()) {
    choices.push_back({supply.id.text(), supply.name.empty() ? supply.id.text() : supply.name});
  }
  return choices;
}

std::vector<FieldChoice> otherPanels(const FieldContext& in, const site::PanelId& self) {
  std::vector<FieldChoice> choices;
  for (const site::Panel& panel : in.site.all<site::Panel>()) {
    if (panel.id != self) choices.push_back({panel.id.text(), panel.name.empty() ? panel.id.text() : panel.name});
  }
  return choices;
}

// A panel hangs on a supply or on another panel: choosing one lets go of the other.
Field feedField(const FieldMaker<site::Panel>& maker, const FieldContext& in) {
  const site::Panel& panel = maker.thing();
  Field field = maker.start("fed_by", FieldKind::Choice);
  field.text = panel.supply ? "s:" + panel.supply->text() : panel.fedFrom ? "p:" + panel.fedFrom->text() : "";
  for (const FieldChoice& supply : supplyChoices(in)) field.choices.push_back({"s:" + supply.key, supply.text});
  for (const FieldChoice& other : otherPanels(in, panel.id)) {
    field.choices.push_back({"p:" + other.key, in.book.say("panel.name.panel", {{"name", other.text}})});
  }
  field.write = maker.writing([](site::Panel& changed, std::string_view typed) -> MaybeError {
    if (typed.size() < 3) return base::Error{"field.no_choice", std::string(typed), {}};
    const std::string id(typed.substr(2));
    changed.supply.reset();
    changed.fedFrom.reset();
    if (typed.front() == 's') changed.supply = site::SupplyId(id);
    if (typed.front() == 'p') changed.fedFrom = site::PanelId(id);
    return std::nullopt;
  });
  return field;
}

Field phasesField(const FieldMaker<site::Circuit>& maker) {
  return maker.custom("phases", phasesText(maker.thing().phases),
                      [](site::Circuit& circuit, std::string_view typed) -> MaybeError {
                        auto read = readPhases(typed);
                        if (!read.ok()) return read.error();
                        circuit.phases = std::move(read.value());
                        return std::nullopt;
                      });
}

}  // namespace

FieldGroups panelFields(const FieldContext& in, const site::PanelId& id) {
  const FieldMaker<site::Panel> maker(in.site, in.book, id, "panel.change");
  FieldGroup group;
  group.fields.push_back(maker.text(
      "name", [](auto& p) -> auto& { return p.name; }));
  group.fields.push_back(feedField(maker, in));
  group.fields.push_back(maker.known(
      "feeder_length", [](auto& p) -> auto& { return p.feederLength; }));
  group.fields.push_back(maker.known(
      "feeder_size", [](auto& p) -> auto& { return p.feederSize; }));
  group.fields.push_back(maker.known(
      "main_rating", [](auto& p) -> auto& { return p.mainRating; }));
  group.fields.push_back(maker.known(
      "spaces", [](auto& p) -> auto& { return p.spaces; }));
  group.fields.push_back(maker.text(
      "room", [](auto& p) -> auto& { return p.room; }));
  group.fields.push_back(maker.text(
      "key_holder", [](auto& p) -> auto& { return p.keyHolder; }));
  group.fields.push_back(maker.text(
      "open_hours", [](auto& p) -> auto& { return p.hours; }));
  group.fields.push_back(maker.text(
      "owner", [](auto& p) -> auto& { return p.owner; }));
  group.fields.push_back(maker.text(
      "call", [](auto& p) -> auto& { return p.call; }));
  for (Field& field : placeFields(maker)) group.fields.push_back(std::move(field));
  return {std::move(group)};
}

FieldGroups circuitFields(const FieldContext& in, const site::CircuitId& id) {
  const FieldMaker<site::Circuit> maker(in.site, in.book, id, "circuit.change");
  FieldGroup breaker;
  breaker.fields.push_back(maker.text(
      "number", [](auto& c) -> auto& { return c.number; }));
  breaker.fields.push_back(maker.text(
      "purpose", [](auto& c) -> auto& { return c.purpose; }));
  breaker.fields.push_back(maker.known(
      "breaker_rating", [](auto& c) -> auto& { return c.rating; }));
  breaker.fields.push_back(maker.choice(
      "curve", [](auto& c) -> auto& { return c.curve; }));
  breaker.fields.push_back(phasesField(maker));
  breaker.fields.push_back(maker.flag(
      "breaker_ground_fault", [](auto& c) -> auto& { return c.groundFault; }));
  breaker.fields.push_back(maker.flag(
      "arc_fault", [](auto& c) -> auto& { return c.arcFault; }));
  breaker.fields.push_back(maker.flag(
      "may_not_trip", [](auto& c) -> auto& { return c.mayNotTrip; }));
  breaker.fields.push_back(maker.flag(
      "tied", [](auto& c) -> auto& { return c.tied; }));
  breaker.fields.push_back(maker.flag(
      "tandem", [](auto& c) -> auto& { return c.tandem; }));
  breaker.fields.push_back(maker.flag(
      "spare", [](auto& c) -> auto& { return c.spare; }));
  breaker.fields.push_back(maker.choice(
      "use", [](auto& c) -> auto& { return c.use; }));
  breaker.fields.push_back(maker.text(
      "ask_whom", [](auto& c) -> auto& { return c.askWhom; }));
  FieldGroup wire{in.book.say("field.group.wire"), {}};
  wire.fields.push_back(maker.known(
      "wire_size", [](auto& c) -> auto& { return c.size; }));
  wire.fields.push_back(maker.choice(
      "metal", [](auto& c) -> auto& { return c.metal; }));
  wire.fields.push_back(maker.known(
      "insulation", [](auto& c) -> auto& { return c.insulation; }));
  return {std::move(breaker), std::move(wire)};
}

}  // namespace cordreach::app
