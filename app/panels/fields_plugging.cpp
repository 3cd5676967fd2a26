// SPDX-License-Identifier: GPL-3.0-or-later
// How machines are plugged in: the outlet's contact, the cord between, how the cords lie, the hours.
#include <algorithm>
#include <cmath>

#include "map/plug_edits.h"
#include "panels/field_kinds.h"
#include "panels/field_maker.h"
#include "panels/names.h"
#include "planning/plug.h"
#include "site/queries.h"

namespace cordreach::app {

namespace {

using site::HookupId;
using EditOrError = base::Result<site::Edit>;

base::Error gone(const std::string& id) { return {"field.gone", id, {}}; }

std::optional<site::OutletSocket> socketFrom(std::string_view key) {
  const auto at = key.find('\n');
  if (at == std::string_view::npos || at == 0) return std::nullopt;
  return site::OutletSocket{site::OutletId(std::string(key.substr(0, at))), std::string(key.substr(at + 1))};
}

bool isOffered(const site::Site& site, std::string_view key) {
  return site::useOf(site, *socketFrom(key)) != site::UseClass::Never;
}

// With an extension between that serves this machine alone, its plug moves and the machine stays on it.
EditOrError moveTo(const site::Site& site, const HookupId& id, const site::OutletSocket& socket) {
  const site::Hookup* hookup = site.find<site::Hookup>(id);
  if (hookup == nullptr) return gone(id.text());
  const auto plugging = planning::pluggingOf(*hookup, site);
  const bool isOwnExtension = plugging.extension != nullptr && planning::usersOf(*plugging.extension, site).size() <= 1;
  if (isOwnExtension) return plugInto(site, ExtensionPlug{plugging.extension->id}, socket);
  return plugInto(site, MachinePlug{hookup->machine, hookup->inlet, id}, socket);
}

std::string socketKey(const planning::Plugging& plugging) {
  if (plugging.outlet == nullptr || plugging.contact == nullptr) return {};
  return plugging.outlet->id.text() + "\n" + plugging.contact->name;
}

struct HookupForm {
  const FieldContext& in;
  const site::Hookup& hookup;
  planning::Plugging plugging;
  std::string prefix;

