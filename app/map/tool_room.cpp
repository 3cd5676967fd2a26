// SPDX-License-Identifier: GPL-3.0-or-later
// Draws a room from corner to corner and asks what it is; a click in a room asks the same again.
#include <QKeyEvent>
#include <QPainter>

#include "map/drag_tool.h"
#include "map/place_edits.h"
#include "map/polyline.h"
#include "map/row_edits.h"
#include "panels/ask_dialog.h"
#include "panels/delete_things.h"
#include "panels/field_kinds.h"
#include "panels/field_text.h"
#include "panels/fresh_id.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

constexpr double kSmallestM = 0.5;

class RoomTool : public DragTool {
 public:
  using DragTool::DragTool;

  void press(const ToolPointer& pointer) override {
    m_from = toTenths(pointer.metres);
    m_to = *m_from;
  }

  void move(const ToolPointer& pointer) override {
    m_to = toTenths(pointer.metres);
    m_at = pointer.metres;
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    if (!m_from || !canvas().floor()) return;
    const QRectF box = QRectF(*m_from, toTenths(pointer.metres)).normalized();
    m_from.reset();
    canvas().update();
    if (box.width() >= kSmallestM && box.height() >= kSmallestM) {
      site::Room room{freshId<site::Room>(canvas().session().document.site()), *canvas().floor()};
      room.outline = toPoints(QPolygonF() << box.topLeft() << box.topRight() << box.bottomRight() << box.bottomLeft());
      return askAbout(room, "map.room.new", addRoom);
    }
    if (const site::Room* room = roomUnder(pointer.metres)) askAbout(*room, "map.room.change", changeRoom);
  }

  bool key(QKeyEvent& event) override {
    if (event.key() == Qt::Key_Delete) {
      const site::Room* room = roomUnder(m_at);
      if (room == nullptr) return false;
      const rules::Subject subject{rules::SubjectKind::Room, room->id.text()};
      return canvas().apply(deletionOf(canvas().session().document.site(), {subject}).edit);
    }
    return DragTool::key(event);
  }

  void paint(QPainter& painter) override {
    if (!m_from) return;
    const double scale = canvas().scale();
    painter.setPen(QPen(look::tokens().select, 2, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(*m_from * scale, m_to * scale).normalized());
  }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.room"; }

 private:
  using Make = EditResult (*)(const site::Site&, const site::Room&);

  [[nodiscard]] const site::Room* roomUnder(const QPointF& metres) const {
    if (!canvas().floor()) return nullptr;
    return roomAt(canvas().session().document.site(), {*canvas().floor(), {metres.x(), metres.y()}});
  }

  [[nodiscard]] Field useField(const site::Room& room) const {
    const text::Phrasebook& book = canvas().session().book;
    Field use{.key = "room_use", .label = book.say("field.room_use"), .kind = FieldKind::Choice};
    use.choices = roomUses(book);
    use.text = use.choices[room.corridor ? 1 : 0].key;
    return use;
  }

  void askAbout(site::Room room, const char* title, Make make) {
    const text::Phrasebook& book = canvas().session().book;
    const auto field = [&](const char* key, FieldKind kind, std::string text) {
      return Field{.key = key, .label = book.say(std::string("field.") + key), .kind = kind, .text = std::move(text)};
    };
    const std::vector<Field> fields{field("room_number", FieldKind::Text, room.number),
                                    field("room_name", FieldKind::Text, room.name), useField(room)};
    AskDialog dialog(
        book, {book.say(title), {}, book.say("map.room.deed")}, fields,
        [&](const Answers& said) -> std::optional<base::Error> {
          room.number = tidied(said.at("room_number"));
          room.name = tidied(said.at("room_name"));
          room.corridor = isCorridor(said.at("room_use"));
          const EditResult edit = make(canvas().session().document.site(), room);
          if (!edit) return edit.error();
          const auto done = canvas().session().document.apply(edit.value());
          if (!done) return done.error();
          canvas().session().selection.choose({{rules::SubjectKind::Room, room.id.text()}});
          return std::nullopt;
        },
        &canvas());
    dialog.exec();
  }

  QPointF m_at;
};

}  // namespace

std::unique_ptr<MapTool> roomTool(MapCanvas& canvas) { return std::make_unique<RoomTool>(canvas); }

}  // namespace cordreach::app
