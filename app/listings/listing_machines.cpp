// SPDX-License-Identifier: GPL-3.0-or-later
// Machines; what their supply cords differ in stands as "13 A / 12.5 A".
#include <array>

#include "listings/listing_of.h"
#include "panels/cord_make_fields.h"

namespace cordreach::app {

namespace {

using site::Inlet;
using site::Machine;

constexpr std::array kKinds = {"burnisher",  "slow-machine", "vacuum-upright", "vacuum-backpack", "vacuum-wide",
                               "vacuum-wet", "extractor",    "air-mover",      "generic"};

CellCodec<std::string> kindCodec() {
  const auto say = [](const ListingContext& in, const std::string& kind) {
    const std::string code = "field.kind." + kind;
    return in.book().has(code) ? in.book().say(code) : kind;
  };
  CellCodec<std::string> codec;
  codec.mayBeUnknown = true;
  codec.read = say;
  codec.choices = [say](const ListingContext& in) {
    std::vector<std::string> words;
    for (const char* kind : kKinds) words.push_back(say(in, kind));
    return words;
  };
  codec.write = [say](const ListingContext& in, std::string& member, std::string_view text) -> CellError {
    if (saysUnknown(in.book(), text)) return member.clear(), std::nullopt;
    const std::string wanted = smallLetters(tidied(text));
    for (const char* kind : kKinds) {
      if (wanted != kind && wanted != smallLetters(say(in, kind))) continue;
      member = kind;
      return std::nullopt;
    }
    return base::Error{"listing.no_choice", tidied(text), {}};
  };
  return codec;
}

CellCodec<Inlet> legendCodec() {
  CellCodec<Inlet> codec;
  codec.read = [](const ListingContext&, const Inlet& inlet) { return inlet.cord.legend; };
  codec.write = [](const ListingContext& in, Inlet& inlet, std::string_view text) -> CellError {
    inlet.cord.legend = saysUnknown(in.book(), text) ? std::string() : tidied(text);
    fillFromLegend(inlet.cord);
    return std::nullopt;
  };
  return codec;
}

constexpr auto kInlets = [](auto& machine) -> auto& { return machine.inlets; };

std::vector<ColumnOf<Machine>> columns() {
  std::vector<ColumnOf<Machine>> all;
  const auto add = [&](const char* key, auto codec, auto access) {
    all.push_back(memberColumn<Machine>(key, std::move(codec), access));
  };
  const auto inlets = [&](const char* key, CellCodec<Inlet> codec) {
    all.push_back(partsColumn<Machine, Inlet>(key, std::move(codec), kInlets));
  };
  add(
      "name", textCodec(), [](auto& m) -> auto& { return m.name; });
  add(
      "kind", kindCodec(), [](auto& m) -> auto& { return m.kind; });
  inlets("plate", within<Inlet>(
                      knownCodec<units::Current>(), [](auto& i) -> auto& { return i.plate; }));
  inlets("plate_voltage", within<Inlet>(
                              knownCodec<units::Voltage>(), [](auto& i) -> auto& { return i.plateVoltage; }));
  inlets("running", within<Inlet>(
                        knownCodec<units::Current>(), [](auto& i) -> auto& { return i.running; }));
  inlets("class", within<Inlet>(
                      choiceCodec<tables::LoadClass>("class"), [](auto& i) -> auto& { return i.loadClass; }));
  inlets("legend", legendCodec());
  inlets("size", within<Inlet>(
                     knownCodec<units::WireSize>(), [](auto& i) -> auto& { return i.cord.size; }));
  inlets("length", within<Inlet>(
                       knownCodec<units::Length>(), [](auto& i) -> auto& { return i.cord.length; }));
  inlets("plug", within<Inlet>(
                     receptacleCodec(), [](auto& i) -> auto& { return i.cord.plug; }));
  inlets("pin", within<Inlet>(
                    choiceCodec<site::Pin>("pin"), [](auto& i) -> auto& { return i.cord.pin; }));
  add(
      "speed", knownCodec<units::Frequency>(), [](auto& m) -> auto& { return m.speed; });
  add(
      "shaft", knownCodec<units::Power>(), [](auto& m) -> auto& { return m.shaftPower; });
  add(
      "wet", flagCodec(), [](auto& m) -> auto& { return m.wet; });
  add(
      "double_insulated", flagCodec(), [](auto& m) -> auto& { return m.doubleInsulated; });
  all.push_back(columnOf<Machine>("out_of_service", fact<Machine>([](const ListingContext&, const Machine& machine) {
                                    return machine.outOfService ? machine.outOfService->reason : std::string();
                                  })));
  return all;
}

// With one supply cord, or as many as its row has plates.
std::variant<Machine, io::RowFault> make(const ListingContext&, site::MachineId id, const io::Cells& cells) {
  Machine machine{std::move(id), cellText(cells, "name")};
  machine.inlets.resize(partsOf(cellText(cells, "plate")).size());
  for (std::size_t i = 0; i < machine.inlets.size(); ++i) machine.inlets[i].name = static_cast<char>('A' + i % 26);
  return machine;
}

}  // namespace

const Listing& machineListing() {
  static const ListingOf<Machine> listing(
      {ListingKind::Machines, rules::SubjectKind::Machine, columns(),
       [](const site::Site&, const Machine& machine) { return machine.name; },
       [](const ListingContext&, const io::Cells& cells) { return cellText(cells, "name"); }, make});
  return listing;
}

}  // namespace cordreach::app
