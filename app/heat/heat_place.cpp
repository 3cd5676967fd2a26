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
#include <utility>

#include "heat/fault_view.h"
#include "heat/figure_table.h"
#include "heat/heat_column.h"
#include "heat/heat_verdict.h"
#include "heat/lesson_panel.h"
#include "heat/lesson_shelf.h"
#include "heat/lesson_words.h"
#include "heat/side_chooser.h"
#include "heat/side_view.h"
#include "look/look.h"
#include "panels/choice_words.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kMargin = 24;
constexpr int kGap = 28;
constexpr std::array kSpeeds = {1, 10, 60, 300, 600};
constexpr std::size_t kFirstSpeed = 2;
constexpr int kWithFigures = 800;  // of the sheet: wide enough for A against B beside the cut-throughs
constexpr int kWithWords = 480;    // wide enough for the speed in words
constexpr int kSpeedLetters = 5;
constexpr int kCutRow = 1;
constexpr int kFaultRow = 2;
constexpr int kChartRow = 3;
constexpr int kCautionRow = 4;
constexpr int kFiguresColumn = 2;

}  // namespace

HeatPlace::HeatPlace(Session& session, QWidget* parent)
    : Place(parent),
      m_session(session),
      m_model(wordedLesson(session.book, preparedLessons().front())),
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
  m_column = new HeatColumn(m_model, session.book, this);
  m_column->take(m_figures);  // until the sheet has room for them
  row->addWidget(m_column);
  makeMenus();
  connect(&m_model, &HeatModel::playingChanged, this, &HeatPlace::showPlaying);
  connect(&m_model, &HeatModel::choiceChanged, m_column, &HeatColumn::reword);
  connect(&m_model, &HeatModel::sideChanged, this, &HeatPlace::showAnswer);
  connect(lesson(), &LessonPanel::refused, this, &Place::refused);
  connect(&m_model, &HeatModel::opened, this, [this] { m_isNew = true; });
  reword();
}

VerdictSource* HeatPlace::verdict() const { return m_verdict; }
QWidget* HeatPlace::column() const { return m_column; }
LessonPanel* HeatPlace::lesson() const { return m_column->lesson(); }

