// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/map_place.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>
#include <array>

#include "listings/listing_table.h"
#include "listings/listings_view.h"
#include "listings/schedule_view.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/add_menu.h"
#include "panels/findings_panel.h"
#include "panels/selection_panel.h"
#include "shell/flat_tabs.h"
#include "shell/map_lists.h"
#include "shell/say.h"
#include "shell/site_verdict.h"

namespace cordreach::app {

namespace {
constexpr int kMargin = 24;
constexpr int kGap = 28;
constexpr std::array kSideWords = {"window.side.plan", "window.side.lists", "window.side.panels"};
}  // namespace

MapPlace::MapPlace(Session& session, QWidget* parent)
    : Place(parent),
      m_session(session),
      m_verdict(new SiteVerdict(session, this)),
      m_sides(flatTabs(this)),
      m_stack(new QStackedWidget(this)),
      m_view(new MapView(session, m_stack)),
      m_lists(new ListingsView(session, m_view->canvas().brush().surveyor, m_stack)),
      m_schedules(new ScheduleView(session, m_view->canvas().brush().surveyor, m_stack)),
      m_column(new QWidget(this)),
      m_findings(new FindingsPanel(session, m_column)),
      m_selection(new SelectionPanel(session, m_column)),
      m_add(new AddMenu(
          session, [this] { return middle(); }, this)),
      m_placeLists(new MapLists(session, *this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, kMargin, 12);
  row->setSpacing(0);
  // In the margin, so that the plan keeps its height.
  m_sides->setShape(QTabBar::RoundedWest);
  m_sides->setUsesScrollButtons(false);
  auto* edge = new QVBoxLayout;
  edge->addWidget(m_sides);
  edge->addStretch(1);
  row->addLayout(edge);
  row->addWidget(m_stack, 1);
  row->addSpacing(kGap);
  row->addWidget(m_column);
  for (QWidget* side : std::initializer_list<QWidget*>{m_view, m_lists, m_schedules}) m_stack->addWidget(side);
  for (const char* code : kSideWords) m_sides->addTab(say(session.book, code));
  m_sides->setMinimumWidth(kMargin);
  auto* column = new QVBoxLayout(m_column);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kMargin);
  column->addWidget(m_findings, 1);
  column->addWidget(m_selection, 1);
  connect(m_sides, &QTabBar::currentChanged, m_stack, &QStackedWidget::setCurrentIndex);
  connect(m_lists, &ListingsView::refused, this, &Place::refused);
  connect(m_schedules, &ScheduleView::refused, this, &Place::refused);
  connect(m_findings, &FindingsPanel::refused, this, &Place::refused);
  connect(m_selection, &SelectionPanel::refused, this, &Place::refused);
  connect(m_selection, &SelectionPanel::darkWanted, m_placeLists, &MapLists::showDark);
  connect(m_view, &MapView::darkWanted, m_placeLists, &MapLists::showDark);
  connect(m_view, &MapView::nearLimitWanted, m_placeLists, &MapLists::showNearLimit);
  connect(m_view, &MapView::hotWanted, m_placeLists, &MapLists::showHot);
  nameSides();
}

VerdictSource* MapPlace::verdict() const { return m_verdict; }

QWidget* MapPlace::work() const {
  switch (side()) {
    case MapSide::Plan:
      break;
    case MapSide::Lists:
      return m_lists->table();
    case MapSide::Panels:
      return m_schedules->table();
  }
  return &m_view->canvas();
}

MapSide MapPlace::side() const { return static_cast<MapSide>(m_stack->currentIndex()); }

void MapPlace::showSide(MapSide side) { m_sides->setCurrentIndex(static_cast<int>(side)); }

void MapPlace::nameSides() {
  m_sides->setStyleSheet(flatTabStyle("right"));
  m_sides->setAccessibleName(say(m_session.book, "window.sides"));
  for (int i = 0; i < m_sides->count(); ++i) {
    m_sides->setTabText(i, say(m_session.book, kSideWords.at(static_cast<std::size_t>(i))));
  }
}

void MapPlace::setColumn(int width, bool visible) {
  m_column->setFixedWidth(width);
  m_column->setVisible(visible);
}

void MapPlace::changeEvent(QEvent* event) {
  Place::changeEvent(event);
  const auto type = event->type();
  if (type == QEvent::LanguageChange) m_verdict->reword();
  if (type == QEvent::LanguageChange || type == QEvent::PaletteChange || type == QEvent::FontChange) nameSides();
}

std::optional<site::Place> MapPlace::middle() const {
  const MapCanvas& canvas = m_view->canvas();
  if (!canvas.floor()) return std::nullopt;
  const QPointF metres = canvas.toPlan(QPointF(canvas.width(), canvas.height()) / 2) / canvas.scale();
  return site::Place{*canvas.floor(), {metres.x(), metres.y()}};
}

}  // namespace cordreach::app
