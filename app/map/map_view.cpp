// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_view.h"

#include <QAction>
#include <QComboBox>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPixmap>
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
#include "map/map_accessible.h"
#include "map/map_canvas.h"
#include "map/map_figures.h"
#include "map/map_key.h"
#include "map/map_menu.h"
#include "map/row_bar.h"
#include "shell/flat_tabs.h"
#include "survey/picture_desk.h"
#include "survey/picture_files.h"
#include "survey/picture_read.h"

namespace cordreach::app {
namespace {

const std::array<const char*, 5> kOverlayWords{"map.overlay.wiring", "map.overlay.amps_left", "map.overlay.volts",
                                               "map.overlay.reach", "map.overlay.trust"};
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

constexpr int kFloorDwellMs = 500;
constexpr int kRowGap = 14;
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
      m_pictures(new PictureDesk(session, *m_canvas, this)),
      m_rowBar(new RowBar(*m_canvas, this)),
      m_circuitBar(new CircuitBar(*m_canvas, this)),
      m_row(new QBoxLayout(QBoxLayout::LeftToRight)),
      m_hint(new QLabel(m_canvas)),
      m_floorDwell(new QTimer(this)) {
  installMapAccessibility();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  buildRow();
  column->addWidget(m_rowBar);
  column->addWidget(m_circuitBar);
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

void MapView::connectAll() {
  connect(&m_session.document, &Document::changed, this, [this](const DocumentChange& change) {
    if (change.reset) m_pictureShown = QStringLiteral("?");  // whatever it was, it is read anew
    fillFloors();
    fillMoments();
    m_rowBar->refresh();
    if (change.reset) {
      m_canvas->fit();
      m_moment.choose(std::nullopt);
    }
    refresh();
  });
  connect(&m_session.document, &Document::supposed, this, &MapView::refresh);
  connect(&m_session.judge, &JudgeService::judged, this, &MapView::refresh);
  connect(&m_session.judge, &JudgeService::busyChanged, this, &MapView::refresh);
  connect(&m_session.selection, &Selection::changed, this, &MapView::refresh);
  connect(&m_session.selection, &Selection::shown, this, &MapView::showSubject);
  connect(&m_moment, &MapMoment::changed, this, [this] {
    fillMoments();
    refresh();
  });
  connect(m_floors, &QTabBar::currentChanged, this, [this](int index) {
    if (index >= 0 && index < static_cast<int>(m_floorIds.size())) {
      m_canvas->setFloor(m_floorIds[static_cast<std::size_t>(index)]);
      loadPicture();
    }
  });
  connect(m_overlays, &QTabBar::currentChanged, this,
          [this](int index) { m_canvas->setOverlay(static_cast<Overlay>(index)); });
  connect(m_moments, &QComboBox::activated, this, [this](int index) {
    m_moment.choose(index <= 0 ? std::optional<units::Duration>() : m_times[static_cast<std::size_t>(index - 1)]);
  });
  connect(m_canvas, &MapCanvas::scaleChanged, this, [this] { m_key->setScale(m_canvas->scale()); });
  connect(m_canvas, &MapCanvas::toolChanged, this, [this] {
    m_rowBar->setVisible(m_canvas->tool() == ToolKind::Row);
    m_rowBar->refresh();
    showHint(m_canvas->hint());
  });
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

void MapView::styleTabs() {
  m_floors->setStyleSheet(flatTabStyle());
  m_overlays->setStyleSheet(flatTabStyle());
  fitRow();
}

void MapView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitRow();
}

bool MapView::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_canvas && event->type() == QEvent::Resize) placeHint();
  if (watched == m_canvas && (event->type() == QEvent::DragEnter || event->type() == QEvent::Drop)) {
    return m_pictures->takeDrop(static_cast<QDropEvent&>(*event));
  }
  return QWidget::eventFilter(watched, event);
}

void MapView::fillFloors() {
  std::vector<const site::Floor*> floors;
  for (const site::Floor& floor : m_session.document.site().all<site::Floor>()) floors.push_back(&floor);
  std::stable_sort(floors.begin(), floors.end(), [](const auto* a, const auto* b) { return a->level < b->level; });
  const auto current = m_canvas->floor();
  const QSignalBlocker quiet(m_floors);
  while (m_floors->count() > 0) m_floors->removeTab(0);
  m_floorIds.clear();
  int chosen = 0;
  for (const site::Floor* floor : floors) {
    m_floors->addTab(QString::fromStdString(floor->name));
    if (current == floor->id) chosen = static_cast<int>(m_floorIds.size());
    m_floorIds.push_back(floor->id);
  }
  m_floors->setCurrentIndex(m_floorIds.empty() ? -1 : chosen);
  m_canvas->setFloor(m_floorIds.empty() ? std::optional<site::FloorId>()
                                        : m_floorIds[static_cast<std::size_t>(chosen)]);
  loadPicture();
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

// A picture that is gone or broken leaves the plan without it, and is said. Read once, not at every edit.
void MapView::loadPicture() {
  const auto& floorId = m_canvas->floor();
  const site::Floor* floor = floorId ? m_session.document.site().find<site::Floor>(*floorId) : nullptr;
  const QString& sitePath = m_session.document.path();
  const QString shown = floor == nullptr || !floor->picture
                            ? QString()
                            : pictureName(*floor->picture) + QLatin1Char('\n') +
                                  QString::fromStdString(floorId->text()) + QLatin1Char('\n') + sitePath;
  if (shown == m_pictureShown) return;
  m_pictureShown = shown;
  if (shown.isEmpty()) return m_canvas->setPicture({}, {});
  const auto read = readPlacedPicture(sitePath, *floor->picture);
  if (!read) {
    const std::string name = pictureName(*floor->picture).toStdString();
    emit told(say(m_session.book, "map." + read.error().code, {{"picture", name}, {"floor", floor->name}}));
    return m_canvas->setPicture({}, {});
  }
  m_canvas->setPicture(QPixmap::fromImage(read.value().image), read.value().sheet);
}

void MapView::refresh() { m_canvas->refresh(); }

void MapView::showFloor(const site::FloorId& floor) {
  const auto at = std::find(m_floorIds.begin(), m_floorIds.end(), floor);
  if (at != m_floorIds.end()) m_floors->setCurrentIndex(static_cast<int>(at - m_floorIds.begin()));
}

void MapView::showSubject(const rules::Subject& subject) {
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
