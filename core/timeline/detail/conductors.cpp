// SPDX-License-Identifier: GPL-3.0-or-later
#include "timeline/detail/conductors.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cordreach::timeline::detail {

namespace {

constexpr double kFirstLookS = 4.0;  // after its amps changed: heavy cords move 0.3 K a second at first
constexpr double kShortestLookS = 0.5;
constexpr double kPaceGrowth = 3.0;
constexpr double kRestShare = 0.1;      // of what is to be noticed: less within a look is rest
constexpr double kNotableShare = 0.01;  // of its amps: what is less is gathered
constexpr double kNotableA = 0.02;
constexpr units::Duration kLongBefore = 12.0 * units::hour;

bool isNotable(double beforeA, double afterA) {
  return std::abs(afterA - beforeA) > kNotableA + kNotableShare * std::max(beforeA, afterA);
}

}  // namespace

Conductors::Conductors(const Day& day, const DayOptions& options)
    : m_movedK(options.movedK), m_longestLookS(options.longestLook.si()) {
  m_each.reserve(day.conductors.size());
  for (const Conductor& conductor : day.conductors) m_each.emplace_back(conductor, m_longestLookS);
}

Conductors::One::One(const Conductor& conductor, double firstLookS)
    : warmth(conductor.warmth->copy()),
      limit(conductor.limit),
      inNetwork(warmth->conductor()),
      peak{warmth->conductor(), warmth->surface()},
      lookS(firstLookS),
      paceS(firstLookS) {}

double Conductors::nextLookS() const {
  double next = std::numeric_limits<double>::infinity();
  for (const One& one : m_each) next = std::min(next, one.lookS);
  return next;
}

std::vector<std::size_t> Conductors::look(double nowS) {
  std::vector<std::size_t> moved;
  for (std::size_t i = 0; i < m_each.size(); ++i) {
    One& one = m_each[i];
    if (one.lookS > nowS) continue;
    ++m_looks;
    const units::Temperature before = one.warmth->conductor();
    const double lastPaceS = one.paceS;
    bringUp(i, nowS);
    // Aims at a little less than what is to be noticed, so that it is noticed a little late at worst.
    const double movedK = std::abs((one.warmth->conductor() - before).si());
    const double aim = 0.9 * m_movedK / std::max(movedK, 1e-9);
    planLook(one, nowS, lastPaceS * std::clamp(aim, 1.0 / kPaceGrowth, kPaceGrowth));
    const double restK = kRestShare * m_movedK;
    const bool restsElsewhere = movedK < restK && std::abs((one.warmth->conductor() - one.inNetwork).si()) > restK;
    if (hasMoved(one) || restsElsewhere) moved.push_back(i);
  }
  return moved;
}

void Conductors::planLook(One& one, double nowS, double paceS) const {
  one.paceS = std::clamp(paceS, std::min(kShortestLookS, m_longestLookS), m_longestLookS);
  one.lookS = nowS + one.paceS;
}

bool Conductors::hasMoved(const One& one) const {
  return std::abs((one.warmth->conductor() - one.inNetwork).si()) >= m_movedK;
}

void Conductors::gather(One& one, double nowS) const {
  const double spanS = nowS - one.sinceS;
  one.poleA2s += one.amps.poleA * one.amps.poleA * spanS;
  one.neutralA2s += one.amps.neutralA * one.amps.neutralA * spanS;
  one.sinceS = nowS;
}

void Conductors::bringUp(std::size_t index, double nowS) {
  One& one = m_each[index];
  gather(one, nowS);
  const double spanS = nowS - one.warmthS;
  one.markedAmps = one.amps;
  if (spanS <= 0.0) return;
  const BranchAmps mean{std::sqrt(one.poleA2s / spanS), std::sqrt(one.neutralA2s / spanS)};
  const auto reached = one.warmth->carry(mean, spanS * units::second, one.limit);
  if (reached && !one.peak.limitAt) {
    one.peak.limitAt = one.warmthS * units::second + *reached;
    m_events.push_back({*one.peak.limitAt, EventKind::OverLimit, {}, index, 0});
  }
  if (one.warmth->beyondModel() && !one.peak.beyondModel) {
    one.peak.beyondModel = true;
    m_events.push_back({nowS * units::second, EventKind::BeyondModel, {}, index, 0});
  }
  one.poleA2s = 0.0;
  one.neutralA2s = 0.0;
  one.warmthS = nowS;
  if (one.warmth->conductor() > one.peak.conductor) {
    one.peak.conductor = one.warmth->conductor();
    one.peak.at = nowS * units::second;
  }
  one.peak.surface = std::max(one.peak.surface, one.warmth->surface());
}

bool Conductors::carry(std::size_t index, double nowS, const BranchAmps& amps) {
  One& one = m_each[index];
  const bool notable = isNotable(one.markedAmps.poleA, amps.poleA) || isNotable(one.markedAmps.neutralA, amps.neutralA);
  if (!notable) {
    gather(one, nowS);
    one.amps = amps;
    return false;
  }
  bringUp(index, nowS);
  one.amps = amps;
  one.markedAmps = amps;
  // What carries nothing cools, and nothing depends on how far it has come until it carries again.
  planLook(one, nowS, amps.largest() > kNotableA ? kFirstLookS : m_longestLookS);
  return amps.largest() > kNotableA && hasMoved(one);
}

void Conductors::settle(std::size_t index, const BranchAmps& amps) {
  One& one = m_each[index];
  static_cast<void>(one.warmth->carry(amps, kLongBefore, one.limit));
  one.peak = {one.warmth->conductor(), one.warmth->surface(), {}, one.warmth->beyondModel()};
}

void Conductors::lay(std::size_t index, double nowS, const Warmth& laying) {
  bringUp(index, nowS);
  m_each[index].warmth->layAs(laying);
  planLook(m_each[index], nowS, kFirstLookS);
}

void Conductors::bringTo(std::size_t index, double nowS) {
  if (m_each[index].warmthS < nowS) bringUp(index, nowS);
}

void Conductors::bringAllTo(double nowS) {
  for (std::size_t i = 0; i < m_each.size(); ++i) bringTo(i, nowS);
}

network::Branch Conductors::intoNetwork(std::size_t index) {
  m_each[index].inNetwork = m_each[index].warmth->conductor();
  return m_each[index].warmth->branch();
}

std::vector<Peak> Conductors::peaks() const {
  std::vector<Peak> peaks;
  peaks.reserve(m_each.size());
  for (const One& one : m_each) peaks.push_back(one.peak);
  return peaks;
}

}  // namespace cordreach::timeline::detail
