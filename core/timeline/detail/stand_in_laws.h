// SPDX-License-Identifier: GPL-3.0-or-later
// What a load is to the network while it does something else than run.
#pragma once

#include <memory>
#include <utility>

#include "physics/load_law.h"

namespace cordreach::timeline::detail {

class Off : public physics::LoadLaw {
 public:
  [[nodiscard]] physics::LoadPoint at(double /*voltageV*/) const override { return {}; }
};

// Stalled, until it is switched off: it doesn't start again by itself under its load.
class Locked : public physics::LoadLaw {
 public:
  explicit Locked(std::shared_ptr<const physics::LoadLaw> running) : m_running(std::move(running)) {}
  [[nodiscard]] physics::LoadPoint at(double voltageV) const override {
    physics::LoadPoint point = m_running->stalledAt(voltageV);
    point.hasRunningPoint = true;  // nothing more can become of it
    return point;
  }

 private:
  std::shared_ptr<const physics::LoadLaw> m_running;
};

// In the instant of another's start: its own mass keeps it at its speed, and so it is an impedance.
class Held : public physics::LoadLaw {
 public:
  explicit Held(const physics::LoadPoint& point) : m_point(point) {
    m_point.admittanceSlopeSPerV = {};
    m_point.hasRunningPoint = true;
  }
  [[nodiscard]] physics::LoadPoint at(double /*voltageV*/) const override { return m_point; }

 private:
  physics::LoadPoint m_point;
};

}  // namespace cordreach::timeline::detail
