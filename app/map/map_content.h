// SPDX-License-Identifier: GPL-3.0-or-later
// One floor as the map draws it: things with their places in metres, their figures in words and their worst finding.
// Made anew from site and verdict whenever one of them changes; nothing in it depends on zoom or window.
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

#include "compute/verdict.h"
#include "map/hit_index.h"
#include "map/plug_edits.h"
#include "rules/finding.h"
#include "site/site.h"
#include "tables/laying.h"
#include "text/phrasebook.h"
#include "units/temperature.h"

namespace cordreach::app {

enum class Overlay { Wiring, AmpsLeft, Volts, Hot, Reach, Trust };

// What an overlay says of an outlet besides what the site and its verdict say.
struct OutletFigure {
  QString figure{};
  rules::Severity atLeast = rules::Severity::Ok;  // its mark is no milder
  std::optional<units::Temperature> heat{};       // of the hottest plug in it
};

struct OverlayFigures {
  std::unordered_map<site::OutletId, OutletFigure> outlets{};
  std::unordered_map<site::CircuitId, units::Temperature> wires{};  // the hottest run of each
  bool ownMarks = false;  // outlets keep no mark of the plan, which is not what is shown
};

enum class OutletLook { Single, Duplex, Split, Quad, Special, Unknown };

struct MapRoom {
  site::RoomId id;
  QPolygonF outline{};
  QPointF at{};  // its middle
  QString name{};
  bool corridor = false;
};

struct MapWall {
  QPointF from;
  QPointF to;
  bool outer = false;
};

struct MapOutlet {
  site::OutletId id;
  QString label;
  QPointF at{};
  QPointF inward{};     // away from its wall, length 1; zero when no wall is near
  int turnDegrees = 0;  // of the symbol
  OutletLook look = OutletLook::Duplex;
  bool traced = false;
  bool dark = false;                        // dead, or no contact has power
  std::vector<site::CircuitId> circuits{};  // of its contacts
  QString marks{};                          // "GF"
  QString figure{};                         // of the chosen overlay
  bool inUse = false;
  rules::Severity severity = rules::Severity::Ok;
  std::optional<units::Temperature> heat{};
};

struct MapRun {
  site::CircuitId circuit;
  int from = -1;  // among the outlets; -1: the home run
  int to = -1;
  QPolygonF path{};  // drawn by hand; empty: none
  bool guessed = false;
  QString name{};                  // of a home run: its circuit
  std::optional<QPointF> panel{};  // of a home run: where it leads on this floor
  std::optional<units::Temperature> heat{};
};

struct MapPanel {
  site::PanelId id;
  QString name;
  QPointF at{};
  QString system{};
  rules::Severity severity = rules::Severity::Ok;
  QString circuitFigure{};  // of its circuit in trouble or chosen: amps
  QString circuitName{};
};

struct MapLoad {
  site::FixedLoadId id;
  QString name;
  QPointF at{};
  int outlet = -1;
  site::CircuitId circuit;
  QString figure{};
  bool off = false;
};

struct MapMachine {
  site::MachineId id;
  QString name;
  QPointF at{};
  QString symbol{};
  QString figure{};
  std::vector<site::HookupId> hookups{};  // shown now
  std::optional<site::CircuitId> circuit{};
  bool off = false;
  bool outOfService = false;
  rules::Severity severity = rules::Severity::Ok;
};

struct MapCordPart {
  std::optional<site::CordId> cord{};  // none: the machine's own
  std::optional<site::ExtensionUseId> use{};
  double lengthM = 0.0;
  double copperMm2 = 0.823;
  std::optional<units::Temperature> conductor{};
  bool beyondModel = false;
  tables::Laying laying = tables::Laying::Floor;
  QString text{};    // "Cord C08, 16 AWG"
  QString figure{};  // "51 °C"
  rules::Severity severity = rules::Severity::Ok;
};

// From an outlet to a machine.
struct MapCord {
  site::HookupId hookup;
  int outlet = -1;   // among the outlets; -1: on another floor, or nowhere
  int machine = -1;  // among the machines; -1: on another floor
  std::vector<MapCordPart> parts;
  MachinePlug plug;
  QString otherFloor{};  // the name of the floor that its other end is on; empty: both ends are here
};

struct MapContent {
  std::optional<site::FloorId> floor;
  QRectF extent;        // metres, of everything
  bool isBare = false;  // there is nothing; the extent is that of a blank sheet
  std::vector<MapRoom> rooms;
  std::vector<MapWall> walls;
  std::vector<QPolygonF> corridorLines;
  std::vector<MapOutlet> outlets;
  std::vector<MapRun> runs;
  std::vector<MapPanel> panels;
  std::vector<MapLoad> loads;
  std::vector<MapMachine> machines;
  std::vector<MapCord> cords;
  std::vector<MachinePlug> idlePlugs;  // of the machines shown, in no socket now; `hookup` is none
  bool fresh = true;                   // false: the figures are of an older site
};

struct ContentWish {
  const site::Site& site;
  const Verdict* verdict = nullptr;
  bool fresh = true;
  std::optional<site::FloorId> floor{};
  std::optional<units::Duration> moment{};
  Overlay overlay = Overlay::Wiring;
  std::vector<rules::Subject> chosen{};
  const text::Phrasebook& book;
  const OverlayFigures* figures = nullptr;  // instead of what the overlay tells by itself
};

[[nodiscard]] MapContent contentOf(const ContentWish& wish);

// Where it stands, in metres; nothing for a plug.
[[nodiscard]] std::optional<QPointF> placeIn(const MapContent& content, const ItemRef& item);

// The circuits that are chosen, themselves or through what is chosen.
[[nodiscard]] std::vector<site::CircuitId> chosenCircuits(const site::Site& site,
                                                          const std::vector<rules::Subject>& chosen);

}  // namespace cordreach::app
