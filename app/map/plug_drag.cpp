// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/plug_drag.h"

#include <QVariantAnimation>
#include <algorithm>

#include "map/map_canvas.h"
#include "map/plug_targets.h"
#include "panels/names.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

constexpr int kReturnMs = 160;
constexpr double kReachPx = 20.0;  // a held plug finds an outlet from farther than a pointer does

int machineOf(const MapContent& content, const MapLayout& layout, const HeldPlug& plug) {
  for (const MapPlug& one : layout.plugs) {
    if (one.plug == plug) return one.machine;
  }
  const auto* own = std::get_if<MachinePlug>(&plug);
  for (std::size_t i = 0; own != nullptr && i < content.machines.size(); ++i) {
    if (content.machines[i].id == own->machine) return static_cast<int>(i);
  }
  return -1;
}

// The upper contact when the pointer is above the middle.
std::string preferredContact(const site::Outlet& outlet, bool above) {
  if (outlet.contacts.empty()) return {};
  return above ? outlet.contacts.front().name : outlet.contacts.back().name;
}

}  // namespace

bool PlugDrag::isHolding() const { return m_canvas.state().held.has_value(); }

PlugDrag::PlugDrag(MapCanvas& canvas) : m_canvas(canvas), m_return(std::make_unique<QVariantAnimation>()) {
  m_return->setEasingCurve(QEasingCurve::OutCubic);
  QObject::connect(m_return.get(), &QVariantAnimation::valueChanged, &m_canvas, [this](const QVariant& value) {
    MapState& state = m_canvas.state();
    if (state.returning) state.returning->tip = value.toPointF();
    m_canvas.update();
  });
  QObject::connect(m_return.get(), &QVariantAnimation::finished, &m_canvas, [this] {
    m_canvas.state().returning.reset();
    m_canvas.update();
  });
}

PlugDrag::~PlugDrag() = default;

// Empty when nothing speaks against taking it in hand.
QString PlugDrag::whyNot(const HeldPlug& plug) const {
  const site::Site& site = m_canvas.session().document.site();
  const site::OutOfService* tag = nullptr;
  std::string name;
  if (const auto* own = std::get_if<MachinePlug>(&plug)) {
    const site::Machine* machine = site.find<site::Machine>(own->machine);
    if (machine != nullptr && machine->outOfService) tag = &*machine->outOfService;
    if (machine != nullptr) name = machine->name;
  } else if (const auto* use = site.find<site::ExtensionUse>(std::get<ExtensionPlug>(plug).use)) {
    const site::Cord* cord = site.find<site::Cord>(use->cord);
    if (cord != nullptr && cord->outOfService) tag = &*cord->outOfService;
    if (cord != nullptr) name = cord->label;
  }
  if (tag == nullptr) return {};
  const text::Phrasebook& book = m_canvas.session().book;
  if (tag->reason.empty()) return say(book, "map.out_of_service.plain", {{"name", name}});
  return say(book, "map.out_of_service.why", {{"name", name}, {"reason", tag->reason}});
}

HeldState PlugDrag::stateOf(const HeldPlug& plug, const QPointF& at) const {
  const MapContent& content = m_canvas.content();
  HeldState held{plug, machineOf(content, m_canvas.layout(), plug), at, {}, {}, {}, {}};
  for (const MapCord& cord : content.cords) {
    const std::size_t first = firstPartBehind(cord, plug);
    if (first >= cord.parts.size()) continue;
    held.ownCord = cord.parts[first];
    if (cord.machine < 0) held.machineFloor = cord.otherFloor;
  }
  const site::Floor* floor =
      content.floor ? m_canvas.session().document.site().find<site::Floor>(*content.floor) : nullptr;
  if (held.machine >= 0 && floor != nullptr) held.machineFloor = QString::fromStdString(floor->name);
  return held;
}

bool PlugDrag::pickUp(const HeldPlug& plug, const QPointF& at) {
  const QString why = whyNot(plug);
  if (!why.isEmpty()) {
    emit m_canvas.told(why);
    return false;
  }
  m_return->stop();
  m_canvas.state().returning.reset();
  m_canvas.state().held = stateOf(plug, at);
  m_at = at;
  m_homeFloor = m_canvas.floor();
  m_socket.reset();
  light();
  emit m_canvas.toolChanged();
  m_canvas.update();
  return true;
}

void PlugDrag::light() {
  HeldState& held = *m_canvas.state().held;
  const site::Site& site = m_canvas.session().document.site();
  held.possible.clear();
  for (const MapOutlet& outlet : m_canvas.content().outlets) {
    const site::Outlet* there = site.find<site::Outlet>(outlet.id);
    const auto best = there != nullptr ? bestContact(site, held.plug, *there) : std::nullopt;
    held.possible.push_back(best && isPossible(best->answer) ? 1 : 0);
  }
}

