// SPDX-License-Identifier: GPL-3.0-or-later
// The place Heat by mouse and keys, as a trainer uses it.
#include "heat/heat_place.h"

#include <QComboBox>
#include <QFile>
#include <QImageReader>
#include <QLabel>
#include <QToolButton>

#include "app/shell/support.h"
#include "heat/breaker_bars.h"
#include "heat/fault_view.h"
#include "heat/figure_table.h"
#include "heat/lesson_panel.h"
#include "heat/lesson_shelf.h"
#include "heat/lesson_words.h"
#include "heat/side_chooser.h"
#include "heat/side_view.h"
#include "look/look.h"
#include "look/temperature_ramp.h"
#include "panels/link_button.h"
#include "panels/plain_controls.h"
#include "shell/remedy_button.h"
#include "text/quantity_text.h"

namespace cordreach::app {
namespace {

using units::minute;
using units::second;

class HeatPlaceTest : public WindowTest {
 protected:
  void SetUp() override {
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window.get(), Qt::Key_3, Qt::ControlModifier);
    place = dynamic_cast<HeatPlace*>(window->place());
    ASSERT_NE(place, nullptr);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    ASSERT_TRUE(isWorkedOut());
    QTest::qWait(20);
  }
  // What is chosen is what is shown.
  bool isWorkedOut() {
    return QTest::qWaitFor([this] { return model().isWorkedOut() && !model().isBusy(); }, 20000);
  }
  HeatModel& model() { return place->model(); }
  void key(QWidget* widget, Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(widget, key, modifiers);
  }
  [[nodiscard]] QPoint onChart(units::Duration time) const {
    const HeatPlot& plot = place->chart()->plot();
    return QPointF(plot.xOf(time), plot.area().center().y()).toPoint();
  }
  HeatPlace* place = nullptr;
};

TEST_F(HeatPlaceTest, OpensOnTheFirstLessonWithTheClockInFocus) {
  EXPECT_EQ(model().lesson(), wordedLesson(window->session().book, preparedLessons().front()));
  EXPECT_EQ(QApplication::focusWidget(), place->chart());
  EXPECT_EQ(words().severity, model().side(model().worseSide()).verdict.severity);
  EXPECT_GE(words().severity, rules::Severity::Warning);
}

TEST_F(HeatPlaceTest, TheClockMovesByKeys) {
  HeatChart* chart = place->chart();
  key(chart, Qt::Key_Right);
  EXPECT_EQ(model().clock(), minute);
  key(chart, Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(model().clock(), 11.0 * minute);
  key(chart, Qt::Key_Left);
  EXPECT_EQ(model().clock(), 10.0 * minute);
  key(chart, Qt::Key_End);
  EXPECT_EQ(model().clock(), model().run());
  key(chart, Qt::Key_Right);
  EXPECT_EQ(model().clock(), model().run());
  key(chart, Qt::Key_Home);
  EXPECT_EQ(model().clock(), units::Duration{});
}

TEST_F(HeatPlaceTest, SpacePlaysAndPausesAndTheClockRunsAsFastAsChosen) {
  place->speed()->setCurrentIndex(place->speed()->count() - 1);
  EXPECT_EQ(model().speed(), 600.0);
  key(place->chart(), Qt::Key_Space);
  EXPECT_TRUE(model().isPlaying());
  EXPECT_TRUE(QTest::qWaitFor([&] { return model().clock() > minute; }, 10000));
  key(place->chart(), Qt::Key_Space);
  EXPECT_FALSE(model().isPlaying());
  const units::Duration stood = model().clock();
  QTest::qWait(60);
  EXPECT_EQ(model().clock(), stood);
}

TEST_F(HeatPlaceTest, PlayingEndsWithTheRunAndBeginsAnew) {
  model().setClock(model().run() - second);
  QTest::mouseClick(place->play(), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !model().isPlaying(); }, 10000));
  EXPECT_EQ(model().clock(), model().run());
  QTest::mouseClick(place->play(), Qt::LeftButton);
  EXPECT_LT(model().clock(), model().run());
  model().setPlaying(false);
}

