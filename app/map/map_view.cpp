// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_view.h"

#include <QAction>
#include <QComboBox>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QSignalBlocker>
#include <QTabBar>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <utility>

#include "look/look.h"
#include "map/arrange_menu.h"
#include "map/circuit_bar.h"
#include "map/list_bars.h"
#include "map/map_canvas.h"
#include "map/map_figures.h"
#include "map/map_key.h"
#include "map/map_menu.h"
#include "map/reach_bar.h"
#include "map/row_bar.h"
#include "map/volts_bar.h"
#include "shell/flat_tabs.h"
#include "survey/floor_picture.h"
#include "survey/picture_desk.h"

namespace cordreach::app {
namespace {

constexpr int kFloorDwellMs = 500;
constexpr int kHintMargin = 8;
constexpr int kToldMs = 8000;  // a refusal can be read that long

}  // namespace

MapView::MapView(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_canvas(new MapCanvas(session, m_moment, this)),
      m_key(new MapKey(session.book, this)),
      m_floors(flatTabs(this)),
      m_overlays(flatTabs(this)),
      m_moments(new QComboBox(this)),
      m_add(new QToolButton(this)),
      m_addMenu(new QMenu(m_add)),
      m_picture(new FloorPicture(session, *m_canvas, this)),
      m_pictures(new PictureDesk(session, *m_canvas, this)),
      m_rowBar(new RowBar(*m_canvas, this)),
      m_circuitBar(new CircuitBar(*m_canvas, this)),
      m_reachBar(new ReachBar(*m_canvas, this)),
      m_voltsBar(new VoltsBar(*m_canvas, this)),
      m_row(new QBoxLayout(QBoxLayout::LeftToRight)),
      m_hint(new QLabel(m_canvas)),
      m_floorDwell(new QTimer(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  buildRow();
  column->addWidget(m_rowBar);
  column->addWidget(m_circuitBar);
  buildBars();
  m_rowBar->hide();
  column->addWidget(m_canvas, 1);
  column->addWidget(m_key);
  m_hint->setAttribute(Qt::WA_TransparentForMouseEvents);
  m_hint->setAutoFillBackground(true);
  m_hint->setWordWrap(true);
  m_hint->setMargin(4);
  m_hint->hide();
  m_hint->setTextFormat(Qt::PlainText);
  m_canvas->installEventFilter(this);
  m_canvas->setAcceptDrops(true);
  m_floorDwell->setSingleShot(true);
  m_floorDwell->setInterval(kFloorDwellMs);
  buildTools();
  buildViewActions();
  connectAll();
  retranslate();
  fillFloors();
  fillMoments();
  refresh();
}

void MapView::connectAll() {
  connect(&m_session.document, &Document::changed, this, [this](const DocumentChange& change) {
    if (change.reset) m_picture->forget();  // whatever it was, it is read anew
    fillFloors();
    fillMoments();
    if (m_rowBar->isVisible()) m_rowBar->refresh();
    if (change.reset) {
      m_canvas->fit();
      m_moment.choose(std::nullopt);
    }
    refresh();
  });
  connect(&m_session.document, &Document::supposed, this, &MapView::refresh);
  connect(&m_session.judge, &JudgeService::judged, this, &MapView::refresh);
  connect(&m_session.selection, &Selection::changed, this, &MapView::refresh);
  connect(&m_session.selection, &Selection::shown, this, &MapView::showSubject);
  connect(&m_moment, &MapMoment::changed, this, [this] {
    fillMoments();
    refresh();
  });
  connect(m_floors, &QTabBar::currentChanged, this, [this](int index) {
    if (index >= 0 && index < static_cast<int>(m_floorIds.size())) {
      m_canvas->setFloor(m_floorIds[static_cast<std::size_t>(index)]);
      m_picture->follow();
      refresh();
    }
  });
  connect(m_overlays, &QTabBar::currentChanged, this, &MapView::overlayChanged);
  connect(m_moments, &QComboBox::activated, this, [this](int index) {
    m_moment.choose(index <= 0 ? std::optional<units::Duration>() : m_times[static_cast<std::size_t>(index - 1)]);
  });
  connect(m_canvas, &MapCanvas::scaleChanged, this, [this] { m_key->setScale(m_canvas->scale()); });
  connect(m_canvas, &MapCanvas::toolChanged, this, [this] {
    m_rowBar->setVisible(m_canvas->tool() == ToolKind::Row);
    m_rowBar->refresh();
    showHint(m_canvas->hint());
  });
  connect(m_canvas, &MapCanvas::penMoved, this, &MapView::showHint);
  connect(m_picture, &FloorPicture::told, this, &MapView::told);
  connect(m_canvas, &MapCanvas::pictureWanted, m_pictures, &PictureDesk::paste);
  connectHeld();
  connect(m_canvas, &MapCanvas::told, this, &MapView::told);
  connect(m_canvas, &MapCanvas::told, this, [this](const QString& sentence) {
    showHint(sentence);
    QTimer::singleShot(kToldMs, m_hint, [this, sentence] {
      if (m_hint->text() == sentence) m_hint->hide();
    });
  });
  connect(m_canvas, &MapCanvas::opened, this, &MapView::opened);
  connect(m_canvas, &MapCanvas::darkWanted, this, &MapView::darkWanted);
  connect(m_canvas, &MapCanvas::menuWanted, this, &MapView::showMenu);
}

void MapView::connectHeld() {
  connect(m_canvas, &MapCanvas::heldMoved, this, &MapView::heldOver);
  connect(m_canvas, &MapCanvas::floorWanted, this, &MapView::showFloor);
  connect(m_canvas, &MapCanvas::floorStepWanted, this, [this](int step) {
    const int index = m_floors->currentIndex() + step;
    if (index >= 0 && index < m_floors->count()) m_floors->setCurrentIndex(index);
  });
  connect(m_floorDwell, &QTimer::timeout, this, [this] {
    if (m_canvas->plugs().isHolding() && m_floorUnder >= 0) m_floors->setCurrentIndex(m_floorUnder);
  });
}

// The pointer belongs to the plan while its button is down, so the floors are told by it.
void MapView::heldOver(const QPoint& global) {
  const int under = m_floors->tabAt(m_floors->mapFromGlobal(global));
  if (under == m_floorUnder) return;
  m_floorUnder = under;
  if (under >= 0 && under != m_floors->currentIndex()) {
    m_floorDwell->start();
  } else {
    m_floorDwell->stop();
  }
}

void MapView::showHint(const QString& sentence) {
  m_hint->setText(sentence);
  m_hint->setVisible(!sentence.isEmpty());
  placeHint();
}

// Over the plan and not above it: a plan that moved when a plug is picked up would slip from under the pointer.
void MapView::placeHint() {
  const int wide = m_canvas->width() - 2 * kHintMargin;
  const QFontMetrics metrics(m_hint->font());
  const int needed = metrics.horizontalAdvance(m_hint->text()) + 2 * m_hint->margin() + 2;
  const int width = std::min(wide, needed);
  const int height = m_hint->heightForWidth(width);
  m_hint->setGeometry(kHintMargin, m_canvas->height() - height - kHintMargin / 2, width, height);
}

bool MapView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_canvas && event->type() == QEvent::Resize) placeHint();
  if (watched == m_canvas && (event->type() == QEvent::DragEnter || event->type() == QEvent::Drop)) {
    return m_pictures->takeDrop(static_cast<QDropEvent&>(*event));
  }
  return QWidget::eventFilter(watched, event);
}

// While something else is in front, nobody sees it.
void MapView::refresh() {
  m_stale = !isVisible();
  if (m_stale) return;
  m_canvas->refresh();
  if (OverlayBar* bar = barOf(m_canvas->overlay())) bar->refresh();
}

void MapView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  m_rowBar->refresh();
  if (m_stale) refresh();
}

