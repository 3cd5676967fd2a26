// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/circuit_text.h"

#include <algorithm>

#include "text/quantity_text.h"

namespace cordreach::text {

std::string circuitUserText(const Phrasebook& book, const planning::CircuitUser& user) {
  base::Arguments arguments{{"name", user.name}, {"plate_a", user.plate.si()}};
  if (user.hours) {
    arguments.push_back({"from_s", user.hours->from.si()});
    arguments.push_back({"until_s", user.hours->until.si()});
  }
  return book.say("cord.user", arguments);
}

std::string alsoOnText(const Phrasebook& book, const std::vector<planning::CircuitUser>& users, std::size_t most) {
  if (users.empty()) return {};
  std::string list;
  const std::size_t told = std::min(most, users.size());
  for (std::size_t i = 0; i < told; ++i) list += (i == 0 ? "" : "; ") + circuitUserText(book, users[i]);
  base::Arguments arguments{{"list", list}};
  if (told < users.size()) {
    arguments.push_back({"more", numberText(book.locale(), static_cast<double>(users.size() - told), 0)});
  }
  return book.say("cord.also_on", arguments);
}

}  // namespace cordreach::text
