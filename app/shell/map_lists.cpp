// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/map_lists.h"

#include <algorithm>

#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/find_dialog.h"
#include "panels/place_list.h"
#include "panels/places_dialog.h"
#include "shell/map_place.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

using rules::SubjectKind;

constexpr std::size_t kMostHot = 60;
constexpr int kFromEdge = 12;
constexpr int kFromTop = 150;

}  // namespace

MapLists::MapLists(Session& session, MapPlace& place) : QObject(&place), m_session(session), m_place(place) {}

PlacesDialog* MapLists::places() const { return m_places; }

void MapLists::find() {
  if (m_finder == nullptr) {
    m_finder = new FindDialog(m_session, &m_place);
    connect(m_finder, &FindDialog::wanted, this, &MapLists::goTo);
  }
  m_finder->begin();
}

void MapLists::open(std::function<PlaceList()> make) {
  delete m_places;
  m_places = new PlacesDialog(m_session, std::move(make), &m_place);
  m_places->setAttribute(Qt::WA_DeleteOnClose);
  connect(m_places, &PlacesDialog::wanted, this, &MapLists::goTo);
  // Over the column at the right, so that the plan stays in sight.
  const QRect window = m_place.window()->geometry();
  m_places->move(window.right() - m_places->width() - kFromEdge, window.top() + kFromTop);
  m_places->show();
}

void MapLists::showNearLimit() {
  open([this] { return nearLimitList(m_session.book, m_session.document.site()); });
}

void MapLists::showHot() {
  open([this] {
    const auto verdict = m_session.judge.last();
    if (verdict != nullptr) return hotList(m_session.book, *verdict, kMostHot);
    return PlaceList{say(m_session.book, "place.hot.title"), say(m_session.book, "map.hot.waiting"), {}, {}};
  });
}

void MapLists::showDark(const rules::Subject& subject) {
  std::vector<rules::Subject> breakers;
  for (const site::CircuitId& circuit : breakersOf(m_session.document.site(), subject)) {
    breakers.push_back({SubjectKind::Circuit, circuit.text()});
  }
  if (!breakers.empty()) {
    m_place.showSide(MapSide::Plan);
    m_session.selection.choose(std::move(breakers));
  }
  open([this, subject] { return darkList(m_session.book, m_session.document.site(), subject); });
}

void MapLists::showDarkOfChosen() {
  const auto single = m_session.selection.single();
  if (single) return showDark(*single);
  emit m_place.refused(say(m_session.book, "place.dark.choose"));
}

void MapLists::goTo(const rules::Subject& subject) {
  m_place.showSide(MapSide::Plan);
  m_session.selection.choose({subject});
  const site::Site& site = m_session.document.site();
  const site::Room* room =
      subject.kind == SubjectKind::Room ? site.find<site::Room>(site::RoomId(subject.id)) : nullptr;
  if (room != nullptr) {
    showRoom(*room);
  } else {
    m_session.selection.show(subject);
  }
  m_place.view()->canvas().setFocus();
}

// All of it, on its floor.
void MapLists::showRoom(const site::Room& room) {
  m_place.view()->showFloor(room.floor);
  QPolygonF outline;
  for (const geometry::Point& point : room.outline) outline << QPointF(point.xM, point.yM);
  if (!outline.isEmpty()) m_place.view()->canvas().revealArea(outline.boundingRect());
}

}  // namespace cordreach::app
