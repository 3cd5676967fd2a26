// SPDX-License-Identifier: GPL-3.0-or-later
// What each dialog of the menu asks, and how its answers become an edit.
#include <algorithm>

#include "panels/add_menu.h"
#include "panels/field_kinds.h"
#include "panels/field_text.h"
#include "panels/machine_types.h"
#include "panels/names.h"
#include "site/file_words.h"
#include "site/natural_order.h"

namespace cordreach::app {

namespace {

// Fields of these dialogs stand under `field.` and their key, as all do.
struct Ask {
  const text::Phrasebook& book;

  [[nodiscard]] Field text(const std::string& key, std::string value = {}) const {
    return {.key = key, .label = book.say("field." + key), .text = std::move(value)};
  }
  [[nodiscard]] Field known(const std::string& key) const {
    Field field = text(key);
    field.mayBeUnknown = true;
    return field;
  }
  [[nodiscard]] Field choice(const std::string& key, std::vector<FieldChoice> choices, bool mayBeUnknown) const {
    Field field = text(key);
    field.kind = FieldKind::Choice;
    field.mayBeUnknown = mayBeUnknown;
    if (!mayBeUnknown && !choices.empty()) field.text = choices.front().key;
    field.choices = std::move(choices);
    return field;
  }
  [[nodiscard]] Field flag(const std::string& key) const {
    Field field = text(key);
    field.kind = FieldKind::Flag;
    return field;
  }
};

template <class T>
base::Result<site::Known<T>> answer(const text::Phrasebook& book, const Answers& answers, const char* key) {
  return readKnown<T>(book, answers.at(key), {});
}

std::vector<FieldChoice> panelChoices(const site::Site& site) {
  std::vector<FieldChoice> choices;
  for (const site::Panel& panel : site.all<site::Panel>()) {
    choices.push_back({panel.id.text(), panel.name.empty() ? panel.id.text() : panel.name});
  }
  std::ranges::stable_sort(choices, site::comesBefore, &FieldChoice::text);
  return choices;
}

std::vector<FieldChoice> classChoices(const text::Phrasebook& book) {
  std::vector<FieldChoice> choices;
  for (const auto& entry : site::kFileWords<tables::LoadClass>) {
    choices.push_back({std::string(entry.word), book.say("field.class." + std::string(entry.word))});
  }
  return choices;
}

}  // namespace

AskDialog* AddMenu::panelDialog(QWidget* parent) {
  const Ask ask{m_session.book};
  return dialog(
      "panel.add.panel", {ask.text("name")},
      [this](const Answers& said) {
        return take(addPanel(m_session.document.site(), {tidied(said.at("name")), {}, place()}));
      },
      parent);
}

AskDialog* AddMenu::breakersDialog(QWidget* parent) {
  const Ask ask{m_session.book};
  Field panel = ask.choice("panel", panelChoices(m_session.document.site()), false);
  const auto chosen = m_session.selection.single();
  if (chosen && chosen->kind == rules::SubjectKind::Panel) panel.text = chosen->id;
  return dialog(
      "panel.add.breakers", {panel, ask.text("count", "12"), ask.known("breaker_rating")},
      [this](const Answers& said) -> std::optional<base::Error> {
        if (said.at("panel").empty()) return base::Error{"new.no_panel", {}, {}};
        const auto count = readText<int>(m_session.book, said.at("count"));
        if (!count.ok()) return count.error();
        const auto rating = answer<units::Current>(m_session.book, said, "breaker_rating");
        if (!rating.ok()) return rating.error();
        return take(
            addBreakers(m_session.document.site(), {site::PanelId(said.at("panel")), count.value(), rating.value()}));
      },
      parent);
}

AskDialog* AddMenu::outletDialog(QWidget* parent) {
  const Ask ask{m_session.book};
  const FieldContext in{m_session.document.site(), m_session.book};
  return dialog(
      "panel.add.outlet",
      {ask.text("label", nextOutletLabel(in.site)), ask.choice("breaker", circuitChoices(in), true),
       ask.choice("receptacle", receptacleChoices(), true), ask.flag("single")},
      [this](const Answers& said) {
        NewOutlet outlet{tidied(said.at("label")), place(), said.at("receptacle"), said.at("single") == kYes, {}};
        if (!said.at("breaker").empty()) outlet.circuit = site::CircuitId(said.at("breaker"));
        return take(addOutlet(m_session.document.site(), outlet));
      },
      parent);
}

AskDialog* AddMenu::loadDialog(QWidget* parent) {
  const Ask ask{m_session.book};
  const FieldContext in{m_session.document.site(), m_session.book};
  return dialog(
      "panel.add.load",
      {ask.text("name"), ask.choice("load_circuit", circuitChoices(in), false),
       ask.choice("class", classChoices(in.book), false), ask.known("plate")},
      [this](const Answers& said) -> std::optional<base::Error> {
        if (said.at("load_circuit").empty()) return base::Error{"new.no_circuit", {}, {}};
        const auto plate = answer<units::Current>(m_session.book, said, "plate");
        if (!plate.ok()) return plate.error();
        const auto loadClass = site::fromFileWord<tables::LoadClass>(said.at("class"));
        if (!loadClass) return base::Error{"field.no_choice", said.at("class"), {}};
        return take(addLoad(
            m_session.document.site(),
            {tidied(said.at("name")), site::CircuitId(said.at("load_circuit")), *loadClass, plate.value(), place()}));
      },
      parent);
}

AskDialog* AddMenu::machineDialog(const std::string& type, QWidget* parent) {
  const Ask ask{m_session.book};
  const std::string code = "machine_type." + type;
  return dialog(
      code, {ask.text("name", m_session.book.say(code)), ask.known("plate")},
      [this, type](const Answers& said) -> std::optional<base::Error> {
        const auto plate = answer<units::Current>(m_session.book, said, "plate");
        if (!plate.ok()) return plate.error();
        return take(addMachine(m_session.document.site(), {type, tidied(said.at("name")), plate.value(), place()}));
      },
      parent);
}

AskDialog* AddMenu::cordDialog(QWidget* parent) {
  const Ask ask{m_session.book};
  return dialog(
      "panel.add.cord",
      {ask.text("label", nextCordLabel(m_session.document.site())), ask.text("legend"), ask.known("length"),
       ask.known("tag"), ask.choice("plug", receptacleChoices(), true), ask.text("socket_count", "1")},
      [this](const Answers& said) -> std::optional<base::Error> {
        const auto length = answer<units::Length>(m_session.book, said, "length");
        if (!length.ok()) return length.error();
        const auto tag = answer<units::Current>(m_session.book, said, "tag");
        if (!tag.ok()) return tag.error();
        const auto sockets = readText<int>(m_session.book, said.at("socket_count"));
        if (!sockets.ok()) return sockets.error();
        return take(addCord(m_session.document.site(), {tidied(said.at("label")), said.at("legend"), length.value(),
                                                        tag.value(), said.at("plug"), sockets.value()}));
      },
      parent);
}

AskDialog* AddMenu::padDialog(QWidget* parent) {
  const Ask ask{m_session.book};
  return dialog(
      "panel.add.pad", {ask.text("name"), ask.known("rated_speed")},
      [this](const Answers& said) -> std::optional<base::Error> {
        const auto speed = answer<units::Frequency>(m_session.book, said, "rated_speed");
        if (!speed.ok()) return speed.error();
        return take(addPad(m_session.document.site(), {tidied(said.at("name")), speed.value()}));
      },
      parent);
}

}  // namespace cordreach::app
