// SPDX-License-Identifier: GPL-3.0-or-later
// Tabs as an index at the edge of the sheet: words, of which the one that is shown is underlined in ink.
#pragma once

#include <QString>
#include <functional>

class QTabBar;
class QWidget;

namespace cordreach::app {

[[nodiscard]] QTabBar* flatTabs(QWidget* parent);

// Ctrl and Page Down go to the next tab, with Page Up to the one before, from anywhere within; then `after`.
void stepByKeys(QTabBar* tabs, QWidget* within, std::function<void()> after);

// In the present colours; to be set again when they change. `edge` is where the line stands: "bottom", "right".
[[nodiscard]] QString flatTabStyle(const char* edge = "bottom");

}  // namespace cordreach::app
