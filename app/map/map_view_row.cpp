// SPDX-License-Identifier: GPL-3.0-or-later
// The rows over the plan: floors, moment and overlays, the tools, and the words of all of them.
#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QSignalBlocker>
#include <QTabBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <utility>

#include "look/look.h"
#include "map/circuit_bar.h"
#include "map/map_canvas.h"
#include "map/map_figures.h"
#include "map/map_view.h"
#include "map/row_bar.h"
#include "shell/flat_tabs.h"
#include "site/floor_order.h"
#include "survey/floor_picture.h"
#include "survey/picture_desk.h"

namespace cordreach::app {
namespace {

const std::array<const char*, 6> kOverlayWords{"map.overlay.wiring", "map.overlay.amps_left", "map.overlay.volts",
                                               "map.overlay.hot",    "map.overlay.reach",     "map.overlay.trust"};
const std::array<std::pair<ToolKind, const char*>, 10> kTools{{{ToolKind::Outlet, "map.tool.outlet"},
                                                               {ToolKind::Row, "map.tool.row"},
                                                               {ToolKind::Panel, "map.tool.panel"},
                                                               {ToolKind::Machine, "map.tool.machine"},
                                                               {ToolKind::Load, "map.tool.load"},
                                                               {ToolKind::Wall, "map.tool.wall"},
                                                               {ToolKind::Room, "map.tool.room"},
                                                               {ToolKind::Corridor, "map.tool.corridor"},
                                                               {ToolKind::Run, "map.tool.run"},
                                                               {ToolKind::Circuit, "map.tool.circuit"}}};

constexpr int kRowGap = 14;

}  // namespace

void MapView::buildRow() {
  auto* floors = new QHBoxLayout;
  floors->setSpacing(kRowGap);
  floors->addWidget(m_floors);
  floors->addWidget(m_add);
  floors->addStretch(1);
  auto* overlays = new QHBoxLayout;
  overlays->setSpacing(kRowGap);
  overlays->addWidget(m_moments);
  overlays->addWidget(m_overlays);
  m_row->addLayout(floors, 1);
  m_row->addLayout(overlays);
  static_cast<QVBoxLayout*>(layout())->addLayout(m_row);
  for (const char* code : kOverlayWords) m_overlays->addTab(say(m_session.book, code));
  stepByKeys(m_overlays, this, [this] { m_canvas->setFocus(); });
  setTabOrder(m_floors, m_add);
  setTabOrder(m_add, m_moments);
  setTabOrder(m_moments, m_overlays);
  setTabOrder(m_overlays, m_rowBar);
  setTabOrder(m_rowBar, m_circuitBar);
  setTabOrder(m_circuitBar, m_canvas);
}

// One row where everything fits, else the overlays under the floors: tabs never hide behind scroll arrows.
void MapView::fitRow() {
  int needed = 0;
  for (const QWidget* part : std::initializer_list<const QWidget*>{m_floors, m_add, m_moments, m_overlays}) {
    needed += part->sizeHint().width() + kRowGap;
  }
  m_row->setDirection(needed <= width() ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void MapView::buildTools() {
  m_add->setMenu(m_addMenu);
  m_add->setPopupMode(QToolButton::InstantPopup);
  m_add->setAutoRaise(true);
  for (const auto& [kind, code] : kTools) {
    QAction* action = m_addMenu->addAction(QString());
    action->setProperty("code", code);
    connect(action, &QAction::triggered, this, [this, kind = kind] {
      m_canvas->use(kind);
      m_canvas->setFocus();
    });
  }
  m_addMenu->addSeparator();
  m_addMenu->addMenu(m_pictures->menu());
}

// Offered to the window's View menu; the keys are the plan's own.
void MapView::buildViewActions() {
  const auto add = [this](const char* code, auto act) {
    auto* action = new QAction(m_canvas);
    action->setProperty("menu", "view");
    action->setProperty("code", code);
    connect(action, &QAction::triggered, m_canvas, act);
    m_canvas->addAction(action);
  };
  const auto middle = [this] { return QPointF(m_canvas->rect().center()); };
  add("map.action.zoom_in", [this, middle] { m_canvas->zoomBy(1.25, middle()); });
  add("map.action.zoom_out", [this, middle] { m_canvas->zoomBy(0.8, middle()); });
  add("map.action.fit", [this] { m_canvas->fit(); });
}

void MapView::retranslate() {
  const text::Phrasebook& book = m_session.book;
  for (int i = 0; i < m_overlays->count(); ++i) {
    m_overlays->setTabText(i, say(book, kOverlayWords[static_cast<std::size_t>(i)]));
  }
  m_add->setText(say(book, "map.add"));
  for (QAction* action : m_addMenu->actions()) {
    const QString code = action->property("code").toString();
    if (!code.isEmpty()) action->setText(say(book, code.toStdString()));
  }
  m_pictures->reword();
  m_rowBar->reword();
  for (QAction* action : m_canvas->actions()) {
    const QString code = action->property("code").toString();
    if (!code.isEmpty()) action->setText(say(book, code.toStdString()));
  }
  m_floors->setAccessibleName(say(book, "map.floors"));
  m_overlays->setAccessibleName(say(book, "map.overlays"));
  m_moments->setAccessibleName(say(book, "map.moments"));
  m_canvas->setAccessibleName(say(book, "map.plan"));
  m_hint->setFont(look::font(look::Type::Caption));
  styleTabs();
}

void MapView::styleTabs() {
  m_floors->setStyleSheet(flatTabStyle());
  m_overlays->setStyleSheet(flatTabStyle());
  fitRow();
}

void MapView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitRow();
}

void MapView::fillFloors() {
  const auto current = m_canvas->floor();
  const QSignalBlocker quiet(m_floors);
  while (m_floors->count() > 0) m_floors->removeTab(0);
  m_floorIds.clear();
  int chosen = 0;
  for (const site::Floor* floor : site::floorsByLevel(m_session.document.site())) {
    m_floors->addTab(QString::fromStdString(floor->name));
    if (current == floor->id) chosen = static_cast<int>(m_floorIds.size());
    m_floorIds.push_back(floor->id);
  }
  m_floors->setCurrentIndex(m_floorIds.empty() ? -1 : chosen);
  m_canvas->setFloor(m_floorIds.empty() ? std::optional<site::FloorId>()
                                        : m_floorIds[static_cast<std::size_t>(chosen)]);
  m_picture->follow();
  fitRow();
}

void MapView::fillMoments() {
  m_times = momentsOf(m_session.document.site());
  const QSignalBlocker quiet(m_moments);
  m_moments->clear();
  m_moments->addItem(say(m_session.book, "map.moment.all"));
  int chosen = 0;
  for (const units::Duration& time : m_times) {
    m_moments->addItem(timeText(m_session.book, time));
    if (m_moment.chosen() == time) chosen = m_moments->count() - 1;
  }
  m_moments->setCurrentIndex(chosen);
  m_moments->setVisible(!m_times.empty());
}

}  // namespace cordreach::app
