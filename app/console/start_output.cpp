// SPDX-License-Identifier: GPL-3.0-or-later
#include "console/start_output.h"

#include <algorithm>

#include "console/json_writer.h"
#include "console/page.h"
#include "text/finding_text.h"
#include "text/quantity_text.h"
#include "text/severity_text.h"

namespace cordreach::console {

namespace {

using rules::Severity;
using study::Band;
using study::StartAnswer;

constexpr std::size_t kPageRows = 7;

std::optional<double> secondsOf(const std::optional<units::Duration>& time) {
  return time ? std::optional<double>(time->si()) : std::nullopt;
}

template <class T>
std::optional<Band<double>> plain(const Band<T>& band) {
  return Band<double>{band.likely.si(), band.low.si(), band.high.si()};
}

// Of one that never completes there is no end to it.
std::optional<double> i2tOf(const physics::StartRun& run) {
  return run.completes() ? std::optional(run.i2tA2S) : std::nullopt;
}

void putDip(JsonWriter& json, const study::Dip& dip) {
  json.number("before_v", dip.before.si());
  json.band("during_v", plain(dip.during));
  const auto percent = [&](units::Voltage during) { return 100.0 * ((dip.before - during) / dip.nominal); };
  json.band("dip_percent", Band<double>{percent(dip.during.likely), percent(dip.during.high), percent(dip.during.low)});
}

std::string nameOf(const study::LoadDip& dip, const site::Site& site) {
  if (dip.load) return site.at<site::FixedLoad>(*dip.load).name;
  return site.at<site::Machine>(site.at<site::Hookup>(*dip.hookup).machine).name;
}

void putDips(JsonWriter& json, const StartReply& reply) {
  json.openArray("dips");
  for (const study::LoadDip& dip : reply.study.answer.dips) {
    json.openObject().text("kind", dip.load ? "fixed_load" : "hookup");
    json.text("id", dip.load ? dip.load->text() : dip.hookup->text());
    json.text("name", nameOf(dip, reply.question.site));
    putDip(json, dip.dip);
    json.closeObject();
  }
  json.closeArray().openArray("outlets");
  for (const study::OutletDip& dip : reply.study.outlets) {
    json.openObject().text("id", dip.outlet.text()).text("contact", dip.contact);
    putDip(json, dip.dip);
    json.closeObject();
  }
  json.closeArray();
}

void putSeries(JsonWriter& json, const physics::StartRun& run) {
  json.openArray("series");
  for (const physics::StartSample& sample : run.samples) {
    json.openObject().number("time_s", sample.timeS).number("current_a", sample.totalRmsA);
    json.number("voltage_v", sample.voltageV).number("speed_percent", 100.0 * sample.speedShare).closeObject();
  }
  json.closeArray();
}

void putTrip(JsonWriter& json, const std::optional<physics::TripTimes>& trip) {
  if (!trip) {
    json.null("trip");
    return;
  }
  json.openObject("trip").number("earliest_s", secondsOf(trip->earliest));
  json.number("likely_s", secondsOf(trip->likely)).number("latest_s", secondsOf(trip->latest)).closeObject();
}

// "0.8 s": a start is over in the time that other spans round away.
std::string shortSpan(const text::Phrasebook& book, double seconds, int decimals = 1) {
  return book.say("unit.seconds", {{"n", text::numberText(book.locale(), seconds, decimals)}});
}

// What the likely start says in numbers, for the sentences.
base::Arguments argumentsOf(const StartReply& reply, const text::Phrasebook& book) {
  const StartAnswer& answer = reply.study.answer;
  const site::Site& site = reply.question.site;
  const auto& hookup = site.at<site::Hookup>(reply.question.hookup);
  base::Arguments arguments{{"machine", site.at<site::Machine>(hookup.machine).name},
                            {"current_a", answer.peak.likely.si()},
                            {"current_low_a", answer.peak.low.si()},
                            {"current_high_a", answer.peak.high.si()},
                            {"settled_a", answer.settled.likely.si()},
                            {"voltage_v", answer.lowest.likely.si()},
                            {"before_v", answer.outlet.before.si()},
                            {"outlet_v", answer.outlet.during.likely.si()},
                            {"panel_v", answer.panel.during.likely.si()}};
  if (answer.time.likely) arguments.push_back({"start_s", shortSpan(book, answer.time.likely->si())});
  if (answer.time.easy) arguments.push_back({"start_low_s", shortSpan(book, answer.time.easy->si())});
  if (answer.time.hard) arguments.push_back({"start_high_s", shortSpan(book, answer.time.hard->si())});
  const bool flat = site.at<site::Machine>(hookup.machine).kind == "slow-machine";
  arguments.push_back({"way", answer.tipped ? "tipped" : flat ? "flat" : "plain"});
  arguments.push_back({"inertia", answer.inertiaStated ? "stated" : "taken"});
  return arguments;
}

void putVerdict(Page& page, const StartReply& reply, const text::Phrasebook& book) {
  const base::Arguments arguments = argumentsOf(reply, book);
  const bool never = !reply.study.answer.time.likely;
  if (!reply.findings.empty() && reply.findings.front().severity == reply.severity()) {
    page.verdict(reply.severity(), text::wordsOf(book, reply.findings.front()).text());
  } else {
    const bool perhaps = reply.severity() == Severity::Notice;
    page.verdict(reply.severity(), book.say(never     ? "start.verdict.never"
                                            : perhaps ? "start.verdict.perhaps"
                                                      : "start.verdict.ok",
                                            arguments));
  }
  page.gap();
  page.paragraph(book.say(never ? "start.hangs" : "start.comes_up", arguments));
  page.paragraph(book.say("start.dip", arguments));
  const auto& trip = reply.study.answer.trip;
  if (trip && trip->earliest && !trip->likely) {
    page.paragraph(book.say("start.early", {{"earliest_s", shortSpan(book, trip->earliest->si(), 2)}}));
  }
}

void putRows(Page& page, const physics::StartRun& run, const text::Phrasebook& book) {
  std::vector<std::vector<std::string>> rows;
  const std::size_t count = std::min(run.samples.size(), kPageRows);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t at = count > 1 ? i * (run.samples.size() - 1) / (count - 1) : 0;
    const physics::StartSample& sample = run.samples[at];
    rows.push_back({"  " + shortSpan(book, sample.timeS, 2), text::quantityText(book, "current_a", sample.totalRmsA),
                    text::quantityText(book, "voltage_v", sample.voltageV),
                    text::quantityText(book, "speed_percent", 100.0 * sample.speedShare)});
  }
  page.gap();
  page.table({{"  " + book.say("start.column.after")},
              {book.say("start.column.current"), text::Align::Right},
              {book.say("start.column.voltage"), text::Align::Right},
              {book.say("start.column.speed"), text::Align::Right}},
             rows);
}

}  // namespace

