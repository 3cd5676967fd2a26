// SPDX-License-Identifier: GPL-3.0-or-later
// A breaker too large to guard the wire behind it.
#include <algorithm>

#include "rules/all_rules.h"
#include "rules/finding_builder.h"
#include "rules/ratings.h"

namespace cordreach::rules {

namespace {

// The thinnest wire that is known on the circuit.
std::optional<units::WireSize> thinnestOf(const site::Circuit& circuit, const site::Site& site) {
  std::optional<units::WireSize> thinnest;
  const auto consider = [&](const site::Known<units::WireSize>& size) {
    if (size && (!thinnest || size->value < *thinnest)) thinnest = size->value;
  };
  consider(circuit.size);
  for (const site::Run& run : site.all<site::Run>()) {
    if (run.circuit == circuit.id) consider(run.size);
  }
  return thinnest;
}

}  // namespace

Findings deviceOverWire(const Case& in, const Rule& rule) {
  Findings found;
  for (const study::CircuitAnswer& answer : in.answer().circuits) {
    const site::Circuit& circuit = in.site().at<site::Circuit>(answer.id);
    const auto size = thinnestOf(circuit, in.site());
    if (!circuit.rating || !size) continue;
    const auto allowed = largestDevice(*size, circuit.metal);
    if (!allowed || !exceeds(circuit.rating->value.si(), allowed->si())) continue;
    FindingBuilder finding(rule);
    finding.about(circuit, in).colours(in.on(circuit.id));
    finding.with(text("size", size->name())).with(amperes("allowed_a", *allowed));
    finding.why("wire.allows", {text("size", size->name()), amperes("allowed_a", *allowed)});
    found.push_back(finding.done());
  }
  return found;
}

}  // namespace cordreach::rules
