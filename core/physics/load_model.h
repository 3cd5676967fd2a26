// SPDX-License-Identifier: GPL-3.0-or-later
// The models a load can be computed by, finer than the class a person can name, with their defaults:
// exponents and power factor from load_class.csv, harmonics from load_distortion.csv.
#pragma once

#include <optional>
#include <string_view>

#include "tables/load_class.h"

namespace cordreach::physics {

enum class LoadModel {
  Resistance,
  Induction,     // constant-torque load: pads, brushes, pumps
  InductionFan,  // torque as the square of speed: air movers
  Compressor,    // by exponents; its stall is not modelled
  Universal,
  RectifiedDc,
  ElectronicCorrected,  // with power factor correction
  ElectronicPlain,      // capacitor-input supply without correction
  Microwave,
  Copier,
};

// The model used when only the class is known. Electronic becomes ElectronicPlain: the cautious side for neutrals.
[[nodiscard]] LoadModel modelFor(tables::LoadClass loadClass);

// The class behind `induction|dc|universal|heat|electronic`; nothing for any other word.
[[nodiscard]] std::optional<tables::LoadClass> loadClassFromWord(std::string_view word);

// The row of that model in load_class.csv, load_distortion.csv and start_class.csv.
[[nodiscard]] std::string_view tableKey(LoadModel model);

struct ModelDefaults {
  double exponentP = 0;    // P ~ V^exponentP at nominal volts
  double exponentQ = 0;    // the same for reactive power, or for distortion power where there is no reactive part
  double powerFactor = 1;  // true power factor: watts over volts times total rms amps
};
[[nodiscard]] const ModelDefaults& modelDefaults(LoadModel model);

// Harmonics as shares of the fundamental's rms. The phase is that of a cosine when the voltage is a cosine.
struct Distortion {
  double total = 0;
  double third = 0;
  double thirdPhaseRad = 0;

  // Fundamental over total rms.
  [[nodiscard]] double fundamentalShare() const;
};
[[nodiscard]] const Distortion& modelDistortion(LoadModel model);

}  // namespace cordreach::physics
