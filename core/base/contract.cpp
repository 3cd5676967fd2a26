// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/contract.h"

#include <string>

namespace cordreach::base {

namespace {

std::string describe(const char* condition, const char* file, int line) {
  const std::string path(file);
  const auto slash = path.find_last_of('/');
  const std::string name = slash == std::string::npos ? path : path.substr(slash + 1);
  return name + ":" + std::to_string(line) + ": expected " + condition;
}

}  // namespace

ContractFailure::ContractFailure(const char* condition, const char* file, int line)
    : std::logic_error(describe(condition, file, line)) {}

void failContract(const char* condition, const char* file, int line) { throw ContractFailure(condition, file, line); }

}  // namespace cordreach::base
