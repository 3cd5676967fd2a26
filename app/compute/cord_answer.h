// SPDX-License-Identifier: GPL-3.0-or-later
// One numbered answer to one question about a cord: the advice, and the field of gauges against lengths around it.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "base/progress.h"
#include "planning/cord_choice.h"
#include "planning/cord_instead.h"
#include "site/site.h"

namespace cordreach::app {

struct CordAsked {
  planning::CordQuestion question;         // its pointers lead into `site`
  std::shared_ptr<const site::Site> site;  // kept alive as long as anybody holds the answer
  std::optional<site::Place> work;         // where the machine works; none: another outlet is not looked for
};

// Gauges against lengths, lightest first, then shortest, as common stock would be.
struct CordGrid {
  std::vector<units::WireSize> sizes;
  std::vector<units::Length> lengths;
  std::vector<planning::CordCandidate> cells;  // row by row; fewer while they are still being worked out

  [[nodiscard]] const planning::CordCandidate* at(std::size_t row, std::size_t column) const;
};

struct CordAnswer {
  std::uint64_t number = 0;
  CordAsked asked;
  planning::CordAdvice advice;
  std::optional<planning::CordInstead> instead;
  CordGrid grid;
  bool whole = false;  // the grid is there
};

// 18 to 10 AWG against 25 to 200 ft.
[[nodiscard]] CordGrid emptyGrid();

// What was judged last, kept for questions that differ in their distance only.
class CordMemory {
 public:
  // The advice; what it is made from is kept.
  [[nodiscard]] planning::CordAdvice advise(const CordAsked& asked, const base::Progress& progress);
  [[nodiscard]] CordGrid grid(const CordAsked& asked, const base::Progress& progress);

 private:
  void forgetUnless(const CordAsked& asked);
  [[nodiscard]] std::optional<planning::CordCandidate> judgedBefore(const units::WireSize& size,
                                                                    units::Length length) const;

  std::optional<CordAsked> m_asked;
  std::optional<std::vector<planning::CordCandidate>> m_cords;
  std::optional<CordGrid> m_grid;
};

}  // namespace cordreach::app
