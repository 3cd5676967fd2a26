// SPDX-License-Identifier: GPL-3.0-or-later
// Habits that every source file keeps: its size, its licence line, nothing unfinished, nothing of one machine.
#pragma once

#include <string>
#include <vector>

#include "architecture/source_tree.h"

namespace cordreach::architecture {

inline constexpr int kMostLines = 400;

std::vector<std::string> sizeFaults(const SourceFile& file);

// The licence's tag in the first line, or in the second after a script's #! line.
std::vector<std::string> licenceFaults(const SourceFile& file);

// Words that say "unfinished", and ways of switching a test off.
std::vector<std::string> unfinishedFaults(const SourceFile& file);

// Absolute paths that exist on one machine only.
std::vector<std::string> machinePathFaults(const SourceFile& file);

}  // namespace cordreach::architecture
