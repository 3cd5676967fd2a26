// SPDX-License-Identifier: GPL-3.0-or-later
// A sound hookup with a hand-made answer, to be spoilt in one thing at a time: a 15 A machine on its own 14 AWG cord,
// through a 12 AWG extension, at a 20 A duplex of a 20 A circuit.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "rules/judge.h"

namespace cordreach::rules {

using units::ampere;
using units::foot;
using units::hour;
using units::kelvin;
using units::metre;
using units::minute;
using units::second;
using units::volt;

template <class T>
study::Band<T> sharp(T value) {
  return {value, value, value};
}

struct TinySite {
  site::Site site{.id = site::SiteId("s")};
  study::Answer answer;

  TinySite() {
    survey();
    equip();
    answerSoundly();
  }

  [[nodiscard]] site::Circuit circuit() const { return site.at<site::Circuit>(site::CircuitId("c1")); }
  [[nodiscard]] site::Outlet outlet() const { return site.at<site::Outlet>(site::OutletId("o1")); }
  [[nodiscard]] site::Machine machine() const { return site.at<site::Machine>(site::MachineId("m1")); }
  [[nodiscard]] site::Cord cord() const { return site.at<site::Cord>(site::CordId("x1")); }
  [[nodiscard]] site::Hookup hookup() const { return site.at<site::Hookup>(site::HookupId("h1")); }
  [[nodiscard]] site::ExtensionUse use() const { return site.at<site::ExtensionUse>(site::ExtensionUseId("u1")); }
  template <class T>
  void put(T thing) {
    site.all<T>().put(std::move(thing));
  }

  study::HookupAnswer& given() { return answer.hookups.front(); }
  study::CircuitAnswer& circuitGiven() { return answer.circuits.front(); }
  study::CordAnswer& extensionGiven() { return given().cords.front(); }
  study::CordAnswer& ownCordGiven() { return given().cords.back(); }

  [[nodiscard]] std::vector<Finding> judged() const { return judge(site, answer); }
  [[nodiscard]] std::vector<Finding> found(std::string_view code) const {
    std::vector<Finding> all = judged();
    std::erase_if(all, [&](const Finding& finding) { return finding.code != code; });
    return all;
  }
  [[nodiscard]] bool has(std::string_view code) const { return !found(code).empty(); }
  [[nodiscard]] Severity verdict() const { return verdictOf(site::HookupId("h1"), judged()); }

  void markContacts(site::UseClass use) {
    site::Outlet wall = outlet();
    for (site::Contact& contact : wall.contacts) contact.use = use;
    put(wall);
  }
  void forgetBreaker() {
    site::Outlet wall = outlet();
    for (site::Contact& contact : wall.contacts) contact.assignment.reset();
    put(wall);
    given().circuit.reset();
  }

  // A fixed load on the circuit, with its share of the answer.
  void addLoad(const std::string& id, const std::string& name, double amperes) {
    site::FixedLoad load{.id = site::FixedLoadId(id), .name = name, .circuit = site::CircuitId("c1")};
    load.plate = site::known(amperes * ampere);
    put(load);
    circuitGiven().shares.push_back({{}, load.id, amperes * ampere, amperes * ampere, false, false});
  }

 private:
  void survey() {
    site::Floor floor{.id = site::FloorId("f1"), .name = "Ground"};
    put(floor);
    site::Supply supply{.id = site::SupplyId("s1")};
    put(supply);
    site::Panel panel{.id = site::PanelId("p1"), .name = "1A", .supply = site::SupplyId("s1")};
    panel.place = site::Place{floor.id, {0.0, 0.0}};
    put(panel);
    site::Circuit one{.id = site::CircuitId("c1"), .panel = panel.id, .number = "4", .phases = {0}};
    one.rating = site::known(20.0 * ampere);
    one.size = site::known(units::WireSize::awg(12));
    put(one);
    site::Outlet wall{.id = site::OutletId("o1"), .label = "1-13", .place = site::Place{floor.id, {10.0, 0.0}}};
    for (const char* name : {"upper", "lower"}) {
      site::Contact contact;
      contact.name = name;
      contact.assignment = site::Assignment{one.id, site::HowKnown::Traced, {}, {}};
      contact.receptacle = "5-20";
      wall.contacts.push_back(contact);
    }
    put(wall);
  }

  static site::CordMake make(int gauge, double feet) {
    site::CordMake made;
    made.type = "SJTW";
    made.size = site::known(units::WireSize::awg(gauge));
    made.conductors = site::known(3);
    made.length = site::known(feet * foot);
    made.plug = "5-15";
    return made;
  }

  void equip() {
    site::Machine one{.id = site::MachineId("m1"), .name = "Burnisher"};
    site::Inlet inlet;
    inlet.name = "A";
    inlet.plate = site::known(15.0 * ampere);
    inlet.cord = make(14, 50.0);
    one.inlets = {inlet};
    put(one);
    site::Cord extension{.id = site::CordId("x1"), .label = "C01", .make = make(12, 50.0)};
    extension.sockets = {"5-15"};
    put(extension);
    put(site::ExtensionUse{.id = site::ExtensionUseId("u1"),
                           .cord = extension.id,
                           .socket = site::OutletSocket{site::OutletId("o1"), "upper"}});
    site::Hookup plugged{
        .id = site::HookupId("h1"), .machine = one.id, .inlet = "A", .socket = site::CordSocket{extension.id, 0}};
    put(plugged);
  }

  static study::CordAnswer coolCord() {
    const auto warm = units::Temperature::fromCelsius(40.0);
    return {{},
            {},
            sharp(15.0 * ampere),
            15.0 * ampere,
            sharp(warm),
            sharp(warm),
            units::Temperature::fromCelsius(60.0),
            std::nullopt,
            sharp(10.0 * kelvin)};
  }

  void answerSoundly() {
    const study::BreakerAnswer breaker{20.0 * ampere, physics::TripTimes{}, {}, 15.0 * ampere, 2.0 * hour};
    study::HookupAnswer one{site::HookupId("h1"),
                            site::MachineId("m1"),
                            "A",
                            site::OutletId("o1"),
                            "upper",
                            site::CircuitId("c1"),
                            {},
                            2.0 * hour,
                            sharp(15.0 * ampere),
                            sharp(113.0 * volt),
                            sharp(7.0 * volt),
                            120.0 * volt,
                            2.0 * volt,
                            3.0 * volt,
                            3.0 * volt,
                            {},
                            false,
                            false,
                            false,
                            {},
                            15.0 * ampere,
                            breaker,
                            {}};
    one.cords = {coolCord(), coolCord()};
    one.cords.front().id = site::CordId("x1");
    one.cords.front().use = site::ExtensionUseId("u1");
    answer.hookups = {one};
    study::CircuitAnswer wire{site::CircuitId("c1"),
                              {},
                              sharp(15.0 * ampere),
                              15.0 * ampere,
                              {},
                              15.0 * ampere,
                              {},
                              breaker,
                              units::Temperature::fromCelsius(35.0),
                              {}};
    wire.shares = {{site::HookupId("h1"), {}, 15.0 * ampere, 15.0 * ampere, false, false}};
    answer.circuits = {wire};
  }
};

}  // namespace cordreach::rules
