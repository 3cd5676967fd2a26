// SPDX-License-Identifier: GPL-3.0-or-later
// The lessons that come with the program, in the order in which they are taught.
#pragma once

#include <vector>

#include "planning/lesson.h"

namespace cordreach::app {

[[nodiscard]] const std::vector<planning::Lesson>& preparedLessons();

}  // namespace cordreach::app
