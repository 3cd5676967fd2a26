// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/plug_drag.h"

#include <algorithm>

#include "map/map_canvas.h"
#include "map/plug_targets.h"
#include "panels/names.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

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

void PlugDrag::pickUp(const HeldPlug& plug, const QPointF& at) {
  HeldState held{plug, machineOf(m_canvas.content(), m_canvas.layout(), plug), at, {}, {}, {}, {}};
  m_canvas.state().held = std::move(held);
  m_at = at;
  m_socket.reset();
  light();
  m_canvas.update();
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
  const auto outlet = m_canvas.outletAt(at, look::scaled(kReachPx));
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
  const HeldState held = *m_canvas.state().held;
  const auto socket = m_socket;
  cancel();
  if (!held.refusal.isEmpty()) emit m_canvas.told(held.refusal);
  if (!socket) return;
  const EditResult edit = plugInto(m_canvas.session().document.site(), held.plug, *socket);
  const bool moved = edit && !edit.value().changes.empty();
  if (!edit || moved) m_canvas.apply(edit);
}

void PlugDrag::cancel() {
  m_canvas.state().held.reset();
  m_socket.reset();
  if (m_canvas.session().document.isSupposing()) m_canvas.session().document.dropSupposition();
  m_canvas.update();
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
