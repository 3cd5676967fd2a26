// SPDX-License-Identifier: GPL-3.0-or-later
// Model defaults, read once from their tables.
#include "physics/load_model.h"

#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include "base/contract.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

constexpr std::array<std::pair<LoadModel, std::string_view>, 10> kKeys{
    {{LoadModel::Resistance, "resistance"},
     {LoadModel::Induction, "induction"},
     {LoadModel::InductionFan, "induction_fan"},
     {LoadModel::Compressor, "compressor"},
     {LoadModel::Universal, "universal"},
     {LoadModel::RectifiedDc, "rectified_dc"},
     {LoadModel::ElectronicCorrected, "electronic_corrected"},
     {LoadModel::ElectronicPlain, "electronic_plain"},
     {LoadModel::Microwave, "microwave"},
     {LoadModel::Copier, "copier"}}};

using DefaultsByModel = std::array<ModelDefaults, kKeys.size()>;
using DistortionByModel = std::array<Distortion, kKeys.size()>;

DefaultsByModel readDefaults() {
  DefaultsByModel all;
  for (std::size_t i = 0; i < kKeys.size(); ++i) {
    const auto& row = tables::table("load_class").at(kKeys[i].second);
    all[i] = {row.number("exponent_p"), row.number("exponent_q"), row.number("power_factor")};
  }
  return all;
}

DistortionByModel readDistortion() {
  DistortionByModel all;
  for (std::size_t i = 0; i < kKeys.size(); ++i) {
    const auto& row = tables::table("load_distortion").at(kKeys[i].second);
    all[i] = {row.number("distortion_of_fundamental"), row.number("third_of_fundamental"),
              row.number("third_phase_deg") * std::numbers::pi / 180.0};
  }
  return all;
}

std::size_t indexOf(LoadModel model) {
  for (std::size_t i = 0; i < kKeys.size(); ++i) {
    if (kKeys[i].first == model) return i;
  }
  base::failContract("model in kKeys", __FILE__, __LINE__);
}

}  // namespace

LoadModel modelFor(tables::LoadClass loadClass) {
  switch (loadClass) {
    case tables::LoadClass::Induction:
      return LoadModel::Induction;
    case tables::LoadClass::RectifiedDc:
      return LoadModel::RectifiedDc;
    case tables::LoadClass::Universal:
      return LoadModel::Universal;
    case tables::LoadClass::Resistance:
      return LoadModel::Resistance;
    case tables::LoadClass::Electronic:
      return LoadModel::ElectronicPlain;
    case tables::LoadClass::Compressor:
      return LoadModel::Compressor;
    case tables::LoadClass::PhaseControlled:
      return LoadModel::Copier;
  }
  base::failContract("known load class", __FILE__, __LINE__);
}

std::optional<tables::LoadClass> loadClassFromWord(std::string_view word) {
  if (word == "induction") return tables::LoadClass::Induction;
  if (word == "dc") return tables::LoadClass::RectifiedDc;
  if (word == "universal") return tables::LoadClass::Universal;
  if (word == "heat") return tables::LoadClass::Resistance;
  if (word == "electronic") return tables::LoadClass::Electronic;
  return std::nullopt;
}

std::string_view tableKey(LoadModel model) { return kKeys[indexOf(model)].second; }

const ModelDefaults& modelDefaults(LoadModel model) {
  static const DefaultsByModel kDefaults = readDefaults();
  return kDefaults[indexOf(model)];
}

double Distortion::fundamentalShare() const { return 1.0 / std::sqrt(1.0 + total * total); }

const Distortion& modelDistortion(LoadModel model) {
  static const DistortionByModel kDistortion = readDistortion();
  return kDistortion[indexOf(model)];
}

}  // namespace cordreach::physics
