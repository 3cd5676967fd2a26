// SPDX-License-Identifier: GPL-3.0-or-later
// How far it is to walk from a place: around walls, through the gaps that doors leave, or along corridor lines.
//   Shortest way over a square grid in sixteen directions (Dijkstra 1959, memory); never shorter than the true way
//   between cell centres and at most 2.7 % longer (the widest angle between two directions is 26.6 degrees).
// A wall closes the cells it passes through, so a gap narrower than two cells is closed. Way within a cell of the start
// counts straight.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "geometry/segment.h"

namespace cordreach::geometry {

struct Ground {
  std::vector<Segment> walls{};
  std::vector<Segment> corridors{};                      // with any, only what lies near one is walked on
  units::Length corridorHalfWidth = 3.0 * units::metre;  // own: what counts as near
};

inline constexpr units::Length kWalkCell = 0.25 * units::metre;  // own: doors of 0.8 m stay open

// Distances over the ground from one place, or from the nearest of several.
class WalkField {
 public:
  // As far as `farthest`, at most 200 m.
  WalkField(const Ground& ground, Point start, units::Length farthest);
  // At least one start. The grid spans them all: several that are far from each other are better asked apart.
  WalkField(const Ground& ground, std::vector<Point> starts, units::Length farthest);

  // None: farther than that, or walled off.
  [[nodiscard]] std::optional<units::Length> distanceTo(Point place) const;
  // The way there, from the nearest start on, straightened where nothing is in between; empty: none.
  [[nodiscard]] std::vector<Point> wayTo(Point place) const;

  // The field itself, for drawing: cells row by row from the top left corner, metres; negative: not reached.
  [[nodiscard]] std::size_t columns() const { return m_columns; }
  [[nodiscard]] std::size_t rows() const { return m_rows; }
  [[nodiscard]] Point corner() const { return m_corner; }
  [[nodiscard]] std::span<const float> metres() const { return m_metres; }
  [[nodiscard]] Point centreOf(std::size_t cell) const;

 private:
  [[nodiscard]] std::optional<std::size_t> cellAt(Point place) const;
  void closeWalls(const Ground& ground);
  void closeAwayFromCorridors(const Ground& ground);
  void spread(units::Length farthest);
  [[nodiscard]] bool isFreeBetween(Point a, Point b) const;

  std::vector<Point> m_starts;
  Point m_corner;
  std::size_t m_columns = 0;
  std::size_t m_rows = 0;
  std::vector<char> m_closed;
  std::vector<float> m_metres;
  std::vector<std::uint32_t> m_before;  // the cell from which it was reached
};

}  // namespace cordreach::geometry