void PlugDrag::moveTo(const QPointF& at) {
  if (!isHolding()) return;
  m_at = at;
  m_canvas.state().held->tip = at;
  const bool isInside = m_canvas.rect().contains(m_canvas.toWidget(at).toPoint());
  const auto outlet = isInside ? m_canvas.outletAt(at, look::scaled(kReachPx)) : std::nullopt;
  std::string preferred;
  if (outlet) {
    const auto index = static_cast<std::size_t>(*outlet);
    const site::Outlet* there =
        m_canvas.session().document.site().find<site::Outlet>(m_canvas.content().outlets[index].id);
    if (there != nullptr) preferred = preferredContact(*there, at.y() <= m_canvas.layout().outlets[index].y() + 2);
  }
  suppose(outlet, preferred);
}

void PlugDrag::overOutlet(int outlet) {
  if (!isHolding()) return;
  m_at = m_canvas.layout().outlets[static_cast<std::size_t>(outlet)];
  m_canvas.state().held->tip = m_at;
  suppose(outlet, {});
}

void PlugDrag::nextContact() {
  if (!isHolding() || !m_socket) return;
  const site::Outlet* outlet = m_canvas.session().document.site().find<site::Outlet>(m_socket->outlet);
  if (outlet == nullptr) return;
  const auto& all = outlet->contacts;
  const auto at = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.name == m_socket->contact; });
  if (at == all.end()) return;
  const auto next = std::next(at) == all.end() ? all.begin() : std::next(at);
  suppose(m_canvas.state().held->over, next->name);
}

void PlugDrag::suppose(std::optional<int> outlet, const std::string& preferred) {
  HeldState& held = *m_canvas.state().held;
  Document& document = m_canvas.session().document;
  const text::Phrasebook& book = m_canvas.session().book;
  held.over.reset();
  held.contact.clear();
  held.refusal.clear();
  std::optional<site::OutletSocket> socket;
  if (outlet) {
    const site::Outlet& there =
        document.site().at<site::Outlet>(m_canvas.content().outlets[static_cast<std::size_t>(*outlet)].id);
    const auto best = bestContact(document.site(), held.plug, there, preferred);
    if (best && !canBeTried(best->answer)) held.refusal = say(book, wordOf(best->answer));
    if (best && canBeTried(best->answer)) {
      socket = site::OutletSocket{there.id, best->contact};
      held.over = *outlet;
      held.contact =
          say(book, wordOf(best->answer), {{"outlet", there.label}, {"contact", contactName(book, best->contact)}});
    }
  }
  if (socket == m_socket) return m_canvas.update();
  m_socket = socket;
  if (!socket) {
    document.dropSupposition();
    return m_canvas.update();
  }
  const EditResult edit = plugInto(document.site(), held.plug, *socket);
  if (edit) {
    document.suppose(edit.value());
  } else {
    held.refusal = sentenceOf(book, edit.error());
    held.over.reset();
    m_socket.reset();
    document.dropSupposition();
  }
  m_canvas.update();
}

void PlugDrag::drop() {
  if (!isHolding()) return;
  if (!m_socket) return cancel();
  const HeldState held = *m_canvas.state().held;
  const site::OutletSocket socket = *m_socket;
  letGo();
  const EditResult edit = plugInto(m_canvas.session().document.site(), held.plug, socket);
  const bool moved = edit && !edit.value().changes.empty();
  if (!edit || moved) m_canvas.apply(edit);
}

void PlugDrag::cancel() {
  if (!isHolding()) return;
  HeldState held = *m_canvas.state().held;
  const QString refusal = held.refusal;
  letGo();
  if (m_homeFloor && m_canvas.floor() != m_homeFloor) {
    emit m_canvas.floorWanted(*m_homeFloor);
  } else {
    snapBack(std::move(held));
  }
  if (!refusal.isEmpty()) emit m_canvas.told(refusal);
}

// No trace of it is left but what the caller keeps.
void PlugDrag::letGo() {
  m_canvas.state().held.reset();
  m_socket.reset();
  if (m_canvas.session().document.isSupposing()) m_canvas.session().document.dropSupposition();
  emit m_canvas.toolChanged();
  m_canvas.update();
}

void PlugDrag::snapBack(HeldState held) {
  const auto home = m_canvas.pointOfPlug(held.plug);
  const int duration = look::motionMs(kReturnMs);
  if (!home || duration == 0) return;
  const QPointF to = m_canvas.toPlan(*home);
  const QPointF from = held.tip;
  held.over.reset();
  held.refusal.clear();
  m_canvas.state().returning = std::move(held);
  m_return->setDuration(duration);
  m_return->setStartValue(from);
  m_return->setEndValue(to);
  m_return->start();
}

void PlugDrag::leaveOutlet() {
  if (isHolding()) suppose(std::nullopt, {});
}

void PlugDrag::refresh() {
  if (!isHolding()) return;
  HeldState& held = *m_canvas.state().held;
  held.over.reset();
  for (std::size_t i = 0; m_socket && i < m_canvas.content().outlets.size(); ++i) {
    if (m_canvas.content().outlets[i].id == m_socket->outlet) held.over = static_cast<int>(i);
  }
  held.machine = machineOf(m_canvas.content(), m_canvas.layout(), held.plug);
  light();
}

}  // namespace cordreach::app
