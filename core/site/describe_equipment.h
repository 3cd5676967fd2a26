// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of machines, cords and pads with their keys in the file; see describe.h.
#pragma once

#include "site/describe_walk.h"
#include "site/equipment.h"

namespace cordreach::site {

template <class W, Maybe<JacketReading> T>
void describe(W& w, T& reading) {
  w.quantity("surface", reading.surface);
  w.quantity("air", reading.air);
  w.quantity("current", reading.current);
  w.choice("laying", reading.laying, Leave::Default);
  w.number("turns", reading.turns, 0.0, 1000.0);
}

template <class W, Maybe<CordMake> T>
void describe(W& w, T& make) {
  w.text("legend", make.legend);
  w.text("type", make.type);
  w.known("size", make.size);
  w.known("conductors", make.conductors);
  w.known("length", make.length);
  w.known("rating", make.rating);
  w.text("plug", make.plug);
  w.choice("pin", make.pin, Leave::Default);
  w.flag("ground_fault", make.groundFaultDevice);
  w.flag("print_readable", make.printReadable, true);
  w.object("jacket_reading", make.jacketReading);
}

template <class W, Maybe<Inlet> T>
void describe(W& w, T& inlet) {
  w.extra(inlet.extra);
  w.text("name", inlet.name);
  w.choice("class", inlet.loadClass, Leave::Nothing);
  w.known("plate", inlet.plateVoltage, "plate_voltage_typed");
  w.known("plate", inlet.plate);
  w.known("running", inlet.running);
  w.known("idle", inlet.idle);
  w.known("locked_rotor", inlet.lockedRotor);
  w.text("code_letter", inlet.codeLetter);
  w.object("cord", inlet.cord);
}

template <class W, Maybe<OutOfService> T>
void describe(W& w, T& out) {
  w.text("reason", out.reason);
  w.text("who", out.who);
  w.text("when", out.when);
}

template <class W, Maybe<Machine> T>
void describe(W& w, T& machine) {
  w.extra(machine.extra);
  w.id(machine.id);
  w.text("name", machine.name);
  w.text("kind", machine.kind);
  w.list("inlets", machine.inlets);
  w.known("shaft", machine.shaftPower);
  w.known("speed", machine.speed);
  w.known("inertia_kgm2", machine.inertiaKgM2);
  w.known("head_force", machine.headForce);
  w.known("leakage", machine.leakage);
  w.reference("pad", machine.pad);
  w.flag("double_insulated", machine.doubleInsulated);
  w.flag("wet", machine.wet);
  w.texts("sockets", machine.sockets);
  w.object("out_of_service", machine.outOfService);
  w.object("place", machine.place);
}

template <class W, Maybe<Cord> T>
void describe(W& w, T& cord) {
  w.extra(cord.extra);
  w.id(cord.id);
  w.text("label", cord.label);
  describe(w, cord.make);
  w.known("tag", cord.tag);
  w.texts("sockets", cord.sockets);
  w.object("out_of_service", cord.outOfService);
}

template <class W, Maybe<Pad> T>
void describe(W& w, T& pad) {
  w.extra(pad.extra);
  w.id(pad.id);
  w.text("name", pad.name);
  w.choice("family", pad.family, Leave::Default);
  w.choice("condition", pad.condition, Leave::Default);
  w.flag("off_centre", pad.offCentre);
  w.known("diameter", pad.diameter);
  w.known("friction", pad.friction);
  w.known("rated_speed", pad.ratedSpeed);
  w.known("drag_factor", pad.dragFactor);
}

}  // namespace cordreach::site
