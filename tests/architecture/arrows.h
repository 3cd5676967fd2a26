// SPDX-License-Identifier: GPL-3.0-or-later
// The table of who may use whom, and the check of one file's includes against it. There are no exemptions.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "architecture/source_tree.h"

namespace cordreach::architecture {

// Each room of core/ with the rooms that it names; what those may use, it may use too.
const std::map<std::string, std::set<std::string>>& arrows();

// The room itself and everything that it reaches.
std::set<std::string> reachedFrom(const std::string& room);

// What is wrong with the includes of a file under core/ or app/, one sentence each; empty is good.
std::vector<std::string> includeFaults(const SourceFile& file);

}  // namespace cordreach::architecture
