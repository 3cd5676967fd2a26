// SPDX-License-Identifier: GPL-3.0-or-later
// Panels that feed one another share their volts and are studied together; others are not.
#pragma once

#include <map>
#include <set>

#include "site/site.h"

namespace cordreach::study {

// By the panel that is fed from a supply.
using PanelFamilies = std::map<site::PanelId, std::set<site::PanelId>>;
[[nodiscard]] PanelFamilies panelFamiliesOf(const site::Site& site);

[[nodiscard]] std::set<site::PanelId> panelFamilyOf(const site::Site& site, const site::PanelId& member);

}  // namespace cordreach::study
