// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/arrange_edits.h"

#include <algorithm>

#include "map/row_edits.h"
#include "panels/fresh_id.h"

namespace cordreach::app {
namespace {

double geometry::Point::*coordinate(Arrangement arrangement) {
  const bool across = arrangement == Arrangement::Column || arrangement == Arrangement::SpreadAcross;
  return across ? &geometry::Point::xM : &geometry::Point::yM;
}

Moved movedTo(const Standing& thing, double geometry::Point::*which, double wanted) {
  const double way = wanted - thing.at.*which;
  return {thing.subject, which == &geometry::Point::xM ? Shift{way, 0} : Shift{0, way}};
}

}  // namespace

std::vector<Moved> arranged(std::vector<Standing> things, Arrangement arrangement) {
  std::vector<Moved> moved;
  if (things.size() < 2) return moved;
  const auto which = coordinate(arrangement);
  const bool inLine = arrangement == Arrangement::Row || arrangement == Arrangement::Column;
  const double line = things.front().at.*which;
  if (!inLine)
    std::ranges::stable_sort(things, [&](const auto& a, const auto& b) { return a.at.*which < b.at.*which; });
  const double first = things.front().at.*which;
  const double step = (things.back().at.*which - first) / static_cast<double>(things.size() - 1);
  for (std::size_t i = 0; i < things.size(); ++i) {
    moved.push_back(movedTo(things[i], which, inLine ? line : first + step * static_cast<double>(i)));
  }
  return moved;
}

EditResult copyToFloor(const site::Site& site, const std::vector<rules::Subject>& subjects,
                       const site::FloorId& floor) {
  site::Site copy = site;
  site::Edit edit{"things.copy_to_floor", {}};
  for (const rules::Subject& subject : subjects) {
    if (subject.kind != rules::SubjectKind::Outlet) continue;
    const site::Outlet* original = site.find<site::Outlet>(site::OutletId(subject.id));
    if (original == nullptr || !original->place) continue;
    site::Outlet twin = *original;
    twin.id = freshId<site::Outlet>(copy);
    twin.place->floor = floor;
    const std::string first = nextLabelBy(copy, NumberBy::Floor, *twin.place);
    twin.label = labelsFrom(copy, first, 1).front();
    twin.room.clear();
    for (site::Contact& contact : twin.contacts) {
      contact.assignment.reset();
      contact.poles.clear();
      contact.directory.clear();
    }
    copy.all<site::Outlet>().put(twin);
    edit.changes.emplace_back(site::Change<site::Outlet>{std::nullopt, std::move(twin)});
  }
  if (edit.changes.empty()) return base::Error{"copy.nothing", {}, {}};
  return edit;
}

}  // namespace cordreach::app
