// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/heat_answer.h"

#include <algorithm>

namespace cordreach::app {

namespace {

constexpr std::size_t kMostKept = 24;  // both sides of every pair that a lesson shows, and some tried beside it

HeatSide workOut(const planning::LessonCase& setup, std::size_t side, units::Duration run) {
  const std::string letter = sideLetterOf(side);
  HeatSide worked{setup, planning::judgeLesson(setup, letter), planning::demonstrateLesson(setup, run), {}};
  if (const auto open = laidOutOf(setup, worked.verdict)) {
    const planning::LessonVerdict then = planning::judgeLesson(*open, letter);
    const auto& inside = then.answer.find(planning::lessonHookup())->cords.front().conductor;
    if (inside) worked.laidOut = inside->likely;
  }
  return worked;
}

}  // namespace

std::string sideLetterOf(std::size_t side) { return side == 0 ? "A" : "B"; }

std::optional<planning::LessonCase> laidOutOf(const planning::LessonCase& setup,
                                              const planning::LessonVerdict& verdict) {
  if (verdict.severity < rules::Severity::Caution) return std::nullopt;
  planning::LessonCase open = setup;
  open.laying = {};
  if (open.laying == setup.laying) return std::nullopt;
  return open;
}

std::shared_ptr<const HeatSide> HeatMemory::find(std::size_t side, const HeatAsked& asked) {
  const auto at = std::find_if(m_kept.begin(), m_kept.end(), [&](const Kept& kept) {
    return kept.side == side && kept.run == asked.run && kept.worked->setup == asked.setups.at(side);
  });
  if (at == m_kept.end()) return nullptr;
  m_kept.splice(m_kept.begin(), m_kept, at);
  return m_kept.front().worked;
}

std::optional<HeatAnswer> HeatMemory::answer(const HeatAsked& asked, const base::Progress& progress) {
  HeatAnswer answer;
  for (std::size_t side = 0; side < kSides; ++side) {
    if (progress.stopRequested()) return std::nullopt;
    answer.sides[side] = find(side, asked);
    if (answer.sides[side] != nullptr) continue;
    answer.sides[side] = std::make_shared<const HeatSide>(workOut(asked.setups[side], side, asked.run));
    m_kept.push_front({side, asked.run, answer.sides[side]});
    if (m_kept.size() > kMostKept) m_kept.pop_back();
  }
  return answer;
}

}  // namespace cordreach::app