TEST_F(HeatPlaceTest, TheClockIsDraggedOnTheCurves) {
  QTest::mousePress(place->chart(), Qt::LeftButton, {}, onChart(20.0 * minute));
  EXPECT_NEAR(model().clock().in(minute), 20.0, 0.3);
  QTest::mouseMove(place->chart(), onChart(50.0 * minute));
  QTest::mouseRelease(place->chart(), Qt::LeftButton, {}, onChart(50.0 * minute));
  EXPECT_NEAR(model().clock().in(minute), 50.0, 0.3);
  QTest::mousePress(place->chart(), Qt::LeftButton, {}, QPoint(place->chart()->width() - 1, 100));
  EXPECT_EQ(model().clock(), model().run());
}

TEST_F(HeatPlaceTest, AnyCordCanBeLaidAnyWayByKeys) {
  ChoiceBox* cord = place->chooser(1)->cord();
  cord->setFocus();
  const planning::LessonCase before = model().side(1).setup;
  key(cord, Qt::Key_End);
  ASSERT_TRUE(isWorkedOut());
  EXPECT_NE(model().side(1).setup, before);
  EXPECT_EQ(model().side(1).setup.cord.size->value, units::WireSize::awg(10));
  ChoiceBox* laying = place->chooser(1)->laying();
  laying->setFocus();
  key(laying, Qt::Key_End);
  ASSERT_TRUE(isWorkedOut());
  EXPECT_NE(model().side(1).setup.laying, site::LayingOfCord{});
  key(laying, Qt::Key_Home);
  ASSERT_TRUE(isWorkedOut());
  EXPECT_EQ(model().side(1).setup.laying, site::LayingOfCord{});
}

TEST_F(HeatPlaceTest, AnotherCordIsWorkedOutWhileTheWindowGoesOn) {
  const planning::LessonCase shown = model().side(1).setup;
  place->chooser(1)->cord()->setFocus();
  key(place->chooser(1)->cord(), Qt::Key_End);
  EXPECT_TRUE(model().isBusy());
  EXPECT_NE(model().chosen(1), shown);
  EXPECT_EQ(model().side(1).setup, shown);  // until the new one is there
  EXPECT_FALSE(window->band()->isFresh());
  window->band()->pressRemedy();  // is of what was shown before
  EXPECT_EQ(model().chosen(0), model().side(0).setup);
  ASSERT_TRUE(isWorkedOut());
  EXPECT_EQ(model().side(1).setup, model().chosen(1));
  EXPECT_TRUE(window->band()->isFresh());
  EXPECT_FALSE(model().isOld());
}

TEST_F(HeatPlaceTest, TheVerdictsButtonLaysTheCordOut) {
  ASSERT_FALSE(words().button.isEmpty());
  QTest::mouseClick(window->band()->button(), Qt::LeftButton);
  ASSERT_TRUE(isWorkedOut());
  EXPECT_EQ(model().side(0).setup.laying, site::LayingOfCord{});
  EXPECT_TRUE(words().button.isEmpty());
}

TEST_F(HeatPlaceTest, AStepSetsClockAndSides) {
  const planning::LessonStep& last = model().lesson().steps.back();
  ASSERT_TRUE(last.at && last.a);
  QTest::mouseClick(place->lesson()->steps().back(), Qt::LeftButton);
  EXPECT_EQ(model().clock(), *last.at);
  ASSERT_TRUE(isWorkedOut());
  EXPECT_EQ(model().side(0).setup, model().lesson().sides.at(*last.a));
}

TEST_F(HeatPlaceTest, TheQuestionShowsNothingUntilItIsAnswered) {
  LessonPanel* lesson = place->lesson();
  EXPECT_TRUE(lesson->result()->isHidden());
  EXPECT_TRUE(lesson->result()->text().isEmpty());
  lesson->answers().back()->setFocus();
  key(lesson->answers().back(), Qt::Key_Space);
  EXPECT_FALSE(lesson->result()->isHidden());
  EXPECT_TRUE(lesson->result()->text().contains(QString::fromStdString(model().lesson().question->because)));
}

