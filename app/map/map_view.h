// SPDX-License-Identifier: GPL-3.0-or-later
// The Map: floors, moment and overlays in a row, the plan under them, its key at the foot.
#pragma once

#include <QWidget>
#include <utility>
#include <vector>

#include "document/session.h"
#include "map/map_content.h"
#include "map/map_moment.h"

class QActionGroup;
class QBoxLayout;
class QComboBox;
class QLabel;
class QMenu;
class QTabBar;
class QTimer;
class QToolButton;

namespace cordreach::app {

class CircuitBar;
class FloorPicture;
class MapCanvas;
class MapKey;
class PictureDesk;
class OverlayBar;
class ReachBar;
class VoltsBar;
class RowBar;

class MapView : public QWidget {
  Q_OBJECT

 public:
  explicit MapView(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] MapCanvas& canvas() const { return *m_canvas; }
  [[nodiscard]] MapMoment& moment() { return m_moment; }
  [[nodiscard]] PictureDesk& pictures() const { return *m_pictures; }
  [[nodiscard]] FloorPicture& picture() const { return *m_picture; }
  [[nodiscard]] RowBar& rowBar() const { return *m_rowBar; }
  [[nodiscard]] CircuitBar& circuitBar() const { return *m_circuitBar; }
  [[nodiscard]] ReachBar& reachBar() const { return *m_reachBar; }
  [[nodiscard]] VoltsBar& voltsBar() const { return *m_voltsBar; }
  [[nodiscard]] OverlayBar* barOf(Overlay overlay) const;  // null: it has none
  void showOverlay(Overlay overlay);
  void showFloor(const site::FloorId& floor);

 signals:
  void told(const QString& sentence);                     // a gesture was refused, and why
  void opened(const cordreach::rules::Subject& subject);  // its properties are wanted
  void darkWanted(const cordreach::rules::Subject& subject);
  void nearLimitWanted();
  void hotWanted();

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void buildRow();
  void buildTools();
  void buildViewActions();
  void fillFloors();
  void fillMoments();
  void retranslate();
  void connectAll();
  void refresh();
  void showSubject(const rules::Subject& subject);
  void showMenu(const QPoint& global);
  void connectHeld();
  void heldOver(const QPoint& global);
  void showHint(const QString& sentence);
  void placeHint();
  void styleTabs();
  void fitRow();
  void buildBars();
  void overlayChanged();

  Session& m_session;
  MapMoment m_moment;
  MapCanvas* m_canvas;
  MapKey* m_key;
  QTabBar* m_floors;
  QTabBar* m_overlays;
  QComboBox* m_moments;
  QToolButton* m_add;
  QMenu* m_addMenu;
  FloorPicture* m_picture;
  PictureDesk* m_pictures;
  RowBar* m_rowBar;
  CircuitBar* m_circuitBar;
  ReachBar* m_reachBar;
  VoltsBar* m_voltsBar;
  std::vector<std::pair<Overlay, OverlayBar*>> m_bars;
  QBoxLayout* m_row;
  QLabel* m_hint;
  QTimer* m_floorDwell;  // a held plug rests over a floor's name
  int m_floorUnder = -1;
  bool m_stale = false;  // the site or its verdict changed behind something else
  std::vector<site::FloorId> m_floorIds;
  std::vector<units::Duration> m_times;
};

}  // namespace cordreach::app
