// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/property_fields.h"

#include <algorithm>

#include "panels/field_kinds.h"
#include "panels/names.h"

namespace cordreach::app {

namespace {

using rules::SubjectKind;

FieldGroups hookupAndMachine(const FieldContext& in, const site::HookupId& id) {
  FieldGroups groups{hookupFields(in, id)};
  const site::Hookup& hookup = in.site.at<site::Hookup>(id);
  for (FieldGroup& group : machineFields(in, hookup.machine)) {
    // The same hookup, and the machine's others, are the machine's business.
    const bool isPlugging = !group.fields.empty() && group.fields.front().key.ends_with("plugged_into");
    if (!isPlugging) groups.push_back(std::move(group));
  }
  return groups;
}

Field* find(FieldGroups& groups, const std::string& key) {
  for (FieldGroup& group : groups) {
    for (Field& field : group.fields) {
      if (field.key == key) return &field;
    }
  }
  return nullptr;
}

// One after the other on a copy, so that a later one sees what an earlier one did.
FieldWrite writeAll(std::vector<FieldWrite> writes) {
  return [writes = std::move(writes)](const site::Site& site, std::string_view typed) -> base::Result<site::Edit> {
    site::Site copy = site;
    site::Edit all;
    for (const FieldWrite& write : writes) {
      auto edit = write(copy, typed);
      if (!edit.ok()) return edit;
      const auto done = site::apply(edit.value(), copy);
      if (!done) return done.error();
      all.code = edit.value().code;
      for (site::AnyChange& change : edit.value().changes) all.changes.push_back(std::move(change));
    }
    return all;
  };
}

// The field of the first, when all have it to write.
bool joinAll(Field& field, std::vector<FieldGroups>& all) {
  std::vector<FieldWrite> writes;
  for (FieldGroups& groups : all) {
    Field* same = find(groups, field.key);
    if (same == nullptr || !same->write || same->kind != field.kind) return false;
    if (same->text != field.text) field.mixed = true;
    std::erase_if(field.choices, [&](const FieldChoice& choice) {
      return std::ranges::find(same->choices, choice.key, &FieldChoice::key) == same->choices.end();
    });
    writes.push_back(same->write);
  }
  if (field.mixed) field.text.clear();
  field.write = writeAll(std::move(writes));
  return true;
}

}  // namespace

FieldGroups fieldsOf(const site::Site& site, const rules::Subject& subject, const text::Phrasebook& book) {
  if (!isThere(site, subject)) return {};
  const FieldContext in{site, book};
  switch (subject.kind) {
    case SubjectKind::Hookup:
      return hookupAndMachine(in, site::HookupId(subject.id));
    case SubjectKind::Machine:
      return machineFields(in, site::MachineId(subject.id));
    case SubjectKind::Cord:
      return cordFields(in, site::CordId(subject.id));
    case SubjectKind::Outlet:
      return outletFields(in, site::OutletId(subject.id));
    case SubjectKind::Circuit:
      return circuitFields(in, site::CircuitId(subject.id));
    case SubjectKind::Panel:
      return panelFields(in, site::PanelId(subject.id));
    case SubjectKind::Pad:
      return padFields(in, site::PadId(subject.id));
    case SubjectKind::FixedLoad:
      return loadFields(in, site::FixedLoadId(subject.id));
    case SubjectKind::Room:
      return roomFields(in, site::RoomId(subject.id));
  }
  return {};
}

FieldGroups commonFieldsOf(const site::Site& site, const std::vector<rules::Subject>& subjects,
                           const text::Phrasebook& book) {
  if (subjects.size() == 1) return fieldsOf(site, subjects.front(), book);
  std::vector<FieldGroups> all;
  for (const rules::Subject& subject : subjects) {
    if (subject.kind != subjects.front().kind) return {};
    all.push_back(fieldsOf(site, subject, book));
  }
  if (all.empty()) return {};
  FieldGroups common;
  for (const FieldGroup& group : all.front()) {
    FieldGroup kept{group.title, {}};
    for (Field field : group.fields) {
      if (joinAll(field, all)) kept.fields.push_back(std::move(field));
    }
    if (!kept.fields.empty()) common.push_back(std::move(kept));
  }
  return common;
}

}  // namespace cordreach::app
