// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/place_list.h"

#include <QStringList>
#include <algorithm>

#include "panels/names.h"
#include "rules/hot_places.h"
#include "rules/near_limit.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

using rules::SubjectKind;

QString reasonsOf(const text::Phrasebook& book, const std::vector<rules::Reason>& why) {
  QStringList parts;
  for (const rules::Reason& reason : why) parts << say(book, "reason." + reason.code, reason.arguments);
  return parts.join(QStringLiteral("; "));
}

std::string machineName(const site::Site& site, const site::HookupId& id) {
  const site::Hookup* hookup = site.find<site::Hookup>(id);
  const site::Machine* machine = hookup != nullptr ? site.find<site::Machine>(hookup->machine) : nullptr;
  if (machine == nullptr) return id.text();
  return machine->name.empty() ? machine->id.text() : machine->name;
}

PlaceRow hotRow(const text::Phrasebook& book, const site::Site& site, const rules::HotPlace& place) {
  base::Arguments arguments{{"kind", std::string(rules::nameOf(place.kind))},
                            {"name", subjectName(book, site, place.subject)},
                            {"limit_c", place.limit.celsius()}};
  if (place.hookup) arguments.push_back({"machine", machineName(site, *place.hookup)});
  if (place.temperature) arguments.push_back({"hot_c", place.temperature->celsius()});
  if (place.high) arguments.push_back({"high_c", place.high->celsius()});
  if (place.limitGuessed) arguments.push_back({"guessed", 1.0});
  if (place.lost) arguments.push_back({"lost_w", place.lost->in(units::watt)});
  if (place.lacksLoads) arguments.push_back({"lacks", 1.0});
  return {say(book, "place.hot.row", arguments), place.subject};
}

}  // namespace

PlaceList nearLimitList(const text::Phrasebook& book, const site::Site& site) {
  const auto near = rules::nearLimit(site);
  PlaceList list{say(book, "place.near.title"),
                 say(book, near.empty() ? "place.near.none" : "place.near.head"),
                 say(book, "place.near.note"),
                 {}};
  for (const rules::NearLimit& one : near) {
    const site::Circuit& circuit = site.at<site::Circuit>(one.circuit);
    const base::Arguments arguments{{"circuit", circuitLine(book, site, circuit)},
                                    {"load_a", one.load.in(units::ampere)},
                                    {"load_percent", one.loadPercent},
                                    {"reason", std::string(rules::nameOf(one.reason))},
                                    {"why", reasonsOf(book, one.why).toStdString()}};
    list.rows.push_back({say(book, "place.near.row", arguments), {{SubjectKind::Circuit, one.circuit.text()}}});
  }
  return list;
}

PlaceList hotList(const text::Phrasebook& book, const Verdict& verdict, std::size_t most) {
  const auto places = rules::hotPlaces(*verdict.site, verdict.answer);
  units::Power lost{};
  for (const rules::HotPlace& place : places) lost += place.lost.value_or(units::Power{});
  PlaceList list{say(book, "place.hot.title"), {}, say(book, "place.hot.note"), {}};
  base::Arguments head{{"lost_w", lost.in(units::watt)}};
  if (std::ranges::any_of(places, &rules::HotPlace::lacksLoads)) head.push_back({"lacks", 1.0});
  list.head = places.empty() ? say(book, "place.hot.none") : say(book, "place.hot.head", head);
  for (const rules::HotPlace& place : places) {
    if (list.rows.size() == most) break;
    list.rows.push_back(hotRow(book, *verdict.site, place));
  }
  return list;
}

}  // namespace cordreach::app
