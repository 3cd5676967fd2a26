// SPDX-License-Identifier: GPL-3.0-or-later
// Places of the parts come from the tables that the heat model uses, so that the picture is the model's cord.
#include "heat/cut_paint.h"

#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>
#include <QRadialGradient>
#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <vector>

#include "look/look.h"
#include "look/temperature_ramp.h"
#include "physics/cord_build.h"
#include "physics/cord_heat.h"
#include "study/assumptions.h"
#include "tables/cord_types.h"

namespace cordreach::app {

namespace {

constexpr double kBarMm = 5.0;
constexpr double kBarRoomPx = 22.0;
constexpr double kLowPx = 100.0;             // of the box: below, the cord takes the bar's room
constexpr std::size_t kMostTurnsDrawn = 61;  // four rings around the middle one
constexpr int kCarrying = 2;
constexpr double kGroundShare = 0.35;  // of the diameter, at each side

struct CordCut {
  double radiusMm;
  double coreMm;    // radius of an insulated core
  double copperMm;  // radius of its copper
  int cores;
};

CordCut cutOf(const site::CordMake& make) {
  const tables::CordType* type = tables::cordType(make.type);
  const physics::CordBuild build =
      physics::buildOf(study::sizeOf(make), study::conductorsOf(make),
                       type != nullptr ? type->family : tables::CordFamily::Hard, kCarrying);
  const double copper = build.strandDiameter.si() * 500.0;
  return {build.outerDiameter.si() * 500.0, copper + build.insulation.si() * 1000.0, copper, build.conductors};
}

struct Heat {
  double insideC;
  double outsideC;

  // At that share of the way out, as the square: heat that arises throughout.
  [[nodiscard]] double at(double share) const { return insideC + (outsideC - insideC) * share * share; }
};

Heat heatOf(const study::DemonstrationPoint& point) {
  const double end = physics::beyondModelTemperature().celsius();
  return {point.conductor ? point.conductor->likely.celsius() : end,
          point.surface ? point.surface->likely.celsius() : end};
}

QColor colorOf(double celsius) {
  return look::temperatureColor(units::Temperature::fromCelsius(celsius), look::tokens().dark);
}

// Middles of the cores around the middle of the cord, in mm.
std::vector<QPointF> coreMiddles(const CordCut& cut) {
  const double b = cut.cores == 2 ? cut.coreMm : 2.0 * cut.coreMm / std::numbers::sqrt3;
  std::vector<QPointF> middles;
  for (int i = 0; i < cut.cores; ++i) {
    const double angle = std::numbers::pi * (cut.cores == 2 ? i : (2.0 * i / 3.0 - 5.0 / 6.0));
    middles.emplace_back(b * std::cos(angle), b * std::sin(angle));
  }
  return middles;
}

// One cord: its body from the cores' warmth out to the jacket, the carrying copper hottest, the earth's as warm as what
// is around it.
void paintCord(QPainter& painter, const QPointF& middle, double pxPerMm, const CordCut& cut, const Heat& heat) {
  const double radius = cut.radiusMm * pxPerMm;
  QRadialGradient body(middle, radius);
  for (const double share : {0.0, 0.4, 0.7, 1.0}) body.setColorAt(share, colorOf(heat.at(share)));
  painter.setPen(QPen(look::tokens().ink, 1));
  painter.setBrush(body);
  painter.drawEllipse(middle, radius, radius);
  const std::vector<QPointF> middles = coreMiddles(cut);
  for (std::size_t i = 0; i < middles.size(); ++i) {
    const QPointF at = middle + middles[i] * pxPerMm;
    const bool carries = static_cast<int>(i) < kCarrying;
    painter.setPen(QPen(look::tokens().sheet, std::clamp(pxPerMm / 14, 0.6, 1.5)));
    painter.setBrush(colorOf(heat.at(carries ? 0.3 : 0.6)));
    painter.drawEllipse(at, cut.coreMm * pxPerMm, cut.coreMm * pxPerMm);
    painter.setBrush(colorOf(carries ? heat.insideC : heat.at(0.6)));
    painter.drawEllipse(at, cut.copperMm * pxPerMm, cut.copperMm * pxPerMm);
  }
}

// Turns as far out as each other look alike: drawn once, because a frame has no time for all of them. A drawing that
// can be scaled gets each as it is.
class TurnStamps {
 public:
  TurnStamps(QPainter& painter, const CordCut& cut, double pxPerMm)
      : m_painter(painter), m_cut(cut), m_pxPerMm(pxPerMm), m_ratio(painter.device()->devicePixelRatioF()) {}

