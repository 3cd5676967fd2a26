// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of thing a site holds, each with its key in the file, and which kind an id points to.
#pragma once

#include <string_view>

#include "site/site.h"

namespace cordreach::site {

// The file's array of that kind; also the word for the kind in errors and edits.
template <class T>
inline constexpr std::string_view kKindKey = "";
template <>
inline constexpr std::string_view kKindKey<Supply> = "supplies";
template <>
inline constexpr std::string_view kKindKey<Panel> = "panels";
template <>
inline constexpr std::string_view kKindKey<Circuit> = "circuits";
template <>
inline constexpr std::string_view kKindKey<Floor> = "floors";
template <>
inline constexpr std::string_view kKindKey<Room> = "rooms";
template <>
inline constexpr std::string_view kKindKey<Outlet> = "outlets";
template <>
inline constexpr std::string_view kKindKey<Run> = "runs";
template <>
inline constexpr std::string_view kKindKey<FixedLoad> = "loads";
template <>
inline constexpr std::string_view kKindKey<Machine> = "machines";
template <>
inline constexpr std::string_view kKindKey<Cord> = "cords";
template <>
inline constexpr std::string_view kKindKey<Pad> = "pads";
template <>
inline constexpr std::string_view kKindKey<Hookup> = "hookups";
template <>
inline constexpr std::string_view kKindKey<ExtensionUse> = "extensions";
template <>
inline constexpr std::string_view kKindKey<Event> = "events";
template <>
inline constexpr std::string_view kKindKey<Acceptance> = "accepted";
template <>
inline constexpr std::string_view kKindKey<HistoryEntry> = "history";

// Calls `visit.template operator()<T>()` for each kind, in the order of the file.
template <class Visit>
void forEachKind(Visit&& visit) {
  visit.template operator()<Supply>();
  visit.template operator()<Panel>();
  visit.template operator()<Circuit>();
  visit.template operator()<Floor>();
  visit.template operator()<Room>();
  visit.template operator()<Outlet>();
  visit.template operator()<Run>();
  visit.template operator()<FixedLoad>();
  visit.template operator()<Machine>();
  visit.template operator()<Cord>();
  visit.template operator()<Pad>();
  visit.template operator()<Hookup>();
  visit.template operator()<ExtensionUse>();
  visit.template operator()<Event>();
  visit.template operator()<Acceptance>();
  visit.template operator()<HistoryEntry>();
}

template <class Id>
struct ThingOf;
template <>
struct ThingOf<SupplyId> {
  using Type = Supply;
};
template <>
struct ThingOf<PanelId> {
  using Type = Panel;
};
template <>
struct ThingOf<CircuitId> {
  using Type = Circuit;
};
template <>
struct ThingOf<FloorId> {
  using Type = Floor;
};
template <>
struct ThingOf<OutletId> {
  using Type = Outlet;
};
template <>
struct ThingOf<MachineId> {
  using Type = Machine;
};
template <>
struct ThingOf<CordId> {
  using Type = Cord;
};
template <>
struct ThingOf<PadId> {
  using Type = Pad;
};
template <>
struct ThingOf<FixedLoadId> {
  using Type = FixedLoad;
};
template <>
struct ThingOf<HookupId> {
  using Type = Hookup;
};
template <>
struct ThingOf<ExtensionUseId> {
  using Type = ExtensionUse;
};

}  // namespace cordreach::site
