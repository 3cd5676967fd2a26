// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/heat_place.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "heat/heat_column.h"
#include "heat/heat_sheet.h"
#include "heat/heat_verdict.h"
#include "heat/lesson_panel.h"
#include "heat/lesson_shelf.h"
#include "heat/lesson_words.h"
#include "look/look.h"
#include "panels/choice_words.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kMargin = 24;
constexpr int kGap = 28;
constexpr int kClockGap = 8;
constexpr std::array kSpeeds = {1, 10, 60, 300, 600};
constexpr std::size_t kFirstSpeed = 2;
constexpr int kWithWords = 480;  // wide enough for the speed in words
constexpr int kSpeedLetters = 4;

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
  m_column = new HeatColumn(m_model, session.book, this);
  m_sheet = new HeatSheet(m_model, session, *m_column, work);
  m_sheet->installEventFilter(this);
  rows->addWidget(m_sheet, 1);
  rows->addWidget(makeClockRow());
  row->addWidget(work, 1);
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
QWidget* HeatPlace::work() const { return chart(); }
HeatChart* HeatPlace::chart() const { return m_sheet->chart(); }
SideChooser* HeatPlace::chooser(std::size_t side) const { return m_sheet->chooser(side); }
SideView* HeatPlace::view(std::size_t side) const { return m_sheet->view(side); }

QWidget* HeatPlace::makeClockRow() {
  auto* bar = new QWidget(this);
  auto* row = new QHBoxLayout(bar);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kClockGap);
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

void HeatPlace::showAnswer() {
  m_save->setEnabled(true);
  if (std::exchange(m_isNew, false)) showPlugsOfLesson();
}

// A lesson about a plug shows its curve from the start.
void HeatPlace::showPlugsOfLesson() {
  const auto& sides = m_model.lesson().sides;
  PlotWishes wishes = chart()->wishes();
  wishes.plug = std::any_of(sides.begin(), sides.end(), [](const auto& side) { return side.looseOutlet; });
  chart()->setWishes(wishes);
  makeMenus();
}

void HeatPlace::showPlaying(bool on) { m_play->setText(say(m_session.book, on ? "lesson.pause" : "lesson.play")); }

void HeatPlace::reword() {
  const text::Phrasebook& book = m_session.book;
  m_column->reword();
  m_sheet->reword();
  int widest = 0;  // of either word, so that nothing beside it moves
  for (const bool on : {true, false}) {
    showPlaying(on);
    m_play->setMinimumWidth(0);
    widest = std::max(widest, m_play->sizeHint().width());
  }
  m_play->setMinimumWidth(widest);
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

void HeatPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  m_model.begin();
}

// The list of speeds is as wide as its words, beside a narrow sheet as its figures.
bool HeatPlace::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) {
    const QString longest = say(m_session.book, "lesson.speed", {{"n", "600"}});
    const bool roomy = m_sheet->width() >= look::scaled(kWithWords);
    m_play->parentWidget()->layout()->setSpacing(roomy ? kClockGap : kClockGap / 2);
    m_speed->setMinimumContentsLength(roomy ? static_cast<int>(longest.size()) : kSpeedLetters);
  }
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
