// SPDX-License-Identifier: GPL-3.0-or-later
// Random whole buildings that hold their invariants, from a seed and a size: what a survey might have found, with gaps,
// guesses and keys that nobody knows.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "site/phases.h"
#include "site/site.h"
#include "support/dice.h"

namespace cordreach::testing {

struct SiteSize {
  std::size_t panels = 2;
  std::size_t circuits = 8;
  std::size_t outletsPerCircuit = 5;
  std::size_t machines = 6;
  std::size_t cords = 8;
  bool strangeKeys = true;  // extras, and text beyond ASCII
};

class SiteMaker {
 public:
  SiteMaker(std::uint64_t seed, SiteSize size) : m_dice(seed), m_size(size) {}

  [[nodiscard]] site::Site make() {
    m_site.name = word();
    m_site.ambient.room = maybeGuess(units::Temperature::fromCelsius(whole(10, 40)));
    if (m_size.strangeKeys && m_dice.chance(0.5)) {
      m_site.extra = {{"weather", R"({"wind": [1.50, null, "\n"]})"}, {"/ambient/felt", "true"}, {"/~1odd~0", "0"}};
    }
    makePlaces();
    makePanels();
    for (std::size_t i = 0; i < m_size.circuits; ++i) makeCircuit(i);
    makeEquipment();
    for (const site::Machine& machine : m_site.all<site::Machine>()) plugIn(machine);
    makeRecords();
    return std::move(m_site);
  }

 private:
  using Length = units::Length;

  [[nodiscard]] std::string numbered(const char* letter, std::size_t number) {
    return letter + std::to_string(number + 1);
  }
  [[nodiscard]] double whole(int low, int high) {
    return low + static_cast<double>(m_dice.below(static_cast<std::size_t>(high - low + 1)));
  }
  template <class T>
  [[nodiscard]] T oneOf(const std::vector<T>& choices) {
    return choices[m_dice.below(choices.size())];
  }
  [[nodiscard]] std::string word() {
    if (!m_size.strangeKeys) return "Room " + std::to_string(m_dice.below(900));
    return oneOf<std::string>({"", "Lobby", "Recepción", "a \"quoted\" \\ name", "two\nlines\tand a tab", "階段", "x"});
  }
  // Known, guessed with a band, or not known.
  template <class T>
  [[nodiscard]] site::Known<T> maybeGuess(T value) {
    if (m_dice.chance(0.2)) return std::nullopt;
    site::Known<T> known = site::known(value);
    if (m_dice.chance(0.3)) known->typed = "as typed";
    if (m_dice.chance(0.3)) known->low = known->high = value;
    if (m_dice.chance(0.3)) known->how = "paced";
    if (m_dice.chance(0.1)) known->who = "R. Surveyor";
    if (m_dice.chance(0.1)) known->when = "2025-02-28";
    return known;
  }
  [[nodiscard]] site::Known<Length> maybeLength(double lowM, double highM) {
    site::Known<Length> length = maybeGuess(m_dice.between(lowM, highM) * units::metre);
    if (length && length->low) {
      length->low = length->value * 0.6;
      length->high = length->value * 1.8;
    }
    return length;
  }
  [[nodiscard]] units::WireSize size() {
    if (m_dice.chance(0.2)) return units::WireSize::squareMillimetres(oneOf<double>({1.0, 1.5, 2.5, 4.0}));
    return units::WireSize::awg(oneOf<int>({10, 12, 14, 16}));
  }
  [[nodiscard]] std::optional<site::Place> maybePlace() {
    if (m_dice.chance(0.2)) return std::nullopt;
    return site::Place{site::FloorId(numbered("F", m_dice.below(2))), {m_dice.between(0, 60), m_dice.between(0, 30)}};
  }
  [[nodiscard]] std::optional<site::Hours> maybeHours() {
    if (m_dice.chance(0.2)) return std::nullopt;
    const double from = whole(0, 24 * 60 - 1) * 60.0;
    const double seconds = m_dice.chance(0.1) ? m_dice.between(1, 3600) : whole(1, 300) * 60.0;
    return site::Hours{units::Duration::fromSi(from), units::Duration::fromSi(from + seconds)};
  }
  [[nodiscard]] site::Extra maybeExtra() {
    if (!m_size.strangeKeys || !m_dice.chance(0.1)) return {};
    return {{"paint", "\"red\""}, {"seen", "[1, 2.50, {\"a\": null}]"}};
  }

