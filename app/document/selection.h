// SPDX-License-Identifier: GPL-3.0-or-later
// What is chosen, shared by the map, the listings and the properties.
#pragma once

#include <QObject>
#include <optional>
#include <vector>

#include "rules/finding.h"

namespace cordreach::app {

class Selection : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  [[nodiscard]] const std::vector<rules::Subject>& chosen() const { return m_chosen; }
  [[nodiscard]] std::optional<rules::Subject> single() const;
  [[nodiscard]] bool holds(const rules::Subject& subject) const;
  void choose(std::vector<rules::Subject> subjects);
  void toggle(const rules::Subject& subject);
  void clear();
  // Asks every view to bring it into sight.
  void show(const rules::Subject& subject);

 signals:
  void changed();
  void shown(const cordreach::rules::Subject& subject);

 private:
  std::vector<rules::Subject> m_chosen;
};

}  // namespace cordreach::app