  void paint(const QPointF& middle, double share, const Heat& heat) {
    if (m_painter.paintEngine()->type() != QPaintEngine::Raster) {
      return paintCord(m_painter, middle, m_pxPerMm, m_cut, heat);
    }
    QPixmap& stamp = m_stamps[std::lround(share * kShares)];
    if (stamp.isNull()) stamp = drawn(heat);
    const QPointF corner = middle - QPointF(half(), half());
    m_painter.drawPixmap(QPointF(std::round(corner.x() * m_ratio), std::round(corner.y() * m_ratio)) / m_ratio, stamp);
  }

 private:
  static constexpr double kShares = 1000.0;

  [[nodiscard]] double half() const { return std::ceil((m_cut.radiusMm * m_pxPerMm + 1.0) * m_ratio) / m_ratio; }
  [[nodiscard]] QPixmap drawn(const Heat& heat) const {
    const int side = static_cast<int>(std::lround(2.0 * half() * m_ratio));
    QPixmap stamp(side, side);
    stamp.setDevicePixelRatio(m_ratio);
    stamp.fill(Qt::transparent);
    QPainter painter(&stamp);
    painter.setRenderHint(QPainter::Antialiasing);
    paintCord(painter, QPointF(half(), half()), m_pxPerMm, m_cut, heat);
    return stamp;
  }

  QPainter& m_painter;
  const CordCut& m_cut;
  double m_pxPerMm;
  double m_ratio;
  std::map<long, QPixmap> m_stamps;
};

// Turns of a hank packed as they lie when tied together, nearest the middle first; in units of the cord's diameter.
std::vector<QPointF> hankPlaces(std::size_t turns) {
  constexpr int kReach = 6;
  std::vector<QPointF> places;
  for (int row = -kReach; row <= kReach; ++row) {
    for (int column = -kReach; column <= kReach; ++column) {
      const double shift = row % 2 == 0 ? 0.0 : 0.5;
      places.emplace_back(column + shift, row * std::numbers::sqrt3 / 2.0);
    }
  }
  // A hank of few turns is roundest about the point between two of them.
  const QPointF middle(turns % 2 == 0 ? 0.5 : 0.0, 0.0);
  std::stable_sort(places.begin(), places.end(), [&](const QPointF& a, const QPointF& b) {
    const QPointF fromA = a - middle;
    const QPointF fromB = b - middle;
    return QPointF::dotProduct(fromA, fromA) < QPointF::dotProduct(fromB, fromB) - 1e-9;
  });
  places.resize(std::min(turns, kMostTurnsDrawn));
  for (QPointF& place : places) place -= middle;
  return places;
}

// Layers on a reel's drum, wound side by side.
std::vector<QPointF> reelPlaces(std::size_t layers) {
  constexpr std::size_t kAcross = 7;
  std::vector<QPointF> places;
  for (std::size_t layer = 0; layer < std::min<std::size_t>(layers, 8); ++layer) {
    for (std::size_t i = 0; i < kAcross; ++i) {
      places.emplace_back(static_cast<double>(i) - (kAcross - 1) / 2.0,
                          (static_cast<double>(layers) - 1.0) / 2.0 - static_cast<double>(layer));
    }
  }
  return places;
}

std::vector<QPointF> placesOf(const site::LayingOfCord& laying) {
  const auto turns = static_cast<std::size_t>(std::max(1.0, std::round(laying.turns)));
  if (laying.laying == tables::Laying::Coiled) return hankPlaces(turns);
  if (laying.laying == tables::Laying::Reel) return reelPlaces(turns);
  return {QPointF()};
}

// Of the cord with what it lies on and under, in its diameters, at least.
double widthOf(tables::Laying laying) {
  if (laying == tables::Laying::Straight) return 1.0;
  return laying == tables::Laying::Covered ? 1.6 : 1.3;
}

void paintUnder(QPainter& painter, const QRectF& cord, double reach, tables::Laying laying) {
  const look::Tokens& tokens = look::tokens();
  if (laying == tables::Laying::Straight || laying == tables::Laying::Coiled || laying == tables::Laying::Reel) return;
  const QLineF ground(cord.left() - reach, cord.bottom() + 1, cord.right() + reach, cord.bottom() + 1);
  painter.setPen(QPen(tokens.wall, laying == tables::Laying::Floor ? 2 : 5));
  painter.drawLine(ground);
  if (laying != tables::Laying::Covered) return;
  QPainterPath mat(ground.p1());
  mat.cubicTo(cord.bottomLeft(), cord.topLeft() - QPointF(0, 4), QPointF(cord.center().x(), cord.top() - 4));
  mat.cubicTo(cord.topRight() - QPointF(0, 4), cord.bottomRight(), ground.p2());
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(tokens.wall, 6, Qt::SolidLine, Qt::RoundCap));
  painter.drawPath(mat);
}

CutPlaces paintBar(QPainter& painter, const QRectF& box, double pxPerMm, CutPlaces places) {
  const double y = box.bottom() - look::scaled(kBarRoomPx) * 0.4;
  const double half = kBarMm * pxPerMm / 2;
  places.barLeft = {box.center().x() - half, y};
  places.barRight = {box.center().x() + half, y};
  painter.setPen(QPen(look::tokens().ink2, 1));
  painter.drawLine(places.barLeft, places.barRight);
  for (const QPointF& end : {places.barLeft, places.barRight}) painter.drawLine(end, end - QPointF(0, 5));
  return places;
}

}  // namespace

