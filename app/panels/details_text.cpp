// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/details_text.h"

#include <algorithm>

#include "panels/names.h"
#include "text/finding_text.h"
#include "text/quantity_text.h"

namespace cordreach::app {

namespace {

using text::Phrasebook;

std::string figure(const Phrasebook& book, const char* unit, double value) {
  return text::quantityText(book, unit, value, {.decimal = true});
}

DetailLine banded(const Phrasebook& book, const std::string& code, const char* unit, double likely, double low,
                  double high) {
  DetailLine line{book.say("panel.figure." + code), figure(book, unit, likely)};
  const std::string from = figure(book, unit, low);
  const std::string to = figure(book, unit, high);
  if (from != to) line.band = book.say("panel.band", {{"low", from}, {"high", to}});
  return line;
}

template <class T>
DetailLine banded(const Phrasebook& book, const std::string& code, const char* unit, const study::Band<T>& band) {
  return banded(book, code, unit, band.likely.si(), band.low.si(), band.high.si());
}

DetailLine banded(const Phrasebook& book, const std::string& code, const study::Band<units::Temperature>& band) {
  return banded(book, code, "x_c", band.likely.celsius(), band.low.celsius(), band.high.celsius());
}

std::string tripText(const Phrasebook& book, const std::optional<units::Duration>& time) {
  return time ? text::quantityText(book, "x_s", time->si()) : book.say("trip.never");
}

void addTrips(const Phrasebook& book, const study::BreakerAnswer& breaker, std::vector<DetailLine>& lines) {
  if (!breaker.trip) return;
  lines.push_back({book.say("panel.figure.trip_earliest"), tripText(book, breaker.trip->earliest)});
  lines.push_back({book.say("panel.figure.trip_likely"), tripText(book, breaker.trip->likely)});
  lines.push_back({book.say("panel.figure.trip_latest"), tripText(book, breaker.trip->latest)});
}

void addCords(const Verdict& verdict, const study::HookupAnswer& answer, const Phrasebook& book,
              std::vector<DetailLine>& lines) {
  for (const study::CordAnswer& cord : answer.cords) {
    const site::Cord* found = cord.id ? verdict.site->find<site::Cord>(*cord.id) : nullptr;
    const std::string name = found ? cordName(book, *found) : book.say("panel.figure.own_cord");
    const auto put = [&](DetailLine line) {
      line.label = name + ": " + line.label;
      lines.push_back(std::move(line));
    };
    if (cord.conductor) put(banded(book, "conductor", *cord.conductor));
    if (cord.surface) put(banded(book, "surface", *cord.surface));
    if (cord.beyondModel()) put({book.say("panel.figure.conductor"), book.say("heat.beyond")});
    put({book.say("panel.figure.limit"), figure(book, "x_c", cord.limit.celsius())});
  }
}

DetailGroup hookupGroup(const Verdict& verdict, const study::HookupAnswer& answer, const Phrasebook& book) {
  DetailGroup group{subjectName(book, *verdict.site, {rules::SubjectKind::Hookup, answer.id.text()}), {}};
  group.lines.push_back(banded(book, "current", "x_a", answer.current));
  group.lines.push_back(banded(book, "voltage", "x_v", answer.voltage));
  group.lines.push_back(banded(book, "drop", "x_v", answer.drop));
  if (answer.speedRpm) {
    const auto& speed = *answer.speedRpm;
    group.lines.push_back(banded(book, "speed", "x_rpm", speed.likely, speed.low, speed.high));
  }
  addCords(verdict, answer, book, group.lines);
  if (answer.breaker.rating) {
    group.lines.push_back({book.say("panel.figure.breaker"), figure(book, "x_a", answer.breaker.rating->si())});
  }
  group.lines.push_back({book.say("panel.figure.carries"), figure(book, "x_a", answer.breaker.current.si())});
  addTrips(book, answer.breaker, group.lines);
  return group;
}

DetailGroup whyGroup(const rules::Finding& finding, const Phrasebook& book) {
  DetailGroup group{book.say("panel.details.why"), {}};
  for (const text::ReasonWords& reason : text::wordsOf(book, finding).why) {
    DetailLine line{reason.text, {}};
    if (reason.share) line.value = text::quantityText(book, "x_percent", *reason.share * 100.0);
    group.lines.push_back(std::move(line));
  }
  if (finding.moment) {
    group.lines.push_back({book.say("panel.figure.moment"), text::quantityText(book, "from_s", finding.moment->si())});
  }
  return group;
}

std::string statusCode(tables::SourceStatus status) {
  switch (status) {
    case tables::SourceStatus::Seen:
      return "panel.source.seen";
    case tables::SourceStatus::Memory:
      return "panel.source.memory";
    case tables::SourceStatus::Common:
      return "panel.source.common";
    case tables::SourceStatus::Own:
      return "panel.source.own";
    case tables::SourceStatus::Computed:
      return "panel.source.computed";
  }
  return "panel.source.own";
}

DetailGroup remedyGroup(const std::vector<planning::Remedy>& remedies, const Phrasebook& book) {
  DetailGroup group{book.say("panel.details.remedies"), {}};
  for (const planning::Remedy& remedy : remedies) {
    const text::RemedyWords words = text::wordsOf(book, remedy);
    group.lines.push_back({words.order, words.after});
  }
  return group;
}

}  // namespace

std::vector<DetailGroup> detailsOf(const Verdict& verdict, std::size_t index, const Phrasebook& book) {
  const rules::Finding& finding = verdict.findings.at(index);
  std::vector<DetailGroup> groups{whyGroup(finding, book)};
  for (const site::HookupId& id : finding.hookups) {
    if (const study::HookupAnswer* answer = verdict.answer.find(id)) {
      groups.push_back(hookupGroup(verdict, *answer, book));
    }
  }
  if (index < verdict.remedies.size() && !verdict.remedies[index].empty()) {
    groups.push_back(remedyGroup(verdict.remedies[index], book));
  }
  groups.push_back(
      {book.say("panel.details.source"), {{finding.source.text, book.say(statusCode(finding.source.status))}}});
  return groups;
}

}  // namespace cordreach::app
