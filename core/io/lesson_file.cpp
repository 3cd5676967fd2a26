// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/lesson_file.h"

#include <cmath>

#include "io/atomic_file.h"
#include "io/json_value.h"
#include "io/lesson_walk.h"
#include "tables/cord_legend.h"
#include "units/wire_size.h"

namespace cordreach::io {
namespace {

using base::Error;
using planning::Lesson;
using planning::LessonCase;

constexpr std::size_t kMostBytes = 256u << 10;
constexpr JsonLimits kLimits{kMostBytes, 8, 4000};
constexpr std::size_t kMostSides = 8;
constexpr std::size_t kMostSteps = 12;
constexpr std::size_t kMostAnswers = 6;
constexpr double kMostTurns = 200.0;  // as `heat` takes

base::Result<units::Length> length(std::string_view text) { return units::parseLength(text); }
base::Result<units::Current> amps(std::string_view text) { return units::parseCurrent(text); }
base::Result<units::Voltage> volts(std::string_view text) { return units::parseVoltage(text); }
base::Result<units::Power> power(std::string_view text) { return units::parsePower(text); }
base::Result<units::Duration> span(std::string_view text) { return units::parseDuration(text); }
base::Result<units::Temperature> degrees(std::string_view text) { return units::parseTemperature(text); }
base::Result<units::WireSize> wire(std::string_view text) { return units::parseWireSize(text); }

// What is printed on the jacket, and the length.
void walkCord(LessonWalk& walk, site::CordMake& make) {
  std::string print;
  walk.text("cord", print);
  if (!print.empty()) {
    const tables::CordLegend legend = tables::readLegend(print);
    if (!legend.unread.empty()) return walk.fail("lesson.unread_print", "cord", {{"found", legend.unread.front()}});
    if (!legend.size) return walk.fail("lesson.no_cord_size", "cord", {{"found", print.substr(0, 40)}});
    site::CordMake read;
    read.legend = print;
    read.size = site::known(*legend.size);
    if (legend.type) read.type = *legend.type;
    if (legend.conductors) read.conductors = site::known(*legend.conductors);
    if (legend.rating) read.rating = site::known(*legend.rating);
    read.length = make.length;
    read.plug = "5-15";
    make = read;
  }
  walk.quantity<units::Length>("length", length, {"1 ft", "500 ft"},
                               [&](units::Length value) { make.length = site::known(value); });
  walk.word("pin", make.pin);
}

void walkLaying(LessonWalk& walk, site::LayingOfCord& laying) {
  if (walk.has("lies")) laying = {};
  walk.word("lies", laying.laying);
  const bool coil = laying.laying == tables::Laying::Coiled;
  const bool reel = laying.laying == tables::Laying::Reel;
  if (!coil && !reel) return;
  if (laying.turns < 1.0) laying.turns = coil ? 10.0 : 3.0;  // a hank, a reel as people have them
  walk.number(coil ? "turns" : "layers", laying.turns, 1.0, kMostTurns);
  walk.quantity<units::Length>("wound", length, {"1 ft", "500 ft"},
                               [&](units::Length value) { laying.affected = value; });
}

void walkPad(LessonWalk& walk, LessonCase& side) {
  site::Pad pad{.id = site::PadId("pad")};
  walk.text("name", pad.name, true);
  double drag = 1.0;
  walk.number("drag", drag, 0.2, 3.0);
  pad.dragFactor = site::known(drag);
  double rpm = 0.0;
  if (walk.has("rated_rpm")) {
    walk.number("rated_rpm", rpm, 10.0, 20000.0);
    pad.ratedSpeed = site::known(rpm / 60.0 * units::hertz);
  }
  side.pad = pad;
}

void walkMachine(LessonWalk& walk, LessonCase& side) {
  site::Machine& machine = side.machine;
  if (machine.inlets.empty()) machine.inlets.emplace_back().name = "A";
  site::Inlet& inlet = machine.inlets.front();
  walk.text("name", machine.name);
  walk.text("kind", machine.kind);
  walk.word("class", inlet.loadClass);
  walk.quantity<units::Current>("amps", amps, {"0.5 A", "40 A"},
                                [&](units::Current value) { inlet.plate = site::known(value); });
  walk.quantity<units::Voltage>("volts", volts, {"100 V", "130 V"},
                                [&](units::Voltage value) { inlet.plateVoltage = site::known(value); });
  walk.quantity<units::Power>("power", power, {"0.05 hp", "5 hp"},
                              [&](units::Power value) { machine.shaftPower = site::known(value); });
  if (walk.has("rpm")) {
    double rpm = 0.0;
    walk.number("rpm", rpm, 10.0, 40000.0);
    machine.speed = site::known(rpm / 60.0 * units::hertz);
  }
  walkCord(walk, inlet.cord);
  walk.object("pad", [&](LessonWalk& pad) { walkPad(pad, side); });
}

void walkOutlet(LessonWalk& walk, LessonCase& side) {
  walk.quantity<units::Current>("breaker", amps, {"10 A", "30 A"}, [&](units::Current value) { side.breaker = value; });
  walk.quantity<units::Length>("run", length, {"1 ft", "500 ft"}, [&](units::Length value) { side.run = value; });
  walk.quantity<units::WireSize>("wire", wire, {"14 AWG", "6 AWG"},
                                 [&](units::WireSize value) { side.runSize = value; });
  walk.quantity<units::Voltage>("supply", volts, {"90 V", "140 V"},
                                [&](units::Voltage value) { side.supply = site::known(value); });
  walk.quantity<units::Temperature>("room", degrees, {"0 C", "50 C"},
                                    [&](units::Temperature value) { side.room = site::known(value); });
  walk.truth("loose", side.looseOutlet);
  walk.object("shared_with", [&](LessonWalk& other) {
    other.text("name", side.sharedName, true);
    other.quantity<units::Current>("amps", amps, {"0.1 A", "30 A"}, [&](units::Current value) { side.shared = value; });
  });
}

// Where a side says nothing, what stands before the sides holds.
void walkSide(LessonWalk& walk, LessonCase& side) {
  walk.text("name", side.name);
  walk.object("outlet", [&](LessonWalk& outlet) { walkOutlet(outlet, side); });
  walk.object("machine", [&](LessonWalk& machine) { walkMachine(machine, side); });
  walkCord(walk, side.cord);
  walkLaying(walk, side.laying);
  if (walk.failed()) return;
  const site::Inlet& inlet = side.machine.inlets.front();
  const auto need = [&](bool there, const char* key) {
    if (!there) walk.fail("lesson.missing_key", "", {{"key", key}});
  };
  need(side.cord.size.has_value(), "cord");
  need(side.cord.length.has_value(), "length");
  need(inlet.plate.has_value(), "machine/amps");
  need(inlet.cord.size.has_value() && inlet.cord.length.has_value(), "machine/cord");
}

// Sides are counted from 1 in the file, as people count.
void walkStep(LessonWalk& walk, Lesson& lesson) {
  planning::LessonStep step;
  walk.text("text", step.text, true);
  walk.quantity<units::Duration>("at", span, {"0 s", "2 h"}, [&](units::Duration value) { step.at = value; });
  const auto side = [&](const char* key, std::optional<std::size_t>& into) {
    if (!walk.has(key)) return;
    double number = 1.0;
    walk.number(key, number, 1.0, static_cast<double>(lesson.sides.size()));
    into = static_cast<std::size_t>(number) - 1;
  };
  side("a", step.a);
  side("b", step.b);
  lesson.steps.push_back(step);
}

void walkQuestion(LessonWalk& walk, Lesson& lesson) {
  planning::LessonQuestion question;
  walk.text("text", question.text, true);
  walk.text("because", question.because, true);
  walk.list("answers", 2, kMostAnswers, [&](LessonWalk& one) {
    planning::LessonAnswer answer;
    one.text("text", answer.text, true);
    one.truth("right", answer.right);
    question.answers.push_back(answer);
  });
  lesson.question = question;
}

void walkLesson(LessonWalk& walk, Lesson& lesson) {
  double version = 0.0;
  walk.number("version", version, 1.0, kLessonVersion);
  walk.text("title", lesson.title, true);
  walk.text("watch", lesson.watch, true);
  walk.text("shows", lesson.shows, true);
  walk.quantity<units::Duration>("for", span, {"1 min", "2 h"}, [&](units::Duration value) { lesson.run = value; });
  LessonCase common;
  common.machine.inlets.emplace_back().name = "A";
  walk.object("outlet", [&](LessonWalk& outlet) { walkOutlet(outlet, common); });
  walk.object("machine", [&](LessonWalk& machine) { walkMachine(machine, common); });
  walk.list("sides", 2, kMostSides, [&](LessonWalk& one) {
    LessonCase side = common;
    walkSide(one, side);
    lesson.sides.push_back(side);
  });
  walk.list("steps", 0, kMostSteps, [&](LessonWalk& one) { walkStep(one, lesson); });
  walk.object("question", [&](LessonWalk& one) { walkQuestion(one, lesson); });
}

std::optional<Error> versionFault(const Json& root) {
  const Json* version = root.member("version");
  if (version == nullptr || version->kind != JsonKind::Number) return Error{"lesson.no_version", "", {}};
  if (version->number <= kLessonVersion) return std::nullopt;
  return Error{"lesson.newer_version", "/version", {{"known_version", static_cast<double>(kLessonVersion)}}};
}

}  // namespace

base::Result<Lesson> readLesson(std::string_view json) {
  if (json.size() > kMostBytes) {
    return Error{"lesson.too_large", "", {{"limit_kb", static_cast<double>(kMostBytes >> 10)}}};
  }
  const auto parsed = parseJson(json, kLimits);
  if (!parsed) return parsed.error();
  if (auto fault = versionFault(parsed.value())) return *fault;
  std::optional<Error> fault;
  Lesson lesson;
  LessonWalk walk(parsed.value(), "", fault);
  walkLesson(walk, lesson);
  walk.finish();
  if (fault) return *fault;
  return lesson;
}

base::Result<Lesson> loadLesson(const std::filesystem::path& path) {
  const auto text = readWholeFile(path, kMostBytes + 1);
  if (!text) return text.error();
  return readLesson(text.value());
}

}  // namespace cordreach::io
