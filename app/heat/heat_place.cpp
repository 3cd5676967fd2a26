// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_place.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "heat/breaker_bars.h"
#include "heat/figure_table.h"
#include "heat/heat_verdict.h"
#include "heat/lesson_panel.h"
#include "heat/lesson_shelf.h"
#include "heat/side_chooser.h"
#include "heat/side_view.h"
#include "look/look.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kMargin = 24;
constexpr int kGap = 28;
constexpr std::array kSpeeds = {1, 10, 60, 300, 600};
constexpr std::size_t kFirstSpeed = 2;
constexpr int kWithFigures = 800;  // of the sheet: wide enough for A against B beside the cut-throughs

}  // namespace

HeatPlace::HeatPlace(Session& session, QWidget* parent)
    : Place(parent),
      m_session(session),
      m_model(preparedLessons().front()),
      m_verdict(new HeatVerdict(m_model, session.book, this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kMargin, 4, kMargin, 12);
  row->setSpacing(kGap);
  auto* work = new QWidget(this);
  auto* rows = new QVBoxLayout(work);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(6);
  rows->addWidget(makeSheet(), 1);
  rows->addWidget(makeClockRow());
  row->addWidget(work, 1);
  makeColumn();
  row->addWidget(m_column);
  makeMenus();
  connect(&m_model, &HeatModel::playingChanged, this, &HeatPlace::showPlaying);
  connect(&m_model, &HeatModel::sideChanged, this, &HeatPlace::reword);
  connect(m_lesson, &LessonPanel::refused, this, &Place::refused);
  connect(&m_model, &HeatModel::opened, this, &HeatPlace::showPlugsOfLesson);
  reword();
}

VerdictSource* HeatPlace::verdict() const { return m_verdict; }

QWidget* HeatPlace::makeSheet() {
  m_sheet = new QWidget;
  auto* grid = new QGridLayout(m_sheet);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(24);
  grid->setVerticalSpacing(4);
  for (std::size_t side = 0; side < kSides; ++side) {
    const int column = static_cast<int>(side);
    m_choosers[side] = new SideChooser({m_model, m_session.document, m_session.book}, side, m_sheet);
    m_views[side] = new SideView(m_model, m_session.book, side, m_sheet);
    grid->addWidget(m_choosers[side], 0, column);
    grid->addWidget(m_views[side], 1, column);
    grid->setColumnStretch(column, 1);
  }
  m_figures = new FigureTable(m_model, m_session.book, m_sheet);
  m_figures->hide();  // until there is room for it
  grid->addWidget(m_figures, 0, 2, 2, 1, Qt::AlignTop);
  m_chart = new HeatChart(m_model, m_session.book, m_sheet);
  grid->addWidget(m_chart, 2, 0, 1, 3);
  m_caution = new QLabel(m_sheet);
  m_caution->setWordWrap(true);
  grid->addWidget(m_caution, 3, 0, 1, 3);
  grid->setRowStretch(1, 4);
  grid->setRowStretch(2, 5);
  return m_sheet;
}

QWidget* HeatPlace::makeClockRow() {
  auto* bar = new QWidget(this);
  auto* row = new QHBoxLayout(bar);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  m_play = new QPushButton(bar);
  m_speed = new ChoiceBox(bar);
  m_more = new QToolButton(bar);
  m_save = new QToolButton(bar);
  for (QToolButton* button : {m_more, m_save}) {
    button->setPopupMode(QToolButton::InstantPopup);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::StrongFocus);
  }
  row->addWidget(m_play);
  row->addWidget(m_speed);
  row->addStretch(1);
  row->addWidget(m_more);
  row->addWidget(m_save);
  connect(m_play, &QPushButton::clicked, this, [this] { m_model.setPlaying(!m_model.isPlaying()); });
  connect(m_speed, &QComboBox::currentIndexChanged, this, [this](int index) {
    if (index >= 0) m_model.setSpeed(kSpeeds.at(static_cast<std::size_t>(index)));
  });
  return bar;
}

void HeatPlace::makeColumn() {
  m_column = new QWidget(this);
  auto* rows = new QVBoxLayout(m_column);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(8);
  m_breakerHead = new QLabel(m_column);
  m_breakerSays = new QLabel(m_column);
  m_breakerSays->setWordWrap(true);
  m_bars = new BreakerBars(m_model, m_session.book, m_column);
  m_lesson = new LessonPanel(m_model, m_session.book, m_column);
  rows->addWidget(m_breakerHead);
  rows->addWidget(m_breakerSays);
  rows->addWidget(m_bars);
  rows->addWidget(m_lesson, 1);
}

void HeatPlace::setColumn(int width, bool visible) {
  m_column->setFixedWidth(width);
  m_column->setVisible(visible);
}

// A lesson about a plug shows its curve from the start.
void HeatPlace::showPlugsOfLesson() {
  const auto& sides = m_model.lesson().sides;
  PlotWishes wishes = m_chart->wishes();
  wishes.plug = std::any_of(sides.begin(), sides.end(), [](const auto& side) { return side.looseOutlet; });
  m_chart->setWishes(wishes);
  makeMenus();
}

void HeatPlace::showPlaying(bool on) { m_play->setText(say(m_session.book, on ? "lesson.pause" : "lesson.play")); }

void HeatPlace::reword() {
  const text::Phrasebook& book = m_session.book;
  m_breakerHead->setFont(look::font(look::Type::HeadBold));
  const auto& rating = m_model.side(0).demonstration.rating;
  m_breakerHead->setText(say(book, "lesson.breaker.head", {{"rating_a", rating ? rating->si() : 0.0}}));
  m_breakerSays->setText(say(book, "lesson.breaker.says"));
  m_caution->setText(say(book, "lesson.caution"));
  m_caution->setFont(look::font(look::Type::Caption));
  showPlaying(m_model.isPlaying());
  const int chosen = m_speed->currentIndex();
  m_speed->clear();
  for (const int speed : kSpeeds) m_speed->addItem(say(book, "lesson.speed", {{"n", std::to_string(speed)}}));
  m_speed->setCurrentIndex(chosen < 0 ? static_cast<int>(kFirstSpeed) : chosen);
  m_speed->setMinimumContentsLength(static_cast<int>(say(book, "lesson.speed", {{"n", "600"}}).size()));
  m_speed->setAccessibleName(say(book, "lesson.speed.name"));
}

// The sheet may be narrower than with its figures, which then go.
void HeatPlace::arrange() {
  m_sheet->setMinimumWidth(2 * m_views.front()->minimumSizeHint().width() + kMargin);
  m_figures->setVisible(m_sheet->width() >= look::scaled(kWithFigures));
}

void HeatPlace::resizeEvent(QResizeEvent* event) {
  Place::resizeEvent(event);
  arrange();
}

void HeatPlace::changeEvent(QEvent* event) {
  Place::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) {
    m_verdict->reword();
    makeMenus();
  }
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) {
    reword();
    arrange();
  }
}

}  // namespace cordreach::app
