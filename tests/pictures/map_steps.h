// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of docs/guide/map.md: a floor mapped from nothing, step by step.
#pragma once

#include <QString>

#include "look/settings.h"

namespace cordreach::guide {

[[nodiscard]] bool drawMapSteps(const QString& folder, look::Ground ground);

}  // namespace cordreach::guide
