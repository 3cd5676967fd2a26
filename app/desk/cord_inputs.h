// SPDX-License-Identifier: GPL-3.0-or-later
// What has been said about a job: the four inputs of the question and the what-ifs, as a plain value. Each input has a
// sensible start, so that there is an answer before anything was said.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "compute/cord_answer.h"
#include "planning/cord_question.h"
#include "site/plan.h"
#include "site/walk.h"
#include "text/phrasebook.h"

namespace cordreach::app {

enum class MachineBy { Site, Type, Plate };
enum class OutletBy { Site, Hand };  // by hand: breaker, run and receptacle, each as far as known or seen
enum class CordsBy { Cart, Stock, Jacket };
enum class Measure { Length, Paces, FloorTiles, CeilingTiles, Plan };  // Plan: followed along it, while it can be

struct CordInputs {
  MachineBy machineBy = MachineBy::Type;
  std::optional<site::MachineId> machine{};
  std::string inletName{};  // of the machine of the site
  std::string type = "burnisher_1500";
  site::Inlet plate{};  // as typed from the nameplate
  bool plateWet = false;

  units::Length distance = 75.0 * units::foot;
  Measure measure = Measure::Length;

  OutletBy outletBy = OutletBy::Hand;
  std::optional<site::OutletSocket> outlet{};
  std::optional<units::Current> breaker = 20.0 * units::ampere;  // none: don't know
  site::Known<units::Length> run{};
  site::Known<units::WireSize> runSize{};
  std::string receptacle{};
  site::FaceColour colour = site::FaceColour::Unknown;
  bool groundFaultDevice = false;

  CordsBy cordsBy = CordsBy::Stock;
  site::CordMake jacket{};

  planning::CordWhatIf whatIf{};
};

// One of the steps in which a distance is counted: a pace is 2.5 ft (own: what most people walk), a floor tile 12 in,
// a ceiling tile 2 ft (the usual grid; both common).
[[nodiscard]] units::Length stepOf(Measure measure);

// The machine planned first with where it is plugged in, else a burnisher on a 20 A outlet; the site's cart if it has
// cords, else common stock.
[[nodiscard]] CordInputs startInputs(const site::Site& site);
// The same with what is no longer in the site replaced by a start.
[[nodiscard]] CordInputs stillThere(const CordInputs& inputs, const site::Site& site);

// Where the machine of the site works: at its planned hookup's place, else at its own.
[[nodiscard]] std::optional<site::Place> workOf(const CordInputs& inputs, const site::Site& site);
// The two ends of what can be followed along the plan, outlet and work; none: the plan does not say where they are.
struct PlanEnds {
  site::Place outlet;
  site::Place work;

  friend bool operator==(const PlanEnds&, const PlanEnds&) = default;
};
[[nodiscard]] std::optional<PlanEnds> planEnds(const CordInputs& inputs, const site::Site& site);

// The plan's hookup that is asked about: of the machine, at that outlet if it is planned there, else its first. Null:
// the machine is not of the site, or not in the plan.
[[nodiscard]] const site::Hookup* plannedHookup(const CordInputs& inputs, const site::Site& site);

// A question with nothing but its machine in it: the supply cord that is asked about, with its machine's name.
[[nodiscard]] planning::CordQuestion machineOf(const CordInputs& inputs, const site::Site& site,
                                               const text::Phrasebook& book);

[[nodiscard]] CordAsked askedOf(const CordInputs& inputs, const std::shared_ptr<const site::Site>& site,
                                const text::Phrasebook& book);

}  // namespace cordreach::app
