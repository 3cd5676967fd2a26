// SPDX-License-Identifier: GPL-3.0-or-later
#include "site/assigning.h"

#include <algorithm>
#include <map>
#include <set>

#include "site/file_words.h"

namespace cordreach::site {
namespace {

std::string assignmentText(const Site& site, const std::optional<Assignment>& assignment) {
  const Circuit* circuit = assignment ? site.find<Circuit>(assignment->circuit) : nullptr;
  if (circuit == nullptr) return "?";
  return circuitNumberOf(site, *circuit) + " " + std::string(fileWord(assignment->how));
}

const Contact* sameContact(const Outlet& outlet, const std::string& name) {
  const auto at = std::find_if(outlet.contacts.begin(), outlet.contacts.end(),
                               [&](const Contact& contact) { return contact.name == name; });
  return at == outlet.contacts.end() ? nullptr : &*at;
}

// Contacts that changed alike share a line.
std::string differenceOf(const Site& site, const Outlet& before, const Outlet& after) {
  std::vector<std::pair<std::string, std::string>> lines;  // what changed, whose
  for (const Contact& contact : after.contacts) {
    const Contact* old = sameContact(before, contact.name);
    const auto was = old == nullptr ? std::optional<Assignment>() : old->assignment;
    const std::string from = assignmentText(site, was);
    const std::string to = assignmentText(site, contact.assignment);
    if (from == to) continue;
    const std::string change = from + " -> " + to;
    const auto same = std::find_if(lines.begin(), lines.end(), [&](const auto& line) { return line.first == change; });
    if (same == lines.end()) {
      lines.emplace_back(change, contact.name);
    } else {
      same->second += ", " + contact.name;
    }
  }
  std::string text;
  for (const auto& [change, contacts] : lines) text += (text.empty() ? "" : "; ") + contacts + ": " + change;
  return text;
}

}  // namespace

std::string circuitNumberOf(const Site& site, const Circuit& circuit) {
  const Panel* panel = site.find<Panel>(circuit.panel);
  const std::string of = panel == nullptr || panel->name.empty() ? circuit.panel.text() : panel->name;
  return of + "-" + (circuit.number.empty() ? circuit.id.text() : circuit.number);
}

void assign(Contact& contact, const std::optional<CircuitId>& circuit, const HowFound& found) {
  if (!circuit) {
    contact.assignment.reset();
    contact.poles.clear();
    return;
  }
  const bool same = contact.assignment && contact.assignment->circuit == *circuit;
  if (same && contact.assignment->how == found.how) return;
  if (!same) contact.poles.clear();
  contact.assignment = Assignment{*circuit, found.how, found.who, found.when};
}

Edit assignmentEdit(const Site& site, const std::vector<OutletSocket>& contacts,
                    const std::optional<CircuitId>& circuit, const HowFound& found, const RandomSource& random) {
  std::map<OutletId, Outlet> changed;
  for (const OutletSocket& socket : contacts) {
    const Outlet* outlet = site.find<Outlet>(socket.outlet);
    if (outlet == nullptr) continue;
    for (Contact& contact : changed.try_emplace(socket.outlet, *outlet).first->second.contacts) {
      if (contact.name == socket.contact) assign(contact, circuit, found);
    }
  }
  Edit edit{"outlet.assign", {}};
  for (auto& [id, after] : changed) {
    const Outlet& before = site.at<Outlet>(id);
    if (!(after == before)) edit.changes.emplace_back(Change<Outlet>{before, std::move(after)});
  }
  noteAssignments(edit, site, found, random);
  return edit;
}

void noteAssignments(Edit& edit, const Site& site, const HowFound& found, const RandomSource& random) {
  std::vector<HistoryEntry> entries;
  std::set<HistoryId> taken;
  for (const AnyChange& change : edit.changes) {
    const auto* outlet = std::get_if<Change<Outlet>>(&change);
    if (outlet == nullptr || !outlet->after) continue;
    const Outlet nothing{outlet->after->id};
    const std::string text = differenceOf(site, outlet->before ? *outlet->before : nothing, *outlet->after);
    if (text.empty()) continue;
    HistoryId id = newId<HistoryEntry>(site, random);
    while (!taken.insert(id).second) id = newId<HistoryEntry>(site, random);
    entries.push_back({id, found.when, found.who, "assignment", outlet->after->id.text(), text});
  }
  for (HistoryEntry& entry : entries) edit.changes.emplace_back(Change<HistoryEntry>{std::nullopt, std::move(entry)});
}

}  // namespace cordreach::site
