// SPDX-License-Identifier: GPL-3.0-or-later
// What goes dark when a breaker is off, on all floors, with what is not known about it.
#include <QStringList>
#include <algorithm>
#include <map>
#include <set>

#include "panels/names.h"
#include "panels/place_list.h"
#include "shell/say.h"
#include "site/feeding.h"
#include "site/floor_order.h"
#include "site/natural_order.h"

namespace cordreach::app {

namespace {

using rules::SubjectKind;

struct Dark {
  std::map<site::OutletId, site::FedOutlet> outlets;
  std::set<site::FixedLoadId> loads;
  std::set<site::MachineId> machines;
};

Dark darkWith(const site::Site& site, const std::vector<site::CircuitId>& circuits) {
  Dark dark;
  for (const site::CircuitId& circuit : circuits) {
    const site::Feeding fed = site::feedingOf(site, circuit);
    for (const site::FedOutlet& outlet : fed.outlets) {
      const auto [at, isNew] = dark.outlets.insert({outlet.outlet, outlet});
      if (isNew) continue;
      at->second.contacts.insert(at->second.contacts.end(), outlet.contacts.begin(), outlet.contacts.end());
      at->second.how = std::max(at->second.how, outlet.how);
    }
    dark.loads.insert(fed.loads.begin(), fed.loads.end());
    dark.machines.insert(fed.machines.begin(), fed.machines.end());
  }
  return dark;
}

const char* wordOf(site::HowKnown how) {
  switch (how) {
    case site::HowKnown::Traced:
      return "traced";
    case site::HowKnown::Assumed:
      return "assumed";
    case site::HowKnown::Directory:
      break;
  }
  return "directory";
}

class Filler {
 public:
  Filler(const text::Phrasebook& book, const site::Site& site, const Dark& dark)
      : m_book(book), m_site(site), m_dark(dark) {}

  std::vector<PlaceRow> rows() {
    for (const site::Floor* floor : site::floorsByLevel(m_site)) addFloor(floor->id, floor->name);
    addFloor({}, {});
    return std::move(m_rows);
  }

 private:
  void addFloor(const std::optional<site::FloorId>& floor, const std::string& name) {
    std::vector<PlaceRow> here;
    const auto isHere = [&](const std::optional<site::Place>& place) {
      return floor ? place && place->floor == *floor : !place;
    };
    const auto byText = [](const PlaceRow& a, const PlaceRow& b) {
      return site::comesBefore(a.text.toStdString(), b.text.toStdString());
    };
    for (const auto& [id, fed] : m_dark.outlets) {
      const site::Outlet& outlet = m_site.at<site::Outlet>(id);
      if (isHere(outlet.place)) here.push_back(rowOf(outlet, fed));
    }
    std::ranges::stable_sort(here, byText);
    const auto outlets = static_cast<double>(here.size());
    for (const site::FixedLoadId& id : m_dark.loads) {
      if (isHere(placeOf(m_site.at<site::FixedLoad>(id)))) here.push_back(plain(SubjectKind::FixedLoad, id.text()));
    }
    for (const site::MachineId& id : m_dark.machines) {
      if (isHere(m_site.at<site::Machine>(id).place)) here.push_back(plain(SubjectKind::Machine, id.text()));
    }
    if (here.empty()) return;
    std::stable_sort(here.begin() + static_cast<std::ptrdiff_t>(outlets), here.end(), byText);
    base::Arguments arguments{{"n", outlets}};
    if (floor) arguments.push_back({"floor", name});
    if (static_cast<double>(here.size()) > outlets) {
      arguments.push_back({"others", static_cast<double>(here.size()) - outlets});
    }
    m_rows.push_back({say(m_book, "place.dark.floor", arguments), {}});
    m_rows.insert(m_rows.end(), here.begin(), here.end());
  }

  // A load without a place of its own is where its outlet is.
  [[nodiscard]] std::optional<site::Place> placeOf(const site::FixedLoad& load) const {
    if (load.place) return load.place;
    const site::Outlet* outlet = load.outlet ? m_site.find<site::Outlet>(*load.outlet) : nullptr;
    return outlet != nullptr ? outlet->place : std::nullopt;
  }

