// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/start_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>

#include "panels/field_row.h"
#include "panels/field_text.h"
#include "panels/fresh_id.h"
#include "panels/new_things.h"
#include "shell/say.h"
#include "site/file_words.h"

namespace cordreach::app {
namespace {

template <class Enum>
Field enumField(const text::Phrasebook& book, const std::string& key) {
  Field field{.key = key, .label = book.say("field." + key), .kind = FieldKind::Choice, .mayBeUnknown = true};
  for (const auto& entry : site::kFileWords<Enum>) {
    field.choices.push_back({std::string(entry.word), book.say("field." + key + "." + std::string(entry.word))});
  }
  return field;
}

std::vector<std::string> namesIn(std::string_view typed) {
  std::vector<std::string> names;
  std::string name;
  const auto take = [&] {
    if (!tidied(name).empty()) names.push_back(tidied(name));
    name.clear();
  };
  for (const char letter : typed) {
    if (letter == ',' || letter == ';') {
      take();
    } else {
      name += letter;
    }
  }
  take();
  return names;
}

}  // namespace

site::Site startedSite(const text::Phrasebook& book, const StartAnswers& answers) {
  NewSite wanted;
  wanted.name = answers.name;
  wanted.supplyName = book.say(answers.system ? "field.group.supply" : "survey.start.supply_unknown");
  wanted.floorName = book.say("field.floor_name") + " 1";
  if (answers.system) wanted.system = *answers.system;
  site::Site site = newSite(wanted);
  if (answers.source) {
    site::Supply supply = *site.all<site::Supply>().begin();
    supply.source = *answers.source;
    site.all<site::Supply>().put(supply);
  }
  for (int level = 1; level < answers.floors.value_or(1); ++level) {
    site::Floor floor{freshId<site::Floor>(site), book.say("field.floor_name") + " " + std::to_string(level + 1)};
    floor.level = level;
    site.all<site::Floor>().put(floor);
  }
  for (const std::string& name : answers.panels) {
    site::Panel panel{freshId<site::Panel>(site), name};
    panel.supply = site.all<site::Supply>().begin()->id;
    site.all<site::Panel>().put(panel);
  }
  return site;
}

StartDialog::StartDialog(const text::Phrasebook& book, QWidget* parent) : PlanDialog(book, "survey.start", parent) {
  const auto ask = [&](const std::string& key, bool mayBeUnknown) {
    return Field{.key = key, .label = book.say("field." + key), .mayBeUnknown = mayBeUnknown};
  };
  add(ask("name", false));
  add(enumField<site::SupplyKindOfSource>(book, "source"));
  add(enumField<site::WiringSystem>(book, "system"));
  add(ask("start_panels", true));
  add(ask("start_floors", true));
  auto* buttons = findChild<QDialogButtonBox*>();
  QPushButton* empty = buttons->addButton(say(book, "survey.start.empty"), QDialogButtonBox::ActionRole);
  empty->setObjectName(QStringLiteral("survey.start.empty"));
  connect(empty, &QPushButton::clicked, this, [this, &book] {
    m_site = startedSite(book, {});
    QDialog::accept();
  });
  setDeed([this, &book]() -> base::Result<DeedEnd> {
    const auto said = answers();
    if (!said) return said.error();
    m_site = startedSite(book, said.value());
    return DeedEnd::Done;
  });
  row("name")->editor()->setFocus();
}

base::Result<StartAnswers> StartDialog::answers() const {
  StartAnswers said;
  said.name = tidied(row("name")->typed());
  said.source = site::fromFileWord<site::SupplyKindOfSource>(row("source")->typed());
  said.system = site::fromFileWord<site::WiringSystem>(row("system")->typed());
  said.panels = namesIn(row("start_panels")->typed());
  if (said.panels.size() > kMostPanels) {
    return base::Error{"start.too_many_panels", {}, {{"most", static_cast<double>(kMostPanels)}}};
  }
  const std::string floors = tidied(row("start_floors")->typed());
  if (floors.empty()) return said;
  const auto count = readText<int>(book(), floors);
  if (!count.ok()) return count.error();
  if (count.value() < 1 || count.value() > kMostFloors) {
    return base::Error{"start.bad_floors", floors, {{"most", static_cast<double>(kMostFloors)}}};
  }
  said.floors = count.value();
  return said;
}

}  // namespace cordreach::app
