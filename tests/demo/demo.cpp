// SPDX-License-Identifier: GPL-3.0-or-later
#include "demo/demo.h"

#include <algorithm>
#include <stdexcept>

#include "io/site_file.h"

namespace cordreach::demo {

const site::Site& building() {
  static const site::Site site = [] {
    auto read = io::loadSite(kFile);
    if (!read) throw std::runtime_error(read.error().code + " at " + read.error().place);
    return std::move(read).value();
  }();
  return site;
}

const study::HookupAnswer& Judged::hookup(const std::string& id) const {
  const auto* found = answer.find(site::HookupId(id));
  if (found == nullptr) throw std::runtime_error("no hookup " + id);
  return *found;
}

const study::CircuitAnswer& Judged::circuit(const std::string& id) const {
  const auto* found = answer.find(site::CircuitId(id));
  if (found == nullptr) throw std::runtime_error("no circuit " + id);
  return *found;
}

const study::CordAnswer& Judged::cord(const std::string& id, const std::string& wanted) const {
  for (const study::CordAnswer& one : hookup(id).cords) {
    if (one.own() ? wanted.empty() : one.id->text() == wanted) return one;
  }
  throw std::runtime_error("no cord " + wanted + " at " + id);
}

rules::Severity Judged::verdict(const std::string& id) const { return rules::verdictOf(site::HookupId(id), findings); }

std::vector<std::string> Judged::codes(const std::string& id) const {
  std::vector<std::string> codes;
  for (const rules::Finding& one : findings) {
    if (std::count(one.hookups.begin(), one.hookups.end(), site::HookupId(id)) > 0) codes.push_back(one.code);
  }
  return codes;
}

const rules::Finding* Judged::finding(const std::string& id, const std::string& code) const {
  for (const rules::Finding& one : findings) {
    if (one.code != code) continue;
    if (std::count(one.hookups.begin(), one.hookups.end(), site::HookupId(id)) > 0) return &one;
  }
  return nullptr;
}

double Judged::hottestC(const std::string& id) const {
  double hottest = -1e9;
  for (const study::CordAnswer& one : hookup(id).cords) {
    hottest = std::max(hottest, one.conductor ? one.conductor->likely.celsius() : 1e9);
  }
  return hottest;
}

Judged judged(const Change& change, const study::StudyOptions& options) {
  Judged all{building(), {}, {}};
  change(all.site);
  all.answer = study::assess(all.site, options);
  all.findings = rules::judge(all.site, all.answer);
  return all;
}

const Judged& asPlanned() {
  static const Judged all = judged();
  return all;
}

namespace {

void removeUseOf(site::Site& site, const site::Hookup& hookup) {
  const auto* socket = std::get_if<site::CordSocket>(&hookup.socket);
  if (socket == nullptr) return;
  std::vector<site::ExtensionUseId> gone;
  for (const auto& use : site.all<site::ExtensionUse>()) {
    if (use.cord == socket->cord && use.hours == hookup.hours) gone.push_back(use.id);
  }
  for (const auto& id : gone) site.all<site::ExtensionUse>().remove(id);
}

}  // namespace

void plugIn(site::Site& site, const std::string& id, const std::string& outlet, const std::string& contact) {
  site::Hookup hookup = site.at<site::Hookup>(site::HookupId(id));
  removeUseOf(site, hookup);
  hookup.socket = site::OutletSocket{site::OutletId(outlet), contact};
  site.all<site::Hookup>().put(hookup);
}

void plugIn(site::Site& site, const std::string& id, const std::string& outlet, const std::string& contact,
            const std::string& cord) {
  site::Hookup hookup = site.at<site::Hookup>(site::HookupId(id));
  removeUseOf(site, hookup);
  hookup.socket = site::CordSocket{site::CordId(cord), 0};
  site.all<site::Hookup>().put(hookup);
  site.all<site::ExtensionUse>().put({site::ExtensionUseId("what-if " + id),
                                      site::CordId(cord),
                                      site::OutletSocket{site::OutletId(outlet), contact},
                                      hookup.hours,
                                      {},
                                      {}});
}

void leaveOnly(site::Site& site, const std::vector<std::string>& circuits) {
  std::vector<site::FixedLoad> others;
  for (const auto& load : site.all<site::FixedLoad>()) {
    if (std::count(circuits.begin(), circuits.end(), load.circuit.text()) == 0) others.push_back(load);
  }
  for (site::FixedLoad& load : others) {
    load.off = true;
    site.all<site::FixedLoad>().put(load);
  }
}

std::string argumentOf(const base::Arguments& arguments, const std::string& name) {
  for (const base::Argument& argument : arguments) {
    if (argument.name == name && std::holds_alternative<std::string>(argument.value)) {
      return std::get<std::string>(argument.value);
    }
  }
  return {};
}

}  // namespace cordreach::demo
