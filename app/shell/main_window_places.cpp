// SPDX-License-Identifier: GPL-3.0-or-later
// The places of the window: one tab and one key each, one of them in front.
#include <QMenu>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <algorithm>
#include <array>

#include "desk/cord_place.h"
#include "heat/heat_place.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "shell/main_window.h"
#include "shell/map_place.h"
#include "shell/place_tabs.h"
#include "shell/say.h"
#include "shell/top_row.h"
#include "shell/verdict_band.h"

namespace cordreach::app {

namespace {

// The order of the tabs and, from 1, the digit that calls each with Ctrl; a place keeps its digit whichever are built.
constexpr std::array kOrder = {"map", "cord", "heat", "shift", "papers"};

std::size_t orderOf(const Place& place) {
  const auto* at = std::find(kOrder.begin(), kOrder.end(), place.code());
  return static_cast<std::size_t>(at - kOrder.begin());
}

}  // namespace

// Every place of the window is made here.
void MainWindow::buildPlaces() {
  addPlace(m_map);
  addPlace(new CordPlace(m_session));
  addPlace(new HeatPlace(m_session));
  m_band->setSource(m_map->verdict());
  rememberSurveyor();
}

// Who they are stays from one day to the next; how they know a thing does not.
void MainWindow::rememberSurveyor() {
  Surveyor& surveyor = m_map->view()->canvas().brush().surveyor;
  surveyor.set(surveyor.found().how, m_settings.surveyor());
  connect(&surveyor, &Surveyor::changed, this, [this, &surveyor] { m_settings.setSurveyor(surveyor.found().who); });
}

void MainWindow::addPlace(Place* place) {
  const auto before = [](const Place* a, const Place* b) { return orderOf(*a) < orderOf(*b); };
  m_places.insert(std::upper_bound(m_places.begin(), m_places.end(), place, before), place);
  m_stack->addWidget(place);
  connect(place, &Place::refused, this, &MainWindow::showNotice);
  connect(place->verdict(), &VerdictSource::refused, this, &MainWindow::showNotice);
}

void MainWindow::buildPlaceActions(QMenu* menu) {
  PlaceTabs* tabs = m_top->places();
  for (Place* place : m_places) {
    const std::string action = "window.action." + place->code();
    const auto key = static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(orderOf(*place)));
    add(menu, action.c_str(), QKeySequence(Qt::CTRL | key), [this, place] {
      showPlace(place);
      place->work()->setFocus(Qt::ShortcutFocusReason);
    });
    tabs->addTab({});
  }
  nameTabs();
  connect(tabs, &QTabBar::currentChanged, this, [this](int index) { showPlace(m_places.at(std::size_t(index))); });
  Place* last = placeOf(m_settings.place());
  showPlace(last != nullptr ? last : m_map);
}

void MainWindow::nameTabs() {
  for (std::size_t i = 0; i < m_places.size(); ++i) {
    m_top->places()->setTabText(static_cast<int>(i), say(m_book, "window.place." + m_places[i]->code()));
  }
}

Place* MainWindow::place() const { return static_cast<Place*>(m_stack->currentWidget()); }

Place* MainWindow::placeOf(const std::string& code) const {
  const auto at = std::find_if(m_places.begin(), m_places.end(), [&](Place* one) { return one->code() == code; });
  return at == m_places.end() ? nullptr : *at;
}

void MainWindow::showPlace(Place* place) {
  // Only the place in front asks for height: what the others need must not push the band's last line out of sight.
  for (Place* one : m_places) {
    one->setSizePolicy(QSizePolicy::Preferred, one == place ? QSizePolicy::Preferred : QSizePolicy::Ignored);
  }
  m_stack->setCurrentWidget(place);
  {
    const QSignalBlocker quiet(m_top->places());
    m_top->places()->setCurrentIndex(
        static_cast<int>(std::find(m_places.begin(), m_places.end(), place) - m_places.begin()));
  }
  m_band->setSource(place->verdict());
  for (QAction* action : m_ofTheMap) action->setEnabled(place == m_map);
  m_settings.setPlace(place->code());
}

}  // namespace cordreach::app
