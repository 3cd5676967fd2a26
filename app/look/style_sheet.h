// SPDX-License-Identifier: GPL-3.0-or-later
// What a palette can't say about plain controls: outlines, radii, focus rings.
#pragma once

#include <QString>

#include "look/tokens.h"

namespace cordreach::look {

[[nodiscard]] QString styleSheet(const Tokens& tokens, double textScale);

}  // namespace cordreach::look
