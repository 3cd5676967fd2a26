// SPDX-License-Identifier: GPL-3.0-or-later
// Reading records through libcsv.
#include "tables/csv_reader.h"

#include <csv.h>

#include <utility>

namespace cordreach::tables {
namespace {

struct Records {
  std::vector<std::vector<std::string>> done;
  std::vector<std::string> current;
};

void takeCell(void* cell, std::size_t length, void* records) {
  static_cast<Records*>(records)->current.emplace_back(static_cast<const char*>(cell), length);
}

void takeRecord(int /*terminator*/, void* records) {
  auto& all = *static_cast<Records*>(records);
  all.done.push_back(std::exchange(all.current, {}));
}

}  // namespace

std::optional<std::vector<std::vector<std::string>>> readCsv(std::string_view text) {
  csv_parser parser{};
  if (csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL) != 0) return std::nullopt;
  Records records;
  const bool whole = csv_parse(&parser, text.data(), text.size(), takeCell, takeRecord, &records) == text.size() &&
                     csv_fini(&parser, takeCell, takeRecord, &records) == 0;
  csv_free(&parser);
  if (!whole) return std::nullopt;
  return std::move(records.done);
}

}  // namespace cordreach::tables