Severity StartReply::severity() const {
  Severity worst = Severity::Ok;
  if (!study.answer.time.hard) worst = Severity::Notice;
  if (!study.answer.time.likely) worst = Severity::Warning;
  for (const rules::Finding& finding : findings) worst = std::max(worst, finding.severity);
  return worst;
}

std::string startJson(const StartReply& reply) {
  const StartAnswer& answer = reply.study.answer;
  const site::Hookup& hookup = reply.question.site.at<site::Hookup>(reply.question.hookup);
  JsonWriter json;
  json.openObject().text("hookup", hookup.id.text()).text("machine", hookup.machine.text());
  json.text("verdict", text::severityCode(reply.severity()));
  json.band("peak_a", plain(answer.peak)).band("settled_a", plain(answer.settled));
  json.number("time_to_speed_s", secondsOf(answer.time.likely));
  json.number("time_to_speed_low_s", secondsOf(answer.time.easy));
  json.number("time_to_speed_high_s", secondsOf(answer.time.hard));
  json.band("lowest_v", plain(answer.lowest));
  const physics::StartRun& likely = reply.study.likely;
  json.number("i2t_a2s", i2tOf(likely)).number("i2t_low_a2s", i2tOf(reply.study.easy));
  json.number("i2t_high_a2s", i2tOf(reply.study.hard));
  json.number("source_v", reply.study.supply.openV).number("source_ohm", std::abs(reply.study.supply.ohm));
  putTrip(json, answer.trip);
  json.openObject("outlet");
  putDip(json, answer.outlet);
  json.closeObject().openObject("panel");
  putDip(json, answer.panel);
  json.closeObject();
  putDips(json, reply);
  putSeries(json, likely);
  return json.closeObject().line();
}

std::string startPage(const StartReply& reply, const text::Phrasebook& book, bool color) {
  Page page(book, color);
  page.heading(book.say("start.heading", argumentsOf(reply, book)));
  putVerdict(page, reply, book);
  if (reply.study.likely.samples.size() > 1) putRows(page, reply.study.likely, book);
  page.gap();
  page.paragraph(book.say("start.guess", argumentsOf(reply, book)));
  return page.finished();
}

}  // namespace cordreach::console
