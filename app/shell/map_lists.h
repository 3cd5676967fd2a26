// SPDX-License-Identifier: GPL-3.0-or-later
// The lists that lead to places of the map, and the going there: what was sought, what is on a breaker, what is near
// its limit, what is hot.
#pragma once

#include <QObject>
#include <QPointer>
#include <functional>

#include "document/session.h"
#include "rules/finding.h"

namespace cordreach::app {

class FindDialog;
class MapPlace;
class PlacesDialog;
struct PlaceList;

class MapLists : public QObject {
  Q_OBJECT

 public:
  MapLists(Session& session, MapPlace& place);

  void find();
  void showNearLimit();
  void showHot();
  // Chooses the breakers too, so that the plan shows what they feed. Nothing chosen that a breaker feeds: that is said.
  void showDark(const rules::Subject& subject);
  void showDarkOfChosen();

  // On its floor, chosen, in sight.
  void goTo(const rules::Subject& subject);

  [[nodiscard]] FindDialog* finder() const { return m_finder; }  // null: not yet asked for
  [[nodiscard]] PlacesDialog* places() const;                    // null: none is open

 private:
  void open(std::function<PlaceList()> make);
  void showRoom(const site::Room& room);

  Session& m_session;
  MapPlace& m_place;
  FindDialog* m_finder = nullptr;
  QPointer<PlacesDialog> m_places;
};

}  // namespace cordreach::app
