// SPDX-License-Identifier: GPL-3.0-or-later
// Puts a finding together: subjects, names and numbers in the order in which they are told.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/case.h"
#include "rules/rule.h"

namespace cordreach::rules {

// Arguments for a finding, a reason or a remedy; a number's name ends in its unit.
[[nodiscard]] base::Argument text(std::string name, std::string value);
[[nodiscard]] base::Argument number(std::string name, double value);
[[nodiscard]] base::Argument amperes(std::string name, units::Current value);  // "plate_a"
[[nodiscard]] base::Argument volts(std::string name, units::Voltage value);
[[nodiscard]] base::Argument celsius(std::string name, units::Temperature value);
[[nodiscard]] base::Argument seconds(std::string name, units::Duration value);

class FindingBuilder {
 public:
  explicit FindingBuilder(const Rule& rule);

  FindingBuilder& subject(SubjectKind kind, const std::string& id);  // said twice, it stays once
  FindingBuilder& colours(const HookupCase& hookup);
  FindingBuilder& colours(const std::vector<const HookupCase*>& hookups);
  FindingBuilder& with(base::Argument argument);  // the first of a name stays
  FindingBuilder& why(std::string code, base::Arguments arguments = {}, std::optional<double> share = {});
  FindingBuilder& at(const std::optional<units::Duration>& moment);
  // In the course of the planned day, at that time of it: told as "clock_s", and its moment. None: leaves all as it is.
  FindingBuilder& happens(const std::optional<units::Duration>& time);
  // The hookup with its machine, outlet and circuit as subjects, its names as arguments.
  FindingBuilder& about(const HookupCase& hookup, const Case& in);
  // A piece of cord as subject with its name, size and length: an extension, or a machine's own.
  FindingBuilder& about(const Link& link);
  FindingBuilder& about(const site::Circuit& circuit, const Case& in);
  FindingBuilder& about(const site::Outlet& outlet);

  // With the reasons largest first. At least one must have been given.
  [[nodiscard]] Finding done();

 private:
  Finding m_finding;
};

// Who draws on a circuit, with his part of the sum, as reasons: "share.machine", "share.fixed_load".
void whyShares(FindingBuilder& finding, const std::vector<study::Share>& shares, const Case& in);

// More than the limit, rounding of our own arithmetic apart.
[[nodiscard]] bool exceeds(double value, double limit);

}  // namespace cordreach::rules
