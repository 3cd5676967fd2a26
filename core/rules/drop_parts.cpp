// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/drop_parts.h"

#include <algorithm>

namespace cordreach::rules {

namespace {

struct Part {
  std::string code;
  base::Arguments arguments;
  units::Voltage drop;
};

// Proportional to the volts lost in a cord. An unknown size or length takes those of an ordinary light extension, only
// to share out a drop that is known in sum.
double weightOf(const Link& link, const study::CordAnswer& answer) {
  const site::CordMake& make = link.make();
  const units::Length length = make.length ? make.length->value : 50.0 * units::foot;
  const units::Area area = make.size ? make.size->value.area() : units::WireSize::awg(16).area();
  return answer.current.likely.si() * length.si() / area.si();
}

std::vector<Part> cordParts(const HookupCase& hookup, units::Voltage inCords) {
  const auto& answers = hookup.answer->cords;
  const std::size_t count = std::min(hookup.chain.size(), answers.size());
  std::vector<double> weights;
  double sum = 0.0;
  for (std::size_t back = count; back >= 1; --back) {
    weights.push_back(weightOf(hookup.chain[hookup.chain.size() - back], answers[answers.size() - back]));
    sum += weights.back();
  }
  std::vector<Part> parts;
  if (sum <= 0.0) return parts;
  for (std::size_t i = 0; i < count; ++i) {
    const Link& link = hookup.chain[hookup.chain.size() - count + i];
    base::Arguments arguments;
    if (link.own()) {
      arguments.push_back(text("machine", link.machine->name));
    } else {
      arguments.push_back(text("cord", link.cord->label));
    }
    if (link.make().size) arguments.push_back(text("size", link.make().size->value.name()));
    if (link.make().length) arguments.push_back(number("length_m", link.make().length->value.in(units::metre)));
    parts.push_back({link.own() ? "drop.own_cord" : "drop.extension", arguments, inCords * (weights[i] / sum)});
  }
  return parts;
}

}  // namespace

void whyDrop(FindingBuilder& finding, const HookupCase& hookup) {
  const study::HookupAnswer& answer = *hookup.answer;
  std::vector<Part> parts = cordParts(hookup, answer.drop.likely - answer.outletDrop);
  parts.push_back({"drop.building_wire", {}, answer.branchDrop});
  parts.push_back({"drop.source", {}, answer.outletDrop - answer.branchDrop});
  for (Part& part : parts) {
    const double share = answer.drop.likely.si() > 0.0 ? part.drop / answer.drop.likely : 0.0;
    part.arguments.push_back(volts("drop_v", part.drop));
    finding.why(part.code, part.arguments, std::clamp(share, 0.0, 1.0));
  }
}

}  // namespace cordreach::rules
