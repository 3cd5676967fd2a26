// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/settings_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QPushButton>
#include <array>

#include "shell/say.h"

namespace cordreach::app {

namespace {
constexpr std::array kScales = {1.0, 1.25, 1.5, 2.0};
}

SettingsDialog::SettingsDialog(const look::Choices& choices, const text::Phrasebook& book, QWidget* parent)
    : QDialog(parent), m_book(book) {
  setWindowTitle(say(book, "window.settings.title"));
  auto* form = new QFormLayout(this);
  form->setContentsMargins(24, 24, 24, 24);
  form->setSpacing(12);
  form->setSizeConstraint(QLayout::SetFixedSize);
  m_units = choice("window.settings.units", {"window.settings.units.us", "window.settings.units.metric"},
                   choices.units == text::UnitSystem::Metric ? 1 : 0);
  const auto scale = std::find(kScales.begin(), kScales.end(), choices.textScale);
  m_textSize = choice("window.settings.text_size", {}, 0);
  for (const double each : kScales)
    m_textSize->addItem(say(book, "unit.percent", {{"n", std::to_string(int(each * 100))}}));
  m_textSize->setCurrentIndex(scale == kScales.end() ? 0 : static_cast<int>(scale - kScales.begin()));
  m_ground = choice("window.settings.ground",
                    {"window.settings.ground.system", "window.settings.ground.light", "window.settings.ground.dark"},
                    static_cast<int>(choices.ground));
  m_highContrast = check("window.settings.high_contrast", choices.highContrast);
  m_reduceMotion = check("window.settings.reduce_motion", choices.reduceMotion);
  auto* buttons = new QDialogButtonBox(this);
  buttons->addButton(say(book, "window.answer.close"), QDialogButtonBox::AcceptRole);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  form->addRow(buttons);
  for (QComboBox* box : {m_units, m_textSize, m_ground}) {
    connect(box, &QComboBox::currentIndexChanged, this, [this] { emit changed(chosen()); });
  }
  for (QCheckBox* box : {m_highContrast, m_reduceMotion}) {
    connect(box, &QCheckBox::toggled, this, [this] { emit changed(chosen()); });
  }
}

QComboBox* SettingsDialog::choice(const char* labelCode, const std::vector<std::string>& codes, int at) {
  auto* box = new QComboBox(this);
  for (const std::string& code : codes) box->addItem(say(m_book, code));
  box->setCurrentIndex(at);
  box->setAccessibleName(say(m_book, labelCode));
  static_cast<QFormLayout*>(layout())->addRow(say(m_book, labelCode), box);
  return box;
}

QCheckBox* SettingsDialog::check(const char* labelCode, bool on) {
  auto* box = new QCheckBox(say(m_book, labelCode), this);
  box->setChecked(on);
  static_cast<QFormLayout*>(layout())->addRow(box);
  return box;
}

look::Choices SettingsDialog::chosen() const {
  look::Choices choices;
  choices.units = m_units->currentIndex() == 1 ? text::UnitSystem::Metric : text::UnitSystem::Us;
  choices.textScale = kScales.at(static_cast<std::size_t>(m_textSize->currentIndex()));
  choices.ground = static_cast<look::Ground>(m_ground->currentIndex());
  choices.highContrast = m_highContrast->isChecked();
  choices.reduceMotion = m_reduceMotion->isChecked();
  return choices;
}

}  // namespace cordreach::app
