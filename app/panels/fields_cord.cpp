// SPDX-License-Identifier: GPL-3.0-or-later
// Extension cords.
#include "panels/cord_make_fields.h"
#include "panels/equipment_state.h"
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "tables/cord_types.h"
#include "tables/receptacles.h"

namespace cordreach::app {

namespace {

// "5-15, 5-15": one key a socket.
Field socketsField(const FieldMaker<site::Cord>& maker) {
  std::string shown;
  for (const std::string& key : maker.thing().sockets) shown += (shown.empty() ? "" : ", ") + key;
  return maker.custom("sockets", shown, [](site::Cord& cord, std::string_view typed) -> MaybeError {
    std::vector<std::string> sockets;
    std::string rest = tidied(typed);
    while (!rest.empty()) {
      const auto end = std::min(rest.find(','), rest.size());
      const std::string key = tidied(rest.substr(0, end));
      if (tables::receptacleType(key) == nullptr) return base::Error{"field.no_receptacle", key, {}};
      sockets.push_back(key);
      rest = rest.substr(std::min(end + 1, rest.size()));
    }
    cord.sockets = std::move(sockets);
    return std::nullopt;
  });
}

}  // namespace

void fillFromLegend(site::CordMake& make) {
  const tables::CordLegend read = tables::readLegend(make.legend);
  if (make.type.empty() && read.type) make.type = *read.type;
  if (!make.size && read.size) make.size = site::known(*read.size);
  if (!make.conductors && read.conductors) make.conductors = site::known(*read.conductors);
  if (!make.rating && read.rating) make.rating = site::known(*read.rating);
}

FieldGroups cordFields(const FieldContext& in, const site::CordId& id) {
  const FieldMaker<site::Cord> maker(in.site, in.book, id, "cord.change");
  FieldGroup group;
  group.fields.push_back(maker.text(
      "label", [](auto& c) -> auto& { return c.label; }));
  group.fields.push_back(serviceField(maker));
  group.fields.push_back(maker.known(
      "tag", [](auto& c) -> auto& { return c.tag; }));
  addMakeFields(
      maker, "", [](auto& c) -> auto& { return c.make; }, group.fields);
  group.fields.push_back(socketsField(maker));
  return {std::move(group)};
}

}  // namespace cordreach::app
