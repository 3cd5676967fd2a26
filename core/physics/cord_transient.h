// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of cord heating and cooling through a duty, for one corner of its band. Starts at the air's temperature.
// Two hours at constant current within 0.1 K of a converged run, in well under a millisecond.
#pragma once

#include <optional>

#include "physics/cord_ladder.h"
#include "physics/cord_section.h"
#include "units/quantity.h"
#include "units/temperature.h"

namespace cordreach::physics {

class CordTransient {
 public:
  CordTransient(const CordSection& section, units::Temperature ambient, Corner corner = Corner::Likely);

  // Carries that current for that long. Once beyond the model it stays there.
  void advance(units::Current rms, units::Duration duration);
  // After how long from here, at that current, the conductor reaches `limit`; none: not within the horizon.
  [[nodiscard]] std::optional<units::Duration> timeToReach(units::Temperature limit, units::Current rms,
                                                           units::Duration horizon) const;
  // The same cord coiled, covered, laid out or taken elsewhere, as warm as it is. Coiling takes the turns to be alike.
  void lay(const CordSection& section, units::Temperature ambient);

  [[nodiscard]] HeatResult now() const;
  [[nodiscard]] bool beyondModel() const;
  // Default 0.02 K of error a step; smaller for checking convergence.
  void setToleranceK(double toleranceK);

 private:
  [[nodiscard]] bool ranBeyond() const;

  CordSection m_section;
  Corner m_corner;
  LadderRun m_likely;
  std::optional<LadderRun> m_ofCorner;  // none for Corner::Likely
  bool m_beyond = false;
};

}  // namespace cordreach::physics
