// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/map_place.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include "map/map_canvas.h"
#include "map/map_view.h"
#include "panels/add_menu.h"
#include "panels/findings_panel.h"
#include "panels/selection_panel.h"
#include "shell/site_verdict.h"

namespace cordreach::app {

namespace {
constexpr int kMargin = 24;
constexpr int kGap = 28;
}  // namespace

MapPlace::MapPlace(Session& session, QWidget* parent)
    : Place(parent),
      m_verdict(new SiteVerdict(session, this)),
      m_view(new MapView(session, this)),
      m_column(new QWidget(this)),
      m_findings(new FindingsPanel(session, m_column)),
      m_selection(new SelectionPanel(session, m_column)),
      m_add(new AddMenu(
          session, [this] { return middle(); }, this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kMargin, 0, kMargin, 12);
  row->setSpacing(kGap);
  row->addWidget(m_view, 1);
  row->addWidget(m_column);
  auto* column = new QVBoxLayout(m_column);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kMargin);
  column->addWidget(m_findings, 1);
  column->addWidget(m_selection, 1);
  connect(m_findings, &FindingsPanel::refused, this, &Place::refused);
  connect(m_selection, &SelectionPanel::refused, this, &Place::refused);
}

VerdictSource* MapPlace::verdict() const { return m_verdict; }

QWidget* MapPlace::work() const { return &m_view->canvas(); }

void MapPlace::setColumn(int width, bool visible) {
  m_column->setFixedWidth(width);
  m_column->setVisible(visible);
}

void MapPlace::changeEvent(QEvent* event) {
  Place::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) m_verdict->reword();
}

std::optional<site::Place> MapPlace::middle() const {
  const MapCanvas& canvas = m_view->canvas();
  if (!canvas.floor()) return std::nullopt;
  const QPointF metres = canvas.toPlan(QPointF(canvas.width(), canvas.height()) / 2) / canvas.scale();
  return site::Place{*canvas.floor(), {metres.x(), metres.y()}};
}

}  // namespace cordreach::app
