// SPDX-License-Identifier: GPL-3.0-or-later
// Where a list is too narrow for what is chosen in it, its shorter words stand there instead, if an item has some.
#pragma once

#include <Qt>

namespace cordreach::app {

inline constexpr int kShortWordsRole = Qt::UserRole + 40;

}  // namespace cordreach::app
