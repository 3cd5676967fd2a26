// SPDX-License-Identifier: GPL-3.0-or-later
// What a file of this version held beyond what this program knows: kept and written again.
#pragma once

#include <map>
#include <string>

namespace cordreach::site {

using Extra = std::map<std::string, std::string>;  // key to its JSON text

}  // namespace cordreach::site
