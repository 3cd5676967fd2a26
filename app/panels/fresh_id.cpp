// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/fresh_id.h"

#include <random>

namespace cordreach::app {

const site::RandomSource& randomSource() {
  static const site::RandomSource source = [] {
    static std::random_device device;
    const std::uint64_t high = device();
    return (high << 32U) | device();
  };
  return source;
}

}  // namespace cordreach::app
