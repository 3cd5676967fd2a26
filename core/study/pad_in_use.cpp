// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/pad_in_use.h"

#include "physics/pad_drag.h"

namespace cordreach::study {

namespace {

using physics::DragBand;

constexpr double kTurnsAMinute = 60.0;  // of a machine's speed, kept in turns a second

DragBand bandOf(const site::Stated<double>& stated) {
  return {stated.value, stated.low.value_or(stated.value), stated.high.value_or(stated.value)};
}

// What the work usually rubs with, where nobody measured: by kind of machine.
DragBand usualFriction(const site::Machine& machine) {
  const auto friction = physics::padFriction(machine.kind == "burnisher" ? "burnish" : "scrub_wet").value();
  return {friction.likely, friction.low, friction.high};
}

DragBand frictionDrag(const site::Machine& machine, const site::Pad& pad, const physics::Nameplate& plate) {
  const DragBand friction = bandOf(*pad.friction);
  const auto usual = physics::plateTorque(plate);
  if (machine.headForce && pad.diameter && usual && usual->si() > 0.0) {
    const auto radius = physics::effectivePadRadius(0.5 * pad.diameter->value);
    const double perFriction = physics::padTorque(1.0, machine.headForce->value, radius) / *usual;
    return friction * DragBand{perFriction, perFriction, perFriction};
  }
  const double usualFrictionLikely = usualFriction(machine).likely;
  const double scale = 1.0 / usualFrictionLikely;
  return friction * DragBand{scale, scale, scale};
}

bool isSound(const site::Pad& pad) { return pad.condition == site::PadCondition::Sound && !pad.offCentre; }

DragBand conditionDrag(const site::Pad& pad) {
  DragBand drag;
  if (pad.condition == site::PadCondition::Worn) drag = drag * physics::padDrag("worn");
  if (pad.condition == site::PadCondition::Loaded) drag = drag * physics::padDrag("loaded");
  if (pad.offCentre) drag = drag * physics::padDrag("off_centre");
  return drag;
}

}  // namespace

const site::Pad* padInUse(const site::Site& site, const site::Hookup& hookup) {
  const auto& id = hookup.pad ? hookup.pad : site.at<site::Machine>(hookup.machine).pad;
  return id ? site.find<site::Pad>(*id) : nullptr;
}

std::string_view familyKey(site::PadFamily family) {
  switch (family) {
    case site::PadFamily::SlowSpeed:
      return "slow-speed";
    case site::PadFamily::SprayBuff:
      return "spray-buff";
    case site::PadFamily::Burnish:
      return "burnish";
    case site::PadFamily::Unknown:
      break;
  }
  return {};
}

std::optional<double> ratedRpmOf(const site::Pad& pad) {
  if (pad.ratedSpeed) return pad.ratedSpeed->value.in(units::hertz)*kTurnsAMinute;
  return physics::padFamilyRpm(familyKey(pad.family));
}

PadDrag padDragOf(const site::Site& site, const site::Hookup& hookup, const physics::Nameplate& plate) {
  const site::Pad* pad = padInUse(site, hookup);
  if (pad == nullptr) return {};
  const auto& machine = site.at<site::Machine>(hookup.machine);
  const bool usual = machine.pad && pad->id == *machine.pad;
  if (pad->dragFactor && !usual) return {bandOf(*pad->dragFactor), false};
  PadDrag drag{conditionDrag(*pad), !isSound(*pad)};
  const bool calibrated = usual && plate.runningCurrent.has_value();
  if (pad->friction && !calibrated) {
    drag.factor = drag.factor * frictionDrag(machine, *pad, plate);
    drag.guessed = true;
  } else if (plate.speedRpm) {
    const DragBand family = physics::familyDrag(familyKey(pad->family), *plate.speedRpm);
    drag.guessed |= family.likely != 1.0;
    drag.factor = drag.factor * family;
  }
  return drag;
}

double dragAt(const physics::DragBand& drag, Corner corner) {
  if (corner == Corner::Likely) return drag.likely;
  return corner == Corner::Adverse ? drag.high : drag.low;
}

}  // namespace cordreach::study