TEST_F(HeatPlaceTest, EveryPreparedLessonOpensByKeysAndCanBePlayedThrough) {
  ChoiceBox* lessons = place->lesson()->lessons();
  for (std::size_t i = 1; i < preparedLessons().size(); ++i) {
    lessons->setFocus();
    key(lessons, Qt::Key_Down);
    ASSERT_EQ(model().lesson(), wordedLesson(window->session().book, preparedLessons().at(i))) << i;
    ASSERT_TRUE(isWorkedOut());
    key(place->chart(), Qt::Key_End);
    window->grab();
    EXPECT_EQ(model().clock(), model().run());
  }
}

TEST_F(HeatPlaceTest, ATrainersLessonOpensAndABadOneIsRefusedWithItsPlace) {
  QFile good(folder.path() + "/own.json");
  ASSERT_TRUE(good.open(QIODevice::WriteOnly));
  QFile prepared("resources/lessons/2-thin.json");
  ASSERT_TRUE(prepared.open(QIODevice::ReadOnly));
  good.write(prepared.readAll().replace("lesson.thin.title", "My own"));
  good.close();
  EXPECT_TRUE(place->lesson()->openFile(good.fileName()).ok());
  EXPECT_EQ(model().lesson().title, "My own");
  EXPECT_EQ(place->lesson()->lessons()->currentText(), "My own");
  QFile bad(folder.path() + "/bad.json");
  ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
  bad.write("{\"version\": 1, \"title\": 5}");
  bad.close();
  const auto refused = place->lesson()->openFile(bad.fileName());
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(refused.error().place, "/title");
  EXPECT_EQ(model().lesson().title, "My own");
}

TEST_F(HeatPlaceTest, AMissingPinShowsWhatAFailedMachineDoes) {
  EXPECT_TRUE(place->findChild<FaultView*>()->isHidden());
  ChoiceBox* lessons = place->lesson()->lessons();
  lessons->setFocus();
  for (std::size_t i = 1; i < preparedLessons().size(); ++i) key(lessons, Qt::Key_Down);
  ASSERT_EQ(model().chosen(0).cord.pin, site::Pin::Missing);
  ASSERT_TRUE(isWorkedOut());
  const QList<FaultView*> faults = place->findChildren<FaultView*>();
  ASSERT_EQ(faults.size(), 2);
  const auto& sound = *model().side(1).verdict.answer.find(planning::lessonHookup())->cords.back().fault;
  ASSERT_TRUE(sound.current && sound.cleared.likely);
  const text::Phrasebook& book = window->session().book;
  const auto figure = [&](const char* unit, double value) {
    return QString::fromStdString(text::quantityText(book, unit, value));
  };
  EXPECT_TRUE(faults[0]->isVisible() && faults[1]->isVisible());
  EXPECT_TRUE(faults[0]->words().contains(figure("x_v", sound.toEarth.likely.si())))
      << faults[0]->words().toStdString();
  EXPECT_FALSE(faults[0]->words().contains(figure("x_a", sound.current->likely.si())));
  EXPECT_TRUE(faults[1]->words().contains(figure("x_a", sound.current->likely.si())))
      << faults[1]->words().toStdString();
  EXPECT_TRUE(faults[1]->words().contains(figure("x_v", sound.touch.likely.si())));
  EXPECT_TRUE(faults[1]->words().contains(figure("x_s", sound.cleared.likely->si())));
  EXPECT_LT(sound.touch.high, sound.toEarth.likely);
}

TEST_F(HeatPlaceTest, VoltsSpeedAndWattsBecomeCurvesThatTheClockReads) {
  const int before = place->chart()->minimumSizeHint().height();
  const double curves = place->chart()->plot().area().height();
  PlotWishes wishes = place->chart()->wishes();
  wishes.volts = wishes.speed = wishes.watts = true;
  place->chart()->setWishes(wishes);
  model().setClock(40.0 * minute);
  QTest::qWait(50);  // layouts
  EXPECT_GT(place->chart()->minimumSizeHint().height(), before);
  EXPECT_LT(place->chart()->plot().area().height(), curves);
  EXPECT_GE(place->chart()->plot().area().height(), 160.0);
  const QString read = place->chart()->accessibleDescription();
  const text::Locale& locale = window->session().book.locale();
  for (std::size_t side = 0; side < kSides; ++side) {
    const study::DemonstrationPoint point = model().now(side);
    EXPECT_TRUE(read.contains(QString::fromStdString(text::numberText(locale, point.voltage.si(), 1))));
    EXPECT_TRUE(read.contains(QString::fromStdString(text::numberText(locale, point.heat.si(), 0))));
  }
}

