// SPDX-License-Identifier: GPL-3.0-or-later
// A broken contract is our own bug, in every build: it throws ContractFailure, caught only at the app's edge.
#pragma once

#include <stdexcept>

namespace cordreach::base {

class ContractFailure : public std::logic_error {
 public:
  ContractFailure(const char* condition, const char* file, int line);
};

[[noreturn]] void failContract(const char* condition, const char* file, int line);

}  // namespace cordreach::base

#define CORDREACH_EXPECTS(condition)                   \
  (static_cast<bool>(condition) ? static_cast<void>(0) \
                                : ::cordreach::base::failContract(#condition, __FILE__, __LINE__))
