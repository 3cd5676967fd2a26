// SPDX-License-Identifier: GPL-3.0-or-later
// Where power comes from, and the panels and circuits that share it out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/extra.h"
#include "site/ids.h"
#include "site/known.h"
#include "site/place.h"
#include "tables/conductor_metal.h"
#include "units/quantity.h"
#include "units/temperature.h"
#include "units/wire_size.h"

namespace cordreach::site {

enum class WiringSystem { SplitPhase120, Wye208, Single120, Single230, Wye400 };
enum class SupplyKindOfSource { Utility, Generator, Inverter };

struct Supply {
  SupplyId id;
  std::string name{};
  SupplyKindOfSource source = SupplyKindOfSource::Utility;
  WiringSystem system = WiringSystem::SplitPhase120;
  Known<units::Resistance> loopImpedance{};  // line to neutral, there and back, up to the panel
  Known<units::Voltage> openCircuit{};       // line to neutral
  Known<units::Current> currentLimit{};      // of a source that limits its own current
  Extra extra{};

  friend bool operator==(const Supply&, const Supply&) = default;
};

struct Panel {
  PanelId id;
  std::string name{};
  std::optional<SupplyId> supply{};  // this or fedFrom
  std::optional<PanelId> fedFrom{};
  Known<units::Length> feederLength{};
  Known<units::WireSize> feederSize{};
  std::optional<Place> place{};
  std::string room{};
  std::string keyHolder{};
  std::string hours{};
  std::string owner{};                 // whose power it is
  std::string call{};                  // whom to call
  Known<units::Current> mainRating{};  // of its main breaker
  Known<int> spaces{};                 // places for a pole, used or not
  Extra extra{};

  friend bool operator==(const Panel&, const Panel&) = default;
};

enum class BreakerCurve { ThermalMagnetic, IecB, IecC, IecD, Fuse };
enum class UseClass { Ordinary, AskFirst, Never };
using tables::Metal;

// One breaker pole group and the wire behind it.
struct Circuit {
  CircuitId id;
  PanelId panel;
  std::string number{};               // as on the panel: "5", "1/3"
  std::vector<std::size_t> phases{};  // of the panel, 0 = A; one entry a pole
  std::string purpose{};
  Known<units::Current> rating{};
  BreakerCurve curve = BreakerCurve::ThermalMagnetic;
  bool groundFault = false;  // ground-fault breaker
  bool arcFault = false;
  bool mayNotTrip = false;  // old or damaged: not to be relied on
  bool tied = false;        // its handles, or its handle and those it shares a neutral with, move together
  bool tandem = false;      // two breakers in one space
  bool spare = false;       // a breaker that feeds nothing
  UseClass use = UseClass::Ordinary;
  std::string askWhom{};                       // of an ask-first circuit
  std::vector<CircuitId> sharesNeutralWith{};  // a multiwire circuit: the others of the group
  Known<units::WireSize> size{};
  Metal metal = Metal::Copper;
  Known<units::Temperature> insulation{};  // rating of the building wire
  Extra extra{};

  friend bool operator==(const Circuit&, const Circuit&) = default;
};

}  // namespace cordreach::site
