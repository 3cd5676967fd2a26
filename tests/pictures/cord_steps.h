// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of docs/guide/cord.md: a cord asked for, input by input.
#pragma once

#include <QString>

#include "look/settings.h"

namespace cordreach::guide {

[[nodiscard]] bool drawCordSteps(const QString& folder, look::Ground ground);

}  // namespace cordreach::guide