  [[nodiscard]] Field start(const std::string& key, FieldKind kind, std::string text) const {
    return {.key = prefix + key, .label = in.book.say("field." + key), .kind = kind, .text = std::move(text)};
  }
};

Field outletField(const HookupForm& form) {
  Field field = form.start("plugged_into", FieldKind::Choice, socketKey(form.plugging));
  field.choices.push_back({"", form.in.book.say("field.plugged_into.nothing")});
  // Where it is plugged in stands there even if nobody would offer it.
  for (FieldChoice& choice : outletChoices(form.in, OffLimits::Shown)) {
    if (choice.key == field.text || isOffered(form.in.site, choice.key)) field.choices.push_back(std::move(choice));
  }
  field.write = [id = form.hookup.id](const site::Site& site, std::string_view typed) -> EditOrError {
    if (typed.empty()) return unplug(site, id);
    const auto socket = socketFrom(typed);
    if (!socket) return base::Error{"field.no_choice", std::string(typed), {}};
    return moveTo(site, id, *socket);
  };
  return field;
}

Field cordField(const HookupForm& form) {
  Field field =
      form.start("through", FieldKind::Choice, form.plugging.cord == nullptr ? "" : form.plugging.cord->id.text());
  field.choices.push_back({"", form.in.book.say("field.through.none")});
  for (const site::Cord& cord : form.in.site.all<site::Cord>()) {
    // What is out of service is not offered.
    if (!cord.outOfService || form.plugging.cord == &cord) {
      field.choices.push_back({cord.id.text(), cordName(form.in.book, cord)});
    }
  }
  field.write = [id = form.hookup.id](const site::Site& site, std::string_view typed) -> EditOrError {
    if (typed.empty()) return putCordBetween(site, id, std::nullopt);
    return putCordBetween(site, id, site::CordId(std::string(typed)));
  };
  return field;
}

using Lay = std::function<EditOrError(const site::Site&, const site::LayingOfCord&)>;
using Lies = std::function<const site::LayingOfCord*(const site::Site&)>;

struct LayingForm {
  std::string prefix;
  std::string id;
  Lies lies;
  Lay lay;
};

template <class Alter>
FieldWrite layWrite(const LayingForm& form, Alter alter) {
  return [form, alter](const site::Site& site, std::string_view typed) -> EditOrError {
    const site::LayingOfCord* now = form.lies(site);
    if (now == nullptr) return gone(form.id);
    site::LayingOfCord after = *now;
    if (MaybeError fault = alter(after, typed)) return *fault;
    return form.lay(site, after);
  };
}

Field layingField(const FieldContext& in, const LayingForm& form, const site::LayingOfCord& now) {
  Field field{.key = form.prefix + "laying",
              .label = in.book.say("field.laying"),
              .kind = FieldKind::Choice,
              .text = std::string(site::fileWord(now.laying))};
  for (const auto& entry : site::kFileWords<tables::Laying>) {
    field.choices.push_back({std::string(entry.word), in.book.say("field.laying." + std::string(entry.word))});
  }
  field.write = layWrite(form, [](site::LayingOfCord& after, std::string_view typed) -> MaybeError {
    const auto laying = site::fromFileWord<tables::Laying>(typed);
    if (!laying) return base::Error{"field.no_choice", std::string(typed), {}};
    after.laying = *laying;
    const bool isWound = *laying == tables::Laying::Coiled || *laying == tables::Laying::Reel;
    if (!isWound) after.turns = 0.0;
    if (*laying == tables::Laying::Straight || *laying == tables::Laying::Floor) after.affected.reset();
    return std::nullopt;
  });
  return field;
}

void addLaying(const FieldContext& in, const LayingForm& form, std::vector<Field>& fields) {
  const site::LayingOfCord now = *form.lies(in.site);
  fields.push_back(layingField(in, form, now));
  if (now.laying == tables::Laying::Coiled || now.laying == tables::Laying::Reel) {
    Field turns{.key = form.prefix + "turns", .label = in.book.say("field.turns")};
    turns.text = now.turns > 0.0 ? exactText(in.book, now.turns) : "";
    turns.mayBeUnknown = true;
    turns.write = layWrite(form, [book = &in.book](site::LayingOfCord& after, std::string_view typed) -> MaybeError {
      after.turns = 0.0;
      if (tidied(typed).empty()) return std::nullopt;
      const auto read = readText<double>(*book, typed);
      if (!read.ok()) return read.error();
      after.turns = read.value();
      return std::nullopt;
    });
    fields.push_back(std::move(turns));
  }
  if (now.laying == tables::Laying::Straight || now.laying == tables::Laying::Floor) return;
  Field affected{.key = form.prefix + "affected", .label = in.book.say("field.affected")};
  affected.text = now.affected ? exactText(in.book, *now.affected) : "";
  affected.mayBeUnknown = true;
  affected.write = layWrite(form, [book = &in.book](site::LayingOfCord& after, std::string_view typed) -> MaybeError {
    after.affected.reset();
    if (tidied(typed).empty()) return std::nullopt;
    const auto read = readText<units::Length>(*book, typed);
    if (!read.ok()) return read.error();
    after.affected = read.value();
    return std::nullopt;
  });
  fields.push_back(std::move(affected));
}

// The hours of its own extension go along: the cord lies there as long as the machine runs.
EditOrError setHours(const site::Site& site, const HookupId& id, std::string_view typed) {
  const site::Hookup* hookup = site.find<site::Hookup>(id);
  if (hookup == nullptr) return gone(id.text());
  std::optional<site::Hours> hours;
  if (!tidied(typed).empty()) {
    const auto read = readHours(typed);
    if (!read.ok()) return read.error();
    hours = read.value();
  }
  site::Edit edit{"hookup.hours", {}};
  const auto plugging = planning::pluggingOf(*hookup, site);
  site::Hookup after = *hookup;
  after.hours = hours;
  if (!(after == *hookup)) edit.changes.emplace_back(site::Change<site::Hookup>{*hookup, after});
  if (plugging.extension != nullptr && planning::usersOf(*plugging.extension, site).size() <= 1) {
    site::ExtensionUse use = *plugging.extension;
    use.hours = hours;
    if (!(use == *plugging.extension)) {
      edit.changes.emplace_back(site::Change<site::ExtensionUse>{*plugging.extension, use});
    }
  }
  return edit;
}

Field padField(const FieldMaker<site::Hookup>& maker, const FieldContext& in) {
  Field field = maker.reference(
      "pad_now", [](auto& h) -> auto& { return h.pad; }, padChoices(in));
  field.mayBeUnknown = false;
  field.choices.insert(field.choices.begin(), {"", in.book.say("field.pad_now.own")});
  return field;
}

Field freeInlet(const FieldContext& in, const site::MachineId& machine, const std::string& inlet) {
  Field field{
      .key = "plug." + inlet + ".plugged_into", .label = in.book.say("field.plugged_into"), .kind = FieldKind::Choice};
  field.choices = outletChoices(in);
  field.choices.insert(field.choices.begin(), {"", in.book.say("field.plugged_into.nothing")});
  field.write = [machine, inlet](const site::Site& site, std::string_view typed) -> EditOrError {
    if (typed.empty()) return site::Edit{"hookup.add", {}};
    const auto socket = socketFrom(typed);
    if (!socket) return base::Error{"field.no_choice", std::string(typed), {}};
    return plugInto(site, MachinePlug{machine, inlet, std::nullopt}, *socket);
  };
  return field;
}

}  // namespace

FieldGroup hookupFields(const FieldContext& in, const HookupId& id) {
  const FieldMaker<site::Hookup> maker(in.site, in.book, id, "hookup.change");
  const site::Hookup& hookup = maker.thing();
  const HookupForm form{in, hookup, planning::pluggingOf(hookup, in.site), "hookup." + id.text() + "."};
  const std::string when = hookup.hours ? hoursText(*hookup.hours) : in.book.say("field.hours.always");
  const bool namesInlet = form.plugging.machine != nullptr && form.plugging.machine->inlets.size() > 1;
  base::Arguments arguments{{"hours", when}};
  if (namesInlet) arguments.push_back({"inlet", hookup.inlet});
  FieldGroup group{in.book.say("field.group.plugged_in", arguments), {}};
  group.fields.push_back(outletField(form));
  group.fields.push_back(cordField(form));
  if (form.plugging.extension != nullptr) {
    const site::ExtensionUseId use = form.plugging.extension->id;
    addLaying(in,
              {form.prefix, use.text(),
               [use](const site::Site& site) {
                 const auto* found = site.find<site::ExtensionUse>(use);
                 return found == nullptr ? nullptr : &found->laying;
               },
               [use](const site::Site& site, const site::LayingOfCord& lies) { return layExtension(site, use, lies); }},
              group.fields);
  }
  addLaying(in,
            {form.prefix + "own.", id.text(),
             [id](const site::Site& site) {
               const auto* found = site.find<site::Hookup>(id);
               return found == nullptr ? nullptr : &found->ownCord;
             },
             [id](const site::Site& site, const site::LayingOfCord& lies) { return layOwnCord(site, id, lies); }},
            group.fields);
  for (Field& field : group.fields) {
    if (field.key == form.prefix + "own.laying") field.label = in.book.say("field.own_laying");
  }
  Field hours = form.start("hours", FieldKind::Text, hookup.hours ? hoursText(*hookup.hours) : "");
  hours.write = [id](const site::Site& site, std::string_view typed) { return setHours(site, id, typed); };
  group.fields.push_back(std::move(hours));
  const std::size_t before = group.fields.size();
  group.fields.push_back(maker.flag(
      "off", [](auto& h) -> auto& { return h.off; }));
  group.fields.push_back(padField(maker, in));
  group.fields.push_back(maker.flag(
      "asked", [](auto& h) -> auto& { return h.asked; }));
  for (std::size_t i = before; i < group.fields.size(); ++i) group.fields[i].key = form.prefix + group.fields[i].key;
  return group;
}

FieldGroups pluggingFields(const FieldContext& in, const site::MachineId& id) {
  FieldGroups groups;
  const site::Machine& machine = in.site.at<site::Machine>(id);
  for (const site::Inlet& inlet : machine.inlets) {
    bool isPlugged = false;
    for (const site::Hookup& hookup : in.site.all<site::Hookup>()) {
      if (hookup.machine != id || hookup.inlet != inlet.name) continue;
      groups.push_back(hookupFields(in, hookup.id));
      isPlugged = true;
    }
    if (isPlugged) continue;
    base::Arguments arguments;
    if (machine.inlets.size() > 1) arguments.push_back({"inlet", inlet.name});
    groups.push_back({in.book.say("field.group.not_plugged_in", arguments), {freeInlet(in, id, inlet.name)}});
  }
  return groups;
}

}  // namespace cordreach::app
