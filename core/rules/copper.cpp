// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/copper.h"

namespace cordreach::rules {

namespace {

// Own choices. Stock sizes lie at least a third apart (0.75 and 1 mm²; 1.59 times from 14 to 12 AWG), odd gauges 1.26.
constexpr double kSameArea = 0.95;
constexpr double kNextStockSize = 1.3;

}  // namespace

bool isLighter(const units::WireSize& size, const units::WireSize& than) {
  return size.area() < than.area() * kSameArea;
}

bool isSizeHeavier(const units::WireSize& size, const units::WireSize& than) {
  return size.area() >= than.area() * kNextStockSize;
}

}  // namespace cordreach::rules
