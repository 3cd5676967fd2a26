// SPDX-License-Identifier: GPL-3.0-or-later
#include "study/branch_heat.h"

#include <algorithm>

#include "physics/contact.h"
#include "physics/cord_transient.h"
#include "physics/wire.h"
#include "study/assumptions.h"
#include "tables/cord_types.h"
#include "tables/dc_resistance.h"

namespace cordreach::study {

namespace {

using units::ampere;
using units::metre;
using units::ohm;
using units::ohmPerMetre;

physics::Corner heatCorner(Corner corner) {
  switch (corner) {
    case Corner::Adverse:
      return physics::Corner::High;
    case Corner::Favourable:
      return physics::Corner::Low;
    case Corner::Likely:
      break;
  }
  return physics::Corner::Likely;
}

physics::CordSection sectionAsMade(const site::CordMake& make, tables::Laying laying, double turns) {
  const tables::CordType* type = tables::cordType(make.type);
  physics::CordSection section{sizeOf(make)};
  section.conductors = conductorsOf(make);
  section.family = type != nullptr ? type->family : tables::CordFamily::Hard;
  section.laying = laying;
  section.turns = turns;
  return section;
}

units::ResistancePerLength reactanceOf(const units::WireSize& size) {
  const auto printed = tables::reactance60Hz(size, tables::Conduit::Pvc);
  return printed ? printed->value : tables::cordReactance60Hz(size).value;
}

template <class Resistance>
LinearResistance lineThrough(Resistance resistance) {
  constexpr double kSpanK = 100.0;
  const double at20 = resistance(units::Temperature::fromCelsius(20.0));
  return {at20, (resistance(units::Temperature::fromCelsius(20.0 + kSpanK)) - at20) / kSpanK};
}

}  // namespace

physics::CordSection sectionOf(const site::CordMake& make, const site::LayingOfCord& laying) {
  physics::CordSection section = sectionAsMade(make, laying.laying, laying.turns);
  section.lossScale = lossScaleOf(make);
  return section;
}

double lossScaleOf(const site::CordMake& make) {
  if (!make.jacketReading) return 1.0;
  const site::JacketReading& reading = *make.jacketReading;
  if (!(reading.current > 0.0 * ampere) || reading.surface <= reading.air) return 1.0;
  return physics::lossScaleFrom(sectionAsMade(make, reading.laying, reading.turns), reading.current, reading.air,
                                reading.surface);
}

bool isAtEnd(double lossScale) {
  constexpr double kClose = 1e-5;
  return lossScale <= physics::leastLossScale() + kClose || lossScale >= physics::mostLossScale() - kClose;
}

RunHeat::RunHeat(const Inputs& inputs)
    : m_wall(inputs.wall),
      m_riseKPerA2(
          (physics::buildingWireTemperature(inputs.size, inputs.metal, 1.0 * ampere, inputs.wall, inputs.insulation) -
           inputs.wall)
              .si()),
      m_ohm(lineThrough([&](units::Temperature at) {
        return (physics::wireResistance(inputs.size, inputs.metal, physics::WireUse::Building, at) * inputs.length)
            .in(ohm);
      })),
      m_reactanceOhm((reactanceOf(inputs.size) * inputs.length).in(ohm)) {}

units::Temperature RunHeat::temperatureAt(double rmsA) const {
  return std::min(physics::beyondModelTemperature(), m_wall + m_riseKPerA2 * rmsA * rmsA * units::kelvin);
}

std::complex<double> RunHeat::ohmAt(double rmsA) const { return {m_ohm.at(temperatureAt(rmsA)), m_reactanceOhm}; }

network::Branch RunHeat::warm(double poleRmsA, double neutralRmsA) const {
  return {ohmAt(poleRmsA), ohmAt(neutralRmsA)};
}

CordHeat::CordHeat(const Inputs& inputs)
    : m_section(sectionOf(inputs.make, inputs.laying)),
      m_corner(heatCorner(inputs.corner)),
      m_worst(physics::ladderOf(m_section, m_corner)),
      m_rest(m_worst),
      m_room(inputs.room),
      m_ohmPerMetre(lineThrough(
          [&](units::Temperature at) { return physics::cordResistance(m_section.size, at).in(ohmPerMetre); })) {
  const units::Length whole = moreIsWorse(lengthOf(inputs.make), inputs.corner);
  const units::Length worst = std::min(whole, inputs.laying.affected.value_or(whole));
  if (worst < whole) {
    physics::CordSection onFloor = m_section;
    onFloor.laying = tables::Laying::Floor;
    m_rest = physics::ladderOf(onFloor, m_corner);
  }
  m_worstLengthM = worst.in(metre);
  m_restLengthM = (whole - worst).in(metre);
  m_reactanceOhm = (tables::cordReactance60Hz(m_section.size).value * whole).in(ohm);
  const auto contact = inputs.looseContact ? physics::ContactClass::Worn : physics::ContactClass::Healthy;
  m_contacts = physics::contactsOf(contact, inputs.looseContact ? m_corner : physics::Corner::Likely);
}

double CordHeat::ohmPerMetreAt(const physics::CordLadder& ladder, double rmsA) const {
  const auto heat = physics::steadyOf(ladder, rmsA * ampere, m_room);
  return m_ohmPerMetre.at(heat ? heat->conductor : physics::beyondModelTemperature());
}

network::Branch CordHeat::warm(double poleRmsA, double neutralRmsA) const {
  const double rmsA = std::max(poleRmsA, neutralRmsA);
  double resistanceOhm = m_worstLengthM * ohmPerMetreAt(m_worst, rmsA);
  if (isPartly()) resistanceOhm += m_restLengthM * ohmPerMetreAt(m_rest, rmsA);
  return behindContacts(resistanceOhm, poleRmsA, neutralRmsA);
}

network::Branch CordHeat::at(units::Temperature worst, units::Temperature rest) const {
  return behindContacts(m_worstLengthM * m_ohmPerMetre.at(worst) + m_restLengthM * m_ohmPerMetre.at(rest), 0.0, 0.0);
}

network::Branch CordHeat::behindContacts(double conductorOhm, double poleRmsA, double neutralRmsA) const {
  const double lineOhm = physics::resistanceAt(m_contacts.line, poleRmsA * ampere).in(ohm);
  const double neutralOhm = physics::resistanceAt(m_contacts.neutral, neutralRmsA * ampere).in(ohm);
  return {network::Phasor{conductorOhm + lineOhm, m_reactanceOhm},
          network::Phasor{conductorOhm + neutralOhm, m_reactanceOhm}};
}

// Heat stored over heat given off is the time constant; eight of them leave 0.03 % of the rise.
bool CordHeat::isAtRestAfter(units::Duration run, units::Current rms) const {
  const auto rest = physics::steadyOf(m_worst, rms, m_room);
  if (!rest) return false;
  const double copperOhmPerM = m_worst.ohmPerM20 * (1.0 + m_worst.alphaPerK * (rest->conductor.celsius() - 20.0));
  const double heatWPerM = rms.si() * rms.si() * copperOhmPerM;
  if (heatWPerM <= 0.0) return true;
  const double capacityJPerMK = m_worst.capacityJPerMK[0] + m_worst.capacityJPerMK[1] + m_worst.capacityJPerMK[2];
  constexpr double kTimeConstants = 8.0;
  return run.si() > kTimeConstants * capacityJPerMK * (rest->conductor - m_room).si() / heatWPerM;
}

std::optional<physics::HeatResult> CordHeat::after(units::Current rms, units::Duration run) const {
  const auto known = std::find_if(m_asked.begin(), m_asked.end(),
                                  [&](const Asked& asked) { return asked.rms == rms && asked.run == run; });
  if (known != m_asked.end()) return known->result;
  return m_asked.emplace_back(Asked{rms, run, heated(rms, run)}).result;
}

std::optional<physics::HeatResult> CordHeat::heated(units::Current rms, units::Duration run) const {
  if (isAtRestAfter(run, rms)) return physics::steady(m_section, rms, m_room, m_corner);
  physics::CordTransient transient(m_section, m_room, m_corner);
  transient.advance(rms, run);
  return transient.beyondModel() ? std::nullopt : std::optional(transient.now());
}

std::optional<units::Duration> CordHeat::timeTo(units::Temperature limit, units::Current rms,
                                                units::Duration run) const {
  const auto rest = physics::steady(m_section, rms, m_room, m_corner);
  if (rest && rest->conductor <= limit) return std::nullopt;
  return physics::CordTransient(m_section, m_room, m_corner).timeToReach(limit, rms, run);
}

}  // namespace cordreach::study
