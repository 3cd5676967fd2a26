// SPDX-License-Identifier: GPL-3.0-or-later
// One id type a kind of thing. Ids are short, stable and never reused; they have no null.
#pragma once

#include "base/id.h"

namespace cordreach::site {

using SiteId = base::Id<struct SiteKind>;
using SupplyId = base::Id<struct SupplyKind>;
using PanelId = base::Id<struct PanelKind>;
using CircuitId = base::Id<struct CircuitKind>;
using FloorId = base::Id<struct FloorKind>;
using RoomId = base::Id<struct RoomKind>;
using OutletId = base::Id<struct OutletKind>;
using RunId = base::Id<struct RunKind>;
using FixedLoadId = base::Id<struct FixedLoadKind>;
using MachineId = base::Id<struct MachineKind>;
using CordId = base::Id<struct CordKind>;
using PadId = base::Id<struct PadKind>;
using HookupId = base::Id<struct HookupKind>;
using ExtensionUseId = base::Id<struct ExtensionUseKind>;
using EventId = base::Id<struct EventKindTag>;
using AcceptanceId = base::Id<struct AcceptanceKind>;
using HistoryId = base::Id<struct HistoryKind>;

}  // namespace cordreach::site
