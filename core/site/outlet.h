// SPDX-License-Identifier: GPL-3.0-or-later
// Outlets with their contacts, the runs of wire between them, and the loads that stay put.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/extra.h"
#include "site/hours.h"
#include "site/ids.h"
#include "site/known.h"
#include "site/place.h"
#include "site/supply.h"
#include "tables/load_class.h"

namespace cordreach::site {

enum class HowKnown { Traced, Assumed, Directory };

// Of the receptacle's face, where a building gives colours a meaning.
enum class FaceColour { Unknown, White, Ivory, Grey, Brown, Black, Red, Orange, Blue, Green };

// Which breaker feeds a contact, and how sure that is.
struct Assignment {
  CircuitId circuit;
  HowKnown how = HowKnown::Assumed;
  std::string who{};
  std::string when{};

  friend bool operator==(const Assignment&, const Assignment&) = default;
};

struct Contact {
  std::string name{};                      // "upper", "lower", "left", "right", "single"
  std::optional<Assignment> assignment{};  // none: breaker unknown
  std::string directory{};                 // what the old directory says, kept verbatim
  std::string receptacle{};                // key of the receptacle table, "5-20"; empty: unknown
  bool switched = false;
  std::optional<Hours> poweredHours{};  // controlled by hours: power only then
  bool dead = false;
  bool loose = false;
  bool blocked = false;
  bool lockedCover = false;
  std::string keyHolder{};  // of the locked cover
  FaceColour colour = FaceColour::Unknown;
  UseClass use = UseClass::Ordinary;  // what its colour or label says; the stricter of this and its circuit's counts
  std::vector<std::size_t> poles{};   // of its circuit's phases, those it is across; empty: all; one: that to neutral
  Extra extra{};

  friend bool operator==(const Contact&, const Contact&) = default;
};

struct Outlet {
  OutletId id;
  std::string label{};  // what stands on it: "1-13"
  std::optional<Place> place{};
  Known<units::Length> height{};
  std::string room{};
  std::string wall{};
  std::vector<Contact> contacts{};  // one: a single receptacle; two: a duplex
  bool floorBox = false;
  bool groundFaultDevice = false;  // a ground-fault receptacle: protects itself and what its circuit feeds beyond
  Extra extra{};

  friend bool operator==(const Outlet&, const Outlet&) = default;
};

// Wire from the panel or an outlet to the next outlet of a circuit.
struct Run {
  RunId id;
  CircuitId circuit;
  std::optional<OutletId> from{};  // none: from the panel
  OutletId to;
  Known<units::Length> length{};
  Known<units::WireSize> size{};  // absent: the circuit's
  std::vector<geometry::Point> path{};
  Known<units::Length> drops{};  // what goes up and down besides the drawn way
  std::string cable{};           // its type, as printed: "MC", "NM-B", "THHN"
  std::string raceway{};         // what it runs in
  Extra extra{};

  friend bool operator==(const Run&, const Run&) = default;
};

struct Cycle {
  units::Duration on{};
  units::Duration off{};
  std::optional<units::Duration> firstOn{};  // a time of day at which it comes on; none: nobody knows

  [[nodiscard]] double onFraction() const { return on / (on + off); }
  friend bool operator==(const Cycle&, const Cycle&) = default;
};

// A battery charger: its plate's amps for a while, then less and less.
struct Charge {
  units::Duration constant{};
  units::Duration taper{};  // from there down to a twentieth

  friend bool operator==(const Charge&, const Charge&) = default;
};

struct FixedLoad {
  FixedLoadId id;
  std::string name{};
  CircuitId circuit;
  std::optional<OutletId> outlet{};  // where it is plugged in or wired; none: at the circuit's end
  std::string contact{};             // empty: wired
  tables::LoadClass loadClass = tables::LoadClass::Resistance;
  Known<units::Current> plate{};
  Known<units::Current> running{};  // what it really draws; absent: typical of its kind, or the plate
  Known<units::Current> leakage{};  // to earth
  std::optional<Cycle> cycle{};
  std::optional<Charge> charge{};  // begins with its hours
  std::optional<Hours> hours{};    // none: always
  bool off = false;
  std::optional<Place> place{};
  Extra extra{};

  friend bool operator==(const FixedLoad&, const FixedLoad&) = default;
};

}  // namespace cordreach::site
