// SPDX-License-Identifier: GPL-3.0-or-later
// How a wire size stands in the ids of table rows: `14`, `1/0`, `2.5mm2`.
#pragma once

#include <string>

#include "units/wire_size.h"

namespace cordreach::tables {

[[nodiscard]] std::string sizeKey(const units::WireSize& size);

}  // namespace cordreach::tables