void MapView::overlayChanged() {
  m_canvas->setOverlay(static_cast<Overlay>(m_overlays->currentIndex()));
  // The one that goes takes its figures along before the next puts up its own.
  OverlayBar* front = barOf(m_canvas->overlay());
  for (const auto& [overlay, bar] : m_bars) {
    if (bar != front) bar->setInFront(false);
  }
  if (front != nullptr) front->setInFront(true);
}

OverlayBar* MapView::barOf(Overlay overlay) const {
  const auto at = std::find_if(m_bars.begin(), m_bars.end(), [&](const auto& one) { return one.first == overlay; });
  return at == m_bars.end() ? nullptr : at->second;
}

void MapView::buildBars() {
  auto* near = new NearBar(*m_canvas, this);
  auto* hot = new HotBar(*m_canvas, this);
  connect(near, &NearBar::listWanted, this, &MapView::nearLimitWanted);
  connect(hot, &HotBar::listWanted, this, &MapView::hotWanted);
  m_bars = {{Overlay::AmpsLeft, near}, {Overlay::Volts, m_voltsBar}, {Overlay::Hot, hot}, {Overlay::Reach, m_reachBar}};
  QWidget* before = m_circuitBar;
  for (const auto& [overlay, bar] : m_bars) {
    layout()->addWidget(bar);
    setTabOrder(before, bar);
    before = bar;
  }
  setTabOrder(before, m_canvas);
}

void MapView::showOverlay(Overlay overlay) { m_overlays->setCurrentIndex(static_cast<int>(overlay)); }

void MapView::showFloor(const site::FloorId& floor) {
  const auto at = std::find(m_floorIds.begin(), m_floorIds.end(), floor);
  if (at != m_floorIds.end()) m_floors->setCurrentIndex(static_cast<int>(at - m_floorIds.begin()));
}

void MapView::showSubject(const rules::Subject& subject) {
  if (m_stale) m_canvas->refresh();
  const int before = m_floors->currentIndex();
  for (int i = 0; i < m_floors->count() && !m_canvas->itemFor(subject); ++i) m_floors->setCurrentIndex(i);
  if (!m_canvas->itemFor(subject)) return m_floors->setCurrentIndex(before);
  m_canvas->reveal(subject);
}

void MapView::showMenu(const QPoint& global) {
  if (m_session.selection.chosen().empty()) return;
  QMenu menu(this);
  fillArrangeMenu(menu, *m_canvas);
  if (const auto single = m_session.selection.single()) {
    fillMenu(menu, *m_canvas, *single);
  } else {
    connect(menu.addAction(say(m_session.book, "map.menu.delete")), &QAction::triggered, m_canvas,
            &MapCanvas::deleteChosen);
  }
  menu.exec(global);
}

void MapView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  const auto type = event->type();
  if (type == QEvent::LanguageChange || type == QEvent::FontChange || type == QEvent::PaletteChange) {
    retranslate();
    fillMoments();
    m_key->update();
    m_canvas->refresh();
  }
}

}  // namespace cordreach::app
