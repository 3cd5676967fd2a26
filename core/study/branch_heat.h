// SPDX-License-Identifier: GPL-3.0-or-later
// How the building's wire and the cords of a site warm with the current through them: the site's words for a cord put
// into those of the physics.
#pragma once

#include <complex>
#include <optional>
#include <vector>

#include "physics/contact.h"
#include "physics/cord_heat.h"
#include "physics/cord_ladder.h"
#include "physics/cord_section.h"
#include "site/equipment.h"
#include "site/plan.h"
#include "study/corner.h"
#include "tables/conductor_metal.h"
#include "timeline/settle.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::study {

// Ohms over temperature, a straight line: kept so that warming costs no look-up.
struct LinearResistance {
  double at20;
  double perKelvin;

  [[nodiscard]] double at(units::Temperature temperature) const {
    return at20 + perKelvin * (temperature.celsius() - 20.0);
  }
};

// How well a cord gives off its heat against the model, from a jacket temperature measured on it, 0.6 to 1.5; 1 without
// a reading, or with one of a cord that carried nothing or was no warmer than the air.
[[nodiscard]] double lossScaleOf(const site::CordMake& make);
// A scale at an end of what one reading is believed: it was misread, or the cord is not what it is taken for.
[[nodiscard]] bool isAtEnd(double lossScale);

// A stretch of that cord that lies so, with the scale of its reading.
[[nodiscard]] physics::CordSection sectionOf(const site::CordMake& make, const site::LayingOfCord& laying);

class RunHeat : public timeline::BranchHeat {
 public:
  struct Inputs {
    units::WireSize size;
    tables::Metal metal;
    units::Length length;
    std::optional<units::Temperature> insulation;
    units::Temperature wall;
  };
  explicit RunHeat(const Inputs& inputs);

  [[nodiscard]] network::Branch warm(double poleRmsA, double neutralRmsA) const override;
  [[nodiscard]] units::Temperature temperatureAt(double poleRmsA) const;

 private:
  [[nodiscard]] std::complex<double> ohmAt(double rmsA) const;

  units::Temperature m_wall;
  double m_riseKPerA2;  // the square law of the wall's wire, looked up once
  LinearResistance m_ohm;
  double m_reactanceOhm;
};

class CordHeat : public timeline::BranchHeat {
 public:
  struct Inputs {
    const site::CordMake& make;
    const site::LayingOfCord& laying;
    units::Temperature room;
    Corner corner;
    bool looseContact = false;  // of the socket its plug is in
  };
  explicit CordHeat(const Inputs& inputs);

  [[nodiscard]] network::Branch warm(double poleRmsA, double neutralRmsA) const override;
  // With the conductor that warm where it lies worst, and where it lies on the floor beside that.
  [[nodiscard]] network::Branch at(units::Temperature worst, units::Temperature rest) const;
  // The stretch that lies worst, of the whole cord unless part of it lies on the floor.
  [[nodiscard]] const physics::CordSection& section() const { return m_section; }
  [[nodiscard]] bool isPartly() const { return m_restLengthM > 0.0; }
  // Hottest place after that long; none: beyond the model. Remembers what it was asked, for one thread.
  [[nodiscard]] std::optional<physics::HeatResult> after(units::Current rms, units::Duration run) const;
  // From cold until the conductor reaches that temperature; none: not within that run.
  [[nodiscard]] std::optional<units::Duration> timeTo(units::Temperature limit, units::Current rms,
                                                      units::Duration run) const;

 private:
  // A conductor of that resistance with its contact in front, which offers less once its voltage is held.
  [[nodiscard]] network::Branch behindContacts(double conductorOhm, double poleRmsA, double neutralRmsA) const;
  [[nodiscard]] double ohmPerMetreAt(const physics::CordLadder& ladder, double rmsA) const;
  [[nodiscard]] bool isAtRestAfter(units::Duration run, units::Current rms) const;
  [[nodiscard]] std::optional<physics::HeatResult> heated(units::Current rms, units::Duration run) const;

  struct Asked {
    units::Current rms;
    units::Duration run;
    std::optional<physics::HeatResult> result;
  };

  physics::CordSection m_section;  // its hottest stretch: where it is coiled or covered, if it is
  physics::Corner m_corner;
  physics::CordLadder m_worst;
  physics::CordLadder m_rest;  // of what lies on the floor beside that
  units::Temperature m_room;
  LinearResistance m_ohmPerMetre;
  double m_worstLengthM = 0.0;
  double m_restLengthM = 0.0;
  double m_reactanceOhm = 0.0;
  physics::PlugContacts m_contacts;
  mutable std::vector<Asked> m_asked;
};

}  // namespace cordreach::study
