// SPDX-License-Identifier: GPL-3.0-or-later
// A finding's numbers, one click deeper: figures with their bands, shares, the source of the limit and how sure it is.
#pragma once

#include <string>
#include <vector>

#include "compute/verdict.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct DetailLine {
  std::string label;
  std::string value;
  std::string band{};  // "103 V to 112 V"; empty: none
};

struct DetailGroup {
  std::string title;
  std::vector<DetailLine> lines;
};

[[nodiscard]] std::vector<DetailGroup> detailsOf(const Verdict& verdict, std::size_t finding,
                                                 const text::Phrasebook& book);

}  // namespace cordreach::app
