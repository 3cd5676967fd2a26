// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/finding_builder.h"

#include <algorithm>

#include "base/contract.h"
#include "site/assigning.h"

namespace cordreach::rules {

base::Argument text(std::string name, std::string value) { return {std::move(name), std::move(value)}; }
base::Argument number(std::string name, double value) { return {std::move(name), value}; }
base::Argument amperes(std::string name, units::Current value) { return {std::move(name), value.in(units::ampere)}; }
base::Argument volts(std::string name, units::Voltage value) { return {std::move(name), value.in(units::volt)}; }
base::Argument celsius(std::string name, units::Temperature value) { return {std::move(name), value.celsius()}; }
base::Argument seconds(std::string name, units::Duration value) { return {std::move(name), value.in(units::second)}; }

bool exceeds(double value, double limit) { return value > limit * (1.0 + 1e-9); }

FindingBuilder::FindingBuilder(const Rule& rule) {
  m_finding.code = rule.code;
  m_finding.severity = rule.severity;
  m_finding.source = rule.source;
}

FindingBuilder& FindingBuilder::subject(SubjectKind kind, const std::string& id) {
  const Subject one{kind, id};
  auto& all = m_finding.subjects;
  if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
  return *this;
}

FindingBuilder& FindingBuilder::colours(const HookupCase& hookup) {
  auto& all = m_finding.hookups;
  if (std::find(all.begin(), all.end(), hookup.hookup->id) == all.end()) all.push_back(hookup.hookup->id);
  return *this;
}

FindingBuilder& FindingBuilder::colours(const std::vector<const HookupCase*>& hookups) {
  for (const HookupCase* hookup : hookups) colours(*hookup);
  return *this;
}

FindingBuilder& FindingBuilder::with(base::Argument argument) {
  auto& all = m_finding.arguments;
  const bool known =
      std::any_of(all.begin(), all.end(), [&](const base::Argument& other) { return other.name == argument.name; });
  if (!known) all.push_back(std::move(argument));
  return *this;
}

FindingBuilder& FindingBuilder::why(std::string code, base::Arguments arguments, std::optional<double> share) {
  m_finding.why.push_back({std::move(code), std::move(arguments), share});
  return *this;
}

FindingBuilder& FindingBuilder::at(const std::optional<units::Duration>& moment) {
  m_finding.moment = moment;
  return *this;
}

FindingBuilder& FindingBuilder::happens(const std::optional<units::Duration>& time) {
  return time ? with(seconds("clock_s", *time)).at(time) : *this;
}

FindingBuilder& FindingBuilder::about(const HookupCase& hookup, const Case& in) {
  subject(SubjectKind::Hookup, hookup.hookup->id.text());
  subject(SubjectKind::Machine, hookup.machine->id.text());
  with(text("machine", hookup.machine->name));
  if (hookup.machine->inlets.size() > 1) with(text("inlet", hookup.inlet->name));
  if (hookup.outlet != nullptr) about(*hookup.outlet);
  if (hookup.contact != nullptr && hookup.outlet->contacts.size() > 1) with(text("contact", hookup.contact->name));
  if (hookup.circuit != nullptr) about(*hookup.circuit, in);
  colours(hookup);
  if (!m_finding.moment) at(hookup.answer->moment);
  return *this;
}

FindingBuilder& FindingBuilder::about(const Link& link) {
  if (link.own()) {
    subject(SubjectKind::Machine, link.machine->id.text());
    with(text("cord_of", link.machine->name));
  } else {
    subject(SubjectKind::Cord, link.cord->id.text());
    with(text("cord", link.cord->label));
  }
  if (link.make().size) with(text("size", link.make().size->value.name()));
  if (link.make().length) with(number("length_m", link.make().length->value.in(units::metre)));
  return *this;
}

FindingBuilder& FindingBuilder::about(const site::Circuit& circuit, const Case& in) {
  subject(SubjectKind::Circuit, circuit.id.text());
  with(text("circuit", site::circuitNumberOf(in.site(), circuit)));
  if (circuit.rating) with(amperes("rating_a", circuit.rating->value));
  return *this;
}

FindingBuilder& FindingBuilder::about(const site::Outlet& outlet) {
  subject(SubjectKind::Outlet, outlet.id.text());
  return with(text("outlet", outlet.label));
}

Finding FindingBuilder::done() {
  CORDREACH_EXPECTS(!m_finding.why.empty() && !m_finding.subjects.empty());
  std::stable_sort(m_finding.why.begin(), m_finding.why.end(),
                   [](const Reason& a, const Reason& b) { return a.share.value_or(-1.0) > b.share.value_or(-1.0); });
  return m_finding;
}

void whyShares(FindingBuilder& finding, const std::vector<study::Share>& shares, const Case& in) {
  units::Current sum{};
  for (const study::Share& share : shares) sum += share.current;
  for (const study::Share& share : shares) {
    const double part = sum.si() > 0.0 ? share.current / sum : 0.0;
    base::Arguments arguments{amperes("current_a", share.current), amperes("plate_a", share.plate)};
    if (share.hookup) {
      const auto& hookup = in.site().at<site::Hookup>(*share.hookup);
      arguments.push_back(text("machine", in.site().at<site::Machine>(hookup.machine).name));
      finding.why("share.machine", std::move(arguments), part);
    } else if (share.load) {
      const auto& load = in.site().at<site::FixedLoad>(*share.load);
      arguments.push_back(text("load", load.name));
      const bool itself = load.cycle.has_value();
      finding.why(itself ? "share.cycling_load" : "share.fixed_load", std::move(arguments), part);
    }
  }
}

}  // namespace cordreach::rules
