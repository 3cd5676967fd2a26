// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/names.h"

#include "panels/field_text.h"
#include "site/assigning.h"

namespace cordreach::app {

namespace {

using rules::SubjectKind;

std::string orId(const std::string& name, const std::string& id) { return name.empty() ? id : name; }

template <class T>
const T* find(const site::Site& site, const rules::Subject& subject) {
  return subject.id.empty() ? nullptr : site.find<T>(decltype(T::id)(subject.id));
}

std::string hookupName(const site::Site& site, const site::Hookup& hookup) {
  const site::Machine* machine = site.find<site::Machine>(hookup.machine);
  return machine == nullptr ? hookup.id.text() : orId(machine->name, machine->id.text());
}

}  // namespace

bool isThere(const site::Site& site, const rules::Subject& subject) {
  switch (subject.kind) {
    case SubjectKind::Hookup:
      return find<site::Hookup>(site, subject) != nullptr;
    case SubjectKind::Machine:
      return find<site::Machine>(site, subject) != nullptr;
    case SubjectKind::Cord:
      return find<site::Cord>(site, subject) != nullptr;
    case SubjectKind::Outlet:
      return find<site::Outlet>(site, subject) != nullptr;
    case SubjectKind::Circuit:
      return find<site::Circuit>(site, subject) != nullptr;
    case SubjectKind::Panel:
      return find<site::Panel>(site, subject) != nullptr;
    case SubjectKind::Pad:
      return find<site::Pad>(site, subject) != nullptr;
    case SubjectKind::FixedLoad:
      return find<site::FixedLoad>(site, subject) != nullptr;
    case SubjectKind::Room:
      return find<site::Room>(site, subject) != nullptr;
  }
  return false;
}

std::string subjectName(const text::Phrasebook& book, const site::Site& site, const rules::Subject& subject) {
  const auto named = [&](const char* code, const std::string& name) {
    return book.say(code, {{"name", orId(name, subject.id)}});
  };
  if (!isThere(site, subject)) return subject.id;
  switch (subject.kind) {
    case SubjectKind::Hookup:
      return hookupName(site, *find<site::Hookup>(site, subject));
    case SubjectKind::Machine:
      return orId(find<site::Machine>(site, subject)->name, subject.id);
    case SubjectKind::Cord:
      return named("panel.name.cord", find<site::Cord>(site, subject)->label);
    case SubjectKind::Outlet:
      return named("panel.name.outlet", find<site::Outlet>(site, subject)->label);
    case SubjectKind::Circuit:
      return named("panel.name.circuit", circuitName(site, *find<site::Circuit>(site, subject)));
    case SubjectKind::Panel:
      return named("panel.name.panel", find<site::Panel>(site, subject)->name);
    case SubjectKind::Pad:
      return orId(find<site::Pad>(site, subject)->name, subject.id);
    case SubjectKind::FixedLoad:
      return orId(find<site::FixedLoad>(site, subject)->name, subject.id);
    case SubjectKind::Room:
      return named("panel.name.room", roomName(*find<site::Room>(site, subject)));
  }
  return subject.id;
}

std::string circuitName(const site::Site& site, const site::Circuit& circuit) {
  return site::circuitNumberOf(site, circuit);
}

std::string circuitLine(const text::Phrasebook& book, const site::Site& site, const site::Circuit& circuit) {
  std::string line = circuitName(site, circuit);
  if (circuit.rating) line += ", " + exactText(book, circuit.rating->value);
  if (!circuit.purpose.empty()) line += ", " + circuit.purpose;
  return line;
}

std::string contactName(const text::Phrasebook& book, const std::string& name) {
  const std::string code = "field.contact." + name;
  return book.has(code) ? book.say(code) : name;
}

std::string roomName(const site::Room& room) {
  return room.number.empty() || room.name.empty() ? room.number + room.name : room.number + ", " + room.name;
}

std::string outletName(const site::Outlet& outlet) { return orId(outlet.label, outlet.id.text()); }

std::string cordName(const text::Phrasebook& book, const site::Cord& cord) {
  std::string name = orId(cord.label, cord.id.text());
  if (cord.make.size) name += ", " + exactText(book, cord.make.size->value);
  if (cord.make.length) name += ", " + knownText(book, cord.make.length);
  return name;
}

}  // namespace cordreach::app
