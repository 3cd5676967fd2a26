// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/contour.h"

#include <array>
#include <cstddef>
#include <unordered_map>

namespace cordreach::geometry {

namespace {

// A square between four cell centres. Its sides, clockwise from the top; a side is known to both of its squares by the
// cell at its upper or left end.
enum Side { kTop, kRight, kBottom, kLeft };

class Tracer {
 public:
  Tracer(const WalkField& field, double atMostM) : m_field(field), m_atMostM(atMostM) {}

  std::vector<Outline> trace() {
    for (std::size_t row = 0; row + 1 < m_field.rows(); ++row) {
      for (std::size_t column = 0; column + 1 < m_field.columns(); ++column) addSquare(row, column);
    }
    return joined();
  }

 private:
  struct Step {
    std::size_t to;
    Point at;  // where the side that it begins at is crossed
  };

  [[nodiscard]] bool isIn(std::size_t cell) const {
    const float metres = m_field.metres()[cell];
    return metres >= 0.0F && metres <= m_atMostM;
  }

  // The two cells that a side of the square lies between.
  [[nodiscard]] std::pair<std::size_t, std::size_t> endsOf(std::size_t corner, Side side) const {
    const std::size_t columns = m_field.columns();
    switch (side) {
      case kTop:
        return {corner, corner + 1};
      case kRight:
        return {corner + 1, corner + columns + 1};
      case kBottom:
        return {corner + columns, corner + columns + 1};
      case kLeft:
        break;
    }
    return {corner, corner + columns};
  }

  [[nodiscard]] std::size_t keyOf(std::size_t corner, Side side) const {
    return 2 * endsOf(corner, side).first + (side == kRight || side == kLeft ? 1 : 0);
  }

  [[nodiscard]] Point crossing(std::size_t corner, Side side) const {
    auto [in, out] = endsOf(corner, side);
    if (!isIn(in)) std::swap(in, out);
    const double inM = m_field.metres()[in];
    const double outM = m_field.metres()[out];
    const double share = outM > inM ? (m_atMostM - inM) / (outM - inM) : 0.5;  // not reached at all: a wall
    const Point from = m_field.centreOf(in);
    const Point to = m_field.centreOf(out);
    return {from.xM + share * (to.xM - from.xM), from.yM + share * (to.yM - from.yM)};
  }

  void addStep(std::size_t corner, Side from, Side to) {
    m_steps[keyOf(corner, from)] = {keyOf(corner, to), crossing(corner, from)};
  }

  // Steps keep the inside at their right. Of a saddle both corners are taken as apart: a cord is never said to get
  // through where it may not.
  void addSquare(std::size_t row, std::size_t column) {
    const std::size_t corner = row * m_field.columns() + column;
    const std::array<bool, 4> in{isIn(corner), isIn(corner + 1), isIn(corner + m_field.columns() + 1),
                                 isIn(corner + m_field.columns())};
    for (std::size_t i = 0; i < 4; ++i) {
      if (!in[i] || in[(i + 3) % 4]) continue;  // begins a run of corners that are in
      std::size_t last = i;
      while (in[(last + 1) % 4] && (last + 1) % 4 != i) last = (last + 1) % 4;
      addStep(corner, static_cast<Side>(last), static_cast<Side>((i + 3) % 4));
    }
  }

  std::vector<Outline> joined() {
    std::vector<Outline> outlines;
    while (!m_steps.empty()) {
      Outline outline;
      auto step = m_steps.begin();
      while (step != m_steps.end()) {
        const std::size_t next = step->second.to;
        outline.push_back(step->second.at);
        m_steps.erase(step);
        step = m_steps.find(next);
      }
      outlines.push_back(std::move(outline));
    }
    return outlines;
  }

  const WalkField& m_field;
  double m_atMostM;
  std::unordered_map<std::size_t, Step> m_steps;  // by the side that they begin at
};

}  // namespace

std::vector<Outline> outlinesOf(const WalkField& field, units::Length atMost) {
  return Tracer(field, atMost.in(units::metre)).trace();
}

}  // namespace cordreach::geometry
