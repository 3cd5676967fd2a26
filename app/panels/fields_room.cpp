// SPDX-License-Identifier: GPL-3.0-or-later
// Rooms: what stands on their door and what they are for.
#include "panels/field_kinds.h"
#include "panels/field_maker.h"

namespace cordreach::app {

namespace {

constexpr const char* kPlainRoom = "room";
constexpr const char* kCorridor = "corridor";

}  // namespace

std::vector<FieldChoice> roomUses(const text::Phrasebook& book) {
  return {{kPlainRoom, book.say("field.room_use.room")}, {kCorridor, book.say("field.room_use.corridor")}};
}

bool isCorridor(std::string_view use) { return use == kCorridor; }

FieldGroups roomFields(const FieldContext& in, const site::RoomId& id) {
  const FieldMaker<site::Room> maker(in.site, in.book, id, "room.change");
  FieldGroup group;
  group.fields.push_back(maker.text(
      "room_number", [](auto& r) -> auto& { return r.number; }));
  group.fields.push_back(maker.text(
      "room_name", [](auto& r) -> auto& { return r.name; }));
  Field use = maker.start("room_use", FieldKind::Choice);
  use.text = maker.thing().corridor ? kCorridor : kPlainRoom;
  use.choices = roomUses(in.book);
  use.write = maker.writing([](site::Room& room, std::string_view typed) -> MaybeError {
    if (typed != kPlainRoom && typed != kCorridor) return base::Error{"field.no_choice", std::string(typed), {}};
    room.corridor = isCorridor(typed);
    return std::nullopt;
  });
  group.fields.push_back(std::move(use));
  return {std::move(group)};
}

}  // namespace cordreach::app
