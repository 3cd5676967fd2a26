// SPDX-License-Identifier: GPL-3.0-or-later
#include "physics/charger.h"

#include <algorithm>
#include <cmath>

#include "base/contract.h"

namespace cordreach::physics {
namespace {

// Integral of the share's square from the start to `since`, seconds.
double squaredUntil(const Charger& charger, double sinceS) {
  const double constantS = charger.constant.si();
  const double taperS = charger.taper.si();
  const double rate = -2.0 * std::log(kChargedShare);  // of the square, over the whole taper
  double squared = std::min(sinceS, constantS);
  const double inTaperS = std::clamp(sinceS - constantS, 0.0, taperS);
  if (inTaperS > 0.0) squared += taperS / rate * -std::expm1(-rate * inTaperS / taperS);
  const double afterS = std::max(0.0, sinceS - constantS - taperS);
  return squared + kChargedShare * kChargedShare * afterS;
}

}  // namespace

double chargeShareAt(const Charger& charger, units::Duration since) {
  CORDREACH_EXPECTS(charger.constant >= units::Duration{} && charger.taper >= units::Duration{});
  const units::Duration inTaper = since - charger.constant;
  if (inTaper <= units::Duration{}) return 1.0;
  return inTaper >= charger.taper ? kChargedShare : std::pow(kChargedShare, inTaper / charger.taper);
}

double chargeRmsShare(const Charger& charger, units::Duration from, units::Duration until) {
  CORDREACH_EXPECTS(from >= units::Duration{} && until > from);
  return std::sqrt((squaredUntil(charger, until.si()) - squaredUntil(charger, from.si())) / (until - from).si());
}

bool isContinuous(const Charger& charger) { return charger.constant >= kContinuous; }

}  // namespace cordreach::physics
