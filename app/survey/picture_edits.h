// SPDX-License-Identifier: GPL-3.0-or-later
// What people do with the plan picture of a floor, as edits: things on the floor stay where they are. No Qt.
#pragma once

#include "base/result.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::app {

using PictureEdit = base::Result<site::Edit>;

// All of them fail with picture.none when the floor has no picture (or is gone).

// "picture.add": in place of one that is there.
[[nodiscard]] PictureEdit placePicture(const site::Site& site, const site::FloorId& floor, site::Picture picture);
// "picture.remove": the file stays.
[[nodiscard]] PictureEdit removePicture(const site::Site& site, const site::FloorId& floor);

// Where a pixel lies on the floor.
[[nodiscard]] geometry::Point onFloor(const site::Picture& picture, geometry::Point pixel);

// "picture.scale": the two pixels are that far apart; the first stays where it lies. Errors: picture.points_meet,
// picture.bad_distance.
[[nodiscard]] PictureEdit scalePicture(const site::Site& site, const site::FloorId& floor, geometry::Point pixelA,
                                       geometry::Point pixelB, units::Length apart);

// "picture.turn": clockwise by so many degrees, round the pixel.
[[nodiscard]] PictureEdit turnPicture(const site::Site& site, const site::FloorId& floor, double degrees,
                                      geometry::Point pixel);

// "picture.dim": 0 as it is, 1 not to be seen.
[[nodiscard]] PictureEdit dimPicture(const site::Site& site, const site::FloorId& floor, double dim);

// "picture.replace" by another of the same sheet, whatever its pixels: its edges lie where the old ones did. Widths
// in pixels.
[[nodiscard]] PictureEdit replaceSameSheet(const site::Site& site, const site::FloorId& floor, site::Picture newer,
                                           double oldWidth, double newWidth);
// "picture.replace" by one on which two points were found again. Error: picture.points_meet.
struct PointPair {
  geometry::Point first{};
  geometry::Point second{};
};
[[nodiscard]] PictureEdit replaceByPoints(const site::Site& site, const site::FloorId& floor, site::Picture newer,
                                          const PointPair& oldPixels, const PointPair& newPixels);

// "picture.square": the same picture with its corners put right takes its place; its upper edge stays where it lay.
[[nodiscard]] PictureEdit replaceSquared(const site::Site& site, const site::FloorId& floor, site::Picture squared,
                                         const PointPair& oldEdge, const PointPair& newEdge);

}  // namespace cordreach::app
