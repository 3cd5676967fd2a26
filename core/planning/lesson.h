// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson on warm cords: what a class watches side by side, and what it may be asked. Every side is a whole small
// building, so that what the class sees and what the program would say of such a building are the same.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/finding.h"
#include "site/site.h"
#include "study/answer.h"
#include "study/demonstration.h"
#include "units/quantity.h"
#include "units/wire_size.h"

namespace cordreach::planning {

// Everything that one side of a demonstration depends on: an outlet of a 120 V circuit, a cord, a machine.
struct LessonCase {
  std::string name{};  // in the lesson's words; empty: called by its cord and how that lies
  site::CordMake cord{};
  site::LayingOfCord laying{};
  site::Machine machine{.id = site::MachineId("machine")};  // with one inlet
  std::optional<site::Pad> pad{};                           // on the machine
  units::Current breaker = 20.0 * units::ampere;
  units::Length run = 18.0 * units::metre;  // panel to outlet
  units::WireSize runSize = units::WireSize::awg(12);
  site::Known<units::Voltage> supply{};    // open-circuit, line to neutral; absent: nominal
  site::Known<units::Temperature> room{};  // absent: 25 °C
  bool looseOutlet = false;                // its contacts no longer grip
  std::optional<units::Current> shared{};  // what something else on the circuit draws all the time
  std::string sharedName{};

  friend bool operator==(const LessonCase&, const LessonCase&) = default;
};

struct LessonStep {
  std::string text;
  std::optional<units::Duration> at{};  // where the clock then stands
  std::optional<std::size_t> a{};       // which sides are then shown, indices in `sides`; none: as they are
  std::optional<std::size_t> b{};

  friend bool operator==(const LessonStep&, const LessonStep&) = default;
};

struct LessonAnswer {
  std::string text;
  bool right = false;

  friend bool operator==(const LessonAnswer&, const LessonAnswer&) = default;
};

struct LessonQuestion {
  std::string text;
  std::vector<LessonAnswer> answers;
  std::string because;  // said after any answer

  friend bool operator==(const LessonQuestion&, const LessonQuestion&) = default;
};

struct Lesson {
  std::string title{};
  std::string watch{};  // what to watch for
  std::string shows{};  // what it shows
  units::Duration run = 2.0 * units::hour;
  std::vector<LessonCase> sides{};  // 2 or more; the first two are shown at first
  std::vector<LessonStep> steps{};
  std::optional<LessonQuestion> question{};

  friend bool operator==(const Lesson&, const Lesson&) = default;
};

// The side as a building, its cord called by that label.
[[nodiscard]] site::Site lessonSite(const LessonCase& side, const std::string& label);
// Of the one machine in it.
[[nodiscard]] const site::HookupId& lessonHookup();

// What the rules say of that building, as `assess` would.
struct LessonVerdict {
  site::Site site;
  study::Answer answer;
  std::vector<rules::Finding> findings;  // worst first
  rules::Severity severity;              // of the machine's hookup
};
[[nodiscard]] LessonVerdict judgeLesson(const LessonCase& side, const std::string& label);

[[nodiscard]] study::Demonstration demonstrateLesson(const LessonCase& side, units::Duration run);

}  // namespace cordreach::planning
