// SPDX-License-Identifier: GPL-3.0-or-later
// Static loads: the polynomial and exponent laws and how they go on outside their range.
#include "physics/load_static.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/contract.h"
#include "physics/load_nameplate.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

constexpr double kValidLow = 100.0 / 120.0;  // range of the measurements, of nominal
constexpr double kValidHigh = 132.0 / 120.0;
constexpr double kConstantCurrentBelow = 0.75;  // own: electronic supplies stop regulating about 90 V of 120 V
constexpr double kImpedanceBelow = 0.50;        // own: nothing is known further down

struct Powers {
  double activeW = 0, activeSlope = 0;  // slopes per volt
  double reactiveVar = 0, reactiveSlope = 0;
};

double zipValue(const std::array<double, 3>& c, double v) { return (c[0] * v + c[1]) * v + c[2]; }
double zipSlope(const std::array<double, 3>& c, double v) { return 2.0 * c[0] * v + c[1]; }

Powers insidePowers(const StaticLoad& load, double voltageV) {
  const double v = voltageV / load.baseV;
  const PowerShape& shape = load.shape;
  if (shape.polynomial) {
    return {load.activeW * zipValue(shape.zipP, v), load.activeW * zipSlope(shape.zipP, v) / load.baseV,
            load.reactiveVar * zipValue(shape.zipQ, v), load.reactiveVar * zipSlope(shape.zipQ, v) / load.baseV};
  }
  const double active = load.activeW * std::pow(v, shape.exponentP);
  const double reactive = load.reactiveVar * std::pow(v, shape.exponentQ);
  return {active, shape.exponentP * active / voltageV, reactive, shape.exponentQ * reactive / voltageV};
}

// P goes on as a power of volts from an edge of the range, Q in proportion.
Powers goOn(const Powers& edge, double edgeV, double exponent, double voltageV) {
  const double factor = std::pow(voltageV / edgeV, exponent);
  const double slope = exponent * factor / voltageV;
  return {edge.activeW * factor, edge.activeW * slope, edge.reactiveVar * factor, edge.reactiveVar * slope};
}

class StaticLaw final : public LoadLaw {
 public:
  explicit StaticLaw(const StaticLoad& load)
      : m_load(load),
        m_lowV(kValidLow * load.nominalV),
        m_highV(kValidHigh * load.nominalV),
        m_currentV(kConstantCurrentBelow * load.nominalV),
        m_floorV(kImpedanceBelow * load.nominalV),
        m_low(insidePowers(load, m_lowV)),
        m_high(insidePowers(load, m_highV)),
        m_atCurrent(goOn(m_low, m_lowV, load.shape.exponentP, m_currentV)),
        m_distortionAtBaseA(load.distortion.total * std::hypot(load.activeW, load.reactiveVar) / load.baseV) {
    m_floorPoint = electricalAt(m_floorV);
  }

  [[nodiscard]] LoadPoint at(double voltageV) const override {
    LoadPoint point = voltageV < m_floorV ? belowFloor(voltageV) : electricalAt(voltageV);
    if (m_load.speedRpm) point.speedRpm = *m_load.speedRpm * voltageV / m_load.baseV;
    return point;
  }

 private:
  [[nodiscard]] Powers powersAt(double voltageV) const {
    if (voltageV > m_highV) return goOn(m_high, m_highV, m_load.shape.exponentP, voltageV);
    if (voltageV >= m_lowV) return insidePowers(m_load, voltageV);
    if (voltageV >= m_currentV) return goOn(m_low, m_lowV, m_load.shape.exponentP, voltageV);
    return goOn(m_atCurrent, m_currentV, std::max(m_load.shape.exponentP, 1.0), voltageV);
  }

  [[nodiscard]] LoadPoint electricalAt(double voltageV) const {
    const Powers s = powersAt(voltageV);
    const double square = voltageV * voltageV;
    LoadPoint point;
    point.admittanceS = {s.activeW / square, -s.reactiveVar / square};
    point.admittanceSlopeSPerV =
        std::complex<double>(s.activeSlope, -s.reactiveSlope) / square - 2.0 * point.admittanceS / voltageV;
    setDistortion(point, voltageV);
    return point;
  }

