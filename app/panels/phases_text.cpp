// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/phases_text.h"

#include "panels/field_text.h"

namespace cordreach::app {

std::string phasesText(const std::vector<std::size_t>& phases) {
  std::string text;
  for (const std::size_t phase : phases) text += static_cast<char>('A' + phase);
  return text;
}

base::Result<std::vector<std::size_t>> readPhases(std::string_view text) {
  std::vector<std::size_t> phases;
  for (const char letter : tidied(text)) {
    const char capital = letter >= 'a' && letter <= 'c' ? static_cast<char>(letter - 'a' + 'A') : letter;
    if (capital == ' ' || capital == ',' || capital == '/') continue;
    if (capital < 'A' || capital > 'C') return base::Error{"field.bad_phases", std::string(text), {}};
    phases.push_back(static_cast<std::size_t>(capital - 'A'));
  }
  if (phases.empty()) return base::Error{"field.bad_phases", std::string(text), {}};
  return phases;
}

}  // namespace cordreach::app
