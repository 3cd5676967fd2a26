// SPDX-License-Identifier: GPL-3.0-or-later
// Every field of every thing with its key in the file, said once: reading, writing and checking all walk these.
// A walker is any class with the members called here; `describe(walker, thing)` calls them in the order of the file.
#pragma once

#include "site/describe_equipment.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::site {

template <class W, Maybe<Ambient> T>
void describe(W& w, T& ambient) {
  w.known("room", ambient.room);
  w.known("panel", ambient.panel);
  w.known("wall", ambient.wall);
}

template <class W, Maybe<Supply> T>
void describe(W& w, T& supply) {
  w.extra(supply.extra);
  w.id(supply.id);
  w.text("name", supply.name);
  w.choice("source", supply.source, Leave::Default);
  w.choice("system", supply.system, Leave::Nothing);
  w.known("loop_impedance", supply.loopImpedance);
  w.known("open_circuit", supply.openCircuit);
  w.known("current_limit", supply.currentLimit);
}

template <class W, Maybe<Panel> T>
void describe(W& w, T& panel) {
  w.extra(panel.extra);
  w.id(panel.id);
  w.text("name", panel.name);
  w.reference("supply", panel.supply);
  w.reference("fed_from", panel.fedFrom);
  w.known("feeder_length", panel.feederLength);
  w.known("feeder_size", panel.feederSize);
  w.object("place", panel.place);
  w.text("room", panel.room);
  w.text("key_holder", panel.keyHolder);
  w.text("hours", panel.hours);
  w.text("owner", panel.owner);
  w.text("call", panel.call);
  w.known("main_rating", panel.mainRating);
  w.known("spaces", panel.spaces);
}

template <class W, Maybe<Circuit> T>
void describe(W& w, T& circuit) {
  w.extra(circuit.extra);
  w.id(circuit.id);
  w.reference("panel", circuit.panel);
  w.text("number", circuit.number);
  w.phases("phases", circuit.phases);
  w.text("purpose", circuit.purpose);
  w.known("rating", circuit.rating);
  w.choice("curve", circuit.curve, Leave::Default);
  w.flag("ground_fault", circuit.groundFault);
  w.flag("arc_fault", circuit.arcFault);
  w.flag("may_not_trip", circuit.mayNotTrip);
  w.flag("tied", circuit.tied);
  w.flag("tandem", circuit.tandem);
  w.flag("spare", circuit.spare);
  w.choice("use", circuit.use, Leave::Default);
  w.text("ask_whom", circuit.askWhom);
  w.references("shares_neutral_with", circuit.sharesNeutralWith);
  w.known("size", circuit.size);
  w.choice("metal", circuit.metal, Leave::Default);
  w.known("insulation", circuit.insulation);
}

template <class W, Maybe<Wall> T>
void describe(W& w, T& wall) {
  w.point("from_m", wall.from);
  w.point("to_m", wall.to);
}

template <class W, Maybe<Picture> T>
void describe(W& w, T& picture) {
  w.text("hash", picture.hash);
  w.text("suffix", picture.suffix);
  w.number("metres_per_pixel", picture.metresPerPixel, 0.0, 100.0);
  w.point("origin_m", picture.origin);
  w.number("turn_deg", picture.turnDegrees, -360.0, 360.0);
  w.number("dim", picture.dim, 0.0, 1.0);
  w.text("issue", picture.issue);
}

template <class W, Maybe<CorridorLine> T>
void describe(W& w, T& line) {
  w.points("points_m", line.points);
}

template <class W, Maybe<Floor> T>
void describe(W& w, T& floor) {
  w.extra(floor.extra);
  w.id(floor.id);
  w.text("name", floor.name);
  w.level("level", floor.level);
  w.list("walls", floor.walls);
  w.list("corridor_lines", floor.corridorLines);
  w.object("picture", floor.picture);
}

template <class W, Maybe<Room> T>
void describe(W& w, T& room) {
  w.extra(room.extra);
  w.id(room.id);
  w.reference("floor", room.floor);
  w.text("name", room.name);
  w.text("number", room.number);
  w.points("outline_m", room.outline);
  w.flag("corridor", room.corridor);
}

template <class W, Maybe<Assignment> T>
void describe(W& w, T& assignment) {
  w.reference("circuit", assignment.circuit);
  w.choice("how", assignment.how, Leave::Default);
  w.text("who", assignment.who);
  w.text("when", assignment.when);
}

template <class W, Maybe<Contact> T>
void describe(W& w, T& contact) {
  w.extra(contact.extra);
  w.text("name", contact.name);
  w.inlined("circuit", contact.assignment);
  w.phases("poles", contact.poles);
  w.text("directory", contact.directory);
  w.text("receptacle", contact.receptacle);
  w.flag("switched", contact.switched);
  w.hours("powered_from", "powered_until", contact.poweredHours);
  w.flag("dead", contact.dead);
  w.flag("loose", contact.loose);
  w.flag("blocked", contact.blocked);
  w.flag("locked_cover", contact.lockedCover);
  w.text("key_holder", contact.keyHolder);
  w.choice("colour", contact.colour, Leave::Default);
  w.choice("use", contact.use, Leave::Default);
}