// In the color of its own height, on screen and in a drawing.
TEST_F(HeatPlaceTest, EachCurveIsPaintedWhereItsFiguresAre) {
  model().setClock({});
  const QImage shown = place->chart()->grab().toImage();
  const HeatPlot& plot = place->chart()->plot();
  for (const units::Duration time : {35.0 * minute, 55.0 * minute, 110.0 * minute}) {
    for (std::size_t side = 0; side < kSides; ++side) {
      const units::Temperature inside = model().side(side).demonstration.at(time).conductor->likely;
      const QPointF at = QPointF(plot.xOf(time), plot.yOf(inside)) * shown.devicePixelRatio();
      const QColor seen = shown.pixelColor(at.toPoint());
      const QColor ramp = look::temperatureColor(inside, look::tokens().dark);
      for (const auto channel : {&QColor::red, &QColor::green, &QColor::blue}) {
        EXPECT_NEAR((seen.*channel)(), (ramp.*channel)(), 24) << time.in(minute) << " min, side " << side;
      }
    }
  }
}

TEST_F(HeatPlaceTest, WhatIsShownCanBeSavedAsPictureDrawingAndTable) {
  const QString path = folder.path() + "/heat";
  ASSERT_TRUE(place->savePicture(path + ".png").ok());
  QImageReader reader(path + ".png");
  EXPECT_GT(reader.read().width(), 1000);
  ASSERT_TRUE(place->saveDrawing(path + ".svg").ok());
  QFile drawing(path + ".svg");
  ASSERT_TRUE(drawing.open(QIODevice::ReadOnly));
  const QByteArray svg = drawing.readAll();
  EXPECT_TRUE(svg.contains("<svg"));
  EXPECT_TRUE(svg.contains("Local code decides"));
  EXPECT_GT(svg.count("<path"), 20);
  // The ramp's colors are of its scale and of the curves: shapes, because a line of a drawing cannot have them.
  EXPECT_GE(svg.count("<linearGradient"), 2);
  ASSERT_TRUE(place->saveTable(path + ".csv").ok());
  QFile table(path + ".csv");
  ASSERT_TRUE(table.open(QIODevice::ReadOnly));
  const QList<QByteArray> rows = table.readAll().trimmed().split('\n');
  EXPECT_EQ(static_cast<std::size_t>(rows.size()), model().side(0).demonstration.points.size() + 1);
  for (const QByteArray& row : rows) EXPECT_EQ(row.count(','), rows.front().count(',')) << row.constData();
  EXPECT_FALSE(place->saveTable(folder.path() + "/nowhere/x.csv").ok());
}

TEST_F(HeatPlaceTest, EverythingThatIsReachedOrReadHasAName) {
  int seen = 0;
  for (QWidget* widget : place->findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
    const auto* button = qobject_cast<QAbstractButton*>(widget);
    const bool named = !widget->accessibleName().isEmpty() || (button != nullptr && !button->text().isEmpty());
    EXPECT_TRUE(named) << widget->metaObject()->className();
    ++seen;
  }
  EXPECT_GT(seen, 10);
  for (QWidget* widget : {static_cast<QWidget*>(place->findChild<BreakerBars*>()),
                          static_cast<QWidget*>(place->findChild<FigureTable*>()),
                          static_cast<QWidget*>(place->findChild<SideView*>())}) {
    ASSERT_NE(widget, nullptr);
    EXPECT_FALSE(widget->accessibleName().isEmpty());
    EXPECT_FALSE(widget->accessibleDescription().isEmpty());
  }
}

TEST_F(HeatPlaceTest, BothUnitSystemsAreSpoken) {
  model().setClock(20.0 * minute);
  const auto* figures = place->findChild<FigureTable*>();
  const QString feet = figures->rows().front().name;
  look::Choices metric = settings.choices();
  metric.units = text::UnitSystem::Metric;
  window->setChoices(metric);
  EXPECT_NE(figures->rows().front().name, feet);
  EXPECT_TRUE(figures->rows().front().name.contains(QStringLiteral("°C")));
}

}  // namespace
}  // namespace cordreach::app
