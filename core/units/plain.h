// SPDX-License-Identifier: GPL-3.0-or-later
// A number as files hold it: shortest text that reads back to the same double, C locale, whatever the user's is.
#pragma once

#include <string>

namespace cordreach::units {

// `value` must be finite. No exponent between 1e-5 and 1e15: 100000, not 1e+05.
[[nodiscard]] std::string plain(double value);

}  // namespace cordreach::units
