// SPDX-License-Identifier: GPL-3.0-or-later
// The plan itself: shows one floor, pans and zooms, and hands pointer and keys to the tool in use.
#pragma once

#include <QPixmap>
#include <QWidget>
#include <memory>
#include <optional>

#include "document/session.h"
#include "map/arrange_edits.h"
#include "map/circuit_brush.h"
#include "map/key_pen.h"
#include "map/map_moment.h"
#include "map/map_paint.h"
#include "map/map_tool.h"
#include "map/plug_drag.h"
#include "map/row_settings.h"

class QVariantAnimation;

namespace cordreach::app {

class MapCanvas : public QWidget {
  Q_OBJECT

 public:
  MapCanvas(Session& session, MapMoment& moment, QWidget* parent = nullptr);
  ~MapCanvas() override;

  [[nodiscard]] Session& session() const { return m_session; }
  [[nodiscard]] const MapContent& content() const { return m_content; }
  [[nodiscard]] const MapLayout& layout() const { return m_layout; }
  [[nodiscard]] MapState& state() { return m_state; }
  [[nodiscard]] PlugDrag& plugs() { return *m_plugs; }
  [[nodiscard]] const std::optional<site::FloorId>& floor() const { return m_floor; }
  void setFloor(const std::optional<site::FloorId>& floor);
  void setOverlay(Overlay overlay);
  [[nodiscard]] Overlay overlay() const { return m_overlay; }
  void showReach(const ReachArea& area);  // over the floor that is shown
  void showFigures(std::optional<OverlayFigures> figures);
  // A plan picture to be drawn under the floor. Large ones are shown in fewer pixels than their sheet has.
  void setPicture(const QPixmap& picture, const QSize& sheet);
  // The site, the verdict or what is chosen is another: what is shown is made anew.
  void refresh();

  void use(ToolKind kind);
  [[nodiscard]] ToolKind tool() const { return m_toolKind; }
  [[nodiscard]] QString hint() const;

  // The view.
  void fit();
  void zoomBy(double factor, const QPointF& around);
  void panBy(const QPointF& pixels);
  [[nodiscard]] double scale() const { return m_layout.scale; }
  void setView(double scale, const QPointF& topLeftPx);
  // Goes to it, near enough to read, and draws a ring round it once.
  void reveal(const rules::Subject& subject);
  void revealArea(const QRectF& metres);  // the same, of a room
  // What stands for it on this floor; of a circuit its panel or its first outlet.
  [[nodiscard]] std::optional<ItemRef> itemFor(const rules::Subject& subject) const;

  [[nodiscard]] QPointF toPlan(const QPointF& widget) const { return widget + m_origin; }
  [[nodiscard]] QPointF toWidget(const QPointF& plan) const { return plan - m_origin; }
  [[nodiscard]] std::optional<ItemRef> itemAt(const QPointF& plan) const;
  [[nodiscard]] std::optional<ItemRef> roomAt(const QPointF& plan) const;  // the smallest that holds it
  [[nodiscard]] std::optional<ItemRef> thingOrRoomAt(const QPointF& plan) const;
  [[nodiscard]] std::optional<int> outletAt(const QPointF& plan, double radius) const;
  // Where things are in the widget, for tests and accessibility.
  [[nodiscard]] std::optional<QPointF> pointOf(const rules::Subject& subject) const;
  [[nodiscard]] std::optional<QPointF> pointOfPlug(const HeldPlug& plug) const;
  [[nodiscard]] QString nameOf(const ItemRef& item) const;  // for a screen reader
  [[nodiscard]] std::vector<ItemRef> itemsInOrder() const;  // by kind and number

  // Applies the edit as one undo step; says why when the site refuses. The key is Document::apply's.
  bool apply(const EditResult& edit, const QString& mergeKey = {});
  // What is chosen of this floor, where the plan shows it; and the hookups whose machines it shows.
  [[nodiscard]] std::vector<Standing> standing() const;
  [[nodiscard]] std::vector<site::HookupId> hookupsShown() const;
  [[nodiscard]] RowSettings& row() { return m_row; }
  [[nodiscard]] CircuitBrush& brush() { return m_brush; }  // of painting circuits
  void focusItem(const std::optional<ItemRef>& item);
  void choose(const ItemRef& item, bool add);
  void deleteChosen();
  [[nodiscard]] const KeyPen& pen() const { return m_pen; }
  // Brings that place into view if it is not there.
  void keepInSight(const QPointF& plan);
  // Where the crosshair is: for whoever sees the plan and for whoever hears it.
  void sayWhere(const QString& sentence);

 signals:
  void toolChanged();
  void penMoved(const QString& sentence);
  void rowChanged();     // the tool has set how the row goes on
  void pictureWanted();  // from the clipboard
  void scaleChanged();
  void heldMoved(const QPoint& global);  // the pointer, with a plug in hand
  void floorWanted(const cordreach::site::FloorId& floor);
  void floorStepWanted(int step);                  // 1: the next one up
  void told(const QString& sentence);              // something was refused, or done
  void menuWanted(const QPoint& global);           // for what is chosen
  void opened(const rules::Subject& subject);      // Return or double click
  void darkWanted(const rules::Subject& subject);  // what goes dark with its breaker

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool event(QEvent* event) override;

 private:
  [[nodiscard]] ToolPointer pointerFrom(const QPointF& widget, Qt::KeyboardModifiers modifiers) const;
  void relayout(double scale);
  void needWords();
  void needPicture();
  void updateProposal();
  void updateReach();
  void paintEmpty(QPainter& painter);
  void glideTo(double scale, const QPointF& middleM);
  void ringOnce(const rules::Subject& subject);
  [[nodiscard]] PaintScene scene();
  [[nodiscard]] QRectF pictureFrame() const;
  [[nodiscard]] QRectF extent() const;
  bool viewKey(QKeyEvent& event);
  bool walkKey(QKeyEvent& event);
  void walkTo(const QPointF& direction);
  void walkByNumber(int step);
  [[nodiscard]] bool isPanning(const QMouseEvent& event) const;

  Session& m_session;
  MapMoment& m_moment;
  std::optional<site::FloorId> m_floor;
  Overlay m_overlay = Overlay::Wiring;
  std::optional<OverlayFigures> m_figures;
  MapContent m_content;
  MapLayout m_layout;
  MapWords m_words;
  MapState m_state;
  SymbolStamps m_symbols;
  TextStamps m_texts;
  QPixmap m_picture;
  bool m_pictureIsNegative = false;
  QSize m_pictureSheet;
  RowSettings m_row;
  QPointF m_origin;  // what of the plan is at the widget's top left, in pixels
  bool m_fitted = true;
  bool m_spaceHeld = false;
  std::optional<QPointF> m_panFrom;
  std::unique_ptr<QVariantAnimation> m_glide;
  std::unique_ptr<QVariantAnimation> m_ring;
  std::unique_ptr<PlugDrag> m_plugs;
  CircuitBrush m_brush;
  std::unique_ptr<MapTool> m_tool;
  ToolKind m_toolKind = ToolKind::Select;
  KeyPen m_pen{*this};
};

}  // namespace cordreach::app