  [[nodiscard]] PlaceRow rowOf(const site::Outlet& outlet, const site::FedOutlet& fed) const {
    base::Arguments arguments{{"outlet", outletName(outlet)}, {"how", std::string(wordOf(fed.how))}};
    if (!outlet.room.empty()) arguments.push_back({"room", outlet.room});
    if (fed.contacts.size() < outlet.contacts.size()) {
      QStringList names;
      for (const std::string& name : fed.contacts) names << QString::fromStdString(contactName(m_book, name));
      arguments.push_back({"contacts", names.join(QStringLiteral(", ")).toStdString()});
    }
    return {say(m_book, "place.dark.outlet", arguments), {{SubjectKind::Outlet, outlet.id.text()}}};
  }

  [[nodiscard]] PlaceRow plain(SubjectKind kind, const std::string& id) const {
    const rules::Subject subject{kind, id};
    const char* code = kind == SubjectKind::Machine ? "place.dark.machine" : "place.dark.load";
    return {say(m_book, code, {{"name", subjectName(m_book, m_site, subject)}}), subject};
  }

  const text::Phrasebook& m_book;
  const site::Site& m_site;
  const Dark& m_dark;
  std::vector<PlaceRow> m_rows;
};

// Circuits among them that nobody may switch off, and those for which somebody is asked.
QString useNote(const text::Phrasebook& book, const site::Site& site, const std::vector<site::CircuitId>& circuits) {
  QStringList never;
  QStringList ask;
  for (const site::CircuitId& id : circuits) {
    const site::Circuit& circuit = site.at<site::Circuit>(id);
    const QString name = QString::fromStdString(circuitName(site, circuit));
    if (circuit.use == site::UseClass::Never) never << name;
    if (circuit.use == site::UseClass::AskFirst) ask << name;
  }
  base::Arguments arguments;
  if (!never.empty()) arguments.push_back({"never", never.join(QStringLiteral(", ")).toStdString()});
  if (!ask.empty()) arguments.push_back({"ask", ask.join(QStringLiteral(", ")).toStdString()});
  if (const auto unknown = site::contactsWithoutBreaker(site); unknown > 0) {
    arguments.push_back({"unknown", static_cast<double>(unknown)});
  }
  return say(book, "place.dark.note", arguments);
}

}  // namespace

std::vector<site::CircuitId> breakersOf(const site::Site& site, const rules::Subject& subject) {
  std::vector<site::CircuitId> circuits;
  const auto add = [&](const std::vector<site::CircuitId>& more) {
    for (const site::CircuitId& one : more) {
      if (std::find(circuits.begin(), circuits.end(), one) == circuits.end()) circuits.push_back(one);
    }
  };
  if (!isThere(site, subject)) return circuits;
  if (subject.kind == SubjectKind::Circuit) add(site::switchedWith(site, site::CircuitId(subject.id)));
  if (subject.kind == SubjectKind::Panel) add(site::circuitsBehind(site, site::PanelId(subject.id)));
  if (subject.kind == SubjectKind::FixedLoad) {
    add(site::switchedWith(site, site.at<site::FixedLoad>(site::FixedLoadId(subject.id)).circuit));
  }
  if (subject.kind == SubjectKind::Outlet) {
    for (const site::Contact& contact : site.at<site::Outlet>(site::OutletId(subject.id)).contacts) {
      if (contact.assignment) add(site::switchedWith(site, contact.assignment->circuit));
    }
  }
  return circuits;
}

PlaceList darkList(const text::Phrasebook& book, const site::Site& site, const rules::Subject& subject) {
  const auto circuits = breakersOf(site, subject);
  QStringList names;
  for (const site::CircuitId& id : circuits) {
    names << QString::fromStdString(circuitName(site, site.at<site::Circuit>(id)));
  }
  const Dark dark = darkWith(site, circuits);
  PlaceList list{say(book, "place.dark.title", {{"name", subjectName(book, site, subject)}}), {}, {}, {}};
  if (circuits.empty()) {
    list.head = say(book, "place.dark.unknown");
    return list;
  }
  list.head = say(book, "place.dark.head",
                  {{"circuits", names.join(QStringLiteral(", ")).toStdString()},
                   {"outlets", static_cast<double>(dark.outlets.size())},
                   {"loads", static_cast<double>(dark.loads.size())},
                   {"machines", static_cast<double>(dark.machines.size())}});
  list.note = useNote(book, site, circuits);
  list.rows = Filler(book, site, dark).rows();
  return list;
}

}  // namespace cordreach::app
