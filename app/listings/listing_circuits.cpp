// SPDX-License-Identifier: GPL-3.0-or-later
// Circuits, each with its breaker and the wire behind it.
#include "listings/listing_of.h"
#include "panels/phases_text.h"
#include "site/panel_schedule.h"
#include "site/phases.h"

namespace cordreach::app {

namespace {

using site::Circuit;

CellCodec<Circuit> panelCodec() {
  return fact<Circuit>([](const ListingContext& in, const Circuit& circuit) {
    const site::Panel* panel = in.site().find<site::Panel>(circuit.panel);
    return panel == nullptr || panel->name.empty() ? circuit.panel.text() : panel->name;
  });
}

CellCodec<Circuit> phasesCodec() {
  CellCodec<Circuit> codec;
  codec.read = [](const ListingContext&, const Circuit& circuit) { return phasesText(circuit.phases); };
  codec.write = [](const ListingContext&, Circuit& circuit, std::string_view text) -> CellError {
    auto read = readPhases(text);
    if (!read.ok()) return read.error();
    circuit.phases = std::move(read.value());
    return std::nullopt;
  };
  return codec;
}

std::vector<ColumnOf<Circuit>> columns() {
  std::vector<ColumnOf<Circuit>> all;
  const auto add = [&](const char* key, auto codec, auto access) {
    all.push_back(memberColumn<Circuit>(key, std::move(codec), access));
  };
  all.push_back(columnOf<Circuit>("circuit", fact<Circuit>([](const ListingContext& in, const Circuit& circuit) {
                                    return site::circuitNumberOf(in.site(), circuit);
                                  })));
  all.push_back(columnOf<Circuit>("panel", panelCodec()));
  add(
      "number", textCodec(), [](auto& c) -> auto& { return c.number; });
  add(
      "purpose", textCodec(), [](auto& c) -> auto& { return c.purpose; });
  add(
      "breaker_rating", knownCodec<units::Current>(), [](auto& c) -> auto& { return c.rating; });
  add(
      "use", choiceCodec<site::UseClass>("use"), [](auto& c) -> auto& { return c.use; });
  add(
      "ask_whom", textCodec(), [](auto& c) -> auto& { return c.askWhom; });
  all.push_back(columnOf<Circuit>("phases", phasesCodec()));
  add(
      "curve", choiceCodec<site::BreakerCurve>("curve"), [](auto& c) -> auto& { return c.curve; });
  add(
      "breaker_ground_fault", flagCodec(), [](auto& c) -> auto& { return c.groundFault; });
  add(
      "arc_fault", flagCodec(), [](auto& c) -> auto& { return c.arcFault; });
  add(
      "tied", flagCodec(), [](auto& c) -> auto& { return c.tied; });
  add(
      "tandem", flagCodec(), [](auto& c) -> auto& { return c.tandem; });
  add(
      "spare", flagCodec(), [](auto& c) -> auto& { return c.spare; });
  add(
      "may_not_trip", flagCodec(), [](auto& c) -> auto& { return c.mayNotTrip; });
  add(
      "wire_size", knownCodec<units::WireSize>(), [](auto& c) -> auto& { return c.size; });
  add(
      "metal", choiceCodec<site::Metal>("metal"), [](auto& c) -> auto& { return c.metal; });
  return all;
}

struct WhichCircuit {
  const site::Panel* panel = nullptr;
  std::string number;
};

const site::Panel* panelNamed(const site::Site& site, std::string_view name) {
  for (const site::Panel& panel : site.all<site::Panel>()) {
    if (smallLetters(panel.name) == smallLetters(name) || panel.id.text() == name) return &panel;
  }
  return nullptr;
}

// Out of "1A-5", or of a panel and a number; with one panel in the building the number will do.
WhichCircuit whichCircuit(const site::Site& site, const io::Cells& cells) {
  WhichCircuit which{panelNamed(site, cellText(cells, "panel")), cellText(cells, "number")};
  const std::string whole = cellText(cells, "circuit");
  for (auto dash = whole.find('-'); dash != std::string::npos && which.panel == nullptr;
       dash = whole.find('-', dash + 1)) {
    which.panel = panelNamed(site, tidied(whole.substr(0, dash)));
    if (which.panel != nullptr && which.number.empty()) which.number = tidied(whole.substr(dash + 1));
  }
  const bool onlyOne = site.all<site::Panel>().size() == 1;
  if (which.panel == nullptr && onlyOne && cellText(cells, "panel").empty())
    which.panel = &*site.all<site::Panel>().begin();
  if (which.number.empty() && whole.find('-') == std::string::npos) which.number = whole;
  return which;
}

std::string nameIn(const ListingContext& in, const io::Cells& cells) {
  const WhichCircuit which = whichCircuit(in.site(), cells);
  if (which.number.empty()) return cellText(cells, "circuit");
  if (which.panel == nullptr) return cellText(cells, "panel") + "-" + which.number;
  return site::circuitNumberOf(in.site(), Circuit{site::CircuitId("new"), which.panel->id, which.number});
}

// On the phases that its place on the panel has, as panelboards are built.
std::variant<Circuit, io::RowFault> make(const ListingContext& in, site::CircuitId id, const io::Cells& cells) {
  const WhichCircuit which = whichCircuit(in.site(), cells);
  if (which.panel == nullptr) {
    const std::string panel = cellText(cells, "panel");
    return io::RowFault{{"listing.no_panel", panel.empty() ? cellText(cells, "circuit") : panel, {}}, "panel"};
  }
  Circuit circuit{std::move(id), which.panel->id, which.number};
  const std::size_t phases = site::phaseCount(site::supplyOf(in.site(), *which.panel).system);
  circuit.phases = {0};
  const std::vector<int> spaces = site::spacesOf(circuit);
  if (!spaces.empty()) circuit.phases.clear();
  for (const int space : spaces) circuit.phases.push_back(site::phaseOfSpace(space, phases));
  return circuit;
}

}  // namespace

const Listing& circuitListing() {
  static const ListingOf<Circuit> listing(
      {ListingKind::Circuits, rules::SubjectKind::Circuit, columns(), site::circuitNumberOf, nameIn, make});
  return listing;
}

}  // namespace cordreach::app
