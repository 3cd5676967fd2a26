// SPDX-License-Identifier: GPL-3.0-or-later
// A breaker too large to guard the wire behind it.
#include <map>

#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"

namespace cordreach::rules {

namespace {

// The thinnest wire that is known on each circuit.
std::map<site::CircuitId, units::WireSize> thinnestByCircuit(const site::Site& site) {
  std::map<site::CircuitId, units::WireSize> thinnest;
  const auto consider = [&](const site::CircuitId& circuit, const site::Known<units::WireSize>& size) {
    if (!size) return;
    const auto [at, isNew] = thinnest.insert({circuit, size->value});
    if (!isNew && size->value < at->second) at->second = size->value;
  };
  for (const site::Circuit& circuit : site.all<site::Circuit>()) consider(circuit.id, circuit.size);
  for (const site::Run& run : site.all<site::Run>()) consider(run.circuit, run.size);
  return thinnest;
}

}  // namespace

Findings deviceOverWire(const Case& in, const Rule& rule) {
  Findings found;
  const auto thinnest = thinnestByCircuit(in.site());
  for (const study::CircuitAnswer& answer : in.answer().circuits) {
    const site::Circuit& circuit = in.site().at<site::Circuit>(answer.id);
    const auto known = thinnest.find(circuit.id);
    if (!circuit.rating || known == thinnest.end()) continue;
    const units::WireSize size = known->second;
    const auto allowed = largestDevice(size, circuit.metal);
    if (!allowed || !exceeds(circuit.rating->value.si(), allowed->si())) continue;
    FindingBuilder finding(rule);
    finding.about(circuit, in).colours(in.on(circuit.id));
    finding.with(text("size", size.name())).with(amperes("allowed_a", *allowed));
    finding.why("wire.allows", {text("size", size.name()), amperes("allowed_a", *allowed)});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