QWidget* HeatPlace::makeSheet() {
  m_sheet = new QWidget;
  m_sheet->installEventFilter(this);
  m_grid = new QGridLayout(m_sheet);
  QGridLayout* grid = m_grid;
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(24);
  grid->setVerticalSpacing(4);
  for (std::size_t side = 0; side < kSides; ++side) {
    const int column = static_cast<int>(side);
    m_choosers[side] = new SideChooser({m_model, m_session.document, m_session.book}, side, m_sheet);
    m_views[side] = new SideView(m_model, m_session.book, side, m_sheet);
    grid->addWidget(m_choosers[side], 0, column);
    m_faults[side] = new FaultView(m_model, m_session.book, side, m_sheet);
    m_faults[side]->hide();
    grid->addWidget(m_views[side], kCutRow, column);
    grid->addWidget(m_faults[side], kFaultRow, column, Qt::AlignTop);
    grid->setColumnStretch(column, 1);
  }
  m_figures = new FigureTable(m_model, m_session.book, m_sheet);
  m_chart = new HeatChart(m_model, m_session.book, m_sheet);
  grid->addWidget(m_chart, kChartRow, 0, 1, 3);
  m_caution = new QLabel(m_sheet);
  m_caution->setWordWrap(true);
  grid->addWidget(m_caution, kCautionRow, 0, 1, 3);
  grid->setRowStretch(kCutRow, 4);
  grid->setRowStretch(kChartRow, 5);
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
  m_save->setEnabled(false);  // until there is something
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

void HeatPlace::setColumn(int width, bool visible) {
  m_column->setFixedWidth(width);
  m_column->setVisible(visible);
}

// What a failed machine does is told where one of the two has no earth.
void HeatPlace::showAnswer() {
  m_save->setEnabled(true);
  if (std::exchange(m_isNew, false)) showPlugsOfLesson();
  for (FaultView* fault : m_faults) fault->setVisible(FaultView::isWanted(m_model));
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
  m_column->reword();
  m_caution->setText(say(book, "lesson.caution"));
  m_caution->setFont(look::font(look::Type::Caption));
  showPlaying(m_model.isPlaying());
  const int chosen = m_speed->currentIndex();
  m_speed->clear();
  for (const int speed : kSpeeds) {
    m_speed->addItem(say(book, "lesson.speed", {{"n", std::to_string(speed)}}));
    m_speed->setItemData(m_speed->count() - 1, QString::number(speed) + QStringLiteral("×"), kShortWordsRole);
  }
  m_speed->setCurrentIndex(chosen < 0 ? static_cast<int>(kFirstSpeed) : chosen);
  m_speed->setAccessibleName(say(book, "lesson.speed.name"));
}

// A failed machine's metal stands below the cut-throughs, or in the column where it would take the curves' room.
// Answers the height that it takes.
int HeatPlace::placeFaults(int room) {
  if (!FaultView::isWanted(m_model)) return 0;
  int height = 0;
  for (std::size_t side = 0; side < kSides; ++side) {
    height = std::max(height, m_faults[side]->heightForWidth(m_choosers[side]->width()));
  }
  const bool fits = room - height >= m_chart->minimumSizeHint().height();
  const bool isInSheet = m_faults.front()->parentWidget() == m_sheet;
  for (std::size_t side = kSides; side-- > 0 && fits != isInSheet;) {
    if (fits) {
      m_grid->addWidget(m_faults[side], kFaultRow, static_cast<int>(side), Qt::AlignTop);
    } else {
      m_column->take(m_faults[side]);
    }
  }
  return fits ? height : 0;
}

// The figures go into the column where the sheet is too narrow for them; where it is low the cut-throughs give way to
// the curves, and at last go.
void HeatPlace::arrange() {
  const int least = 2 * m_views.front()->minimumSizeHint().width() + kMargin;
  m_sheet->setMinimumWidth(least);
  const QString longest = say(m_session.book, "lesson.speed", {{"n", "600"}});
  const bool roomy = m_sheet->width() >= look::scaled(kWithWords);
  m_speed->setMinimumContentsLength(roomy ? static_cast<int>(longest.size()) : kSpeedLetters);
  const bool wide = m_sheet->width() >= look::scaled(kWithFigures);
  const bool isInSheet = m_figures->parentWidget() == m_sheet;
  if (wide && !isInSheet) m_grid->addWidget(m_figures, 0, kFiguresColumn, 2, 1, Qt::AlignTop);
  if (!wide && isInSheet) m_column->take(m_figures);
  const int others = m_choosers.front()->sizeHint().height() + m_caution->heightForWidth(m_sheet->width()) +
                     (kCautionRow - 1) * m_grid->verticalSpacing();  // a row without widgets has none
  const int room = m_sheet->height() - others - placeFaults(m_sheet->height() - others);
  const int views = m_views.front()->minimumSizeHint().height();
  const bool fits = room >= views + m_chart->comfortableHeight();
  for (SideView* view : m_views) view->setVisible(fits);
  m_grid->setRowStretch(kCutRow, fits ? 4 : 0);
  m_chart->setMinimumHeight(std::clamp(room - (fits ? views : 0), 0, m_chart->comfortableHeight()));
}

void HeatPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  m_model.begin();
}

bool HeatPlace::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest) arrange();
  return Place::eventFilter(watched, event);
}

void HeatPlace::changeEvent(QEvent* event) {
  Place::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) {
    m_model.reword(lesson()->worded());
    m_verdict->reword();
    makeMenus();
  }
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) {
    reword();
  }
}

}  // namespace cordreach::app
