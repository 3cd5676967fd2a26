// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/fault_arc.h"

#include "tables/table.h"

namespace cordreach::physics {

ArcCurrent arcCurrent(units::Current bolted) {
  const auto share = [](const char* id) { return tables::table("fault_constants").at(id).number("value"); };
  return {share("arc.low") * bolted, share("arc.high") * bolted};
}

}  // namespace cordreach::physics
