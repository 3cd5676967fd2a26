// SPDX-License-Identifier: GPL-3.0-or-later
// The demo building answered once, and as changed for a what-if; what its tests ask of an answer.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "planning/remedy.h"
#include "rules/finding.h"
#include "rules/judge.h"
#include "rules/severity.h"
#include "site/site.h"
#include "study/assess.h"

namespace cordreach::demo {

inline constexpr const char* kFile = "resources/demo/building.json";

[[nodiscard]] const site::Site& building();

struct Judged {
  site::Site site;
  study::Answer answer;
  std::vector<rules::Finding> findings;

  [[nodiscard]] const study::HookupAnswer& hookup(const std::string& id) const;
  [[nodiscard]] const study::CircuitAnswer& circuit(const std::string& id) const;
  [[nodiscard]] const study::CordAnswer& cord(const std::string& hookup, const std::string& cord) const;
  [[nodiscard]] rules::Severity verdict(const std::string& hookup) const;
  // Codes of what colours the hookup, worst first.
  [[nodiscard]] std::vector<std::string> codes(const std::string& hookup) const;
  [[nodiscard]] const rules::Finding* finding(const std::string& hookup, const std::string& code) const;
  [[nodiscard]] double hottestC(const std::string& hookup) const;  // conductor of any of its cords
};

using Change = std::function<void(site::Site&)>;

[[nodiscard]] Judged judged(
    const Change& change = [](site::Site&) {}, const study::StudyOptions& options = {});
[[nodiscard]] const Judged& asPlanned();

// What-ifs, said in a few words.
void plugIn(site::Site& site, const std::string& hookup, const std::string& outlet,
            const std::string& contact = "upper");
void plugIn(site::Site& site, const std::string& hookup, const std::string& outlet, const std::string& contact,
            const std::string& cord);
// Leaves on only what is fixed to these circuits.
void leaveOnly(site::Site& site, const std::vector<std::string>& circuits);

[[nodiscard]] std::string argumentOf(const base::Arguments& arguments, const std::string& name);

}  // namespace cordreach::demo
