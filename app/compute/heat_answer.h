// SPDX-License-Identifier: GPL-3.0-or-later
// One side of a lesson worked out: its verdict by the same rules as for any building, its course from cold, and what
// its cord would come to on the floor. What was worked out last is kept, because a class goes back and forth.
#pragma once

#include <array>
#include <cstdint>
#include <list>
#include <memory>
#include <optional>
#include <string>

#include "base/progress.h"
#include "planning/lesson.h"

namespace cordreach::app {

inline constexpr std::size_t kSides = 2;  // A and B

// "A", "B".
[[nodiscard]] std::string sideLetterOf(std::size_t side);

struct HeatSide {
  planning::LessonCase setup;
  planning::LessonVerdict verdict;
  study::Demonstration demonstration;
  std::optional<units::Temperature> laidOut{};  // inside, on the floor; none: it lies well, or that would not help
};

struct HeatAsked {
  std::array<planning::LessonCase, kSides> setups;
  units::Duration run;
};

struct HeatAnswer {
  std::uint64_t number = 0;
  std::array<std::shared_ptr<const HeatSide>, kSides> sides;
};

class HeatMemory {
 public:
  // None: stopped on the way.
  [[nodiscard]] std::optional<HeatAnswer> answer(const HeatAsked& asked, const base::Progress& progress);

 private:
  struct Kept {
    std::size_t side;
    units::Duration run;
    std::shared_ptr<const HeatSide> worked;
  };
  [[nodiscard]] std::shared_ptr<const HeatSide> find(std::size_t side, const HeatAsked& asked);

  std::list<Kept> m_kept;  // newest first
};

// The same on the floor, where that is another way to lie and this one asks for caution.
[[nodiscard]] std::optional<planning::LessonCase> laidOutOf(const planning::LessonCase& setup,
                                                            const planning::LessonVerdict& verdict);

}  // namespace cordreach::app
