// SPDX-License-Identifier: GPL-3.0-or-later
// Loads that stay put.
#include "listings/listing_of.h"

namespace cordreach::app {

namespace {

using site::FixedLoad;

CellCodec<FixedLoad> circuitCodec() {
  CellCodec<FixedLoad> codec;
  codec.choices = [](const ListingContext& in) { return in.circuitNames(); };
  codec.read = [](const ListingContext& in, const FixedLoad& load) {
    const site::Circuit* circuit = in.site().find<site::Circuit>(load.circuit);
    return circuit == nullptr ? load.circuit.text() : site::circuitNumberOf(in.site(), *circuit);
  };
  codec.write = [](const ListingContext& in, FixedLoad& load, std::string_view text) -> CellError {
    const auto circuit = in.circuitNamed(text);
    if (!circuit.ok()) return circuit.error();
    load.circuit = circuit.value();
    return std::nullopt;
  };
  return codec;
}

CellCodec<FixedLoad> outletCodec() {
  return fact<FixedLoad>([](const ListingContext& in, const FixedLoad& load) {
    const site::Outlet* outlet = load.outlet ? in.site().find<site::Outlet>(*load.outlet) : nullptr;
    return outlet == nullptr ? std::string() : outlet->label;
  });
}

CellCodec<FixedLoad> hoursCodec() {
  CellCodec<FixedLoad> codec;
  codec.read = [](const ListingContext&, const FixedLoad& load) {
    return load.hours ? hoursText(*load.hours) : std::string();
  };
  codec.write = [](const ListingContext& in, FixedLoad& load, std::string_view text) -> CellError {
    if (saysUnknown(in.book(), text)) return load.hours.reset(), std::nullopt;
    const auto read = readHours(text);
    if (!read.ok()) return read.error();
    load.hours = read.value();
    return std::nullopt;
  };
  return codec;
}

std::vector<ColumnOf<FixedLoad>> columns() {
  std::vector<ColumnOf<FixedLoad>> all;
  const auto add = [&](const char* key, auto codec, auto access) {
    all.push_back(memberColumn<FixedLoad>(key, std::move(codec), access));
  };
  add(
      "name", textCodec(), [](auto& l) -> auto& { return l.name; });
  all.push_back(columnOf<FixedLoad>("load_circuit", circuitCodec()));
  all.push_back(columnOf<FixedLoad>("load_socket", outletCodec()));
  add(
      "class", choiceCodec<tables::LoadClass>("class"), [](auto& l) -> auto& { return l.loadClass; });
  add(
      "plate", knownCodec<units::Current>(), [](auto& l) -> auto& { return l.plate; });
  add(
      "running", knownCodec<units::Current>(), [](auto& l) -> auto& { return l.running; });
  all.push_back(columnOf<FixedLoad>("load_hours", hoursCodec()));
  add(
      "off", flagCodec(), [](auto& l) -> auto& { return l.off; });
  return all;
}

std::variant<FixedLoad, io::RowFault> make(const ListingContext& in, site::FixedLoadId id, const io::Cells& cells) {
  const auto circuit = in.circuitNamed(cellText(cells, "load_circuit"));
  if (!circuit.ok()) return io::RowFault{circuit.error(), "load_circuit"};
  return FixedLoad{std::move(id), cellText(cells, "name"), circuit.value()};
}

}  // namespace

const Listing& loadListing() {
  static const ListingOf<FixedLoad> listing(
      {ListingKind::Loads, rules::SubjectKind::FixedLoad, columns(),
       [](const site::Site&, const FixedLoad& load) { return load.name; },
       [](const ListingContext&, const io::Cells& cells) { return cellText(cells, "name"); }, make, "load_circuit"});
  return listing;
}

}  // namespace cordreach::app
