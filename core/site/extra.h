// SPDX-License-Identifier: GPL-3.0-or-later
// What a file of this version held beyond what this program knows: kept and written again. A key of the thing itself
// stands as it is; one deeper within (in a thing's place, say) as the JSON pointer that leads there, "/place/colour".
#pragma once

#include <map>
#include <string>

namespace cordreach::site {

using Extra = std::map<std::string, std::string>;  // key or pointer to its JSON text

}  // namespace cordreach::site
