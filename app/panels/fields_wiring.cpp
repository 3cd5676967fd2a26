// SPDX-License-Identifier: GPL-3.0-or-later
// The wires that lead to an outlet, one a circuit: drawn ones with their length and size, undrawn ones to be typed.
#include <algorithm>
#include <set>

#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/fresh_id.h"
#include "panels/names.h"

namespace cordreach::app {

namespace {

std::vector<FieldChoice> feedChoices(const FieldContext& in, const site::CircuitId& circuit,
                                     const site::OutletId& self) {
  std::vector<FieldChoice> choices{{"", in.book.say("field.from.panel")}};
  for (const site::Outlet& outlet : in.site.all<site::Outlet>()) {
    const bool isOnIt = std::any_of(outlet.contacts.begin(), outlet.contacts.end(), [&](const site::Contact& contact) {
      return contact.assignment && contact.assignment->circuit == circuit;
    });
    if (isOnIt && outlet.id != self) choices.push_back({outlet.id.text(), outletName(outlet)});
  }
  return choices;
}

FieldGroup drawnRun(const FieldContext& in, const site::Run& run) {
  const FieldMaker<site::Run> maker(in.site, in.book, run.id, "run.change");
  const std::string prefix = "run." + run.id.text() + ".";
  const site::Circuit* circuit = in.site.find<site::Circuit>(run.circuit);
  FieldGroup group{
      in.book.say("field.group.run", {{"circuit", circuit ? circuitName(in.site, *circuit) : run.circuit.text()}}), {}};
  Field from = maker.reference(
      prefix + "from", [](auto& r) -> auto& { return r.from; }, feedChoices(in, run.circuit, run.to));
  from.mayBeUnknown = false;
  group.fields.push_back(std::move(from));
  group.fields.push_back(maker.known(
      prefix + "wire_length", [](auto& r) -> auto& { return r.length; }));
  group.fields.push_back(maker.known(
      prefix + "wire_size", [](auto& r) -> auto& { return r.size; }));
  group.fields.push_back(maker.known(
      prefix + "wire_drops", [](auto& r) -> auto& { return r.drops; }));
  group.fields.push_back(maker.text(
      prefix + "cable", [](auto& r) -> auto& { return r.cable; }));
  group.fields.push_back(maker.text(
      prefix + "raceway", [](auto& r) -> auto& { return r.raceway; }));
  return group;
}

// Typing a length draws the run, from the panel until another outlet is chosen.
FieldGroup undrawnRun(const FieldContext& in, const site::OutletId& outlet, const site::Circuit& circuit) {
  FieldGroup group{in.book.say("field.group.run", {{"circuit", circuitName(in.site, circuit)}}), {}};
  Field length{.key = "run.new." + circuit.id.text() + ".wire_length",
               .label = in.book.say("field.wire_length"),
               .mayBeUnknown = true};
  length.write = [outlet, circuit = circuit.id, book = &in.book](const site::Site& site,
                                                                 std::string_view typed) -> base::Result<site::Edit> {
    site::Edit edit{"run.add", {}};
    const auto read = readKnown<units::Length>(*book, typed, {});
    if (!read.ok()) return read.error();
    if (!read.value()) return edit;
    if (!site.find<site::Outlet>(outlet) || !site.find<site::Circuit>(circuit)) {
      return base::Error{"field.gone", outlet.text(), {}};
    }
    site::Run run{freshId<site::Run>(site), circuit, std::nullopt, outlet};
    run.length = read.value();
    edit.changes.emplace_back(site::Change<site::Run>{std::nullopt, run});
    return edit;
  };
  group.fields.push_back(std::move(length));
  return group;
}

}  // namespace

FieldGroups wiringFields(const FieldContext& in, const site::OutletId& id) {
  FieldGroups groups;
  std::set<site::CircuitId> drawn;
  for (const site::Run& run : in.site.all<site::Run>()) {
    if (run.to != id) continue;
    groups.push_back(drawnRun(in, run));
    drawn.insert(run.circuit);
  }
  for (const site::Contact& contact : in.site.at<site::Outlet>(id).contacts) {
    if (!contact.assignment || !drawn.insert(contact.assignment->circuit).second) continue;
    groups.push_back(undrawnRun(in, id, in.site.at<site::Circuit>(contact.assignment->circuit)));
  }
  return groups;
}

}  // namespace cordreach::app
