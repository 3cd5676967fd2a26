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

  friend bool operator==(const CordMake&, const CordMake&) = default;
};

struct Inlet {
  std::string name{};  // "A"
  tables::LoadClass loadClass = tables::LoadClass::Induction;
  Known<units::Voltage> plateVoltage{};
  Known<units::Current> plate{};
  Known<units::Current> running{};  // when it draws other than its plate
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

struct Pad {
  PadId id;
  std::string name{};
  Known<units::Frequency> ratedSpeed{};
  Known<double> dragFactor{};  // torque against the machine's usual pad
  Extra extra{};

  friend bool operator==(const Pad&, const Pad&) = default;
};

}  // namespace cordreach::site
