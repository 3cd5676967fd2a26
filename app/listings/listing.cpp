// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/listing.h"

#include <algorithm>

#include "listings/listing_kinds.h"
#include "panels/field_text.h"
#include "site/natural_order.h"

namespace cordreach::app {

base::Result<site::CircuitId> ListingContext::circuitNamed(std::string_view text) const {
  if (m_names == nullptr) {
    Names names;
    for (const site::Circuit& circuit : m_site.all<site::Circuit>()) {
      const std::string whole = smallLetters(site::circuitNumberOf(m_site, circuit));
      names[whole].push_back(circuit.id);
      const std::string alone = smallLetters(circuit.number);
      if (!alone.empty() && alone != whole) names[alone].push_back(circuit.id);
    }
    m_names = std::make_shared<const Names>(std::move(names));
  }
  const std::string wanted = tidied(text);
  const auto found = m_names->find(smallLetters(wanted));
  if (found == m_names->end()) return base::Error{"listing.no_circuit", wanted, {}};
  if (found->second.size() > 1) return base::Error{"listing.several_circuits", wanted, {}};
  return found->second.front();
}

std::vector<std::string> ListingContext::circuitNames() const {
  std::vector<std::string> names;
  for (const site::Circuit& circuit : m_site.all<site::Circuit>()) {
    names.push_back(site::circuitNumberOf(m_site, circuit));
  }
  std::ranges::sort(names, site::comesBefore);
  return names;
}

const Listing& listingOf(ListingKind kind) {
  switch (kind) {
    case ListingKind::Circuits:
      return circuitListing();
    case ListingKind::Outlets:
      return outletListing();
    case ListingKind::Machines:
      return machineListing();
    case ListingKind::Cords:
      return cordListing();
    case ListingKind::Loads:
      return loadListing();
  }
  return circuitListing();
}

std::string headingOf(const text::Phrasebook& book, const ListingColumn& column) {
  return book.say("field." + column.key);
}

std::vector<io::ImportColumn> importColumns(const Listing& listing, const text::Phrasebook& book) {
  std::vector<io::ImportColumn> columns;
  for (const ListingColumn& column : listing.columns()) {
    io::ImportColumn one{column.key, {headingOf(book, column)}};
    // Other words for it, apart by commas.
    const std::string code = "listing.also." + column.key;
    if (book.has(code)) {
      std::string rest = book.say(code);
      while (!rest.empty()) {
        const auto end = std::min(rest.find(','), rest.size());
        one.names.push_back(tidied(rest.substr(0, end)));
        rest = rest.substr(std::min(end + 1, rest.size()));
      }
    }
    columns.push_back(std::move(one));
  }
  return columns;
}

bool saysUnknown(const text::Phrasebook& book, std::string_view text) {
  const std::string said = smallLetters(tidied(text));
  return said.empty() || said == kDontKnow || said == smallLetters(book.say("word.unknown")) ||
         said == smallLetters(book.say("panel.dont_know"));
}

}  // namespace cordreach::app
