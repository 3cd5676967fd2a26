// SPDX-License-Identifier: GPL-3.0-or-later
// The compiled-in tables, each parsed when it is first asked for, from any thread.
#include <map>
#include <mutex>
#include <optional>

#include "base/contract.h"
#include "tables/embedded.h"
#include "tables/table.h"

namespace cordreach::tables {
namespace {

struct Slot {
  std::string_view csv;
  std::once_flag once;
  std::optional<Table> table;
};

std::map<std::string_view, Slot>& slots() {
  static std::map<std::string_view, Slot> all = [] {
    std::map<std::string_view, Slot> filled;
    for (const auto& [name, csv] : embeddedTables()) filled[name].csv = csv;
    return filled;
  }();
  return all;
}

}  // namespace

const Table& table(std::string_view name) {
  const auto found = slots().find(name);
  CORDREACH_EXPECTS(found != slots().end());
  Slot& slot = found->second;
  std::call_once(slot.once, [&] {
    auto parsed = Table::parse(name, slot.csv);
    CORDREACH_EXPECTS(parsed.ok());
    slot.table.emplace(std::move(parsed).value());
  });
  return *slot.table;
}

}  // namespace cordreach::tables
