// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/find_things.h"

#include <algorithm>

#include "panels/names.h"
#include "shell/say.h"
#include "site/natural_order.h"

namespace cordreach::app {

namespace {

using rules::SubjectKind;

QString floorName(const site::Site& site, const std::optional<site::Place>& place) {
  const site::Floor* floor = place ? site.find<site::Floor>(place->floor) : nullptr;
  return floor != nullptr ? QString::fromStdString(floor->name) : QString();
}

QString joined(QStringList parts) {
  parts.removeAll(QString());
  parts.removeDuplicates();
  return parts.join(QStringLiteral(", "));
}

QString circuitsOf(const site::Site& site, const site::Outlet& outlet) {
  QStringList names;
  for (const site::Contact& contact : outlet.contacts) {
    const site::Circuit* circuit = contact.assignment ? site.find<site::Circuit>(contact.assignment->circuit) : nullptr;
    if (circuit != nullptr) names << QString::fromStdString(circuitName(site, *circuit));
  }
  return joined(names);
}

}  // namespace

ThingIndex::ThingIndex(const text::Phrasebook& book, const site::Site& site) {
  addPlaced(book, site);
  addWiring(book, site);
  std::stable_sort(m_entries.begin(), m_entries.end(), [](const Entry& a, const Entry& b) {
    return site::comesBefore(a.label.toStdString(), b.label.toStdString());
  });
}

void ThingIndex::add(FoundThing found, const std::string& label, const QStringList& more) {
  const QString words = (QStringList{found.name, found.where} + more).join(QLatin1Char(' ')).toLower();
  m_entries.push_back({std::move(found), QString::fromStdString(label).toLower(), words});
}

void ThingIndex::addPlaced(const text::Phrasebook& book, const site::Site& site) {
  const auto named = [&](SubjectKind kind, const std::string& id) {
    return QString::fromStdString(subjectName(book, site, {kind, id}));
  };
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    const rules::Subject subject{SubjectKind::Outlet, outlet.id.text()};
    const QString room = QString::fromStdString(outlet.room);
    const QString circuits = circuitsOf(site, outlet);
    add({subject, named(subject.kind, subject.id), joined({room, floorName(site, outlet.place), circuits})},
        outletName(outlet), {});
  }
  for (const site::Machine& machine : site.all<site::Machine>()) {
    const rules::Subject subject{SubjectKind::Machine, machine.id.text()};
    add({subject, named(subject.kind, subject.id), floorName(site, machine.place)}, machine.name,
        {say(book, "find.machine")});
  }
  for (const site::FixedLoad& load : site.all<site::FixedLoad>()) {
    const rules::Subject subject{SubjectKind::FixedLoad, load.id.text()};
    const site::Outlet* outlet = load.outlet ? site.find<site::Outlet>(*load.outlet) : nullptr;
    const auto place = load.place || outlet == nullptr ? load.place : outlet->place;
    const QString room = outlet != nullptr ? QString::fromStdString(outlet->room) : QString();
    const site::Circuit* circuit = site.find<site::Circuit>(load.circuit);
    const QString number = circuit != nullptr ? QString::fromStdString(circuitName(site, *circuit)) : QString();
    add({subject, named(subject.kind, subject.id), joined({room, floorName(site, place), number})}, load.name,
        {say(book, "find.load")});
  }
  for (const site::Room& room : site.all<site::Room>()) {
    base::Arguments arguments;
    if (!room.number.empty()) arguments.push_back({"number", room.number});
    if (!room.name.empty()) arguments.push_back({"name", room.name});
    const std::string& label = room.number.empty() ? room.name : room.number;
    add({{SubjectKind::Room, room.id.text()},
         say(book, "find.room", arguments),
         floorName(site, site::Place{room.floor, {}})},
        label, {});
  }
}

void ThingIndex::addWiring(const text::Phrasebook& book, const site::Site& site) {
  const auto named = [&](SubjectKind kind, const std::string& id) {
    return QString::fromStdString(subjectName(book, site, {kind, id}));
  };
  for (const site::Panel& panel : site.all<site::Panel>()) {
    const rules::Subject subject{SubjectKind::Panel, panel.id.text()};
    add({subject, named(subject.kind, subject.id),
         joined({QString::fromStdString(panel.room), floorName(site, panel.place)})},
        panel.name, {});
  }
  for (const site::Circuit& circuit : site.all<site::Circuit>()) {
    const rules::Subject subject{SubjectKind::Circuit, circuit.id.text()};
    add({subject, named(subject.kind, subject.id), QString::fromStdString(circuit.purpose)}, circuitName(site, circuit),
        {say(book, "find.circuit")});
  }
  for (const site::Cord& cord : site.all<site::Cord>()) {
    const rules::Subject subject{SubjectKind::Cord, cord.id.text()};
    add({subject, say(book, "panel.name.cord", {{"name", cordName(book, cord)}}),
         cord.outOfService ? say(book, "map.name.out_of_service") : QString()},
        cord.label, {QString::fromStdString(cord.make.legend)});
  }
}

std::vector<FoundThing> ThingIndex::find(const QString& typed) const {
  const QString all = typed.simplified().toLower();
  if (all.isEmpty()) return {};
  const QStringList words = all.split(QLatin1Char(' '));
  std::vector<std::vector<FoundThing>> byRank(3);
  for (const Entry& entry : m_entries) {
    const bool fits =
        std::all_of(words.begin(), words.end(), [&](const QString& word) { return entry.words.contains(word); });
    if (!fits) continue;
    const QString name = entry.found.name.toLower();
    const bool isIt = entry.label == all || name == all;
    const std::size_t rank = isIt ? 0 : entry.label.startsWith(all) || name.startsWith(all) ? 1 : 2;
    byRank[rank].push_back(entry.found);
  }
  std::vector<FoundThing> found;
  for (auto& rank : byRank) found.insert(found.end(), rank.begin(), rank.end());
  return found;
}

}  // namespace cordreach::app
