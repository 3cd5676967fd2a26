// SPDX-License-Identifier: GPL-3.0-or-later
// The site itself: its name, its air, where its power comes from, its floors.
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/property_fields.h"

namespace cordreach::app {

namespace {

template <class Put>
FieldWrite headingWrite(Put put) {
  return [put](const site::Site& site, std::string_view typed) -> base::Result<site::Edit> {
    const site::Heading now{site.name, site.ambient};
    site::Heading after = now;
    if (MaybeError fault = put(after, typed)) return *fault;
    site::Edit edit{"site.change", {}};
    if (!(after == now)) edit.changes.emplace_back(site::HeadingChange{now, after});
    return edit;
  };
}

using Air = site::Known<units::Temperature> site::Ambient::*;

Field airField(const FieldContext& in, const std::string& key, Air air) {
  Field field{.key = key, .label = in.book.say("field." + key)};
  field.text = knownText(in.book, in.site.ambient.*air);
  field.mayBeUnknown = true;
  field.guessed = in.site.ambient.*air && (in.site.ambient.*air)->isGuess();
  field.write = headingWrite([air, book = &in.book](site::Heading& after, std::string_view typed) -> MaybeError {
    auto read = readKnown<units::Temperature>(*book, typed, after.ambient.*air);
    if (!read.ok()) return read.error();
    after.ambient.*air = read.value();
    return std::nullopt;
  });
  return field;
}

FieldGroup supplyGroup(const FieldContext& in, const site::Supply& supply) {
  const FieldMaker<site::Supply> maker(in.site, in.book, supply.id, "supply.change");
  const std::string prefix = "supply." + supply.id.text() + ".";
  FieldGroup group{in.book.say("field.group.supply"), {}};
  group.fields.push_back(maker.text(
      prefix + "name", [](auto& s) -> auto& { return s.name; }));
  group.fields.push_back(maker.choice(
      prefix + "source", [](auto& s) -> auto& { return s.source; }));
  group.fields.push_back(maker.choice(
      prefix + "system", [](auto& s) -> auto& { return s.system; }));
  group.fields.push_back(maker.known(
      prefix + "open_circuit", [](auto& s) -> auto& { return s.openCircuit; }));
  group.fields.push_back(maker.known(
      prefix + "loop_impedance", [](auto& s) -> auto& { return s.loopImpedance; }));
  group.fields.push_back(maker.known(
      prefix + "current_limit", [](auto& s) -> auto& { return s.currentLimit; }));
  return group;
}

}  // namespace

FieldGroups siteFields(const site::Site& site, const text::Phrasebook& book) {
  const FieldContext in{site, book};
  FieldGroup heading;
  Field name{.key = "name", .label = book.say("field.name"), .text = site.name};
  name.write = headingWrite([](site::Heading& after, std::string_view typed) -> MaybeError {
    after.name = tidied(typed);
    return std::nullopt;
  });
  heading.fields.push_back(std::move(name));
  heading.fields.push_back(airField(in, "room_air", &site::Ambient::room));
  heading.fields.push_back(airField(in, "panel_air", &site::Ambient::panel));
  heading.fields.push_back(airField(in, "wall_air", &site::Ambient::wall));
  FieldGroups groups{std::move(heading)};
  for (const site::Supply& supply : site.all<site::Supply>()) groups.push_back(supplyGroup(in, supply));
  FieldGroup floors{book.say("field.group.floors"), {}};
  for (const site::Floor& floor : site.all<site::Floor>()) {
    const FieldMaker<site::Floor> maker(site, book, floor.id, "floor.change");
    floors.fields.push_back(maker.text(
        "floor." + floor.id.text() + ".floor_name", [](auto& f) -> auto& { return f.name; }));
  }
  groups.push_back(std::move(floors));
  return groups;
}

}  // namespace cordreach::app