template <class W, Maybe<Outlet> T>
void describe(W& w, T& outlet) {
  w.extra(outlet.extra);
  w.id(outlet.id);
  w.text("label", outlet.label);
  w.object("place", outlet.place);
  w.known("height", outlet.height);
  w.text("room", outlet.room);
  w.text("wall", outlet.wall);
  w.flag("floor_box", outlet.floorBox);
  w.flag("ground_fault", outlet.groundFaultDevice);
  w.list("contacts", outlet.contacts);
}

template <class W, Maybe<Run> T>
void describe(W& w, T& run) {
  w.extra(run.extra);
  w.id(run.id);
  w.reference("circuit", run.circuit);
  w.reference("from", run.from);
  w.reference("to", run.to);
  w.known("length", run.length);
  w.known("size", run.size);
  w.points("path_m", run.path);
  w.known("drops", run.drops);
  w.text("cable", run.cable);
  w.text("raceway", run.raceway);
}

template <class W, Maybe<Cycle> T>
void describe(W& w, T& cycle) {
  w.quantity("on", cycle.on);
  w.quantity("off", cycle.off);
  w.time("first_on", cycle.firstOn);
}

template <class W, Maybe<Charge> T>
void describe(W& w, T& charge) {
  w.quantity("constant", charge.constant);
  w.quantity("taper", charge.taper);
}

template <class W, Maybe<FixedLoad> T>
void describe(W& w, T& load) {
  w.extra(load.extra);
  w.id(load.id);
  w.text("name", load.name);
  w.reference("circuit", load.circuit);
  w.reference("outlet", load.outlet);
  w.text("contact", load.contact);
  w.choice("class", load.loadClass, Leave::Nothing);
  w.known("plate", load.plate);
  w.known("running", load.running);
  w.known("leakage", load.leakage);
  w.object("cycle", load.cycle);
  w.object("charge", load.charge);
  w.hours("from", "until", load.hours);
  w.flag("off", load.off);
  w.object("place", load.place);
}

template <class W, Maybe<OutletSocket> T>
void describe(W& w, T& socket) {
  w.reference("outlet", socket.outlet);
  w.text("contact", socket.contact);
}

template <class W, Maybe<CordSocket> T>
void describe(W& w, T& socket) {
  w.reference("cord", socket.cord);
  w.index("socket", socket.socket);
}

template <class W, Maybe<MachineSocket> T>
void describe(W& w, T& socket) {
  w.reference("machine", socket.machine);
  w.index("socket", socket.socket);
}

// How a cord lies stands among the fields of the hookup or extension itself.
template <class W, Maybe<LayingOfCord> T>
void describe(W& w, T& lies) {
  w.choice("laying", lies.laying, Leave::Default);
  w.number("turns", lies.turns, 0.0, 1000.0);
  w.quantity("affected", lies.affected);
}

template <class W, Maybe<Hookup> T>
void describe(W& w, T& hookup) {
  w.extra(hookup.extra);
  w.id(hookup.id);
  w.reference("machine", hookup.machine);
  w.text("inlet", hookup.inlet);
  w.socket("socket", hookup.socket);
  w.hours("from", "until", hookup.hours);
  describe(w, hookup.ownCord);
  w.reference("pad", hookup.pad);
  w.flag("off", hookup.off);
  w.flag("asked", hookup.asked);
  w.object("place", hookup.place);
}

template <class W, Maybe<ExtensionUse> T>
void describe(W& w, T& use) {
  w.extra(use.extra);
  w.id(use.id);
  w.reference("cord", use.cord);
  w.socket("socket", use.socket);
  w.hours("from", "until", use.hours);
  describe(w, use.laying);
}

template <class W, Maybe<Event> T>
void describe(W& w, T& event) {
  w.extra(event.extra);
  w.id(event.id);
  w.choice("kind", event.kind, Leave::Nothing);
  w.time("at", event.at);
  w.reference("hookup", event.hookup);
  w.reference("extension", event.extension);
  w.reference("load", event.load);
  w.reference("outlet", event.outlet);
  w.text("contact", event.contact);
  w.reference("pad", event.pad);
  describe(w, event.laying);
}

template <class W, Maybe<Acceptance> T>
void describe(W& w, T& accepted) {
  w.extra(accepted.extra);
  w.id(accepted.id);
  w.text("finding", accepted.finding);
  w.text("subject", accepted.subject);
  w.text("who", accepted.who);
  w.text("when", accepted.when);
  w.text("reason", accepted.reason);
}

template <class W, Maybe<HistoryEntry> T>
void describe(W& w, T& entry) {
  w.extra(entry.extra);
  w.id(entry.id);
  w.text("when", entry.when);
  w.text("who", entry.who);
  w.text("kind", entry.kind);
  w.text("subject", entry.subject);
  w.text("text", entry.text);
}

template <class W, Maybe<Heading> T>
void describe(W& w, T& heading) {
  w.text("name", heading.name);
  w.object("ambient", heading.ambient);
}

}  // namespace cordreach::site
