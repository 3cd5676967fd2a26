// SPDX-License-Identifier: GPL-3.0-or-later
// Machines of a floor as they stand at the chosen moment, their cords and the plugs that hang free.
#include <algorithm>
#include <cmath>
#include <map>

#include "map/content_parts.h"
#include "map/map_figures.h"
#include "map/symbol_stamps.h"
#include "rules/judge.h"
#include "site/queries.h"
#include "study/assumptions.h"

namespace cordreach::app {
namespace {

constexpr double kParkingStepM = 1.8;  // between machines that are kept in one place
constexpr int kParkingColumns = 3;

rules::Severity verdictOf(const ContentWish& wish, const site::HookupId& hookup) {
  return wish.verdict == nullptr ? rules::Severity::Ok : rules::verdictOf(hookup, wish.verdict->findings);
}

// The hookup of a plug to be shown: the one of the moment, or the worst of the plan.
const site::Hookup* shownHookup(const ContentWish& wish, const site::Machine& machine, const site::Inlet& inlet) {
  const site::Hookup* best = nullptr;
  for (const site::Hookup& hookup : wish.site.all<site::Hookup>()) {
    if (hookup.machine != machine.id || hookup.inlet != inlet.name) continue;
    if (wish.moment && hookup.hours && !hookup.hours->holds(*wish.moment)) continue;
    if (best == nullptr || verdictOf(wish, hookup.id) > verdictOf(wish, best->id)) best = &hookup;
  }
  return best;
}

QString symbolOf(const site::Machine& machine) {
  static const std::map<std::string, const char*> others{{"vacuum-wide", "vacuum-upright"}};
  const auto other = others.find(machine.kind);
  const QString name = QString::fromStdString(other != others.end() ? std::string(other->second) : machine.kind);
  return SymbolStamps::has(name) ? name : QStringLiteral("generic");
}

QString machineFigure(const ContentWish& wish, const std::vector<const site::Hookup*>& hookups) {
  if (hookups.empty()) return {};
  if (std::all_of(hookups.begin(), hookups.end(), [](const auto* one) { return one->off; })) {
    return say(wish.book, "map.off");
  }
  QStringList figures;
  for (const site::Hookup* hookup : hookups) {
    const study::HookupAnswer* answer = answerOf(wish, hookup->id);
    if (answer == nullptr || hookup->off) continue;
    figures << voltsText(wish.book, answer->voltage.likely) + QStringLiteral(", ") +
                   ampsText(wish.book, answer->current.likely);
  }
  return figures.join(QStringLiteral("; "));
}

struct Use {
  const site::Machine* machine;
  std::vector<const site::Hookup*> hookups;
};

std::optional<site::Place> placeOf(const Use& use) {
  for (const site::Hookup* hookup : use.hookups) {
    if (hookup->place) return hookup->place;
  }
  return use.machine->place;
}

MapCordPart partOf(const ContentWish& wish, const site::CordMake& make, const study::CordAnswer* answer) {
  MapCordPart part;
  const units::WireSize size = study::sizeOf(make);
  part.copperMm2 = size.area().in(units::squareMillimetre);
  part.lengthM = make.length ? make.length->value.in(units::metre) : 7.62;
  part.text = sizeText(wish.book, size);
  if (answer == nullptr) return part;
  part.beyondModel = answer->beyondModel();
  if (answer->conductor) part.conductor = answer->conductor->likely;
  part.figure = part.conductor ? degreesText(wish.book, *part.conductor) : say(wish.book, "map.beyond_model");
  return part;
}

MapCordPart extensionPart(const ContentWish& wish, const site::ExtensionUse& use, const study::CordAnswer* answer) {
  const site::Cord& cord = wish.site.at<site::Cord>(use.cord);
  MapCordPart part = partOf(wish, cord.make, answer);
  part.cord = cord.id;
  part.use = use.id;
  part.laying = use.laying.laying;
  part.text = say(wish.book, "map.cord", {{"cord", cord.label}, {"size", part.text.toStdString()}});
  part.severity = severityOf(wish.verdict, {rules::SubjectKind::Cord, cord.id.text()});
  return part;
}

MapCord cordOf(const MapContent& content, const ContentWish& wish, const site::Hookup& hookup) {
  MapCord item{hookup.id, -1, -1, {}, {hookup.machine, hookup.inlet, hookup.id}};
  const study::HookupAnswer* answer = answerOf(wish, hookup.id);
  const auto answered = [&](std::size_t at) -> const study::CordAnswer* {
    return answer != nullptr && at < answer->cords.size() ? &answer->cords[at] : nullptr;
  };
  if (const auto chain = site::chainOf(wish.site, hookup)) {
    item.outlet = indexOfOutlet(content, chain->outlet.outlet);
    for (const site::ChainLink& link : chain->links) {
      if (link.extension != nullptr)
        item.parts.push_back(extensionPart(wish, *link.extension, answered(item.parts.size())));
    }
  }
  const site::Inlet* inlet = site::inletOf(wish.site, hookup);
  const study::CordAnswer* own = answer != nullptr && !answer->cords.empty() ? &answer->cords.back() : nullptr;
  if (inlet != nullptr) item.parts.push_back(partOf(wish, inlet->cord, own));
  if (!item.parts.empty()) item.parts.back().laying = hookup.ownCord.laying;
  return item;
}

QString floorName(const ContentWish& wish, const site::FloorId& id) {
  const site::Floor* floor = wish.site.find<site::Floor>(id);
  return QString::fromStdString(floor != nullptr ? floor->name : id.text());
}

// The floor that the hookup's outlet is on, when it is another.
QString otherFloorOf(const ContentWish& wish, const site::Hookup& hookup) {
  const auto chain = site::chainOf(wish.site, hookup);
  const site::Outlet* outlet = chain ? wish.site.find<site::Outlet>(chain->outlet.outlet) : nullptr;
  if (outlet == nullptr || !outlet->place || outlet->place->floor == *wish.floor) return {};
  return floorName(wish, outlet->place->floor);
}

// Cords of machines on other floors whose outlet is here.
void addVisitors(MapContent& content, const ContentWish& wish, const Use& use, const site::FloorId& floor) {
  for (const site::Hookup* hookup : use.hookups) {
    MapCord cord = cordOf(content, wish, *hookup);
    if (cord.outlet < 0) continue;
    cord.otherFloor = floorName(wish, floor);
    content.outlets[static_cast<std::size_t>(cord.outlet)].inUse = true;
    content.cords.push_back(std::move(cord));
  }
}

void addPlugs(MapContent& content, const ContentWish& wish, const Use& use, int machine) {
  for (const site::Inlet& inlet : use.machine->inlets) {
    const auto isOfInlet = [&](const site::Hookup* hookup) { return hookup->inlet == inlet.name; };
    const auto found = std::find_if(use.hookups.begin(), use.hookups.end(), isOfInlet);
    if (found == use.hookups.end()) {
      content.idlePlugs.push_back({use.machine->id, inlet.name, {}});
      continue;
    }
    MapCord cord = cordOf(content, wish, **found);
    cord.machine = machine;
    if (cord.outlet < 0) cord.otherFloor = otherFloorOf(wish, **found);
    if (cord.outlet >= 0) content.outlets[static_cast<std::size_t>(cord.outlet)].inUse = true;
    content.cords.push_back(std::move(cord));
  }
}

void addMachine(MapContent& content, const ContentWish& wish, const Use& use, const QPointF& at) {
  MapMachine item{use.machine->id, QString::fromStdString(use.machine->name), at, symbolOf(*use.machine)};
  item.figure = machineFigure(wish, use.hookups);
  item.outOfService = use.machine->outOfService.has_value();
  item.severity = severityOf(wish.verdict, {rules::SubjectKind::Machine, use.machine->id.text()});
  item.off = !use.hookups.empty();
  for (const site::Hookup* hookup : use.hookups) {
    item.hookups.push_back(hookup->id);
    item.off = item.off && hookup->off;
    item.severity = std::max(item.severity, verdictOf(wish, hookup->id));
    if (const study::HookupAnswer* answer = answerOf(wish, hookup->id)) item.circuit = answer->circuit;
  }
  content.machines.push_back(std::move(item));
  addPlugs(content, wish, use, static_cast<int>(content.machines.size()) - 1);
}

}  // namespace

void addMachines(MapContent& content, const ContentWish& wish) {
  std::map<std::pair<double, double>, int> parked;
  for (const site::Machine& machine : wish.site.all<site::Machine>()) {
    Use use{&machine, {}};
    for (const site::Inlet& inlet : machine.inlets) {
      if (const site::Hookup* hookup = shownHookup(wish, machine, inlet)) use.hookups.push_back(hookup);
    }
    const auto place = placeOf(use);
    if (place && place->floor != *wish.floor) addVisitors(content, wish, use, place->floor);
    if (!place || place->floor != *wish.floor) continue;
    QPointF at = toPoint(place->at);
    const int before = parked[{at.x(), at.y()}]++;
    at += QPointF(before % kParkingColumns, before / kParkingColumns) * kParkingStepM;
    addMachine(content, wish, use, at);
  }
}

}  // namespace cordreach::app