  [[nodiscard]] LoadPoint belowFloor(double voltageV) const {
    LoadPoint point = m_floorPoint;
    point.admittanceSlopeSPerV = 0.0;
    point.distortionA *= voltageV / m_floorV;
    point.thirdHarmonicA *= voltageV / m_floorV;
    return point;
  }

  void setDistortion(LoadPoint& point, double voltageV) const {
    const Distortion& share = m_load.distortion;
    if (share.total == 0.0) return;
    const double fundamentalA = std::abs(point.admittanceS) * voltageV;
    point.distortionA = share.total * fundamentalA;
    if (m_load.distortionFollowsQ) {
      // Outside the range the ratio to the fundamental is the one at its edge.
      const double edgeV = std::clamp(voltageV, m_lowV, m_highV);
      const double edgeA = m_distortionAtBaseA * nonactiveShape(edgeV / m_load.baseV) * m_load.baseV / edgeV;
      point.distortionA = edgeV == voltageV ? edgeA : edgeA * fundamentalA / edgeFundamentalA(edgeV);
    }
    point.thirdHarmonicA = point.distortionA * share.third / share.total;
    point.thirdHarmonicPhaseRad = share.thirdPhaseRad;
  }

  [[nodiscard]] double nonactiveShape(double v) const {
    return m_load.shape.polynomial ? zipValue(m_load.shape.zipQ, v) : std::pow(v, m_load.shape.exponentQ);
  }

  [[nodiscard]] double edgeFundamentalA(double edgeV) const {
    const Powers& edge = edgeV == m_lowV ? m_low : m_high;
    return std::hypot(edge.activeW, edge.reactiveVar) / edgeV;
  }

  StaticLoad m_load;
  double m_lowV, m_highV, m_currentV, m_floorV;
  Powers m_low, m_high, m_atCurrent;
  double m_distortionAtBaseA;
  LoadPoint m_floorPoint;
};

double totalRmsA(const LoadPoint& point, double voltageV) {
  return std::hypot(std::abs(point.admittanceS) * voltageV, point.distortionA);
}

StaticLoad fromRow(const tables::Row& row) {
  StaticLoad load;
  load.activeW = row.number("p0_w");
  load.shape.polynomial = true;
  load.shape.zipP = {row.number("zp"), row.number("ip"), row.number("pp")};
  load.shape.zipQ = {row.number("zq"), row.number("iq"), row.number("pq")};
  load.shape.exponentP = 2.0 * load.shape.zipP[0] + load.shape.zipP[1];
  const double nonactiveVar = row.number("q0_var");
  if (row.text("nonactive") == "distortion") {
    const Distortion& plain = modelDistortion(LoadModel::ElectronicPlain);
    load.distortion.total = nonactiveVar / load.activeW;
    load.distortion.third = load.distortion.total * plain.third / plain.total;
    load.distortion.thirdPhaseRad = plain.thirdPhaseRad;
    load.distortionFollowsQ = true;
  } else {
    load.reactiveVar = nonactiveVar;
  }
  return load;
}

}  // namespace

std::shared_ptr<const LoadLaw> makeStaticLaw(const StaticLoad& load) {
  CORDREACH_EXPECTS(load.baseV > 0.0 && load.nominalV > 0.0 && load.activeW > 0.0);
  return std::make_shared<StaticLaw>(load);
}

base::Result<StaticLoad> measuredAppliance(std::string_view id) {
  const tables::Row* row = tables::table("zip_appliances").find(id);
  if (row == nullptr) return base::Error{"load.unknown_appliance", std::string(id), {}};
  return fromRow(*row);
}

base::Result<std::shared_ptr<const LoadLaw>> makeApplianceLaw(std::string_view id, units::Voltage voltage,
                                                              units::Current current) {
  auto measured = measuredAppliance(id);
  if (!measured) return measured.error();
  StaticLoad load = measured.value();
  load.nominalV = systemNominalV(voltage.si());
  load.baseV = load.nominalV;
  const double scale = current.si() / totalRmsA(StaticLaw(load).at(voltage.si()), voltage.si());
  load.activeW *= scale;
  load.reactiveVar *= scale;
  return makeStaticLaw(load);
}

}  // namespace cordreach::physics
