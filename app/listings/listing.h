// SPDX-License-Identifier: GPL-3.0-or-later
// A kind of thing as a table of texts, without any widget: what stands in a cell, the edit that other texts make, and
// what a row of somebody else's table means. A cell "?" says "don't know"; an empty one that nothing is written there.
#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "io/table_import.h"
#include "rules/finding.h"
#include "site/assigning.h"
#include "site/edit.h"
#include "text/phrasebook.h"

namespace cordreach::app {

enum class ListingKind { Circuits, Outlets, Machines, Cords, Loads };
inline constexpr std::size_t kListingKinds = 5;

// What reading and writing cells needs besides the thing; for one deed on one state of the site.
class ListingContext {
 public:
  ListingContext(const site::Site& site, const text::Phrasebook& book, site::HowFound found = {})
      : m_site(site), m_book(book), m_found(std::move(found)) {}

  [[nodiscard]] const site::Site& site() const { return m_site; }
  [[nodiscard]] const text::Phrasebook& book() const { return m_book; }
  [[nodiscard]] const site::HowFound& found() const { return m_found; }
  // By "1A-5", capitals not looked at, or by the number alone where only one panel has it. Error: listing.no_circuit.
  [[nodiscard]] base::Result<site::CircuitId> circuitNamed(std::string_view text) const;
  [[nodiscard]] std::vector<std::string> circuitNames() const;  // in number order

 private:
  using Names = std::map<std::string, std::vector<site::CircuitId>>;  // small letters

  const site::Site& m_site;
  const text::Phrasebook& m_book;
  site::HowFound m_found;
  mutable std::shared_ptr<const Names> m_names;  // made when first asked for
};

struct ListingColumn {
  std::string key;  // its heading stands under `field.<key>`
  bool mayBeUnknown = false;
  bool editable = true;
  bool hasChoices = false;
};

struct CellText {
  std::string id;
  std::size_t column = 0;
  std::string text;
};

struct CellFault {
  std::size_t cell = 0;  // among those to be written
  base::Error error;
};

inline constexpr std::string_view kDontKnow = "?";

class Listing {
 public:
  virtual ~Listing() = default;
  Listing(const Listing&) = delete;
  Listing& operator=(const Listing&) = delete;

  [[nodiscard]] virtual ListingKind kind() const = 0;
  [[nodiscard]] virtual rules::SubjectKind subjectKind() const = 0;
  [[nodiscard]] virtual const std::vector<ListingColumn>& columns() const = 0;
  // Of every thing of the kind, in the order of their numbers or names.
  [[nodiscard]] virtual std::vector<std::string> ids(const site::Site& site) const = 0;
  // Empty where it is unknown, or gone.
  [[nodiscard]] virtual std::string text(const ListingContext& in, const std::string& id, std::size_t column) const = 0;
  [[nodiscard]] virtual std::vector<std::string> choices(const ListingContext& in, std::size_t column) const = 0;
  // All of them as one edit, "listing.change", or the first that can't be. Outlets: what was assigned is noted in the
  // history. Errors: those of reading what people type, listing.no_choice, listing.no_circuit, listing.not_editable,
  // listing.not_assigned, listing.parts {n}, field.gone.
  [[nodiscard]] virtual std::variant<site::Edit, CellFault> write(const ListingContext& in,
                                                                  const std::vector<CellText>& cells) const = 0;
  // Reads rows for io::previewImport(); the context must outlive it. A row about a thing that is there changes those
  // cells that are not empty; another adds a thing. Further errors: listing.no_name, listing.which_circuit.
  [[nodiscard]] virtual io::RowReader rowReader(const ListingContext& in) const = 0;

 protected:
  Listing() = default;
};

[[nodiscard]] const Listing& listingOf(ListingKind kind);

[[nodiscard]] std::string headingOf(const text::Phrasebook& book, const ListingColumn& column);
// What headings of other people's tables may say of the columns.
[[nodiscard]] std::vector<io::ImportColumn> importColumns(const Listing& listing, const text::Phrasebook& book);
// "?", "unknown", "don't know" or nothing.
[[nodiscard]] bool saysUnknown(const text::Phrasebook& book, std::string_view text);

}  // namespace cordreach::app
