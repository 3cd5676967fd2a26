// SPDX-License-Identifier: GPL-3.0-or-later
// The arrows of undo and redo, drawn in the present ink.
#pragma once

#include <QIcon>

namespace cordreach::app {

[[nodiscard]] QIcon arrowIcon(bool forward);

}  // namespace cordreach::app
