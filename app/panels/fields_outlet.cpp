// SPDX-License-Identifier: GPL-3.0-or-later
// An outlet with its contacts and what feeds each.
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/names.h"

namespace cordreach::app {

namespace {

using OutletMaker = FieldMaker<site::Outlet>;

// Assigning a breaker keeps how that is known; the first time it is assumed until somebody says better.
Field breakerField(const OutletMaker& maker, const FieldContext& in, const std::string& prefix, std::size_t index) {
  const auto& assignment = maker.thing().contacts[index].assignment;
  Field field = maker.start(prefix + "breaker", FieldKind::Choice);
  field.text = assignment ? assignment->circuit.text() : "";
  field.mayBeUnknown = true;
  field.choices = circuitChoices(in);
  field.write = maker.writing([index](site::Outlet& outlet, std::string_view typed) -> MaybeError {
    if (index >= outlet.contacts.size()) return base::Error{"field.gone", outlet.id.text(), {}};
    site::Contact& contact = outlet.contacts[index];
    if (typed.empty()) {
      contact.assignment.reset();
    } else if (!contact.assignment || contact.assignment->circuit.text() != typed) {
      contact.assignment = site::Assignment{site::CircuitId(std::string(typed)), site::HowKnown::Assumed, {}, {}};
    }
    // Poles are of the circuit before.
    contact.poles.clear();
    return std::nullopt;
  });
  return field;
}

std::vector<Field> assignmentFields(const OutletMaker& maker, const FieldContext& in, const std::string& prefix,
                                    std::size_t index) {
  std::vector<Field> fields{breakerField(maker, in, prefix, index)};
  if (!maker.thing().contacts[index].assignment) return fields;
  const auto assignment = [index](auto& outlet) -> auto& { return *outlet.contacts.at(index).assignment; };
  const auto ifAssigned = [index](Field field) {
    field.write = [index, write = field.write](const site::Site& site,
                                               std::string_view typed) -> base::Result<site::Edit> {
      return write(site, typed);
    };
    return field;
  };
  fields.push_back(ifAssigned(maker.choice(prefix + "how", [assignment](auto& o) -> auto& { return assignment(o).how; })));
  fields.push_back(ifAssigned(maker.text(prefix + "who", [assignment](auto& o) -> auto& { return assignment(o).who; })));
  fields.push_back(ifAssigned(maker.text(prefix + "when", [assignment](auto& o) -> auto& { return assignment(o).when; })));
  return fields;
}

}  // namespace

FieldGroups outletFields(const FieldContext& in, const site::OutletId& id) {
  return {};
}

}  // namespace cordreach::app
