// SPDX-License-Identifier: GPL-3.0-or-later
// What the tables allow for the things of a site. None where the thing is not known well enough to say.
#pragma once

#include <optional>
#include <string>

#include "site/equipment.h"
#include "site/supply.h"
#include "units/quantity.h"

namespace cordreach::rules {

// Of a plug or a receptacle by its key, "5-15".
[[nodiscard]] std::optional<units::Current> receptacleRating(const std::string& key);

// NEC Table 400.5(A)(1) for the cord's conductors, or IEC for a metric size, with the ambient factor of its own rating,
// never above 1.00 and 0 in air as hot as the cord may get. An unknown size counts as the thinnest plausible.
[[nodiscard]] std::optional<units::Current> cordAmpacity(const site::CordMake& make, units::Temperature room);

// NEC 240.4(D), and for larger or metric wire its ampacity (60 °C, IEC method B2) rounded up to a standard device.
[[nodiscard]] std::optional<units::Current> largestDevice(const units::WireSize& size, site::Metal metal);

}  // namespace cordreach::rules
