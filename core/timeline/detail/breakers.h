// SPDX-License-Identifier: GPL-3.0-or-later
// The breakers of a day: each by its three replicas, carried on when its amps change. Of the three one acts.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "timeline/day.h"

namespace cordreach::timeline::detail {

class Breakers {
 public:
  Breakers(const Day& day, Acting acting);

  [[nodiscard]] double nextTripS() const;
  // Those that act by now; each only once.
  [[nodiscard]] std::vector<std::size_t> takeTripped(double nowS);

  // Long before the day it has carried that; more than its rating is not carried over.
  void settle(std::size_t index, double rmsA);
  // From now on it carries that.
  void carry(std::size_t index, double nowS, double rmsA);
  // The peak of a start now.
  void start(std::size_t index, double nowS, double rmsA, units::Duration lasts);
  void bringAllTo(double nowS);

  [[nodiscard]] double amps(std::size_t index) const { return m_each[index].rmsA; }
  [[nodiscard]] std::vector<physics::TripTimes> trips() const;
  [[nodiscard]] std::vector<double> largestA() const;

 private:
  struct Curve {
    physics::BreakerState state;
    std::optional<double> tripS{};
  };
  struct One {
    std::vector<Curve> curves;  // by physics::kTripCurves; empty: unknown
    double rmsA = 0.0;
    double largestA = 0.0;
    double stateS = 0.0;
    double actsS = 0.0;  // when it will act, if nothing changes
    bool acts = true;
    bool out = false;
  };
  void bringTo(One& one, double nowS) const;
  void planTrip(One& one, double nowS) const;
  [[nodiscard]] std::optional<std::size_t> actingCurve() const;

  const Day& m_day;
  Acting m_acting;
  std::vector<One> m_each;
};

}  // namespace cordreach::timeline::detail
