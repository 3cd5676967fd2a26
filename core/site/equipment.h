// SPDX-License-Identifier: GPL-3.0-or-later
// What the crew carries: machines with their supply cords, extension cords, pads.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/extra.h"
#include "site/ids.h"
#include "site/known.h"
#include "site/place.h"
#include "tables/laying.h"
#include "tables/load_class.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::site {

struct OutOfService {
  std::string reason{};
  std::string who{};
  std::string when{};

  friend bool operator==(const OutOfService&, const OutOfService&) = default;
};

enum class Pin { Present, Missing, NotNeeded };  // not needed: two-wire cord of a double-insulated machine

// A jacket's temperature as measured once the cord had warmed through: sets how well it gives off its heat.
struct JacketReading {
  units::Temperature surface = units::Temperature::fromCelsius(25.0);
  units::Temperature air = units::Temperature::fromCelsius(25.0);
  units::Current current{};
  tables::Laying laying = tables::Laying::Floor;
  double turns = 0.0;  // of a coil; layers of a reel

  friend bool operator==(const JacketReading&, const JacketReading&) = default;
};

// The copper between a plug and what hangs on it; of a machine's own cord and of an extension alike.
struct CordMake {
  std::string legend{};  // what is printed on the jacket, as read
  std::string type{};    // its letters: "SJTW"; empty: unknown
  Known<units::WireSize> size{};
  Known<int> conductors{};  // with the earth: 3
  Known<units::Length> length{};
  Known<units::Temperature> rating{};  // absent: 60 °C
  std::string plug{};                  // key of the receptacle table: "5-15"; empty: unknown
  Pin pin = Pin::Present;
  bool groundFaultDevice = false;  // in line, at the plug
  bool printReadable = true;
  std::optional<JacketReading> jacketReading{};

  friend bool operator==(const CordMake&, const CordMake&) = default;
};

struct Inlet {
  std::string name{};  // "A"
  tables::LoadClass loadClass = tables::LoadClass::Induction;
  Known<units::Voltage> plateVoltage{};
  Known<units::Current> plate{};
  Known<units::Current> running{};      // when it draws other than its plate
  Known<units::Current> idle{};         // with its pad off the floor
  Known<units::Current> lockedRotor{};  // at plate volts
  std::string codeLetter{};             // of locked-rotor kVA per horsepower
  CordMake cord{};
  Extra extra{};

  friend bool operator==(const Inlet&, const Inlet&) = default;
};

struct Machine {
  MachineId id;
  std::string name{};
  std::string kind{};  // key of the machine kinds: "burnisher", "slow-machine", "vacuum-upright", ...
  std::vector<Inlet> inlets{};
  Known<units::Power> shaftPower{};
  Known<units::Frequency> speed{};  // of the pad; revolutions per second
  Known<double> inertiaKgM2{};      // of all that turns, at the pad's speed
  Known<units::Force> headForce{};  // with which the pad is pressed on the floor
  Known<units::Current> leakage{};  // to earth
  std::optional<PadId> pad{};
  bool doubleInsulated = false;
  bool wet = false;
  std::vector<std::string> sockets{};  // pass-through sockets: receptacle keys
  std::optional<OutOfService> outOfService{};
  std::optional<Place> place{};
  Extra extra{};

  friend bool operator==(const Machine&, const Machine&) = default;
};

struct Cord {
  CordId id;
  std::string label{};
  CordMake make{};
  Known<units::Current> tag{};         // the ampere rating on its tag
  std::vector<std::string> sockets{};  // receptacle keys, one a socket
  std::optional<OutOfService> outOfService{};
  Extra extra{};

  friend bool operator==(const Cord&, const Cord&) = default;
};

// Which machines a pad is made for.
enum class PadFamily { Unknown, SlowSpeed, SprayBuff, Burnish };
enum class PadCondition { Sound, Worn, Loaded };  // loaded: full of what it has taken off the floor

struct Pad {
  PadId id;
  std::string name{};
  PadFamily family = PadFamily::Unknown;
  PadCondition condition = PadCondition::Sound;
  bool offCentre = false;
  Known<units::Length> diameter{};
  Known<double> friction{};  // of the pad on this building's floors
  Known<units::Frequency> ratedSpeed{};
  Known<double> dragFactor{};  // torque against the machine's usual pad
  Extra extra{};

  friend bool operator==(const Pad&, const Pad&) = default;
};

}  // namespace cordreach::site
