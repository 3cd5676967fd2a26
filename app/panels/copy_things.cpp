// SPDX-License-Identifier: GPL-3.0-or-later
// Copies of things, and what an edit added.
#include <algorithm>

#include "panels/fresh_id.h"
#include "panels/new_things.h"

namespace cordreach::app {

namespace {

using rules::Subject;
using rules::SubjectKind;

constexpr double kBesideM = 1.0;

void moveBeside(std::optional<site::Place>& place) {
  if (place) place->at.xM += kBesideM;
}

// Wall to wall with the first.
void moveAside(site::Room& room) {
  const auto [left, right] = std::ranges::minmax(room.outline, {}, &geometry::Point::xM);
  for (geometry::Point& corner : room.outline) corner.xM += right.xM - left.xM;
}

// Labels go on counting from one copy to the next, as each is already in the site.
template <class T, class Alter>
void copyOne(site::Site& copy, const std::string& id, site::Edit& edit, Alter alter) {
  const T* original = copy.find<T>(decltype(T::id)(id));
  if (original == nullptr) return;
  T twin = *original;
  twin.id = freshId<T>(copy);
  alter(twin);
  copy.all<T>().put(twin);
  edit.changes.emplace_back(site::Change<T>{std::nullopt, std::move(twin)});
}

void copySubject(site::Site& copy, const Subject& subject, site::Edit& edit) {
  switch (subject.kind) {
    case SubjectKind::Outlet:
      return copyOne<site::Outlet>(copy, subject.id, edit, [&](site::Outlet& twin) {
        twin.label = nextOutletLabel(copy);
        moveBeside(twin.place);
      });
    case SubjectKind::Machine:
      return copyOne<site::Machine>(copy, subject.id, edit, [](site::Machine& twin) { moveBeside(twin.place); });
    case SubjectKind::FixedLoad:
      return copyOne<site::FixedLoad>(copy, subject.id, edit, [](site::FixedLoad& twin) {
        twin.outlet.reset();  // its socket is taken by the first
        twin.contact.clear();
        moveBeside(twin.place);
      });
    case SubjectKind::Cord:
      return copyOne<site::Cord>(copy, subject.id, edit, [&](site::Cord& twin) { twin.label = nextCordLabel(copy); });
    case SubjectKind::Pad:
      return copyOne<site::Pad>(copy, subject.id, edit, [](site::Pad&) {});
    case SubjectKind::Room:
      return copyOne<site::Room>(copy, subject.id, edit, [](site::Room& twin) { moveAside(twin); });
    case SubjectKind::Hookup:
    case SubjectKind::Circuit:
    case SubjectKind::Panel:
      return;
  }
}

template <class T>
std::optional<Subject> leftBy(const site::AnyChange& change, SubjectKind kind, bool onlyNew) {
  const auto* one = std::get_if<site::Change<T>>(&change);
  if (one == nullptr || (onlyNew && one->before) || !one->after) return std::nullopt;
  return Subject{kind, one->after->id.text()};
}

std::optional<Subject> firstLeft(const site::Edit& edit, bool onlyNew) {
  for (const site::AnyChange& change : edit.changes) {
    for (const auto& subject :
         {leftBy<site::Outlet>(change, SubjectKind::Outlet, onlyNew),
          leftBy<site::Panel>(change, SubjectKind::Panel, onlyNew),
          leftBy<site::Circuit>(change, SubjectKind::Circuit, onlyNew),
          leftBy<site::FixedLoad>(change, SubjectKind::FixedLoad, onlyNew),
          leftBy<site::Machine>(change, SubjectKind::Machine, onlyNew),
          leftBy<site::Cord>(change, SubjectKind::Cord, onlyNew), leftBy<site::Pad>(change, SubjectKind::Pad, onlyNew),
          leftBy<site::Hookup>(change, SubjectKind::Hookup, onlyNew),
          leftBy<site::Room>(change, SubjectKind::Room, onlyNew)}) {
      if (subject) return subject;
    }
  }
  return std::nullopt;
}

}  // namespace

site::Edit copyOf(const site::Site& site, const std::vector<Subject>& subjects) {
  site::Site copy = site;
  site::Edit edit{"thing.copy", {}};
  for (const Subject& subject : subjects) copySubject(copy, subject, edit);
  return edit;
}

std::optional<Subject> addedBy(const site::Edit& edit) { return firstLeft(edit, true); }

std::optional<Subject> changedBy(const site::Edit& edit) { return firstLeft(edit, false); }

}  // namespace cordreach::app
