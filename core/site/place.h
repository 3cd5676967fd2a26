// SPDX-License-Identifier: GPL-3.0-or-later
// Where things are: floors with their walls, rooms, points on a floor.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/point.h"
#include "site/extra.h"
#include "site/ids.h"
#include "site/known.h"
#include "units/quantity.h"

namespace cordreach::site {

struct Place {
  FloorId floor;
  geometry::Point at{};

  friend bool operator==(const Place&, const Place&) = default;
};

struct Wall {
  geometry::Point from{};
  geometry::Point to{};

  friend bool operator==(const Wall&, const Wall&) = default;
};

// A plan picture lies beside the site file under its content hash.
struct Picture {
  std::string hash{};    // of the content, hexadecimal; also the file's stem
  std::string suffix{};  // "png", "jpg"
  double metresPerPixel = 0.0;
  geometry::Point origin{};  // where its top left corner lies
  double turnDegrees = 0.0;
  double dim = 0.0;     // 0: as it is, 1: not to be seen
  std::string issue{};  // of the plan: its date or revision, as printed on it

  friend bool operator==(const Picture&, const Picture&) = default;
};

// A line along which people walk and cords are led, where no walls are drawn.
struct CorridorLine {
  std::vector<geometry::Point> points{};

  friend bool operator==(const CorridorLine&, const CorridorLine&) = default;
};

struct Floor {
  FloorId id;
  std::string name{};
  int level = 0;  // 0: ground
  std::vector<Wall> walls{};
  std::vector<CorridorLine> corridorLines{};
  std::optional<Picture> picture{};
  Extra extra{};

  friend bool operator==(const Floor&, const Floor&) = default;
};

struct Room {
  RoomId id;
  FloorId floor;
  std::string name{};
  std::string number{};
  std::vector<geometry::Point> outline{};
  bool corridor = false;  // where machines are walked along
  Extra extra{};

  friend bool operator==(const Room&, const Room&) = default;
};

}  // namespace cordreach::site
