// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/side_chooser.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QSignalBlocker>
#include <algorithm>

#include "document/document.h"
#include "heat/heat_words.h"
#include "look/look.h"
#include "panels/choice_words.h"
#include "panels/names.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr std::array kStockAwg = {18, 16, 14, 12, 10};
constexpr std::array kStockFeet = {25.0, 50.0, 100.0};
constexpr double kHankTurns = 10.0;
constexpr double kReelLayers = 3.0;
constexpr int kSideBySide = 240;
constexpr double kAroundWordsPx = 38;  // a list's edges and arrow

// As cords of that size are sold: hard service, three wires, one socket.
site::CordMake stockCord(int awg, double feet) {
  site::CordMake make;
  make.type = "SJTW";
  make.legend = "SJTW " + std::to_string(awg) + "/3";
  make.size = site::known(units::WireSize::awg(awg));
  make.conductors = site::known(3);
  make.length = site::known(feet * units::foot);
  make.plug = "5-15";
  return make;
}

std::vector<site::LayingOfCord> commonLayings() {
  using tables::Laying;
  return {{Laying::Floor, 0.0, {}},   {Laying::Straight, 0.0, {}},      {Laying::Carpet, 0.0, {}},
          {Laying::Covered, 0.0, {}}, {Laying::Coiled, kHankTurns, {}}, {Laying::Reel, kReelLayers, {}}};
}

}  // namespace

SideChooser::SideChooser(const Tools& tools, std::size_t side, QWidget* parent)
    : QWidget(parent),
      m_tools(tools),
      m_side(side),
      m_grid(new QGridLayout(this)),
      m_letter(new QLabel(sideLetter(side), this)),
      m_cord(new ChoiceBox(this)),
      m_laying(new ChoiceBox(this)) {
  m_grid->setContentsMargins(0, 0, 0, 0);
  m_grid->setHorizontalSpacing(10);
  m_grid->setVerticalSpacing(2);
  m_grid->addWidget(m_letter, 0, 0);
  m_grid->addWidget(m_cord, 0, 1);
  m_grid->addWidget(m_laying, 0, 2);
  m_letter->setFont(look::font(look::Type::Verdict));
  m_letter->setBuddy(m_cord);
  connect(m_cord, &QComboBox::activated, this, &SideChooser::chooseCord);
  connect(m_laying, &QComboBox::activated, this, &SideChooser::chooseLaying);
  connect(&tools.model, &HeatModel::opened, this, &SideChooser::fill);
  connect(&tools.model, &HeatModel::choiceChanged, this, &SideChooser::showChosen);
  connect(&tools.document, &Document::changed, this, &SideChooser::fill);
  fill();
}

// The lesson's sides, each cord and machine once however it lies; then the lesson's machine on other cords.
void SideChooser::fillCords() {
  const text::Phrasebook& book = m_tools.book;
  const auto put = [&](const planning::LessonCase& one) {
    m_cord->addItem(one.name.empty() ? cordWords(book, one.cord) : QString::fromStdString(one.name));
    if (one.name.empty()) m_cord->setItemData(m_cord->count() - 1, shortCordWords(book, one.cord), kShortWordsRole);
    m_cases.push_back(one);
  };
  for (const planning::LessonCase& side : m_tools.model.lesson().sides) {
    if (rowOf(side) == m_cases.size()) put(side);
  }
  const auto separate = [&] {
    m_cord->insertSeparator(m_cord->count());
    m_cases.push_back({});
  };
  planning::LessonCase other = m_tools.model.lesson().sides.front();
  bool first = true;
  for (const site::Cord& cord : m_tools.document.site().all<site::Cord>()) {
    if (cord.outOfService || !cord.make.size || !cord.make.length) continue;
    if (std::exchange(first, false)) separate();
    other.cord = cord.make;
    other.name = cordName(book, cord);
    put(other);
  }
  other.name.clear();
  separate();
  for (const int awg : kStockAwg) {
    for (const double feet : kStockFeet) {
      other.cord = stockCord(awg, feet);
      put(other);
    }
  }
}

std::size_t SideChooser::rowOf(const planning::LessonCase& setup) const {
  const auto at = std::find_if(m_cases.begin(), m_cases.end(), [&](const planning::LessonCase& one) {
    planning::LessonCase laid = one;
    laid.laying = setup.laying;
    return laid == setup;
  });
  return static_cast<std::size_t>(at - m_cases.begin());
}

void SideChooser::fill() {
  const QSignalBlocker quietCord(m_cord);
  const QSignalBlocker quietLaying(m_laying);
  m_cord->clear();
  m_cases.clear();
  m_laying->clear();
  fillCords();
  m_layings = commonLayings();
  for (const site::LayingOfCord& laying : m_layings) addLaying(laying);
  const std::string letter = sideLetter(m_side).toStdString();
  m_cord->setAccessibleName(say(m_tools.book, "lesson.choose.cord", {{"side", letter}}));
  m_laying->setAccessibleName(say(m_tools.book, "lesson.choose.laying", {{"side", letter}}));
  showChosen();
}

void SideChooser::addLaying(const site::LayingOfCord& laying) {
  m_laying->addItem(layingWords(m_tools.book, laying));
  m_laying->setItemData(m_laying->count() - 1, layingWords(m_tools.book, {laying.laying, 0.0, {}}), kShortWordsRole);
}

void SideChooser::showChosen() {
  const planning::LessonCase& setup = m_tools.model.chosen(m_side);
  m_cord->setCurrentIndex(static_cast<int>(rowOf(setup)));
  auto laying = std::find(m_layings.begin(), m_layings.end(), setup.laying);
  if (laying == m_layings.end()) {
    m_layings.push_back(setup.laying);
    addLaying(setup.laying);
    laying = m_layings.end() - 1;
  }
  m_laying->setCurrentIndex(static_cast<int>(laying - m_layings.begin()));
  m_cord->setToolTip(caseName(m_tools.book, setup));
  share();
}

void SideChooser::chooseCord(int index) { m_tools.model.setSide(m_side, m_cases.at(static_cast<std::size_t>(index))); }

void SideChooser::chooseLaying(int index) {
  planning::LessonCase setup = m_tools.model.chosen(m_side);
  setup.laying = m_layings.at(static_cast<std::size_t>(index));
  m_tools.model.setSide(m_side, setup);
}

// Side by side, each with the share of the width that its words need, or where that would cut them below one another.
void SideChooser::share() {
  const bool narrow = width() < look::scaled(kSideBySide);
  if (narrow) {
    m_grid->addWidget(m_laying, 1, 1);
  } else {
    m_grid->addWidget(m_laying, 0, 2);
  }
  const auto need = [](const ChoiceBox* box, const QString& words) {
    return box->fontMetrics().horizontalAdvance(words) + look::scaled(kAroundWordsPx);
  };
  int cord = need(m_cord, m_cord->currentText());
  int laying = need(m_laying, m_laying->currentText());
  const int room = width() - m_letter->sizeHint().width() - 2 * m_grid->horizontalSpacing();
  const QString brief = m_cord->currentData(kShortWordsRole).toString();
  if (cord + laying > room && !brief.isEmpty()) cord = need(m_cord, brief);
  if (cord + laying > room) laying = need(m_laying, m_laying->currentData(kShortWordsRole).toString());
  m_grid->setColumnStretch(1, cord);
  m_grid->setColumnStretch(2, narrow ? 0 : laying);
}

void SideChooser::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  share();
}

void SideChooser::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) fill();
  if (event->type() != QEvent::FontChange) return;
  m_letter->setFont(look::font(look::Type::Verdict));
  share();
}

}  // namespace cordreach::app
