// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/walkable.h"

#include <algorithm>
#include <array>
#include <queue>

#include "base/contract.h"

namespace cordreach::geometry {

namespace {

constexpr double kCellM = kWalkCell.in(units::metre);
constexpr double kFarthestM = 200.0;

// A move on the grid with the cells it passes besides its end.
struct Move {
  int columns, rows;
  std::array<std::pair<int, int>, 2> passes;
  int passed;
};

constexpr std::array<Move, 16> kMoves = {{
    {1, 0, {}, 0},
    {-1, 0, {}, 0},
    {0, 1, {}, 0},
    {0, -1, {}, 0},
    {1, 1, {{{1, 0}, {0, 1}}}, 2},
    {1, -1, {{{1, 0}, {0, -1}}}, 2},
    {-1, 1, {{{-1, 0}, {0, 1}}}, 2},
    {-1, -1, {{{-1, 0}, {0, -1}}}, 2},
    {2, 1, {{{1, 0}, {1, 1}}}, 2},
    {2, -1, {{{1, 0}, {1, -1}}}, 2},
    {-2, 1, {{{-1, 0}, {-1, 1}}}, 2},
    {-2, -1, {{{-1, 0}, {-1, -1}}}, 2},
    {1, 2, {{{0, 1}, {1, 1}}}, 2},
    {1, -2, {{{0, -1}, {1, -1}}}, 2},
    {-1, 2, {{{0, 1}, {-1, 1}}}, 2},
    {-1, -2, {{{0, -1}, {-1, -1}}}, 2},
}};

double distanceM(Point a, Point b) { return straightDistance(a, b).in(units::metre); }

}  // namespace

WalkField::WalkField(const Ground& ground, Point start, units::Length farthest)
    : WalkField(ground, std::vector<Point>(1, start), farthest) {}

WalkField::WalkField(const Ground& ground, std::vector<Point> starts, units::Length farthest)
    : m_starts(std::move(starts)) {
  CORDREACH_EXPECTS(!m_starts.empty());
  const double reachM = std::clamp(farthest.in(units::metre), 0.0, kFarthestM);
  Point first = m_starts.front();
  Point last = first;
  for (const Point& start : m_starts) {
    first = {std::min(first.xM, start.xM), std::min(first.yM, start.yM)};
    last = {std::max(last.xM, start.xM), std::max(last.yM, start.yM)};
  }
  const auto cellsIn = [](double lengthM) { return static_cast<std::size_t>(std::ceil(lengthM / kCellM)); };
  const std::size_t half = cellsIn(reachM) + 1;
  m_columns = 2 * half + 1 + cellsIn(last.xM - first.xM);
  m_rows = 2 * half + 1 + cellsIn(last.yM - first.yM);
  const double sideM = static_cast<double>(half) * kCellM + 0.5 * kCellM;
  m_corner = {first.xM - sideM, first.yM - sideM};  // so that a single start is the centre of a cell
  m_closed.assign(m_columns * m_rows, 0);
  m_metres.assign(m_columns * m_rows, -1.0F);
  m_before.assign(m_columns * m_rows, 0);
  if (!ground.corridors.empty()) closeAwayFromCorridors(ground);
  closeWalls(ground);
  spread(reachM * units::metre);
}

std::optional<std::size_t> WalkField::cellAt(Point place) const {
  const double column = std::floor((place.xM - m_corner.xM) / kCellM);
  const double row = std::floor((place.yM - m_corner.yM) / kCellM);
  if (column < 0.0 || row < 0.0 || column >= static_cast<double>(m_columns) || row >= static_cast<double>(m_rows)) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(row) * m_columns + static_cast<std::size_t>(column);
}

Point WalkField::centreOf(std::size_t cell) const {
  return {m_corner.xM + (static_cast<double>(cell % m_columns) + 0.5) * kCellM,
          m_corner.yM + (static_cast<double>(cell / m_columns) + 0.5) * kCellM};
}

void WalkField::closeWalls(const Ground& ground) {
  constexpr double kStepM = 0.4 * kCellM;  // so that a wall slips between no two cells
  for (const Segment& wall : ground.walls) {
    const double lengthM = distanceM(wall.from, wall.to);
    const auto steps = static_cast<std::size_t>(std::ceil(lengthM / kStepM));
    for (std::size_t i = 0; i <= steps; ++i) {
      const double share = steps == 0 ? 0.0 : static_cast<double>(i) / static_cast<double>(steps);
      const Point at{wall.from.xM + share * (wall.to.xM - wall.from.xM),
                     wall.from.yM + share * (wall.to.yM - wall.from.yM)};
      if (const auto cell = cellAt(at)) m_closed[*cell] = 1;
    }
  }
}

void WalkField::closeAwayFromCorridors(const Ground& ground) {
  const double nearM = ground.corridorHalfWidth.in(units::metre);
  const auto isNear = [&](const Segment& corridor, Point place) {
    return distanceM(nearestOn(corridor, place), place) <= nearM;
  };
  std::fill(m_closed.begin(), m_closed.end(), char{1});
  for (const Segment& corridor : ground.corridors) {
    const auto columnOf = [&](double xM) { return (xM - m_corner.xM) / kCellM; };
    const auto rowOf = [&](double yM) { return (yM - m_corner.yM) / kCellM; };
    const auto clampTo = [](double value, std::size_t count) {
      return static_cast<std::size_t>(std::clamp(value, 0.0, static_cast<double>(count - 1)));
    };
    const auto [leftM, rightM] = std::minmax(corridor.from.xM, corridor.to.xM);
    const auto [topM, bottomM] = std::minmax(corridor.from.yM, corridor.to.yM);
    const std::size_t lastRow = clampTo(rowOf(bottomM + nearM), m_rows);
    const std::size_t lastColumn = clampTo(columnOf(rightM + nearM), m_columns);
    for (std::size_t row = clampTo(rowOf(topM - nearM), m_rows); row <= lastRow; ++row) {
      for (std::size_t column = clampTo(columnOf(leftM - nearM), m_columns); column <= lastColumn; ++column) {
        const std::size_t cell = row * m_columns + column;
        if (m_closed[cell] != 0 && isNear(corridor, centreOf(cell))) m_closed[cell] = 0;
      }
    }
  }
}

void WalkField::spread(units::Length farthest) {
  const auto farthestM = static_cast<float>(farthest.in(units::metre));
  using Entry = std::pair<float, std::uint32_t>;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> open;
  for (const Point& place : m_starts) {
    const auto start = static_cast<std::uint32_t>(*cellAt(place));
    m_metres[start] = 0.0F;  // an outlet is in a wall: its own cell is always open
    m_before[start] = start;
    open.emplace(0.0F, start);
  }
  const auto columns = static_cast<std::ptrdiff_t>(m_columns);
  const auto rows = static_cast<std::ptrdiff_t>(m_rows);
  while (!open.empty()) {
    const auto [metres, cell] = open.top();
    open.pop();
    if (metres > m_metres[cell]) continue;
    const std::ptrdiff_t column = static_cast<std::ptrdiff_t>(cell) % columns;
    const std::ptrdiff_t row = static_cast<std::ptrdiff_t>(cell) / columns;
    const auto isOpen = [&](int columnStep, int rowStep) {
      const std::ptrdiff_t toColumn = column + columnStep;
      const std::ptrdiff_t toRow = row + rowStep;
      if (toColumn < 0 || toRow < 0 || toColumn >= columns || toRow >= rows) return false;
      return m_closed[static_cast<std::size_t>(toRow * columns + toColumn)] == 0;
    };
    for (const Move& move : kMoves) {
      if (!isOpen(move.columns, move.rows)) continue;
      bool isFree = true;
      for (int i = 0; i < move.passed; ++i) isFree = isFree && isOpen(move.passes[i].first, move.passes[i].second);
      if (!isFree) continue;
      const auto length = static_cast<float>(std::hypot(move.columns, move.rows) * kCellM);
      const auto to = static_cast<std::uint32_t>((row + move.rows) * columns + column + move.columns);
      const float there = metres + length;
      if (there > farthestM || (m_metres[to] >= 0.0F && m_metres[to] <= there)) continue;
      m_metres[to] = there;
      m_before[to] = cell;
      open.emplace(there, to);
    }
  }
}

std::optional<units::Length> WalkField::distanceTo(Point place) const {
  const auto cell = cellAt(place);
  if (!cell) return std::nullopt;
  // What stands at a wall is in a closed cell: the nearest open one beside it counts.
  float best = m_metres[*cell];
  if (best < 0.0F) {
    const Point here = place;
    for (const Move& move : kMoves) {
      const auto beside = cellAt({here.xM + move.columns * kCellM, here.yM + move.rows * kCellM});
      if (!beside || m_metres[*beside] < 0.0F) continue;
      const float there = m_metres[*beside] + static_cast<float>(std::hypot(move.columns, move.rows) * kCellM);
      if (best < 0.0F || there < best) best = there;
    }
  }
  if (best < 0.0F) return std::nullopt;
  return static_cast<double>(best) * units::metre;
}

bool WalkField::isFreeBetween(Point a, Point b) const {
  const double lengthM = distanceM(a, b);
  const auto steps = static_cast<std::size_t>(std::ceil(lengthM / (0.4 * kCellM)));
  for (std::size_t i = 1; i < steps; ++i) {
    const double share = static_cast<double>(i) / static_cast<double>(steps);
    const auto cell = cellAt({a.xM + share * (b.xM - a.xM), a.yM + share * (b.yM - a.yM)});
    if (!cell || (m_closed[*cell] != 0 && m_metres[*cell] < 0.0F)) return false;
  }
  return true;
}

std::vector<Point> WalkField::wayTo(Point place) const {
  auto cell = cellAt(place);
  if (!cell || m_metres[*cell] < 0.0F) return {};
  std::vector<Point> cells;  // from the place back to the start
  std::size_t at = *cell;
  for (; m_before[at] != at; at = m_before[at]) cells.push_back(centreOf(at));
  if (!cells.empty()) cells.front() = place;
  const auto isThere = [&](const Point& start) { return cellAt(start) == at; };
  cells.push_back(*std::find_if(m_starts.begin(), m_starts.end(), isThere));
  std::vector<Point> way{cells.back()};
  for (std::size_t i = cells.size() - 1; i > 0;) {
    std::size_t next = 0;  // the farthest that is seen from here
    while (next + 1 < i && !isFreeBetween(way.back(), cells[next])) ++next;
    way.push_back(cells[next]);
    i = next;
  }
  return way;
}

}  // namespace cordreach::geometry
