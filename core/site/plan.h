// SPDX-License-Identifier: GPL-3.0-or-later
// What is planned: which plug goes into which socket, when, and how the cords lie.
#pragma once

#include <optional>
#include <string>
#include <variant>

#include "site/extra.h"
#include "site/hours.h"
#include "site/ids.h"
#include "site/known.h"
#include "site/place.h"
#include "tables/laying.h"
#include "units/quantity.h"

namespace cordreach::site {

struct OutletSocket {
  OutletId outlet;
  std::string contact{};
  friend bool operator==(const OutletSocket&, const OutletSocket&) = default;
};

struct CordSocket {
  CordId cord;
  std::size_t socket = 0;
  friend bool operator==(const CordSocket&, const CordSocket&) = default;
};

struct MachineSocket {
  MachineId machine;
  std::size_t socket = 0;
  friend bool operator==(const MachineSocket&, const MachineSocket&) = default;
};

using Socket = std::variant<OutletSocket, CordSocket, MachineSocket>;

struct LayingOfCord {
  tables::Laying laying = tables::Laying::Floor;
  double turns = 0.0;                       // of a coil; layers of a reel
  std::optional<units::Length> affected{};  // how much of it is coiled or covered; none: all

  friend bool operator==(const LayingOfCord&, const LayingOfCord&) = default;
};

// A machine's plug in a socket.
struct Hookup {
  HookupId id;
  MachineId machine;
  std::string inlet{};
  Socket socket;
  std::optional<Hours> hours{};  // none: always on, judged for two hours
  LayingOfCord ownCord{};
  std::optional<PadId> pad{};    // other than the machine's own
  bool off = false;              // plugged in, switched off
  bool asked = false;            // the asking of an ask-first circuit was done
  std::optional<Place> place{};  // where the machine works
  Extra extra{};

  friend bool operator==(const Hookup&, const Hookup&) = default;
};

// An extension's plug in a socket.
struct ExtensionUse {
  ExtensionUseId id;
  CordId cord;
  Socket socket;
  std::optional<Hours> hours{};  // none: whenever something is plugged into it
  LayingOfCord laying{};
  Extra extra{};

  friend bool operator==(const ExtensionUse&, const ExtensionUse&) = default;
};

// Something that happens at a time of the planned day besides the hours of hookups and loads.
enum class EventKind {
  Start,   // of a hookup that is plugged in
  Stop,    // switched off, still plugged in
  PlugIn,  // of a hookup that was pulled out
  Unplug,
  ChangePad,  // of a hookup
  Lay,        // of an extension or of a hookup's own cord: coiled, uncoiled, covered
  LoadOn,     // of a fixed load: on from here, whatever its cycle
  LoadOff,
  ContactOn,  // of a contact that is switched or controlled
  ContactOff,
};

struct Event {
  EventId id;
  EventKind kind = EventKind::Start;
  units::Duration at{};              // time of the planned day
  std::optional<HookupId> hookup{};  // what it is about: one of these
  std::optional<ExtensionUseId> extension{};
  std::optional<FixedLoadId> load{};
  std::optional<OutletId> outlet{};
  std::string contact{};       // of the outlet
  std::optional<PadId> pad{};  // of a change of pad; none: the machine's own
  LayingOfCord laying{};       // of a Lay
  Extra extra{};

  friend bool operator==(const Event&, const Event&) = default;
};

// A CAUTION taken for this site by a named person.
struct Acceptance {
  AcceptanceId id;
  std::string finding{};  // the finding's code
  std::string subject{};  // id of the finding's first subject
  std::string who{};
  std::string when{};
  std::string reason{};
  Extra extra{};

  friend bool operator==(const Acceptance&, const Acceptance&) = default;
};

// A trace, a reading, a correction, a trip: what was done.
struct HistoryEntry {
  HistoryId id;
  std::string when{};
  std::string who{};
  std::string kind{};
  std::string subject{};
  std::string text{};
  Extra extra{};

  friend bool operator==(const HistoryEntry&, const HistoryEntry&) = default;
};

}  // namespace cordreach::site
