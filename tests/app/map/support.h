// SPDX-License-Identifier: GPL-3.0-or-later
// The demo building, for tests of the map.
#pragma once

#include "io/site_file.h"

namespace cordreach::test {

inline site::Site demoSite() { return io::loadSite("resources/demo/building.json").value(); }

}  // namespace cordreach::test
