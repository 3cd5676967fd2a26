// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/cord_heat.h"

#include "study/branch_heat.h"

namespace cordreach::rules {

namespace {

const char* codeOf(tables::Laying laying) {
  switch (laying) {
    case tables::Laying::Straight:
      return "laying.straight";
    case tables::Laying::Floor:
      return "laying.floor";
    case tables::Laying::Carpet:
      return "laying.carpet";
    case tables::Laying::Covered:
      return "laying.covered";
    case tables::Laying::Coiled:
      return "laying.coiled";
    case tables::Laying::Reel:
      return "laying.reel";
  }
  return "laying.floor";
}

}  // namespace

const site::LayingOfCord& layingOf(const Link& link) { return link.own() ? link.hookup->ownCord : link.use->laying; }

bool laidBadly(const Link& link) {
  const tables::Laying laying = layingOf(link).laying;
  return laying != tables::Laying::Straight && laying != tables::Laying::Floor;
}

void aboutHeat(FindingBuilder& finding, const CordCase& cord, const Case& in) {
  const study::CordAnswer& answer = *cord.answer;
  finding.about(cord.link).about(*cord.at, in);
  finding.colours(cord.users);
  finding.with(amperes("current_a", answer.current.likely)).with(celsius("limit_c", answer.limit));
  if (answer.conductor) {
    finding.with(celsius("conductor_c", answer.conductor->likely));
    finding.with(celsius("conductor_low_c", answer.conductor->low));
    finding.with(celsius("conductor_high_c", answer.conductor->high));
  }
  if (answer.surface) finding.with(celsius("surface_c", answer.surface->likely));
  if (answer.timeToLimit) finding.with(seconds("time_to_limit_s", *answer.timeToLimit));
}

void whyHot(FindingBuilder& finding, const CordCase& cord) {
  const site::LayingOfCord& laying = layingOf(cord.link);
  if (laidBadly(cord.link)) {
    base::Arguments arguments;
    if (laying.turns > 0.0) arguments.push_back(number("turns", laying.turns));
    if (laying.affected) arguments.push_back(number("affected_m", laying.affected->in(units::metre)));
    finding.why(codeOf(laying.laying), std::move(arguments));
  }
  base::Arguments carries{amperes("current_a", cord.answer->current.likely)};
  if (cord.link.make().size) carries.push_back(text("size", cord.link.make().size->value.name()));
  finding.why("cord.carries", std::move(carries));
  const auto& reading = cord.link.make().jacketReading;
  if (!reading) return;
  const double scale = study::lossScaleOf(cord.link.make());
  base::Arguments measured{celsius("read_c", reading->surface), amperes("read_a", reading->current),
                           number("loss_percent", 100.0 * scale)};
  if (study::isAtEnd(scale)) measured.push_back(text("doubtful", "yes"));
  finding.why("cord.measured", std::move(measured));
}

}  // namespace cordreach::rules
