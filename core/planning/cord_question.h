// SPDX-License-Identifier: GPL-3.0-or-later
// A question about one cord: which machine, how far, plugged in where, and which cords there are. What nobody knows may
// stay open; it is answered for the likely cases, and the strictest counts.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "site/equipment.h"
#include "site/outlet.h"
#include "site/site.h"

namespace cordreach::planning {

// One thing at a time that is worse than planned. Each only makes an answer stricter.
struct CordWhatIf {
  bool hotDay = false;         // 40 °C in the rooms, at the panel and in the walls (own)
  bool lowSupply = false;      // 5 % below nominal: the low end of ANSI C84.1 range A at the service, from memory
  bool tiredBreaker = false;   // acts on load as the earliest curve does, and in a fault perhaps not at all (own)
  bool coiled = false;         // the cord left as a hank of ten turns (own)
  bool secondMachine = false;  // the same machine again, on the circuit's next receptacle
  bool chained = false;        // two extensions of half the length in place of each one

  friend bool operator==(const CordWhatIf&, const CordWhatIf&) = default;
};

// A contact of a described building: its circuit, wire, supply and fixed loads, and what is planned at the same hours.
struct SiteContact {
  const site::Site* site;
  site::OutletId outlet;
  std::string contact;
  // That is asked about: it is plugged in here instead, and its machine is as the site has it. None: the machine is not
  // in the plan.
  std::optional<site::HookupId> hookup{};

  friend bool operator==(const SiteContact&, const SiteContact&) = default;
};

struct CordQuestion {
  std::string name{};   // of the machine, for the words; may be empty
  site::Inlet inlet{};  // its plate, class and own cord
  std::optional<units::Power> shaftPower{};
  std::string kind{};  // of site::Machine
  bool doubleInsulated = false;
  bool wet = false;
  units::Length distance{};                 // from the outlet to the farthest work, along the floor
  std::optional<units::Current> breaker{};  // none: unknown, judged on 15 A and on 20 A, the stricter counts
  site::Known<units::Length> run{};         // panel to outlet; none: guessed
  site::Known<units::WireSize> runSize{};   // none: by the breaker
  std::string receptacle{};                 // key of the receptacle table; empty: the breaker's rating
  site::FaceColour colour = site::FaceColour::Unknown;  // of the receptacle's face
  bool groundFaultDevice = false;                       // a ground-fault receptacle: it has its own buttons
  std::optional<SiteContact> at{};                      // instead of all from the breaker on
  const site::Site* cart = nullptr;                     // whose cords in service may be taken; none: common stock
  std::optional<site::CordMake> jacket{};               // only this one may be taken: what is printed on it
  std::optional<site::Hours> hours{};  // of the job; none: nobody knows, so that all that is planned may be on then
  CordWhatIf whatIf{};
};

// Whether the two differ in nothing but the distance: then what was judged for one holds for the other.
[[nodiscard]] bool sameButDistance(const CordQuestion& a, const CordQuestion& b);

// Breakers it may be: the one that is known; of an unknown one 15 and 20 A, but a face of more than 15 A rules out
// the smaller for whatever may hang on either, up to 12 A (NEC 210.21(B)(3), 210.23). Never empty; rising.
[[nodiscard]] std::vector<units::Current> likelyBreakers(const CordQuestion& question);

// Of a face whose colour has a meaning: red feeds what must go on in an emergency, orange has an isolated earth for
// computers (NEC 406.3(E) for orange, common practice for red; both from memory).
[[nodiscard]] site::UseClass useOf(site::FaceColour colour);

}  // namespace cordreach::planning
