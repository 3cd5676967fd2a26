// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_canvas.h"

#include <QEvent>
#include <QPainter>
#include <QVariantAnimation>
#include <algorithm>
#include <cmath>

#include "map/map_accessible.h"
#include "map/map_figures.h"
#include "map/plug_targets.h"
#include "panels/delete_things.h"

namespace cordreach::app {
namespace {

constexpr double kHitPx = 14;
constexpr int kEmptyMargin = 24;

}  // namespace

MapCanvas::MapCanvas(Session& session, MapMoment& moment, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_moment(moment),
      m_glide(std::make_unique<QVariantAnimation>()),
      m_ring(std::make_unique<QVariantAnimation>()),
      m_plugs(std::make_unique<PlugDrag>(*this)) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAttribute(Qt::WA_InputMethodEnabled, false);
  grabGesture(Qt::PinchGesture);
  setMinimumSize(320, 220);
  installMapAccessibility();  // before the first word is said of it
  use(ToolKind::Select);
}

MapCanvas::~MapCanvas() = default;

void MapCanvas::setFloor(const std::optional<site::FloorId>& floor) {
  if (floor == m_floor) return;
  m_plugs->leaveOutlet();
  m_glide->stop();
  m_pen.hide();
  m_state.focus.reset();
  m_state.hover.reset();
  m_state.area = {};
  m_floor = floor;
  refresh();
  fit();
}

void MapCanvas::setOverlay(Overlay overlay) {
  m_overlay = overlay;
  refresh();
}

void MapCanvas::showReach(const ReachArea& area) {
  m_state.area = area;
  m_state.shade = shadeIn(look::tokens().select, area);
  update();
}

void MapCanvas::showFigures(std::optional<OverlayFigures> figures) {
  m_figures = std::move(figures);
  refresh();
}

void MapCanvas::setPicture(const QPixmap& picture, const QSize& sheet) {
  m_picture = picture;
  m_pictureIsNegative = false;
  m_pictureSheet = sheet;
  if (m_fitted) fit();
  update();
}

void MapCanvas::refresh() {
  const auto focused = m_state.focus ? subjectOf(m_content, *m_state.focus) : std::nullopt;
  const auto shown = m_session.document.shown();
  const auto verdict = m_session.judge.last();
  m_state.chosen = m_session.selection.chosen();
  m_state.circuits = chosenCircuits(*shown, m_state.chosen);
  const bool fresh = verdict != nullptr && verdict->number == m_session.judge.latest() && verdict->site == shown;
  m_content = contentOf({*shown, verdict.get(), fresh, m_floor, m_moment.chosen(), m_overlay, m_state.chosen,
                         m_session.book, m_figures ? &*m_figures : nullptr});
  updateReach();
  m_state.hover.reset();
  m_state.focus = focused ? itemOf(m_content, *focused) : std::nullopt;
  relayout(m_layout.scale);
  if (m_fitted && m_toolKind == ToolKind::Select) fit();  // else the plan would slip from under what is drawn
  updateProposal();
  m_plugs->refresh();
}

// The outlets that the chosen machine's plug could go into, while that is what the plan shows.
void MapCanvas::updateReach() {
  m_state.reach.clear();
  const auto single = m_session.selection.single();
  if (m_overlay != Overlay::Reach || !single || single->kind != rules::SubjectKind::Machine) return;
  const auto isIts = [&](const MachinePlug& plug) { return plug.machine.text() == single->id; };
  std::optional<MachinePlug> plug;
  for (const MapCord& cord : m_content.cords) {
    if (isIts(cord.plug)) plug = cord.plug;
  }
  for (const MachinePlug& idle : m_content.idlePlugs) {
    if (!plug && isIts(idle)) plug = idle;
  }
  if (!plug) return;
  const site::Site& site = m_session.document.site();
  for (const MapOutlet& outlet : m_content.outlets) {
    const site::Outlet* there = site.find<site::Outlet>(outlet.id);
    const auto best = there != nullptr ? bestContact(site, *plug, *there) : std::nullopt;
    m_state.reach.push_back(best && isPossible(best->answer) ? 1 : 0);
  }
}

// The remedy of the worst finding that has one, when it moves a plug on this floor.
void MapCanvas::updateProposal() {
  m_state.proposed.reset();
  const auto verdict = m_session.judge.last();
  if (verdict == nullptr || !m_content.fresh) return;
  for (const auto& remedies : verdict->remedies) {
    if (remedies.empty()) continue;
    for (const site::AnyChange& change : remedies.front().edit.changes) {
      const auto* hookup = std::get_if<site::Change<site::Hookup>>(&change);
      if (hookup == nullptr || !hookup->after) continue;
      const auto* socket = std::get_if<site::OutletSocket>(&hookup->after->socket);
      if (socket == nullptr) continue;
      const auto machine = itemOf(m_content, {rules::SubjectKind::Machine, hookup->after->machine.text()});
      const auto outlet = itemOf(m_content, {rules::SubjectKind::Outlet, socket->outlet.text()});
      if (machine && outlet) m_state.proposed = ProposedMove{machine->index, outlet->index};
    }
    return;
  }
}

void MapCanvas::use(ToolKind kind) {
  if (m_tool) m_tool->cancel();
  m_pen.hide();
  m_toolKind = kind;
  switch (kind) {
    case ToolKind::Select:
      m_tool = selectTool(*this);
      break;
    case ToolKind::Outlet:
      m_tool = outletTool(*this);
      break;
    case ToolKind::Row:
      m_tool = rowTool(*this);
      break;
    case ToolKind::Panel:
      m_tool = panelTool(*this);
      break;
    case ToolKind::Machine:
      m_tool = machineTool(*this);
      break;
    case ToolKind::Load:
      m_tool = loadTool(*this);
      break;
    case ToolKind::Wall:
      m_tool = wallTool(*this);
      break;
    case ToolKind::Room:
      m_tool = roomTool(*this);
      break;
    case ToolKind::Corridor:
      m_tool = corridorTool(*this);
      break;
    case ToolKind::Run:
      m_tool = runTool(*this);
      break;
    case ToolKind::Circuit:
      m_tool = circuitTool(*this);
      break;
  }
  setCursor(kind == ToolKind::Select ? Qt::ArrowCursor : Qt::CrossCursor);
  setAccessibleDescription(hint());
  emit toolChanged();
  update();
}

QString MapCanvas::hint() const {
  const std::string_view code = m_tool->hint();
  if (code.empty()) return {};
  const QString words = say(m_session.book, code);
  if (m_toolKind == ToolKind::Select) return words;
  return words + QLatin1Char(' ') + say(m_session.book, "map.hint.keys");
}

void MapCanvas::needWords() {
  const QRectF visible(m_origin, QSizeF(size()));
  if (m_words.region.contains(visible)) return;
  const QRectF region = visible.adjusted(-width() * 0.5, -height() * 0.5, width() * 0.5, height() * 0.5);
  m_words = wordsOf({m_content, m_layout, region, m_state.chosen, extent()});
}

// In metres, before it is turned.
QRectF MapCanvas::pictureFrame() const {
  const site::Floor* floor = m_floor ? m_session.document.shown()->find<site::Floor>(*m_floor) : nullptr;
  if (floor == nullptr || !floor->picture || m_pictureSheet.isEmpty()) return {};
  return {QPointF(floor->picture->origin.xM, floor->picture->origin.yM),
          QSizeF(m_pictureSheet) * floor->picture->metresPerPixel};
}

// Of everything on the floor, the picture too.
QRectF MapCanvas::extent() const {
  const QRectF frame = pictureFrame();
  if (frame.isEmpty()) return m_content.extent;
  const double turn = m_session.document.shown()->at<site::Floor>(*m_floor).picture->turnDegrees;
  QTransform turned;
  turned.translate(frame.x(), frame.y()).rotate(turn);
  const QRectF box = turned.mapRect(QRectF(QPointF(), frame.size()));
  return m_content.isBare ? box : m_content.extent.united(box);
}

std::optional<ItemRef> MapCanvas::itemFor(const rules::Subject& subject) const {
  if (subject.kind != rules::SubjectKind::Circuit) return itemOf(m_content, subject);
  const site::CircuitId id(subject.id);
  const site::Circuit* circuit = m_session.document.shown()->find<site::Circuit>(id);
  if (circuit == nullptr) return std::nullopt;
  const auto panel = itemOf(m_content, {rules::SubjectKind::Panel, circuit->panel.text()});
  if (panel) return panel;
  for (std::size_t i = 0; i < m_content.outlets.size(); ++i) {
    const auto& circuits = m_content.outlets[i].circuits;
    if (std::find(circuits.begin(), circuits.end(), id) != circuits.end()) {
      return ItemRef{ItemKind::Outlet, static_cast<int>(i)};
    }
  }
  return std::nullopt;
}

std::optional<ItemRef> MapCanvas::itemAt(const QPointF& plan) const {
  const auto near = m_layout.index.nearest(plan, look::scaled(kHitPx));
  if (near) return near;
  const double radius = look::scaled(kMachineRadius + 2);
  return m_layout.index.nearest(plan, radius, [](const ItemRef& item) { return item.kind == ItemKind::Machine; });
}

std::optional<int> MapCanvas::outletAt(const QPointF& plan, double radius) const {
  const auto found =
      m_layout.index.nearest(plan, radius, [](const ItemRef& item) { return item.kind == ItemKind::Outlet; });
  return found ? std::optional<int>(found->index) : std::nullopt;
}

std::optional<QPointF> MapCanvas::pointOf(const rules::Subject& subject) const {
  const auto item = itemOf(m_content, subject);
  return item ? std::optional<QPointF>(toWidget(m_layout.at(*item))) : std::nullopt;
}

std::optional<QPointF> MapCanvas::pointOfPlug(const HeldPlug& plug) const {
  for (const MapPlug& one : m_layout.plugs) {
    if (one.plug == plug) return toWidget(one.at);
  }
  return std::nullopt;
}

std::vector<Standing> MapCanvas::standing() const {
  std::vector<Standing> things;
  for (const rules::Subject& subject : m_session.selection.chosen()) {
    const auto item = itemOf(m_content, subject);
    const auto at = item ? placeIn(m_content, *item) : std::nullopt;
    if (at) things.push_back({subject, {at->x(), at->y()}});
  }
  return things;
}

std::vector<site::HookupId> MapCanvas::hookupsShown() const {
  std::vector<site::HookupId> hookups;
  for (const MapMachine& machine : m_content.machines) {
    hookups.insert(hookups.end(), machine.hookups.begin(), machine.hookups.end());
  }
  return hookups;
}

bool MapCanvas::apply(const EditResult& edit, const QString& mergeKey) {
  if (!edit) {
    emit told(sentenceOf(m_session.book, edit.error()));
    return false;
  }
  const auto done = m_session.document.apply(edit.value(), mergeKey);
  if (!done) emit told(sentenceOf(m_session.book, done.error()));
  return done.ok();
}

void MapCanvas::choose(const ItemRef& item, bool add) {
  const auto subject = subjectOf(m_content, item);
  if (!subject) return;
  if (add) {
    m_session.selection.toggle(*subject);
  } else {
    m_session.selection.choose({*subject});
  }
}

void MapCanvas::focusItem(const std::optional<ItemRef>& item) {
  m_state.focus = item;
  if (item) {
    keepInSight(m_layout.at(*item));
    setAccessibleDescription(nameOf(*item));
  }
  update();
}

void MapCanvas::deleteChosen() {
  const auto deletion = deletionOf(m_session.document.site(), m_session.selection.chosen());
  if (deletion.edit.changes.empty()) return;
  m_session.selection.clear();
  apply(deletion.edit);
}

PaintScene MapCanvas::scene() {
  PaintScene scene{m_content,          m_layout, m_words, m_state, m_symbols, m_texts, QRectF(m_origin, QSizeF(size())),
                   devicePixelRatioF()};
  scene.extent = extent();
  scene.pictureFrame = pictureFrame();
  if (scene.pictureFrame.isEmpty()) return scene;
  const site::Picture& shown = *m_session.document.shown()->at<site::Floor>(*m_floor).picture;
  scene.picture = &m_picture;
  scene.pictureTurn = shown.turnDegrees;
  scene.pictureDim = shown.dim;
  return scene;
}

// On a dark sheet a plan is shown as a negative: white paper would blind, and what is drawn over it could not be read.
void MapCanvas::needPicture() {
  if (m_picture.isNull() || m_pictureIsNegative == look::tokens().dark) return;
  QImage image = m_picture.toImage();
  image.invertPixels();
  m_picture = QPixmap::fromImage(std::move(image));
  m_pictureIsNegative = look::tokens().dark;
}

void MapCanvas::paintEvent(QPaintEvent*) {
  needWords();
  needPicture();
  QPainter painter(this);
  painter.fillRect(rect(), look::tokens().sheet);
  const double ratio = devicePixelRatioF();
  m_origin = {std::round(m_origin.x() * ratio) / ratio, std::round(m_origin.y() * ratio) / ratio};
  painter.translate(-m_origin);
  painter.setRenderHint(QPainter::Antialiasing);
  const PaintScene all = scene();
  paintGround(painter, all);
  paintWiring(painter, all);
  paintUnder(painter, all);
  paintCords(painter, all);
  paintOutlets(painter, all);
  paintFixed(painter, all);
  paintMachines(painter, all);
  paintWords(painter, all);
  paintOver(painter, all);
  m_tool->paint(painter);
  m_pen.paint(painter);
  paintEmpty(painter);
}

// One sentence where a plan would be.
void MapCanvas::paintEmpty(QPainter& painter) {
  if (!m_content.outlets.empty() || m_toolKind != ToolKind::Select) return;
  const bool bare = m_content.walls.empty() && m_content.rooms.empty() && m_picture.isNull();
  painter.resetTransform();
  painter.setFont(look::font(look::Type::Body));
  const QString sentence = say(m_session.book, bare ? "map.empty.plan" : "map.empty.outlets");
  const QRect within = rect().adjusted(kEmptyMargin, 0, -kEmptyMargin, 0);
  const int how = Qt::AlignCenter | Qt::TextWordWrap;
  const QRect box = painter.boundingRect(within, how, sentence);
  painter.fillRect(box.adjusted(-kEmptyMargin / 2, -kEmptyMargin / 4, kEmptyMargin / 2, kEmptyMargin / 4),
                   look::tokens().sheet);
  painter.setPen(look::tokens().ink2);
  painter.drawText(within, how, sentence);
}

void MapCanvas::resizeEvent(QResizeEvent*) {
  if (m_fitted) fit();
}

void MapCanvas::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
  m_state.shade = shadeIn(look::tokens().select, m_state.area);
  m_symbols.clear();
  m_texts.clear();
  refresh();
}

}  // namespace cordreach::app
