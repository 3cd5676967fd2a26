// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/distance_editor.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSlider>
#include <algorithm>
#include <array>
#include <cmath>

#include "desk/cord_words.h"
#include "panels/field_text.h"
#include "panels/plain_controls.h"
#include "shell/say.h"
#include "text/quantity_text.h"

namespace cordreach::app {

namespace {

constexpr std::array kMeasures = {Measure::Length, Measure::Paces, Measure::FloorTiles, Measure::CeilingTiles,
                                  Measure::Plan};
constexpr std::array kMeasureWords = {"desk.measure.length", "desk.measure.paces", "desk.measure.floor",
                                      "desk.measure.ceiling", "desk.measure.plan"};
constexpr units::Length kFarthest = 1000.0 * units::metre;
constexpr int kScaleFeet = 250;

bool isCounted(Measure measure) { return measure != Measure::Length && measure != Measure::Plan; }

// What is typed or drawn is no longer followed.
Measure said(Measure measure) { return measure == Measure::Plan ? Measure::Length : measure; }

base::Result<units::Length> readDistance(const text::Phrasebook& book, Measure measure, const std::string& typed) {
  if (!isCounted(measure)) return readText<units::Length>(book, typed);
  const auto count = readText<double>(book, typed);
  if (!count) return count.error();
  return count.value() * stepOf(measure);
}

}  // namespace

DistanceEditor::DistanceEditor(CordModel& model, QWidget* parent)
    : InputEditor(model, parent), m_scale(new QSlider(Qt::Horizontal, this)), m_plan(new QPushButton(this)) {
  auto* grid = new QGridLayout(this);
  m_line = addLine(grid, "desk.distance.how_far");
  m_measure = addChoice(grid, "desk.distance.counted");
  m_fault = addNote(grid);
  m_scale->setRange(0, kScaleFeet);
  m_scale->setPageStep(25);
  grid->addWidget(m_scale, grid->rowCount(), 0, 1, 2);
  grid->addWidget(m_plan, grid->rowCount(), 0, 1, 2);
  m_walk = addNote(grid);
  m_slack = addNote(grid);
  showFault(m_fault, {});
  rename();
  connect(m_line, &QLineEdit::textEdited, this, &DistanceEditor::read);
  connect(m_scale, &QSlider::valueChanged, this, &DistanceEditor::drawn);
  connect(m_measure, &QComboBox::currentIndexChanged, this, &DistanceEditor::measured);
  connect(m_plan, &QPushButton::clicked, this, &DistanceEditor::follow);
}

void DistanceEditor::rename() {
  InputEditor::rename();
  m_scale->setAccessibleName(say(book(), "desk.distance.scale"));
  m_plan->setText(say(book(), "desk.distance.plan"));
  quietly([this] {
    const int kept = std::max(0, m_measure->currentIndex());
    m_measure->clear();
    for (const char* code : kMeasureWords) m_measure->addItem(say(book(), code));
    m_measure->setCurrentIndex(kept);
  });
}

void DistanceEditor::begin(const QString& typed) {
  refresh();
  m_line->setFocus(Qt::OtherFocusReason);
  m_line->setText(typed.isEmpty() ? shown() : typed);
  if (typed.isEmpty()) {
    m_line->selectAll();
  } else {
    read(typed);
  }
}

QString DistanceEditor::shown() const {
  const CordInputs& inputs = model().inputs();
  if (!isCounted(inputs.measure)) return QString::fromStdString(exactText(book(), inputs.distance));
  return QString::fromStdString(
      exactText(book(), std::round(10.0 * (inputs.distance / stepOf(inputs.measure))) / 10.0));
}

void DistanceEditor::refresh() {
  quietly([this] {
    put(m_line, shown());
    const auto at = std::ranges::find(kMeasures, model().inputs().measure);
    m_measure->setCurrentIndex(static_cast<int>(at - kMeasures.begin()));
    m_scale->setValue(static_cast<int>(std::lround(model().inputs().distance.in(units::foot))));
  });
  m_plan->setEnabled(planEnds(model().inputs(), model().site()).has_value());
  m_plan->setVisible(!model().walk());
  m_walk->setText(walkText(model()));
  m_walk->setVisible(!m_walk->text().isEmpty());
  m_slack->setText(slackText(model()));
}

void DistanceEditor::read(const QString& typed) {
  const auto distance = readDistance(book(), model().inputs().measure, tidied(typed.toStdString()));
  if (!distance) return showFault(m_fault, sentenceOf(book(), distance.error()));
  if (distance.value() > kFarthest) {
    return showFault(m_fault,
                     sentenceOf(book(), {"console.too_far", typed.toStdString(), {{"most_m", kFarthest.si()}}}));
  }
  showFault(m_fault, {});
  model().change([&](CordInputs& inputs) {
    inputs.measure = said(inputs.measure);
    inputs.distance = distance.value();
  });
}

void DistanceEditor::drawn(int value) {
  if (isRefreshing()) return;
  showFault(m_fault, {});
  model().change([&](CordInputs& inputs) {
    inputs.measure = said(inputs.measure);
    inputs.distance = value * units::foot;
  });
}

void DistanceEditor::measured(int index) {
  if (isRefreshing() || index < 0) return;
  model().change([&](CordInputs& inputs) { inputs.measure = kMeasures.at(static_cast<std::size_t>(index)); });
  m_line->setText(shown());
}

void DistanceEditor::follow() {
  showFault(m_fault, {});
  model().change([](CordInputs& inputs) { inputs.measure = Measure::Plan; });
  m_line->setText(shown());
}

}  // namespace cordreach::app
