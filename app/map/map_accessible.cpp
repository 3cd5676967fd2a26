// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/map_accessible.h"

#include <QAccessible>
#include <QAccessibleActionInterface>
#include <QAccessibleWidget>
#include <memory>
#include <vector>

#include "map/map_canvas.h"
#include "map/map_figures.h"
#include "panels/names.h"
#include "text/severity_text.h"

namespace cordreach::app {
namespace {

class PlanInterface;

// One thing of the plan. It is kept as long as the plan's interface, and looks its thing up again each time.
class ThingInterface : public QAccessibleInterface, public QAccessibleActionInterface {
 public:
  ThingInterface(PlanInterface& plan, int index) : m_plan(plan), m_index(index) {}

  [[nodiscard]] bool isValid() const override { return item().has_value(); }
  [[nodiscard]] QObject* object() const override { return nullptr; }
  [[nodiscard]] QAccessibleInterface* parent() const override;
  [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
  [[nodiscard]] int childCount() const override { return 0; }
  [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  [[nodiscard]] QString text(QAccessible::Text text) const override;
  void setText(QAccessible::Text, const QString&) override {}
  [[nodiscard]] QRect rect() const override;
  [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
  [[nodiscard]] QAccessible::State state() const override;
  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
  }
  [[nodiscard]] QStringList actionNames() const override { return {pressAction()}; }
  void doAction(const QString& name) override;
  [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

 private:
  [[nodiscard]] std::optional<ItemRef> item() const;

  PlanInterface& m_plan;
  int m_index;
};

class PlanInterface : public QAccessibleWidget {
 public:
  explicit PlanInterface(MapCanvas* canvas) : QAccessibleWidget(canvas, QAccessible::List) {}
  ~PlanInterface() override {
    for (const QAccessible::Id id : m_ids) QAccessible::deleteAccessibleInterface(id);
  }

  [[nodiscard]] MapCanvas& canvas() const { return *static_cast<MapCanvas*>(widget()); }
  [[nodiscard]] int childCount() const override { return static_cast<int>(canvas().itemsInOrder().size()); }
  [[nodiscard]] QAccessibleInterface* child(int index) const override {
    if (index < 0 || index >= childCount()) return nullptr;
    while (static_cast<int>(m_ids.size()) <= index) {
      auto* made = new ThingInterface(const_cast<PlanInterface&>(*this), static_cast<int>(m_ids.size()));
      m_ids.push_back(QAccessible::registerAccessibleInterface(made));
    }
    return QAccessible::accessibleInterface(m_ids[static_cast<std::size_t>(index)]);
  }
  [[nodiscard]] int indexOfChild(const QAccessibleInterface* child) const override {
    for (std::size_t i = 0; i < m_ids.size(); ++i) {
      if (QAccessible::accessibleInterface(m_ids[i]) == child) return static_cast<int>(i);
    }
    return -1;
  }
  [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
    const auto hit = canvas().itemAt(canvas().toPlan(canvas().mapFromGlobal(QPoint(x, y))));
    const auto all = canvas().itemsInOrder();
    for (std::size_t i = 0; hit && i < all.size(); ++i) {
      if (all[i] == *hit) return child(static_cast<int>(i));
    }
    return nullptr;
  }
  [[nodiscard]] QAccessibleInterface* focusChild() const override {
    const auto& focus = canvas().state().focus;
    const auto all = canvas().itemsInOrder();
    for (std::size_t i = 0; focus && i < all.size(); ++i) {
      if (all[i] == *focus) return child(static_cast<int>(i));
    }
    return nullptr;
  }

 private:
  mutable std::vector<QAccessible::Id> m_ids;
};

std::optional<ItemRef> ThingInterface::item() const {
  const auto all = m_plan.canvas().itemsInOrder();
  if (m_index >= static_cast<int>(all.size())) return std::nullopt;
  return all[static_cast<std::size_t>(m_index)];
}

QAccessibleInterface* ThingInterface::parent() const { return &m_plan; }

QString ThingInterface::text(QAccessible::Text text) const {
  const auto thing = item();
  return thing && text == QAccessible::Name ? m_plan.canvas().nameOf(*thing) : QString();
}

QRect ThingInterface::rect() const {
  const auto thing = item();
  if (!thing) return {};
  const QPoint middle =
      m_plan.canvas().mapToGlobal(m_plan.canvas().toWidget(m_plan.canvas().layout().at(*thing)).toPoint());
  return {middle - QPoint(12, 12), QSize(24, 24)};
}

QAccessible::State ThingInterface::state() const {
  QAccessible::State state;
  state.focusable = true;
  state.selectable = true;
  const auto thing = item();
  if (!thing) return state;
  state.focused = m_plan.canvas().hasFocus() && m_plan.canvas().state().focus == thing;
  const auto subject = subjectOf(m_plan.canvas().content(), *thing);
  state.selected = subject && m_plan.canvas().session().selection.holds(*subject);
  return state;
}

void ThingInterface::doAction(const QString& name) {
  const auto thing = item();
  if (!thing || name != pressAction()) return;
  m_plan.canvas().focusItem(thing);
  m_plan.canvas().choose(*thing, false);
}

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
  auto* canvas = qobject_cast<MapCanvas*>(object);
  return canvas != nullptr ? new PlanInterface(canvas) : nullptr;
}

QString knownWords(const text::Phrasebook& book, const MapOutlet& outlet) {
  if (outlet.look == OutletLook::Unknown) return say(book, "map.trust.nobody");
  return say(book, outlet.traced ? "map.trust.traced" : "map.trust.assumed");
}

QString outletName(const MapCanvas& canvas, const MapOutlet& outlet) {
  const text::Phrasebook& book = canvas.session().book;
  const auto shown = canvas.session().document.shown();
  QStringList parts{say(book, "map.name.outlet", {{"outlet", outlet.label.toStdString()}})};
  const auto verdict = canvas.session().judge.last();
  if (!outlet.figure.isEmpty()) {
    parts << outlet.figure;
  } else if (verdict != nullptr) {
    for (const study::OutletAnswer& answer : verdict->answer.outlets) {
      if (answer.id != outlet.id || !answer.voltage) continue;
      parts << voltsText(book, answer.voltage->likely);
      break;
    }
  }
  QStringList circuits;
  for (const site::CircuitId& circuit : outlet.circuits) circuits << circuitName(*shown, circuit);
  if (!circuits.isEmpty()) {
    parts << say(book, "map.name.breaker", {{"circuit", circuits.join(QStringLiteral(", ")).toStdString()}});
  }
  parts << knownWords(book, outlet);
  if (!outlet.marks.isEmpty()) parts << say(book, "map.name.ground_fault");
  return parts.join(QStringLiteral(", "));
}

}  // namespace

void installMapAccessibility() {
  static const bool once = [] {
    QAccessible::installFactory(makeInterface);
    return true;
  }();
  static_cast<void>(once);
}

QString MapCanvas::nameOf(const ItemRef& item) const {
  const auto i = static_cast<std::size_t>(item.index);
  const text::Phrasebook& book = m_session.book;
  QStringList parts;
  rules::Severity severity = rules::Severity::Ok;
  if (item.kind == ItemKind::Outlet) {
    parts << outletName(*this, m_content.outlets[i]);
    severity = m_content.outlets[i].severity;
  } else if (item.kind == ItemKind::Machine) {
    const MapMachine& machine = m_content.machines[i];
    parts << machine.name << machine.figure;
    for (const MapCord& cord : m_content.cords) {
      if (cord.machine == item.index && cord.outlet >= 0) {
        const auto& outlet = m_content.outlets[static_cast<std::size_t>(cord.outlet)];
        parts << say(book, "map.name.at_outlet", {{"outlet", outlet.label.toStdString()}});
      }
    }
    if (machine.outOfService) parts << say(book, "map.name.out_of_service");
    severity = machine.severity;
  } else if (item.kind == ItemKind::Load) {
    parts << m_content.loads[i].name << m_content.loads[i].figure
          << circuitName(*m_session.document.shown(), m_content.loads[i].circuit);
  } else if (item.kind == ItemKind::Panel) {
    parts << m_content.panels[i].name << m_content.panels[i].system << m_content.panels[i].circuitFigure;
    severity = m_content.panels[i].severity;
  } else if (item.kind == ItemKind::Room) {
    const rules::Subject room{rules::SubjectKind::Room, m_content.rooms[i].id.text()};
    parts << QString::fromStdString(subjectName(book, *m_session.document.shown(), room));
    if (m_content.rooms[i].corridor) parts << say(book, "field.room_use.corridor");
  }
  if (severity >= rules::Severity::Caution) parts.prepend(QString::fromStdString(text::signalWord(book, severity)));
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

}  // namespace cordreach::app
