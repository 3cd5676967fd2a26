// SPDX-License-Identifier: GPL-3.0-or-later
// Draws the map, a layer a function, in pixels from the plan's origin. Symbols and words come from caches.
#pragma once

#include <QHash>
#include <QPainterPath>
#include <QPixmap>
#include <QStaticText>
#include <optional>
#include <vector>

#include "look/look.h"
#include "map/map_content.h"
#include "map/map_labels.h"
#include "map/map_layout.h"
#include "map/reach_area.h"
#include "map/symbol_stamps.h"

class QPainter;

namespace cordreach::app {

// A plug that is held, and what its outlets would say to it.
struct HeldState {
  HeldPlug plug;
  int machine = -1;
  QPointF tip;                 // where its prongs are
  std::vector<char> possible;  // for each outlet of the content
  std::optional<int> over;     // the outlet it would go into
  QString contact;             // and its contact, in words
  QString refusal;             // why it can't go where it is
  MapCordPart ownCord{};       // what follows the plug when the plan shows no cord of it
  QString machineFloor{};      // where its machine is
};

// Drawn once round what somebody asked to be shown.
struct ShowRing {
  rules::Subject subject;
  double progress = 0;  // 0 to 1
};

// The remedy's proposal: that machine at that outlet.
struct ProposedMove {
  int machine = -1;
  int outlet = -1;
};

struct MapState {
  std::vector<rules::Subject> chosen;
  std::vector<site::CircuitId> circuits;  // chosen ones
  std::optional<ItemRef> hover;
  std::optional<ItemRef> focus;
  bool showFocus = false;
  std::optional<HeldState> held;
  std::optional<HeldState> returning;  // let go of, on its way back
  std::optional<ShowRing> ring;
  std::optional<ProposedMove> proposed;
  std::vector<char> reach;  // for each outlet of the content; empty: not shown
  ReachArea area{};
  QPixmap shade{};  // of the area, in the present colours

  // The plug that is in no outlet at the moment: held, or on its way back.
  [[nodiscard]] const HeldState* loosePlug() const {
    if (held) return held->over ? nullptr : &*held;
    return returning ? &*returning : nullptr;
  }
};

// Words drawn before need no shaping again.
class TextStamps {
 public:
  void draw(QPainter& painter, const QPointF& topLeft, const QString& text, look::Type type);
  // The same with a rim of that colour behind the letters, so that no line strikes through them.
  void drawWithHalo(QPainter& painter, const QPointF& topLeft, const QString& text, look::Type type,
                    const QColor& halo);
  void clear() { m_texts.clear(); }

 private:
  QHash<QString, QStaticText> m_texts;
};

struct PaintScene {
  const MapContent& content;
  const MapLayout& layout;
  const MapWords& words;
  const MapState& state;
  SymbolStamps& symbols;
  TextStamps& texts;
  QRectF visible;
  double screenScale = 1;
  QRectF extent{};                   // of the floor with its picture, metres
  const QPixmap* picture = nullptr;  // of the floor; its place is pictureFrame, in metres
  QRectF pictureFrame{};
  double pictureTurn = 0;
  double pictureDim = 0;

  [[nodiscard]] bool isChosen(const site::CircuitId& circuit) const;
  [[nodiscard]] bool isChosen(const ItemRef& item) const;
};

void paintGround(QPainter& painter, const PaintScene& scene);  // picture, rooms, reach, walls
void paintReachArea(QPainter& painter, const PaintScene& scene);
void paintWiring(QPainter& painter, const PaintScene& scene);  // runs, home runs
void paintOutlets(QPainter& painter, const PaintScene& scene);
void paintFixed(QPainter& painter, const PaintScene& scene);  // panels and fixed loads
void paintCords(QPainter& painter, const PaintScene& scene);  // with their couplings and coils
void paintMachines(QPainter& painter, const PaintScene& scene);
void paintWords(QPainter& painter, const PaintScene& scene);  // labels and severity marks
void paintUnder(QPainter& painter, const PaintScene& scene);  // grounds of what is chosen, hovered or possible
void paintHeld(QPainter& painter, const PaintScene& scene);   // the plug in the hand, its cord, what it would do
void paintLabel(QPainter& painter, const PaintScene& scene, const MapLabel& label);
void paintCordParts(QPainter& painter, const std::vector<MapCordPart>& parts, const std::vector<QPolygonF>& lines);
// The parts of the cord that go where its plug goes: all behind an extension's, the last one behind the machine's.
[[nodiscard]] std::size_t firstPartBehind(const MapCord& cord, const HeldPlug& plug);
void paintOver(QPainter& painter, const PaintScene& scene);  // focus ring, proposal, held plug

// The drawing of an outlet's look.
[[nodiscard]] QString symbolName(OutletLook look);

}  // namespace cordreach::app
