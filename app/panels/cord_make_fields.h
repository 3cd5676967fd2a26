// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of the copper between a plug and what hangs on it: of a machine's own cord and of an extension alike.
#pragma once

#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "site/equipment.h"
#include "tables/cord_legend.h"

namespace cordreach::app {

// Takes from the print what is not known otherwise.
void fillFromLegend(site::CordMake& make);

template <class T, class Access>
void addMakeFields(const FieldMaker<T>& maker, const std::string& prefix, Access make, std::vector<Field>& fields) {
  fields.push_back(maker.custom(prefix + "legend", make(maker.thing()).legend,
                                [make](T& thing, std::string_view typed) -> MaybeError {
                                  make(thing).legend = tidied(typed);
                                  fillFromLegend(make(thing));
                                  return std::nullopt;
                                }));
  fields.push_back(maker.known(
      prefix + "length", [make](auto& t) -> auto& { return make(t).length; }));
  fields.push_back(maker.known(
      prefix + "size", [make](auto& t) -> auto& { return make(t).size; }));
  fields.push_back(maker.known(
      prefix + "conductors", [make](auto& t) -> auto& { return make(t).conductors; }));
  fields.push_back(maker.key(
      prefix + "type", [make](auto& t) -> auto& { return make(t).type; }, cordTypeChoices()));
  fields.push_back(maker.known(
      prefix + "rating", [make](auto& t) -> auto& { return make(t).rating; }));
  fields.push_back(maker.key(
      prefix + "plug", [make](auto& t) -> auto& { return make(t).plug; }, receptacleChoices()));
  fields.push_back(maker.choice(
      prefix + "pin", [make](auto& t) -> auto& { return make(t).pin; }));
  fields.push_back(maker.flag(
      prefix + "cord_ground_fault", [make](auto& t) -> auto& { return make(t).groundFaultDevice; }));
  fields.push_back(maker.flag(
      prefix + "print_readable", [make](auto& t) -> auto& { return make(t).printReadable; }));
}

}  // namespace cordreach::app
