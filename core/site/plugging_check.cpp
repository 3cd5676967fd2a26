// SPDX-License-Identifier: GPL-3.0-or-later
// At any moment a plug is in one socket, a socket takes one plug, and no cord feeds itself. Loads that stay put are not
// counted: one of them may stand for several plugs on a strip.
#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

#include "site/checks.h"
#include "site/extension_times.h"

namespace cordreach::site {
namespace {

using base::Error;

// A plug in a socket for a span of time.
struct Plugging {
  std::string plug;    // which plug
  std::string device;  // what hangs on it
  std::string socket;
  std::string socketDevice;  // empty: an outlet
  const std::string* id;
  std::string pointer;
  Spans spans;
  bool hasHours;
};

std::string cordName(const CordId& id) { return "cord " + id.text(); }
std::string machineName(const MachineId& id) { return "machine " + id.text(); }

// The device that owns the socket, and the socket among all.
std::pair<std::string, std::string> namesOf(const OutletSocket& socket) {
  return {"", "outlet " + socket.outlet.text() + "\n" + socket.contact};
}
std::pair<std::string, std::string> namesOf(const CordSocket& socket) {
  return {cordName(socket.cord), cordName(socket.cord) + "\n" + std::to_string(socket.socket)};
}
std::pair<std::string, std::string> namesOf(const MachineSocket& socket) {
  return {machineName(socket.machine), machineName(socket.machine) + "\n" + std::to_string(socket.socket)};
}

template <class Use>
Plugging pluggingOf(const Site& site, const Use& use, std::string plug, std::string device) {
  auto [owner, socket] = std::visit([](const auto& one) { return namesOf(one); }, use.socket);
  return {std::move(plug),
          std::move(device),
          std::move(socket),
          std::move(owner),
          &use.id.text(),
          pointerTo(site, use) + "/socket",
          {},
          use.hours.has_value()};
}

std::vector<Plugging> pluggingsOf(const Site& site, ExtensionTimes& times) {
  std::vector<Plugging> all;
  for (const Hookup& hookup : site.all<Hookup>()) {
    const std::string machine = machineName(hookup.machine);
    all.push_back(pluggingOf(site, hookup, machine + "\n" + hookup.inlet, machine));
    all.back().spans = {hoursOrAlways(hookup.hours)};
  }
  for (const ExtensionUse& use : site.all<ExtensionUse>()) {
    const std::string cord = cordName(use.cord);
    all.push_back(pluggingOf(site, use, cord, cord));
    all.back().spans = times.spansOf(use);
  }
  return all;
}

Error tooDeepError(const std::string& id, const std::string& pointer) {
  return {
      "site.plugging_too_deep", pointer, {{"id", id}, {"limit", static_cast<double>(ExtensionTimes::kLongestChain)}}};
}

Fault chainFault(const Site& site, ExtensionTimes& times) {
  std::set<CordId> always;
  for (const ExtensionUse& use : site.all<ExtensionUse>()) {
    if (times.tooLong(use.cord)) {
      return tooDeepError(use.cord.text(), pointerTo(site, use) + "/socket");
    }
    if (!use.hours && !always.insert(use.cord).second) {
      return Error{"site.plug_in_two_sockets", pointerTo(site, use) + "/socket", {{"id", use.cord.text()}}};
    }
  }
  return std::nullopt;
}

// Two of these pluggings that hold the same thing at the same moment.
Fault overlapFault(const std::vector<Plugging>& all, std::string Plugging::*thing, std::string_view code) {
  using Entry = std::tuple<std::string_view, units::Duration, std::size_t, units::Duration>;
  std::vector<Entry> entries;
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (const Hours& span : all[i].spans) entries.emplace_back(all[i].*thing, span.from, i, span.until);
  }
  std::sort(entries.begin(), entries.end());
  for (std::size_t i = 1; i < entries.size(); ++i) {
    auto& [name, from, which, until] = entries[i];
    const auto& [nameBefore, fromBefore, whichBefore, untilBefore] = entries[i - 1];
    if (name != nameBefore || !(from < untilBefore)) continue;
    return Error{std::string(code), all[which].pointer, {{"id", *all[which].id}, {"other", *all[whichBefore].id}}};
  }
  return std::nullopt;
}

using Edges = std::vector<const Plugging*>;

struct Rooting {
  Edges left;                         // loops and what hangs on them
  const Plugging* tooDeep = nullptr;  // one that is too many cords away from its outlet
};

// Takes away, from the outlets on, every device whose pluggings all lead to one.
Rooting rootingOf(const Edges& edges) {
  std::unordered_map<std::string_view, std::size_t> unrooted;  // pluggings of a device that lead to no outlet yet
  std::unordered_map<std::string_view, Edges> hanging;         // on a device
  std::unordered_map<std::string_view, int> level;
  for (const Plugging* edge : edges) {
    ++unrooted[edge->device];
    hanging[edge->socketDevice].push_back(edge);
  }
  std::vector<std::string_view> rooted;
  for (const auto& [device, edgesThere] : hanging) {
    if (unrooted.count(device) == 0) rooted.push_back(device);
  }
  std::unordered_set<const Plugging*> gone;
  Rooting rooting;
  while (!rooted.empty()) {
    const std::string_view device = rooted.back();
    rooted.pop_back();
    for (const Plugging* edge : hanging[device]) {
      gone.insert(edge);
      level[edge->device] = std::max(level[edge->device], level[device] + 1);
      if (level[edge->device] > ExtensionTimes::kLongestChain) rooting.tooDeep = edge;
      if (--unrooted[edge->device] == 0) rooted.push_back(edge->device);
    }
  }
  std::copy_if(edges.begin(), edges.end(), std::back_inserter(rooting.left),
               [&](const Plugging* edge) { return gone.count(edge) == 0; });
  return rooting;
}

Fault loopError(const Edges& edges) {
  return Error{"site.plugging_loop", edges.front()->pointer, {{"id", *edges.front()->id}}};
}

Fault loopFault(const std::vector<Plugging>& all) {
  constexpr std::size_t kMostToTime = 500;
  Edges edges;
  for (const Plugging& plugging : all) {
    if (!plugging.socketDevice.empty()) edges.push_back(&plugging);
  }
  const Rooting rooting = rootingOf(edges);
  if (rooting.tooDeep != nullptr) return tooDeepError(*rooting.tooDeep->id, rooting.tooDeep->pointer);
  edges = rooting.left;
  if (edges.empty()) return std::nullopt;
  if (edges.size() > kMostToTime) return loopError(edges);
  const auto holdsAt = [](const Plugging& edge, units::Duration time) {
    return !edge.hasHours ||
           std::any_of(edge.spans.begin(), edge.spans.end(), [&](const Hours& span) { return span.holds(time); });
  };
  for (const Plugging* start : edges) {
    for (const Hours& span : start->hasHours ? start->spans : Spans{kAlways}) {
      Edges now;
      for (const Plugging* edge : edges) {
        if (holdsAt(*edge, span.from)) now.push_back(edge);
      }
      now = rootingOf(now).left;
      if (!now.empty()) return loopError(now);
    }
  }
  return std::nullopt;
}

}  // namespace

Fault pluggingFault(const Site& site) {
  ExtensionTimes times(site);
  Fault fault = chainFault(site, times);
  if (fault && fault->code == "site.plugging_too_deep") return fault;
  const std::vector<Plugging> all = pluggingsOf(site, times);
  if (!fault) fault = overlapFault(all, &Plugging::plug, "site.plug_in_two_sockets");
  if (!fault) fault = overlapFault(all, &Plugging::socket, "site.socket_taken_twice");
  if (!fault) fault = loopFault(all);
  return fault;
}

}  // namespace cordreach::site
