// SPDX-License-Identifier: GPL-3.0-or-later
// What a widget that we paint ourselves is to a screen reader.
#pragma once

#include <QAccessible>

class QWidget;

namespace cordreach::look {

// Before anybody asks the widget; it keeps its name and its place in the tree.
void setRole(QWidget* widget, QAccessible::Role role);

}  // namespace cordreach::look
