// SPDX-License-Identifier: GPL-3.0-or-later
// The lists that fields are chosen from.
#include <algorithm>

#include "panels/field_kinds.h"
#include "panels/names.h"
#include "site/natural_order.h"
#include "site/queries.h"
#include "tables/cord_types.h"
#include "tables/receptacles.h"

namespace cordreach::app {

namespace {

void sortByText(std::vector<FieldChoice>& choices) {
  std::ranges::stable_sort(
      choices, [](const FieldChoice& a, const FieldChoice& b) { return site::comesBefore(a.text, b.text); });
}

}  // namespace

std::vector<FieldChoice> circuitChoices(const FieldContext& in) {
  std::vector<FieldChoice> choices;
  for (const site::Circuit& circuit : in.site.all<site::Circuit>()) {
    choices.push_back({circuit.id.text(), circuitLine(in.book, in.site, circuit)});
  }
  sortByText(choices);
  return choices;
}

std::vector<FieldChoice> outletChoices(const FieldContext& in, OffLimits offLimits) {
  std::vector<FieldChoice> choices;
  for (const site::Outlet& outlet : in.site.all<site::Outlet>()) {
    for (const site::Contact& contact : outlet.contacts) {
      const site::Circuit* circuit = site::circuitOf(in.site, {outlet.id, contact.name});
      const bool isOffLimits = site::useOf(contact, circuit) == site::UseClass::Never;
      if (isOffLimits && offLimits == OffLimits::Hidden) continue;
      base::Arguments arguments{{"outlet", outletName(outlet)}};
      if (outlet.contacts.size() > 1) arguments.push_back({"contact", contactName(in.book, contact.name)});
      if (circuit != nullptr) arguments.push_back({"circuit", circuitName(in.site, *circuit)});
      choices.push_back({outlet.id.text() + "\n" + contact.name, in.book.say("field.socket", arguments)});
    }
  }
  sortByText(choices);
  return choices;
}

std::vector<FieldChoice> padChoices(const FieldContext& in) {
  std::vector<FieldChoice> choices;
  for (const site::Pad& pad : in.site.all<site::Pad>()) {
    choices.push_back({pad.id.text(), pad.name.empty() ? pad.id.text() : pad.name});
  }
  sortByText(choices);
  return choices;
}

std::vector<FieldChoice> receptacleChoices() {
  std::vector<FieldChoice> choices;
  for (const tables::ReceptacleType& type : tables::receptacleTypes()) choices.push_back({type.key, type.key});
  return choices;
}

std::vector<FieldChoice> cordTypeChoices() {
  std::vector<FieldChoice> choices;
  for (const tables::CordType& type : tables::cordTypes()) choices.push_back({type.letters, type.letters});
  return choices;
}

}  // namespace cordreach::app
