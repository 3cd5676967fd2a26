// SPDX-License-Identifier: GPL-3.0-or-later
// The moment of the planned day that the map shows: the whole plan, or one time. Shared by map, panels and shift.
#pragma once

#include <QObject>
#include <optional>
#include <vector>

#include "site/site.h"

namespace cordreach::app {

class MapMoment : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // None: the whole plan, each machine as it stands in its worst hookup.
  [[nodiscard]] const std::optional<units::Duration>& chosen() const { return m_chosen; }
  void choose(const std::optional<units::Duration>& time);

 signals:
  void changed();

 private:
  std::optional<units::Duration> m_chosen;
};

// When something of the plan begins, in order, each once.
[[nodiscard]] std::vector<units::Duration> momentsOf(const site::Site& site);

}  // namespace cordreach::app