CutPlaces paintCut(QPainter& painter, const QRectF& box, const planning::LessonCase& side,
                   const study::DemonstrationPoint& point) {
  const CordCut cut = cutOf(side.cord);
  const Heat heat = heatOf(point);
  const std::vector<QPointF> turns = placesOf(side.laying);
  double reach = 0.5;
  for (const QPointF& turn : turns) reach = std::max({reach, std::abs(turn.x()) + 0.5, std::abs(turn.y()) + 0.5});
  const bool hasBar = box.height() >= kLowPx;
  const QRectF room = box.adjusted(1, hasBar ? 8 : 2, -1, hasBar ? -look::scaled(kBarRoomPx) : -4);
  const bool ground = turns.size() == 1;
  const double across = room.width() / (ground ? widthOf(side.laying.laying) : 1.0);
  const double size = std::min(across, room.height()) / (2.0 * reach);  // px a diameter
  const double pxPerMm = size / (2.0 * cut.radiusMm);
  const QPointF middle = room.center();
  paintUnder(painter, QRectF(middle.x() - size / 2, middle.y() - size / 2, size, size),
             std::min(size * kGroundShare, (room.width() - size) / 2),
             ground ? side.laying.laying : tables::Laying::Straight);
  // Each turn as warm as its place in the bundle; a cord alone from its copper to its jacket.
  TurnStamps stamps(painter, cut, pxPerMm);
  for (const QPointF& turn : turns) {
    const double share = std::hypot(turn.x(), turn.y()) / reach;
    const double outer = std::min(1.0, share + 0.5 / reach);
    if (ground) {
      paintCord(painter, middle, pxPerMm, cut, heat);
    } else {
      stamps.paint(middle + turn * size, share, {heat.at(share), heat.at(outer)});
    }
  }
  CutPlaces places;
  const QPointF innermost = *std::min_element(turns.begin(), turns.end(), [](const QPointF& a, const QPointF& b) {
    return std::hypot(a.x(), a.y()) < std::hypot(b.x(), b.y());
  });
  places.inside = middle + innermost * size + coreMiddles(cut).at(1) * pxPerMm;
  const QPointF outermost = *std::max_element(turns.begin(), turns.end(), [](const QPointF& a, const QPointF& b) {
    return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y());
  });
  constexpr double kDown = std::numbers::pi / 6;
  places.outside = middle + outermost * size + QPointF(std::cos(kDown), std::sin(kDown)) * size / 2;
  return hasBar ? paintBar(painter, box, pxPerMm, places) : places;
}

}  // namespace cordreach::app