  void makePlaces() {
    for (std::size_t i = 0; i < 2; ++i) {
      site::Floor floor{.id = site::FloorId(numbered("F", i)), .name = word(), .level = static_cast<int>(i)};
      floor.walls.push_back({{0, 0}, {m_dice.between(1, 60), 0}});
      if (m_dice.chance(0.5)) floor.picture = site::Picture{"0a1b", "png", 0.01, {1.5, -2}, whole(-90, 90)};
      m_site.all<site::Floor>().put(floor);
      site::Room room{.id = site::RoomId(numbered("R", i)), .floor = floor.id, .name = word()};
      room.outline = {{0, 0}, {m_dice.between(1, 60), 0}, {3, 4}};
      room.corridor = m_dice.chance(0.5);
      m_site.all<site::Room>().put(room);
    }
  }
  void makePanels() {
    site::Supply supply{.id = site::SupplyId("S1"), .name = word()};
    supply.system = oneOf<site::WiringSystem>({site::WiringSystem::SplitPhase120, site::WiringSystem::Wye208,
                                               site::WiringSystem::Single230, site::WiringSystem::Wye400});
    supply.loopImpedance = maybeGuess(m_dice.between(0.02, 0.3) * units::ohm);
    m_site.all<site::Supply>().put(supply);
    for (std::size_t i = 0; i < m_size.panels; ++i) {
      site::Panel panel{.id = site::PanelId(numbered("P", i)), .name = word()};
      if (i == 0 || m_dice.chance(0.5)) {
        panel.supply = supply.id;
      } else {
        panel.fedFrom = site::PanelId(numbered("P", i - 1));
      }
      panel.feederLength = maybeLength(5, 60);
      panel.feederSize = site::known(units::WireSize::awg(-1));
      panel.place = maybePlace();
      panel.keyHolder = word();
      panel.extra = maybeExtra();
      m_site.all<site::Panel>().put(panel);
    }
  }
  void makeCircuit(std::size_t number) {
    const site::Panel& panel = m_site.at<site::Panel>(site::PanelId(numbered("P", m_dice.below(m_size.panels))));
    const std::size_t phases = site::phaseCount(supplyOf(m_site, panel).system);
    site::Circuit circuit{.id = site::CircuitId(numbered("B", number)), .panel = panel.id};
    circuit.number = std::to_string(number + 1);
    circuit.phases = {m_dice.below(phases)};
    circuit.purpose = word();
    circuit.rating = maybeGuess(oneOf<double>({15, 16, 20, 30}) * units::ampere);
    circuit.groundFault = m_dice.chance(0.1);
    circuit.use = m_dice.chance(0.1) ? site::UseClass::AskFirst : site::UseClass::Ordinary;
    circuit.size = maybeGuess(size());
    circuit.metal = m_dice.chance(0.1) ? site::Metal::Aluminium : site::Metal::Copper;
    circuit.extra = maybeExtra();
    m_site.all<site::Circuit>().put(circuit);
    std::optional<site::OutletId> before;
    for (std::size_t i = 0; i < m_size.outletsPerCircuit; ++i) before = makeOutlet(circuit, i, before);
    makeLoad(circuit, number);
  }
  [[nodiscard]] site::OutletId makeOutlet(const site::Circuit& circuit, std::size_t number,
                                          const std::optional<site::OutletId>& before) {
    site::Outlet outlet{.id = site::OutletId(circuit.id.text() + "-" + std::to_string(number)), .label = word()};
    outlet.place = maybePlace();
    outlet.height = maybeLength(0.2, 1.2);
    const bool isDuplex = m_dice.chance(0.7);
    for (const char* name : isDuplex ? std::vector{"upper", "lower"} : std::vector{"single"}) {
      site::Contact contact{.name = name, .directory = word(), .receptacle = oneOf<std::string>({"5-15", "5-20", ""})};
      if (m_dice.chance(0.9))
        contact.assignment = {circuit.id, oneOf<site::HowKnown>({site::HowKnown::Traced, {}}), ""};
      if (contact.assignment && m_dice.chance(0.2)) contact.poles = circuit.phases;
      if (m_dice.chance(0.1)) contact.poweredHours = maybeHours();
      contact.loose = m_dice.chance(0.1);
      contact.extra = maybeExtra();
      m_free.push_back({outlet.id, name});
      outlet.contacts.push_back(std::move(contact));
    }
    m_site.all<site::Outlet>().put(outlet);
    if (m_dice.chance(0.8)) {
      site::Run run{.id = site::RunId("W" + outlet.id.text()), .circuit = circuit.id, .from = before, .to = outlet.id};
      run.length = maybeLength(1, 30);
      run.path = {{m_dice.between(0, 60), 1}, {2, m_dice.between(0, 60)}};
      m_site.all<site::Run>().put(run);
    }
    return outlet.id;
  }
  void makeLoad(const site::Circuit& circuit, std::size_t number) {
    if (m_dice.chance(0.5)) return;
    site::FixedLoad load{.id = site::FixedLoadId(numbered("L", number)), .name = word(), .circuit = circuit.id};
    load.loadClass = oneOf<tables::LoadClass>({tables::LoadClass::Resistance, tables::LoadClass::Compressor});
    load.running = maybeGuess(m_dice.between(0.5, 12) * units::ampere);
    if (m_dice.chance(0.3)) load.cycle = site::Cycle{whole(1, 600) * units::second, whole(1, 600) * units::second};
    load.hours = maybeHours();
    m_site.all<site::FixedLoad>().put(load);
  }
  [[nodiscard]] site::CordMake cordMake() {
    site::CordMake make{.legend = word(), .type = "SJTW", .size = maybeGuess(size()), .conductors = maybeGuess(3)};
    make.length = maybeLength(3, 30);
    make.rating = maybeGuess(units::Temperature::fromCelsius(oneOf<double>({60, 75, 90, 105})));
    make.plug = "5-15";
    make.pin = oneOf<site::Pin>({site::Pin::Present, site::Pin::Present, site::Pin::Missing});
    make.printReadable = m_dice.chance(0.9);
    return make;
  }
  void makeEquipment() {
    m_site.all<site::Pad>().put({.id = site::PadId("D1"), .ratedSpeed = site::known(600.0 / 60.0 * units::hertz)});
    for (std::size_t i = 0; i < m_size.machines; ++i) {
      site::Machine machine{.id = site::MachineId(numbered("M", i)), .name = word(), .kind = "burnisher"};
      for (const char* name : m_dice.chance(0.2) ? std::vector{"A", "B"} : std::vector{"A"}) {
        site::Inlet inlet{.name = name, .cord = cordMake()};
        inlet.loadClass = oneOf<tables::LoadClass>({tables::LoadClass::RectifiedDc, tables::LoadClass::Universal, {}});
        inlet.plateVoltage = maybeGuess(115.0 * units::volt);
        inlet.plate = maybeGuess(m_dice.between(2, 15) * units::ampere);
        machine.inlets.push_back(std::move(inlet));
      }
      machine.shaftPower = maybeGuess(1.5 * units::horsepower);
      machine.speed = maybeGuess(units::Frequency::fromSi(whole(100, 3000) / 60.0));
      if (m_dice.chance(0.5)) machine.pad = site::PadId("D1");
      if (m_dice.chance(0.1)) machine.outOfService = site::OutOfService{"bared wire", "R. Surveyor", "2025-02-28"};
      machine.wet = m_dice.chance(0.2);
      m_site.all<site::Machine>().put(machine);
    }
    for (std::size_t i = 0; i < m_size.cords; ++i) {
      site::Cord cord{.id = site::CordId(numbered("C", i)), .label = word(), .make = cordMake()};
      cord.tag = maybeGuess(13.0 * units::ampere);
      cord.sockets.assign(1 + m_dice.below(3), "5-15");
      cord.extra = maybeExtra();
      m_site.all<site::Cord>().put(cord);
    }
  }
  // Each contact and each cord is used once, so that nothing is plugged twice at any hour.
  [[nodiscard]] std::optional<site::Socket> freeSocket() {
    if (m_free.empty()) return std::nullopt;
    const std::size_t at = m_dice.below(m_free.size());
    site::Socket socket = m_free[at];
    m_free.erase(m_free.begin() + static_cast<std::ptrdiff_t>(at));
    while (m_cordsUsed < m_size.cords && m_dice.chance(0.4)) {
      const site::CordId cord(numbered("C", m_cordsUsed));
      site::ExtensionUse use{
          .id = site::ExtensionUseId(numbered("E", m_cordsUsed++)), .cord = cord, .socket = std::move(socket)};
      if (m_dice.chance(0.3)) use.laying = {tables::Laying::Coiled, whole(2, 20), m_dice.between(1, 10) * units::metre};
      m_site.all<site::ExtensionUse>().put(use);
      socket = site::CordSocket{cord, 0};
    }
    return socket;
  }
  void plugIn(const site::Machine& machine) {
    for (const site::Inlet& inlet : machine.inlets) {
      auto socket = freeSocket();
      if (!socket) return;
      site::Hookup hookup{.id = site::HookupId("H" + machine.id.text() + inlet.name),
                          .machine = machine.id,
                          .inlet = inlet.name,
                          .socket = *socket};
      hookup.hours = maybeHours();
      hookup.off = m_dice.chance(0.1);
      hookup.asked = m_dice.chance(0.2);
      hookup.place = maybePlace();
      m_site.all<site::Hookup>().put(hookup);
    }
  }
  void makeEvents() {
    for (const site::FixedLoad& load : m_site.all<site::FixedLoad>()) {
      if (!m_dice.chance(0.3)) continue;
      m_site.all<site::Event>().put({.id = site::EventId("V" + load.id.text()),
                                     .kind = site::EventKind::LoadOn,
                                     .at = whole(0, 47) * units::hour,
                                     .load = load.id});
    }
    for (const site::Hookup& hookup : m_site.all<site::Hookup>()) {
      if (!m_dice.chance(0.3)) continue;
      m_site.all<site::Event>().put({.id = site::EventId("V" + hookup.id.text()),
                                     .kind = site::EventKind::Lay,
                                     .at = whole(0, 47) * units::hour,
                                     .hookup = hookup.id,
                                     .laying = {tables::Laying::Coiled, whole(2, 20), {}}});
    }
  }
  void makeRecords() {
    makeEvents();
    m_site.all<site::Acceptance>().put(
        {.id = site::AcceptanceId("A1"), .finding = "circuit.over_rating", .who = word()});
    m_site.all<site::HistoryEntry>().put({.id = site::HistoryId("Y1"), .kind = "trace", .text = word()});
  }

  Dice m_dice;
  SiteSize m_size;
  site::Site m_site{.id = site::SiteId("random")};
  std::vector<site::OutletSocket> m_free;
  std::size_t m_cordsUsed = 0;
};

[[nodiscard]] inline site::Site randomSite(std::uint64_t seed, SiteSize size = {}) {
  return SiteMaker(seed, size).make();
}

}  // namespace cordreach::testing
