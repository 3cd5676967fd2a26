// SPDX-License-Identifier: GPL-3.0-or-later
// Loads that stay put.
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/names.h"
#include "panels/place_fields.h"
#include "units/parse.h"

namespace cordreach::app {

namespace {

using LoadMaker = FieldMaker<site::FixedLoad>;

// Where it is plugged in decides its circuit when that is known; wired, it stays on the circuit it has.
Field placeField(const LoadMaker& maker, const FieldContext& in) {
  const site::FixedLoad& load = maker.thing();
  Field field = maker.start("load_socket", FieldKind::Choice);
  field.choices.push_back({"", in.book.say("field.load_socket.wired")});
  if (load.outlet) {
    field.text = load.outlet->text() + "\n" + load.contact;
    const site::Outlet* outlet = in.site.find<site::Outlet>(*load.outlet);
    if (load.contact.empty() && outlet != nullptr) {
      field.choices.push_back({field.text, in.book.say("field.load_socket.box", {{"outlet", outletName(*outlet)}})});
    }
  }
  for (FieldChoice& choice : outletChoices(in, OffLimits::Shown)) field.choices.push_back(std::move(choice));
  field.write = [inner = maker.writing([](site::FixedLoad& changed, std::string_view typed) -> MaybeError {
    const auto at = typed.find('\n');
    changed.outlet.reset();
    changed.contact.clear();
    if (typed.empty()) return std::nullopt;
    if (at == std::string_view::npos) return base::Error{"field.no_choice", std::string(typed), {}};
    changed.outlet = site::OutletId(std::string(typed.substr(0, at)));
    changed.contact = std::string(typed.substr(at + 1));
    return std::nullopt;
  })](const site::Site& present, std::string_view typed) -> base::Result<site::Edit> {
    auto edit = inner(present, typed);
    if (!edit.ok()) return edit;
    for (site::AnyChange& change : edit.value().changes) {
      auto& after = *std::get<site::Change<site::FixedLoad>>(change).after;
      const site::Outlet* outlet = after.outlet ? present.find<site::Outlet>(*after.outlet) : nullptr;
      if (outlet == nullptr) continue;
      for (const site::Contact& contact : outlet->contacts) {
        if (contact.name == after.contact && contact.assignment) after.circuit = contact.assignment->circuit;
      }
    }
    return edit;
  };
  return field;
}

Field cycleField(const LoadMaker& maker) {
  const auto& cycle = maker.thing().cycle;
  const text::Phrasebook* book = &maker.book();
  return maker.custom("cycle", cycle ? exactText(*book, cycle->on) + " / " + exactText(*book, cycle->off) : "",
                      [book](site::FixedLoad& load, std::string_view typed) -> MaybeError {
                        const std::string whole = tidied(typed);
                        load.cycle.reset();
                        if (whole.empty()) return std::nullopt;
                        const auto slash = whole.find('/');
                        if (slash == std::string::npos) return base::Error{"field.bad_cycle", whole, {}};
                        const auto on = readText<units::Duration>(*book, tidied(whole.substr(0, slash)));
                        const auto off = readText<units::Duration>(*book, tidied(whole.substr(slash + 1)));
                        if (!on.ok() || !off.ok() || !(on.value().si() > 0.0)) {
                          return base::Error{"field.bad_cycle", whole, {}};
                        }
                        load.cycle = site::Cycle{on.value(), off.value()};
                        return std::nullopt;
                      });
}

Field hoursField(const LoadMaker& maker) {
  const auto& hours = maker.thing().hours;
  return maker.custom("load_hours", hours ? hoursText(*hours) : "",
                      [](site::FixedLoad& load, std::string_view typed) -> MaybeError {
                        load.hours.reset();
                        if (tidied(typed).empty()) return std::nullopt;
                        const auto read = readHours(typed);
                        if (!read.ok()) return read.error();
                        load.hours = read.value();
                        return std::nullopt;
                      });
}

Field circuitField(const LoadMaker& maker, const FieldContext& in) {
  Field field = maker.start("load_circuit", FieldKind::Choice);
  field.text = maker.thing().circuit.text();
  field.choices = circuitChoices(in);
  field.write = maker.writing([](site::FixedLoad& load, std::string_view typed) -> MaybeError {
    if (typed.empty()) return base::Error{"field.no_choice", "", {}};
    load.circuit = site::CircuitId(std::string(typed));
    return std::nullopt;
  });
  return field;
}

}  // namespace

FieldGroups loadFields(const FieldContext& in, const site::FixedLoadId& id) {
  const LoadMaker maker(in.site, in.book, id, "load.change");
  FieldGroup group;
  group.fields.push_back(maker.text(
      "name", [](auto& l) -> auto& { return l.name; }));
  group.fields.push_back(circuitField(maker, in));
  group.fields.push_back(placeField(maker, in));
  group.fields.push_back(maker.choice(
      "class", [](auto& l) -> auto& { return l.loadClass; }));
  group.fields.push_back(maker.known(
      "plate", [](auto& l) -> auto& { return l.plate; }));
  group.fields.push_back(maker.known(
      "running", [](auto& l) -> auto& { return l.running; }));
  for (Field& field : placeFields(maker)) group.fields.push_back(std::move(field));
  group.fields.push_back(cycleField(maker));
  group.fields.push_back(hoursField(maker));
  group.fields.push_back(maker.flag(
      "off", [](auto& l) -> auto& { return l.off; }));
  return {std::move(group)};
}

}  // namespace cordreach::app
