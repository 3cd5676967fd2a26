// SPDX-License-Identifier: GPL-3.0-or-later
// Outlets, panels, fixed loads and machines, from stamps.
#include <QPainter>
#include <array>
#include <cmath>

#include "map/map_paint.h"

namespace cordreach::app {
namespace {

constexpr std::size_t kLooks = 6;
constexpr std::size_t kTurns = 4;

// On a device pixel, so that a stamp is copied and not resampled.
QPointF snapped(const QPointF& topLeft, double screenScale) {
  return {std::round(topLeft.x() * screenScale) / screenScale, std::round(topLeft.y() * screenScale) / screenScale};
}

void stamp(QPainter& painter, const QPixmap& pixmap, const QPointF& middle, double screenScale) {
  const double half = pixmap.width() / pixmap.devicePixelRatio() / 2;
  painter.drawPixmap(snapped(middle - QPointF(half, half), screenScale), pixmap);
}

// All the stamps that outlets can have at this zoom, looked up once and not for each of thousands.
class OutletStamps {
 public:
  explicit OutletStamps(const PaintScene& scene) : m_scene(scene) {}

  const QPixmap& of(const MapOutlet& outlet) {
    if (m_scene.layout.symbolPx < kDotBelow) return dot(outlet.look == OutletLook::Unknown);
    const auto turn = static_cast<std::size_t>(outlet.turnDegrees / 90) % kTurns;
    QPixmap& slot = m_pixmaps[static_cast<std::size_t>(outlet.dark)][static_cast<std::size_t>(outlet.look)][turn];
    if (slot.isNull()) slot = m_scene.symbols.pixmap(wishFor(outlet));
    return slot;
  }

 private:
  [[nodiscard]] StampWish wishFor(const MapOutlet& outlet) const {
    const look::Tokens& tokens = look::tokens();
    const int turn = outlet.look == OutletLook::Unknown ? 0 : outlet.turnDegrees;
    return {
        symbolName(outlet.look), m_scene.layout.symbolPx, outlet.dark ? tokens.line : tokens.ink, tokens.sheet, turn,
        m_scene.screenScale};
  }

  const QPixmap& dot(bool hollow) {
    QPixmap& slot = hollow ? m_hollow : m_full;
    if (!slot.isNull()) return slot;
    const double size = std::max(4.0, m_scene.layout.symbolPx * 0.55);
    const int px = static_cast<int>(std::ceil(size * m_scene.screenScale)) + 2;
    slot = QPixmap(px, px);
    slot.fill(Qt::transparent);
    slot.setDevicePixelRatio(m_scene.screenScale);
    QPainter painter(&slot);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(look::tokens().ink, 1.2));
    painter.setBrush(hollow ? look::tokens().sheet : look::tokens().ink);
    const double middle = px / m_scene.screenScale / 2;
    painter.drawEllipse(QPointF(middle, middle), size / 2 - 0.6, size / 2 - 0.6);
    return slot;
  }

  const PaintScene& m_scene;
  std::array<std::array<std::array<QPixmap, kTurns>, kLooks>, 2> m_pixmaps;
  QPixmap m_full;
  QPixmap m_hollow;
};

void paintPanel(QPainter& painter, const QPointF& at) {
  const double wide = look::scaled(34);
  const double high = look::scaled(12);
  painter.setPen(Qt::NoPen);
  painter.setBrush(look::tokens().ink);
  painter.drawRect(QRectF(at.x() - wide / 2, at.y() - high / 2, wide, high));
}

void paintLoad(QPainter& painter, const PaintScene& scene, std::size_t i) {
  const MapLoad& load = scene.content.loads[i];
  const bool chosen = scene.isChosen(load.circuit);
  const look::Tokens& tokens = look::tokens();
  const QColor ink = load.off ? tokens.line : tokens.ink2;
  if (load.outlet >= 0) {
    painter.setPen(
        QPen(chosen ? tokens.ink : tokens.line, chosen ? 2.0 : 1.2, load.off ? Qt::DashLine : Qt::SolidLine));
    painter.drawLine(scene.layout.outlets[static_cast<std::size_t>(load.outlet)], scene.layout.loads[i]);
  }
  const double size = std::min(scene.layout.symbolPx, static_cast<double>(look::scaled(22)));
  const QRectF box(scene.layout.loads[i] - QPointF(size * 0.34, size * 0.4), QSizeF(size * 0.68, size * 0.68));
  painter.fillRect(box, tokens.room);
  stamp(painter,
        scene.symbols.pixmap({QStringLiteral("fixed-load"), size, chosen && !load.off ? tokens.ink : ink, tokens.room,
                              0, scene.screenScale}),
        scene.layout.loads[i], scene.screenScale);
}

void paintMachine(QPainter& painter, const PaintScene& scene, std::size_t i) {
  const MapMachine& machine = scene.content.machines[i];
  const look::Tokens& tokens = look::tokens();
  const QPointF at = scene.layout.machines[i];
  const bool isChosen = scene.isChosen({ItemKind::Machine, static_cast<int>(i)});
  const bool isQuiet = machine.off || machine.outOfService || machine.hookups.empty();
  painter.setPen(isChosen ? QPen(tokens.select, 2.5) : QPen(isQuiet ? tokens.line : tokens.ink, 1.5));
  painter.setBrush(isChosen ? tokens.selbg : tokens.room);
  const double radius = look::scaled(kMachineRadius);
  painter.drawEllipse(at, radius, radius);
  stamp(painter,
        scene.symbols.pixmap({machine.symbol, static_cast<double>(look::scaled(29)), isQuiet ? tokens.ink3 : tokens.ink,
                              tokens.room, 0, scene.screenScale}),
        at, scene.screenScale);
  if (!machine.outOfService) return;
  stamp(painter,
        scene.symbols.pixmap({QStringLiteral("tag-out"), static_cast<double>(look::scaled(20)), tokens.ink,
                              tokens.sheet, 0, scene.screenScale}),
        at + QPointF(-radius, -radius) * 0.8, scene.screenScale);
}

}  // namespace

QString symbolName(OutletLook look) {
  switch (look) {
    case OutletLook::Single:
      return QStringLiteral("receptacle-single");
    case OutletLook::Duplex:
      return QStringLiteral("receptacle-duplex");
    case OutletLook::Split:
      return QStringLiteral("receptacle-split");
    case OutletLook::Quad:
      return QStringLiteral("receptacle-quad");
    case OutletLook::Special:
      return QStringLiteral("receptacle-special");
    case OutletLook::Unknown:
      return QStringLiteral("unknown");
  }
  return {};
}

void paintOutlets(QPainter& painter, const PaintScene& scene) {
  OutletStamps stamps(scene);
  const QRectF reach = scene.visible.adjusted(-24, -24, 24, 24);
  for (std::size_t i = 0; i < scene.layout.outlets.size(); ++i) {
    const QPointF& at = scene.layout.outlets[i];
    if (!reach.contains(at)) continue;
    stamp(painter, stamps.of(scene.content.outlets[i]), at, scene.screenScale);
  }
}

void paintFixed(QPainter& painter, const PaintScene& scene) {
  for (std::size_t i = 0; i < scene.content.loads.size(); ++i) paintLoad(painter, scene, i);
  for (const QPointF& at : scene.layout.panels) paintPanel(painter, at);
}

void paintMachines(QPainter& painter, const PaintScene& scene) {
  for (std::size_t i = 0; i < scene.content.machines.size(); ++i) paintMachine(painter, scene, i);
}

}  // namespace cordreach::app
