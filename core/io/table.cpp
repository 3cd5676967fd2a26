// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/table.h"

namespace cordreach::io {
namespace {

constexpr std::string_view kFormulaStarts = "=+-@\t\r";

// Behind apostrophes too, so that a guarded cell can be told from one that was written so.
bool startsFormula(std::string_view cell) {
  const auto first = cell.find_first_not_of('\'');
  return first != std::string_view::npos && kFormulaStarts.find(cell[first]) != std::string_view::npos;
}

}  // namespace

std::string inertCell(std::string_view cell) { return (startsFormula(cell) ? "'" : "") + std::string(cell); }

std::string plainCell(std::string_view cell) {
  const bool guarded = !cell.empty() && cell.front() == '\'' && startsFormula(cell);
  return std::string(guarded ? cell.substr(1) : cell);
}

}  // namespace cordreach::io
