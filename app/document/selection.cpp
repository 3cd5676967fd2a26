// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/selection.h"

#include <algorithm>

namespace cordreach::app {

std::optional<rules::Subject> Selection::single() const {
  if (m_chosen.size() != 1) return std::nullopt;
  return m_chosen.front();
}

bool Selection::holds(const rules::Subject& subject) const {
  return std::find(m_chosen.begin(), m_chosen.end(), subject) != m_chosen.end();
}

void Selection::choose(std::vector<rules::Subject> subjects) {
  if (subjects == m_chosen) return;
  m_chosen = std::move(subjects);
  emit changed();
}

void Selection::toggle(const rules::Subject& subject) {
  const auto found = std::find(m_chosen.begin(), m_chosen.end(), subject);
  if (found == m_chosen.end()) {
    m_chosen.push_back(subject);
  } else {
    m_chosen.erase(found);
  }
  emit changed();
}

void Selection::clear() { choose({}); }

void Selection::show(const rules::Subject& subject) { emit shown(subject); }

}  // namespace cordreach::app
