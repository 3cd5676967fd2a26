// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_edits.h"

#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

namespace cordreach::app {
namespace {

using geometry::Point;

constexpr double kPerRadian = 180.0 / std::numbers::pi;
constexpr double kLeastApart = 2.0;  // pixels: less says nothing about a scale

double apart(const Point& a, const Point& b) { return std::hypot(a.xM - b.xM, a.yM - b.yM); }

double directionOf(const Point& from, const Point& to) {
  return std::atan2(to.yM - from.yM, to.xM - from.xM) * kPerRadian;
}

Point turned(const Point& way, double degrees) {
  const double c = std::cos(degrees / kPerRadian);
  const double s = std::sin(degrees / kPerRadian);
  return {way.xM * c - way.yM * s, way.xM * s + way.yM * c};
}

double upright(double degrees) { return std::remainder(degrees, 360.0); }

// The origin with which that pixel lies at that point.
Point originWith(const site::Picture& picture, const Point& pixel, const Point& at) {
  const Point way = turned({pixel.xM * picture.metresPerPixel, pixel.yM * picture.metresPerPixel}, picture.turnDegrees);
  return {at.xM - way.xM, at.yM - way.yM};
}

template <class Alter>
PictureEdit altered(const site::Site& site, const site::FloorId& id, const char* code, Alter&& alter) {
  const site::Floor* before = site.find<site::Floor>(id);
  if (before == nullptr) return base::Error{"picture.none", {}, {}};
  site::Floor after = *before;
  if (auto fault = alter(after)) return *fault;
  return site::Edit{code, {site::Change<site::Floor>{*before, std::move(after)}}};
}

using Fault = std::optional<base::Error>;

template <class Alter>
PictureEdit alteredPicture(const site::Site& site, const site::FloorId& id, const char* code, Alter&& alter) {
  return altered(site, id, code, [&](site::Floor& floor) -> Fault {
    if (!floor.picture) return base::Error{"picture.none", {}, {}};
    return alter(*floor.picture);
  });
}

}  // namespace

PictureEdit placePicture(const site::Site& site, const site::FloorId& floor, site::Picture picture) {
  return altered(site, floor, "picture.add", [&](site::Floor& one) -> Fault {
    one.picture = std::move(picture);
    return std::nullopt;
  });
}

PictureEdit removePicture(const site::Site& site, const site::FloorId& floor) {
  return altered(site, floor, "picture.remove", [](site::Floor& one) -> Fault {
    if (!one.picture) return base::Error{"picture.none", {}, {}};
    one.picture.reset();
    return std::nullopt;
  });
}

Point onFloor(const site::Picture& picture, Point pixel) {
  const Point way = turned({pixel.xM * picture.metresPerPixel, pixel.yM * picture.metresPerPixel}, picture.turnDegrees);
  return {picture.origin.xM + way.xM, picture.origin.yM + way.yM};
}

PictureEdit scalePicture(const site::Site& site, const site::FloorId& floor, Point pixelA, Point pixelB,
                         units::Length distance) {
  return alteredPicture(site, floor, "picture.scale", [&](site::Picture& picture) -> Fault {
    if (apart(pixelA, pixelB) < kLeastApart) return base::Error{"picture.points_meet", {}, {}};
    if (!(distance.si() > 0.0)) return base::Error{"picture.bad_distance", {}, {}};
    const Point stays = onFloor(picture, pixelA);
    picture.metresPerPixel = distance.si() / apart(pixelA, pixelB);
    picture.origin = originWith(picture, pixelA, stays);
    return std::nullopt;
  });
}

PictureEdit turnPicture(const site::Site& site, const site::FloorId& floor, double degrees, Point pixel) {
  return alteredPicture(site, floor, "picture.turn", [&](site::Picture& picture) -> Fault {
    const Point stays = onFloor(picture, pixel);
    picture.turnDegrees = upright(picture.turnDegrees + degrees);
    picture.origin = originWith(picture, pixel, stays);
    return std::nullopt;
  });
}

PictureEdit dimPicture(const site::Site& site, const site::FloorId& floor, double dim) {
  return alteredPicture(site, floor, "picture.dim", [&](site::Picture& picture) -> Fault {
    picture.dim = dim;
    return std::nullopt;
  });
}

PictureEdit replaceSameSheet(const site::Site& site, const site::FloorId& floor, site::Picture newer, double oldWidth,
                             double newWidth) {
  return alteredPicture(site, floor, "picture.replace", [&](site::Picture& picture) -> Fault {
    newer.metresPerPixel = picture.metresPerPixel * oldWidth / newWidth;
    newer.origin = picture.origin;
    newer.turnDegrees = picture.turnDegrees;
    newer.dim = picture.dim;
    picture = std::move(newer);
    return std::nullopt;
  });
}

namespace {

PictureEdit replaceOn(const site::Site& site, const site::FloorId& floor, const char* code, site::Picture newer,
                      const PointPair& oldPixels, const PointPair& newPixels) {
  return alteredPicture(site, floor, code, [&](site::Picture& picture) -> Fault {
    const bool meet = apart(newPixels.first, newPixels.second) < kLeastApart ||
                      apart(oldPixels.first, oldPixels.second) < kLeastApart;
    if (meet) return base::Error{"picture.points_meet", {}, {}};
    const Point first = onFloor(picture, oldPixels.first);
    const Point second = onFloor(picture, oldPixels.second);
    newer.metresPerPixel = apart(first, second) / apart(newPixels.first, newPixels.second);
    newer.turnDegrees = upright(directionOf(first, second) - directionOf(newPixels.first, newPixels.second));
    newer.dim = picture.dim;
    newer.origin = originWith(newer, newPixels.first, first);
    picture = std::move(newer);
    return std::nullopt;
  });
}

}  // namespace

PictureEdit replaceByPoints(const site::Site& site, const site::FloorId& floor, site::Picture newer,
                            const PointPair& oldPixels, const PointPair& newPixels) {
  return replaceOn(site, floor, "picture.replace", std::move(newer), oldPixels, newPixels);
}

PictureEdit replaceSquared(const site::Site& site, const site::FloorId& floor, site::Picture squared,
                           const PointPair& oldEdge, const PointPair& newEdge) {
  return replaceOn(site, floor, "picture.square", std::move(squared), oldEdge, newEdge);
}

}  // namespace cordreach::app
