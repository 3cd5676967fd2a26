// SPDX-License-Identifier: GPL-3.0-or-later
// An outlet with its contacts and what feeds each.
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/names.h"
#include "panels/place_fields.h"
#include "rules/protection.h"

namespace cordreach::app {

namespace {

using OutletMaker = FieldMaker<site::Outlet>;

struct ContactAt {
  std::size_t index;

  bool operator()(const site::Outlet& outlet) const { return index < outlet.contacts.size(); }
  auto& in(auto& outlet) const { return outlet.contacts[index]; }
};

// Assigning a breaker keeps how that is known; the first time it is assumed until somebody says better.
Field breakerField(const OutletMaker& maker, const FieldContext& in, const std::string& prefix, ContactAt at) {
  const auto& assignment = at.in(maker.thing()).assignment;
  Field field = maker.start(prefix + "breaker", FieldKind::Choice);
  field.text = assignment ? assignment->circuit.text() : "";
  field.mayBeUnknown = true;
  field.choices = circuitChoices(in);
  field.write = maker.writing([at](site::Outlet& outlet, std::string_view typed) -> MaybeError {
    site::Contact& contact = at.in(outlet);
    if (contact.assignment ? contact.assignment->circuit.text() == typed : typed.empty()) return std::nullopt;
    contact.assignment.reset();
    contact.poles.clear();  // they were those of the circuit before
    if (!typed.empty()) {
      contact.assignment = site::Assignment{site::CircuitId(std::string(typed)), site::HowKnown::Assumed, {}, {}};
    }
    return std::nullopt;
  });
  return maker.onlyWhile(at, field);
}

void addAssignment(const OutletMaker& maker, const std::string& prefix, ContactAt at, std::vector<Field>& fields) {
  const auto isAssigned = [at](const site::Outlet& outlet) {
    return at(outlet) && at.in(outlet).assignment.has_value();
  };
  if (!isAssigned(maker.thing())) return;
  const auto add = [&](Field field) { fields.push_back(maker.onlyWhile(isAssigned, std::move(field))); };
  add(maker.choice(
      prefix + "how", [at](auto& o) -> auto& { return at.in(o).assignment->how; }));
  add(maker.text(
      prefix + "who", [at](auto& o) -> auto& { return at.in(o).assignment->who; }));
  add(maker.text(
      prefix + "when", [at](auto& o) -> auto& { return at.in(o).assignment->when; }));
}

Field poweredField(const OutletMaker& maker, const std::string& prefix, ContactAt at) {
  const auto& hours = at.in(maker.thing()).poweredHours;
  return maker.custom(prefix + "powered", hours ? hoursText(*hours) : "",
                      [at](site::Outlet& outlet, std::string_view typed) -> MaybeError {
                        at.in(outlet).poweredHours.reset();
                        if (tidied(typed).empty()) return std::nullopt;
                        const auto read = readHours(typed);
                        if (!read.ok()) return read.error();
                        at.in(outlet).poweredHours = read.value();
                        return std::nullopt;
                      });
}

// Derived from the wiring as it is drawn, never typed.
Field protectionFact(const OutletMaker& maker, const std::string& prefix, ContactAt at) {
  using rules::Protection;
  Field field = maker.start(prefix + "protected_from", FieldKind::Fact);
  const std::string key = "field.protected_from.";
  switch (rules::protectionAt(maker.thing(), at.in(maker.thing()), maker.site())) {
    case Protection::None:
      field.text = maker.book().say(key + "none");
      break;
    case Protection::Unknown:
    case Protection::InLine:  // hangs on a cord, not on a contact
      field.text = maker.book().say(key + "unknown");
      break;
    case Protection::Breaker:
      field.text = maker.book().say(key + "breaker");
      break;
    case Protection::Receptacle:
      field.text = maker.book().say(maker.thing().groundFaultDevice ? key + "itself" : key + "before");
      break;
  }
  return field;
}

FieldGroup contactFields(const OutletMaker& maker, const FieldContext& in, std::size_t index) {
  const ContactAt at{index};
  const std::string name = at.in(maker.thing()).name;
  const std::string prefix = "contact." + name + ".";
  FieldGroup group{in.book.say("field.group.contact", {{"contact", contactName(in.book, name)}}), {}};
  group.fields.push_back(breakerField(maker, in, prefix, at));
  addAssignment(maker, prefix, at, group.fields);
  const auto add = [&](Field field) { group.fields.push_back(maker.onlyWhile(at, std::move(field))); };
  add(maker.text(
      prefix + "directory", [at](auto& o) -> auto& { return at.in(o).directory; }));
  add(maker.key(
      prefix + "receptacle", [at](auto& o) -> auto& { return at.in(o).receptacle; }, receptacleChoices()));
  add(poweredField(maker, prefix, at));
  add(maker.flag(
      prefix + "switched", [at](auto& o) -> auto& { return at.in(o).switched; }));
  add(maker.flag(
      prefix + "dead", [at](auto& o) -> auto& { return at.in(o).dead; }));
  add(maker.flag(
      prefix + "loose", [at](auto& o) -> auto& { return at.in(o).loose; }));
  add(maker.flag(
      prefix + "blocked", [at](auto& o) -> auto& { return at.in(o).blocked; }));
  add(maker.flag(
      prefix + "locked_cover", [at](auto& o) -> auto& { return at.in(o).lockedCover; }));
  add(maker.text(
      prefix + "cover_key", [at](auto& o) -> auto& { return at.in(o).keyHolder; }));
  add(maker.choice(
      prefix + "face_colour", [at](auto& o) -> auto& { return at.in(o).colour; }));
  add(maker.choice(
      prefix + "face_use", [at](auto& o) -> auto& { return at.in(o).use; }));
  group.fields.push_back(protectionFact(maker, prefix, at));
  return group;
}

}  // namespace

FieldGroups outletFields(const FieldContext& in, const site::OutletId& id) {
  const OutletMaker maker(in.site, in.book, id, "outlet.change");
  FieldGroup box;
  box.fields.push_back(maker.text(
      "label", [](auto& o) -> auto& { return o.label; }));
  box.fields.push_back(maker.text(
      "room", [](auto& o) -> auto& { return o.room; }));
  box.fields.push_back(maker.text(
      "wall", [](auto& o) -> auto& { return o.wall; }));
  box.fields.push_back(maker.known(
      "height", [](auto& o) -> auto& { return o.height; }));
  box.fields.push_back(maker.flag(
      "ground_fault", [](auto& o) -> auto& { return o.groundFaultDevice; }));
  box.fields.push_back(maker.flag(
      "floor_box", [](auto& o) -> auto& { return o.floorBox; }));
  for (Field& field : placeFields(maker)) box.fields.push_back(std::move(field));
  FieldGroups groups{std::move(box)};
  for (std::size_t i = 0; i < maker.thing().contacts.size(); ++i) groups.push_back(contactFields(maker, in, i));
  for (FieldGroup& wiring : wiringFields(in, id)) groups.push_back(std::move(wiring));
  return groups;
}

}  // namespace cordreach::app
