// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/cord_answer.h"

namespace cordreach::app {

const planning::CordCandidate* CordGrid::at(std::size_t row, std::size_t column) const {
  const std::size_t index = row * lengths.size() + column;
  return index < cells.size() ? &cells[index] : nullptr;
}

CordGrid emptyGrid() {
  CordGrid grid;
  for (const int gauge : {18, 16, 14, 12, 10}) grid.sizes.push_back(units::WireSize::awg(gauge));
  for (const double feet : {25.0, 50.0, 75.0, 100.0, 125.0, 150.0, 175.0, 200.0}) {
    grid.lengths.push_back(feet * units::foot);
  }
  return grid;
}

void CordMemory::forgetUnless(const CordAsked& asked) {
  const bool same =
      m_asked && m_asked->site == asked.site && planning::sameButDistance(m_asked->question, asked.question);
  if (!same) {
    m_cords.reset();
    m_grid.reset();
  }
  m_asked = asked;
}

std::optional<planning::CordCandidate> CordMemory::judgedBefore(const units::WireSize& size,
                                                                units::Length length) const {
  for (const planning::CordCandidate& candidate : *m_cords) {
    if (candidate.size == size && candidate.length == length) return candidate;
  }
  return std::nullopt;
}

planning::CordAdvice CordMemory::advise(const CordAsked& asked, const base::Progress& progress) {
  forgetUnless(asked);
  const planning::CordQuestion& question = asked.question;
  if (planning::reaches(question, {})) return planning::adviseFrom(question, {});
  if (!m_cords) {
    auto judged = planning::judgeCords(question, planning::cordsOf(question), progress);
    if (progress.stopRequested()) return planning::adviseFrom(question, judged);
    m_cords = std::move(judged);
  }
  return planning::adviseFrom(question, *m_cords);
}

CordGrid CordMemory::grid(const CordAsked& asked, const base::Progress& progress) {
  forgetUnless(asked);
  if (m_grid) return *m_grid;
  CordGrid grid = emptyGrid();
  planning::CordQuestion stock = asked.question;
  stock.cart = nullptr;
  stock.jacket.reset();
  const bool isStock = asked.question.cart == nullptr && !asked.question.jacket && m_cords;
  for (const units::WireSize& size : grid.sizes) {
    for (const units::Length length : grid.lengths) {
      if (progress.stopRequested()) return grid;
      const auto known = isStock ? judgedBefore(size, length) : std::nullopt;
      const site::Cord cord = planning::stockCord(stock.inlet.cord, size, length);
      grid.cells.push_back(known ? *known : planning::judgeCords(stock, {cord}).front());
    }
  }
  m_grid = grid;
  return grid;
}

}  // namespace cordreach::app
