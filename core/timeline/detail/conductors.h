// SPDX-License-Identifier: GPL-3.0-or-later
// The conductors of a day, each carried on by itself and only when something asks: its amps changed, or it is time to
// look how far it has come. Small changes of its amps are gathered as their mean square, which keeps the heat exact.
#pragma once

#include <cstddef>
#include <memory>
#include <utility>
#include <vector>

#include "timeline/day.h"

namespace cordreach::timeline::detail {

class Conductors {
 public:
  Conductors(const Day& day, const DayOptions& options);

  [[nodiscard]] std::size_t size() const { return m_each.size(); }
  // When the first of them wants to be looked at.
  [[nodiscard]] double nextLookS() const;
  // Looks at those whose time it is; answers which of them have moved since they were last in the network.
  [[nodiscard]] std::vector<std::size_t> look(double nowS);

  // From now on it carries that. True: its warmth is no longer that in the network.
  [[nodiscard]] bool carry(std::size_t index, double nowS, const BranchAmps& amps);
  // Long before the day it has carried that.
  void settle(std::size_t index, const BranchAmps& amps);
  void lay(std::size_t index, double nowS, const Warmth& laying);
  void bringTo(std::size_t index, double nowS);
  void bringAllTo(double nowS);
  // Its branch as the network is to have it now.
  [[nodiscard]] network::Branch intoNetwork(std::size_t index);

  [[nodiscard]] const Warmth& warmth(std::size_t index) const { return *m_each[index].warmth; }
  [[nodiscard]] const BranchAmps& amps(std::size_t index) const { return m_each[index].amps; }
  [[nodiscard]] std::vector<Peak> peaks() const;
  // Limits passed and models left since they were last taken.
  [[nodiscard]] std::vector<Event> takeEvents() { return std::exchange(m_events, {}); }
  [[nodiscard]] std::size_t looks() const { return m_looks; }

 private:
  struct One {
    One(const Conductor& conductor, double firstLookS);

    std::unique_ptr<Warmth> warmth;
    units::Temperature limit;
    units::Temperature inNetwork;  // as the network has it
    Peak peak;
    double lookS;          // when it is to be looked at
    double paceS;          // between its last look and the next
    BranchAmps amps;       // that it carries now
    double sinceS = 0.0;   // when that was last added to the squares
    double warmthS = 0.0;  // up to when its warmth is carried
    double poleA2s = 0.0;  // squares over time since then
    double neutralA2s = 0.0;
    BranchAmps markedAmps;  // when its warmth was last brought up
  };
  void gather(One& one, double nowS) const;
  void bringUp(std::size_t index, double nowS);
  void planLook(One& one, double nowS, double paceS) const;
  [[nodiscard]] bool hasMoved(const One& one) const;

  std::vector<One> m_each;
  std::vector<Event> m_events;
  double m_movedK;
  double m_longestLookS;
  std::size_t m_looks = 0;
};

}  // namespace cordreach::timeline::detail
