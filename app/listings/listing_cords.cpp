// SPDX-License-Identifier: GPL-3.0-or-later
// Extension cords.
#include "listings/listing_of.h"
#include "panels/cord_make_fields.h"

namespace cordreach::app {

namespace {

using site::Cord;

// What its print says fills what is not known otherwise.
CellCodec<Cord> legendCodec() {
  CellCodec<Cord> codec;
  codec.read = [](const ListingContext&, const Cord& cord) { return cord.make.legend; };
  codec.write = [](const ListingContext& in, Cord& cord, std::string_view text) -> CellError {
    cord.make.legend = saysUnknown(in.book(), text) ? std::string() : tidied(text);
    fillFromLegend(cord.make);
    return std::nullopt;
  };
  return codec;
}

CellCodec<Cord> socketsCodec() {
  return fact<Cord>([](const ListingContext&, const Cord& cord) {
    std::string keys;
    for (const std::string& key : cord.sockets) keys += (keys.empty() ? "" : ", ") + (key.empty() ? "?" : key);
    return keys;
  });
}

std::vector<ColumnOf<Cord>> columns() {
  std::vector<ColumnOf<Cord>> all;
  const auto add = [&](const char* key, auto codec, auto access) {
    all.push_back(memberColumn<Cord>(key, std::move(codec), access));
  };
  add(
      "label", textCodec(), [](auto& c) -> auto& { return c.label; });
  all.push_back(columnOf<Cord>("legend", legendCodec()));
  add(
      "size", knownCodec<units::WireSize>(), [](auto& c) -> auto& { return c.make.size; });
  add(
      "length", knownCodec<units::Length>(), [](auto& c) -> auto& { return c.make.length; });
  add(
      "tag", knownCodec<units::Current>(), [](auto& c) -> auto& { return c.tag; });
  add(
      "type", cordTypeCodec(), [](auto& c) -> auto& { return c.make.type; });
  add(
      "conductors", knownCodec<int>(), [](auto& c) -> auto& { return c.make.conductors; });
  add(
      "rating", knownCodec<units::Temperature>(), [](auto& c) -> auto& { return c.make.rating; });
  add(
      "plug", receptacleCodec(), [](auto& c) -> auto& { return c.make.plug; });
  all.push_back(columnOf<Cord>("sockets", socketsCodec()));
  add(
      "pin", choiceCodec<site::Pin>("pin"), [](auto& c) -> auto& { return c.make.pin; });
  add(
      "cord_ground_fault", flagCodec(), [](auto& c) -> auto& { return c.make.groundFaultDevice; });
  add(
      "print_readable", flagCodec(), [](auto& c) -> auto& { return c.make.printReadable; });
  all.push_back(columnOf<Cord>("out_of_service", fact<Cord>([](const ListingContext&, const Cord& cord) {
                                 return cord.outOfService ? cord.outOfService->reason : std::string();
                               })));
  return all;
}

// With one socket of the kind of its plug.
std::variant<Cord, io::RowFault> make(const ListingContext& in, site::CordId id, const io::Cells& cells) {
  Cord cord{std::move(id), cellText(cells, "label")};
  const std::string plug = cellText(cells, "plug");
  cord.sockets = {std::string()};
  if (auto fault = receptacleCodec().write(in, cord.sockets.front(), plug))
    return io::RowFault{std::move(*fault), "plug"};
  cord.make.printReadable = !saysUnknown(in.book(), cellText(cells, "legend"));
  return cord;
}

}  // namespace

const Listing& cordListing() {
  static const ListingOf<Cord> listing(
      {ListingKind::Cords, rules::SubjectKind::Cord, columns(),
       [](const site::Site&, const Cord& cord) { return cord.label; },
       [](const ListingContext&, const io::Cells& cells) { return cellText(cells, "label"); }, make});
  return listing;
}

}  // namespace cordreach::app
