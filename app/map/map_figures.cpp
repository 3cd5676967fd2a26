// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_figures.h"

#include <algorithm>

#include "text/quantity_text.h"

namespace cordreach::app {
namespace {

using text::quantityText;

QString quantity(const text::Phrasebook& book, std::string_view name, double value, bool decimal = false) {
  return QString::fromStdString(quantityText(book, name, value, {decimal}));
}

QString ampsLeft(const ContentWish& wish, const site::Outlet& outlet) {
  if (wish.verdict == nullptr) return {};
  std::optional<units::Current> least;
  for (const site::Contact& contact : outlet.contacts) {
    if (!contact.assignment) continue;
    const study::CircuitAnswer* answer = wish.verdict->answer.find(contact.assignment->circuit);
    if (answer == nullptr || !answer->breaker.rating) continue;
    const units::Current left = *answer->breaker.rating - answer->current.likely;
    least = least ? std::min(*least, left) : left;
  }
  return least ? ampsText(wish.book, *least) : QString();
}

// Where nobody knows anything its symbol says so.
QString trust(const ContentWish& wish, const site::Outlet& outlet) {
  const auto isKnown = [](const site::Contact& contact) { return contact.assignment.has_value(); };
  if (std::ranges::none_of(outlet.contacts, isKnown)) return {};
  for (const site::Contact& contact : outlet.contacts) {
    if (!contact.assignment) return say(wish.book, "map.trust.nobody");
    if (contact.assignment->how == site::HowKnown::Traced) {
      const std::string when = contact.assignment->when;
      return when.empty() ? say(wish.book, "map.trust.traced") : QString::fromStdString(when);
    }
    return say(wish.book,
               contact.assignment->how == site::HowKnown::Assumed ? "map.trust.assumed" : "map.trust.directory");
  }
  return {};
}

}  // namespace

QString ampsText(const text::Phrasebook& book, units::Current current) {
  return quantity(book, "current_a", current.in(units::ampere), true);
}

QString voltsText(const text::Phrasebook& book, units::Voltage voltage) {
  return quantity(book, "voltage_v", voltage.in(units::volt), true);
}

QString degreesText(const text::Phrasebook& book, units::Temperature temperature) {
  return quantity(book, "conductor_c", temperature.celsius());
}

QString sizeText(const text::Phrasebook& book, const units::WireSize& size) {
  if (const auto gauge = size.awgNumber()) return quantity(book, "size_awg", *gauge);
  return quantity(book, "size_mm2", size.metricMm2().value_or(0.0));
}

QString timeText(const text::Phrasebook& book, units::Duration time) {
  return quantity(book, "from_s", time.in(units::second));
}

QString circuitName(const site::Site& site, const site::CircuitId& id) {
  const site::Circuit* circuit = site.find<site::Circuit>(id);
  if (circuit == nullptr) return QString::fromStdString(id.text());
  const site::Panel* panel = site.find<site::Panel>(circuit->panel);
  return QString::fromStdString((panel != nullptr ? panel->name : circuit->panel.text()) + "-" + circuit->number);
}

rules::Severity severityOf(const Verdict* verdict, const rules::Subject& subject) {
  if (verdict == nullptr) return rules::Severity::Ok;
  rules::Severity worst = rules::Severity::Ok;
  for (const rules::Finding& finding : verdict->findings) {
    if (finding.accepted || finding.subjects.empty() || finding.subjects.front() != subject) continue;
    worst = std::max(worst, finding.severity);
  }
  return worst;
}

QString overlayFigure(const ContentWish& wish, const site::Outlet& outlet) {
  switch (wish.overlay) {
    case Overlay::AmpsLeft:
      return ampsLeft(wish, outlet);
    case Overlay::Trust:
      return trust(wish, outlet);
    case Overlay::Volts:  // told from all answers at once: voltsByOutlet
    case Overlay::Wiring:
    case Overlay::Hot:
    case Overlay::Reach:
      return {};
  }
  return {};
}

std::unordered_map<site::OutletId, units::Voltage> voltsByOutlet(const ContentWish& wish) {
  std::unordered_map<site::OutletId, units::Voltage> all;
  if (wish.verdict == nullptr || wish.overlay != Overlay::Volts) return all;
  for (const study::OutletAnswer& answer : wish.verdict->answer.outlets) {
    if (!answer.voltage) continue;
    const auto [at, isNew] = all.emplace(answer.id, answer.voltage->likely);
    if (!isNew) at->second = std::min(at->second, answer.voltage->likely);
  }
  return all;
}

const study::HookupAnswer* answerOf(const ContentWish& wish, const site::HookupId& hookup) {
  return wish.verdict == nullptr ? nullptr : wish.verdict->answer.find(hookup);
}

}  // namespace cordreach::app
