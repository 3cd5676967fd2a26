// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/row_edits.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "panels/label_numbers.h"
#include "panels/new_things.h"

namespace cordreach::app {
namespace {

constexpr double kShortestSpacingM = 0.1;
constexpr std::size_t kFirstDigits = 2;

// By how often a line to the right of the point crosses the outline.
bool holds(const std::vector<geometry::Point>& outline, const geometry::Point& at) {
  bool inside = false;
  for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const geometry::Point& a = outline[i];
    const geometry::Point& b = outline[j];
    if ((a.yM > at.yM) == (b.yM > at.yM)) continue;
    if (at.xM < (b.xM - a.xM) * (at.yM - a.yM) / (b.yM - a.yM) + a.xM) inside = !inside;
  }
  return inside;
}

std::string roomWord(const site::Room& room) { return room.number.empty() ? room.name : room.number; }

bool isIn(const site::Outlet& outlet, const site::Room& room) {
  if (outlet.place) return outlet.place->floor == room.floor && holds(room.outline, outlet.place->at);
  return !outlet.room.empty() && outlet.room == roomWord(room);
}

template <class Counts>
std::string following(const site::Site& site, const std::string& first, Counts counts) {
  NumberedLabel highest;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    if (!counts(outlet)) continue;
    const NumberedLabel label = numberedLabel(outlet.label);
    if (label.number > highest.number) highest = label;
  }
  if (highest.number == 0) return first;
  return withNumber(highest.stem, highest.number + 1, highest.digits);
}

double lengthOf(const OutletRow& row) { return std::hypot(row.to.xM - row.from.xM, row.to.yM - row.from.yM); }

// One at `from`, and one at each whole spacing; a hair's breadth short counts as there.
double countOf(const OutletRow& row) { return std::floor(lengthOf(row) / row.spacing.si() + 1e-6) + 1.0; }

}  // namespace

const site::Room* roomAt(const site::Site& site, const site::Place& place) {
  for (const site::Room& room : site.all<site::Room>()) {
    if (room.floor == place.floor && room.outline.size() >= 3 && holds(room.outline, place.at)) return &room;
  }
  return nullptr;
}

std::string nextLabelBy(const site::Site& site, NumberBy by, const site::Place& place) {
  if (by == NumberBy::Building) return nextOutletLabel(site);
  const site::Room* room = by == NumberBy::Room ? roomAt(site, place) : nullptr;
  if (room != nullptr) {
    const std::string word = roomWord(*room);
    const std::string first = withNumber(word.empty() ? word : word + "-", 1, kFirstDigits);
    return following(site, first, [&](const site::Outlet& outlet) { return isIn(outlet, *room); });
  }
  const site::Floor* floor = site.find<site::Floor>(place.floor);
  const int level = floor != nullptr ? floor->level : 0;
  const std::string first = withNumber((level < 0 ? "B" : std::to_string(level + 1)) + "-", 1, kFirstDigits);
  return following(site, first, [&](const site::Outlet& o) { return o.place && o.place->floor == place.floor; });
}

std::vector<std::string> labelsFrom(const site::Site& site, const std::string& first, std::size_t count) {
  std::set<std::string> taken;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) taken.insert(outlet.label);
  const NumberedLabel start = numberedLabel(first);
  const std::string stem = start.digits == 0 && !first.empty() ? first + "-" : start.stem;
  std::vector<std::string> labels;
  for (int number = start.digits == 0 ? 1 : start.number; labels.size() < count; ++number) {
    std::string label = withNumber(stem, number, start.digits);
    if (!taken.contains(label)) labels.push_back(std::move(label));
  }
  return labels;
}

std::vector<geometry::Point> pointsOf(const OutletRow& row) {
  std::vector<geometry::Point> points;
  if (!(row.spacing.si() >= kShortestSpacingM)) return points;
  const double length = lengthOf(row);
  const auto count = static_cast<std::size_t>(std::min(countOf(row), static_cast<double>(kMostInRow)));
  for (std::size_t i = 0; i < count; ++i) {
    const double part = length > 0.0 ? static_cast<double>(i) * row.spacing.si() / length : 0.0;
    points.push_back({row.from.xM + (row.to.xM - row.from.xM) * part, row.from.yM + (row.to.yM - row.from.yM) * part});
  }
  return points;
}

EditResult addOutletRow(const site::Site& site, const OutletRow& row) {
  if (!(row.spacing.si() >= kShortestSpacingM)) return base::Error{"row.bad_spacing", {}, {}};
  if (countOf(row) > static_cast<double>(kMostInRow)) {
    return base::Error{"row.too_many", {}, {{"most", static_cast<double>(kMostInRow)}}};
  }
  const std::vector<geometry::Point> points = pointsOf(row);
  const std::vector<std::string> labels = labelsFrom(site, row.firstLabel, points.size());
  site::Site copy = site;
  site::Edit edit{"outlet.row", {}};
  for (std::size_t i = 0; i < points.size(); ++i) {
    const site::Place place{row.floor, points[i]};
    const NewEdit one = addOutlet(copy, {labels[i], place, row.receptacle, false, {}});
    if (!one) return one.error();
    site::Outlet outlet = *std::get<site::Change<site::Outlet>>(one.value().changes.front()).after;
    if (const site::Room* room = roomAt(site, place)) outlet.room = roomWord(*room);
    copy.all<site::Outlet>().put(outlet);
    edit.changes.emplace_back(site::Change<site::Outlet>{std::nullopt, std::move(outlet)});
  }
  return edit;
}

}  // namespace cordreach::app
