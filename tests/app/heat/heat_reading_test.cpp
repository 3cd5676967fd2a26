// SPDX-License-Identifier: GPL-3.0-or-later
// On a projector: words 40 % longer and half as large again, in a small window, and nothing that matters is cut.
#include <QLabel>
#include <QToolButton>

#include "app/shell/support.h"
#include "heat/breaker_bars.h"
#include "heat/fault_view.h"
#include "heat/figure_table.h"
#include "heat/heat_place.h"
#include "heat/lesson_panel.h"
#include "heat/lesson_shelf.h"
#include "heat/lesson_words.h"
#include "heat/side_view.h"
#include "panels/link_button.h"
#include "panels/plain_controls.h"
#include "shell/place_tabs.h"
#include "shell/remedy_button.h"
#include "text/pseudo_language.h"

namespace cordreach::app {
namespace {

constexpr int kWithoutColumn = 4;  // texts that are seen, at least
constexpr int kInColumn = 10;
// Of what is drawn, in px, beside the lesson too.
constexpr double kLeastCut = 80;
constexpr double kLeastCurves = 120;
// Without the lesson beside it: what a class in the last row sees.
constexpr double kProjectedCut = 120;
constexpr double kProjectedCurves = 200;

class HeatReading : public WindowTest {
 protected:
  void SetUp() override {
    look::Choices large = settings.choices();
    large.textScale = 1.5;
    window->setChoices(large);
    window->resize(1024, 768);
    place = dynamic_cast<HeatPlace*>(window->placeOf("heat"));
    ASSERT_NE(place, nullptr);
    window->showPlace(place);
    ASSERT_TRUE(isWorkedOut());
    QTest::qWait(50);  // layouts
  }
  void TearDown() override {
    window.reset();
    look::setPresent(*qApp, {});
  }
  bool isWorkedOut() {
    return QTest::qWaitFor([this] { return place->model().isWorkedOut() && !place->model().isBusy(); }, 20000);
  }
  void speakPseudo() {
    const_cast<text::Phrasebook&>(window->session().book) = text::pseudoLanguage(window->session().book);
    QEvent change(QEvent::LanguageChange);
    QApplication::sendEvent(window.get(), &change);
    EXPECT_TRUE(isWorkedOut());
    QTest::qWait(50);
  }

  void checkTexts(int least) {
    int seen = 0;
    for (const QLabel* label : place->findChildren<QLabel*>()) {
      if (!label->isVisible() || label->text().isEmpty()) continue;
      ++seen;
      if (label->wordWrap()) {
        EXPECT_LE(label->heightForWidth(label->width()), label->height()) << label->text().toStdString();
      } else {
        EXPECT_LE(label->sizeHint().width(), label->width()) << label->text().toStdString();
      }
    }
    for (const QAbstractButton* button : place->findChildren<QAbstractButton*>()) {
      if (!button->isVisible() || button->text().isEmpty()) continue;
      ++seen;
      if (button->hasHeightForWidth()) {
        EXPECT_LE(button->heightForWidth(button->width()), button->height()) << button->text().toStdString();
      } else {
        EXPECT_LE(button->sizeHint().width(), button->width()) << button->text().toStdString();
      }
    }
    EXPECT_GT(seen, least);
    for (QWidget* widget : place->findChildren<FaultView*>()) {
      if (!widget->isVisible()) continue;
      EXPECT_LE(widget->sizeHint().height(), widget->height());
    }
    for (QWidget* widget :
         {static_cast<QWidget*>(place->findChild<BreakerBars*>()), static_cast<QWidget*>(place->view(0)),
          static_cast<QWidget*>(place->view(1)), static_cast<QWidget*>(place->chart())}) {
      if (!widget->isVisible()) continue;
      EXPECT_LE(widget->minimumSizeHint().height(), widget->height()) << widget->metaObject()->className();
      EXPECT_LE(widget->minimumSizeHint().width(), widget->width()) << widget->metaObject()->className();
    }
  }

  // Drawn, not only plotted.
  void checkDrawn(double cut, double curves) {
    for (std::size_t side = 0; side < kSides; ++side) {
      const SideView* view = place->view(side);
      EXPECT_TRUE(view->isVisible());
      EXPECT_GE(std::min(view->cutBox().width(), view->cutBox().height()), cut);
      EXPECT_TRUE(QRectF(view->rect()).contains(view->cutBox()));
    }
    EXPECT_GE(place->chart()->plot().area().height(), curves);
    EXPECT_TRUE(QRectF(place->chart()->rect()).contains(place->chart()->plot().area()));
  }

  HeatPlace* place = nullptr;
};

TEST_F(HeatReading, ThePlaceFitsAProjectorWithLargeText) {
  checkTexts(kWithoutColumn);
  EXPECT_LE(window->height(), 768);
  EXPECT_LE(window->width(), 1024);
  checkDrawn(kProjectedCut, kProjectedCurves);
  const auto* places = window->findChild<PlaceTabs*>();
  for (int i = 0; i < places->count(); ++i) EXPECT_TRUE(places->rect().contains(places->tabRect(i))) << i;
}

TEST_F(HeatReading, TheVerdictsReasonKeepsToOneLineUntilItIsAskedFor) {
  VerdictBand* band = window->band();
  ASSERT_TRUE(band->more()->isVisible());
  EXPECT_LE(band->more()->geometry().right(), band->button()->geometry().left());
  const int folded = band->height();
  EXPECT_LE(folded, 240);
  QTest::mouseClick(band->more(), Qt::LeftButton);
  EXPECT_GT(band->height(), folded);
  QTest::mouseClick(band->more(), Qt::LeftButton);
  EXPECT_EQ(band->height(), folded);
  window->resize(1600, 1200);
  EXPECT_FALSE(band->more()->isVisible());
}

TEST_F(HeatReading, TheLessonFitsBesideTheCurves) {
  QTest::keyClick(window.get(), Qt::Key_F9);
  QTest::qWait(50);
  ASSERT_TRUE(place->column()->isVisible());
  checkTexts(kInColumn);
  EXPECT_LE(window->width(), 1024);
  checkDrawn(kLeastCut, kLeastCurves);
}

TEST_F(HeatReading, LongerWordsAreNotCut) {
  speakPseudo();
  checkTexts(kWithoutColumn);
  checkDrawn(kLeastCut, kLeastCurves);
}

TEST_F(HeatReading, NoLessonIsCutInLongerWordsAndEitherUnits) {
  QTest::keyClick(window.get(), Qt::Key_F9);  // the lesson beside the curves
  for (const text::UnitSystem units : {text::UnitSystem::Us, text::UnitSystem::Metric}) {
    look::Choices choices = settings.choices();
    choices.units = units;
    choices.ground = units == text::UnitSystem::Us ? look::Ground::Light : look::Ground::Dark;
    choices.highContrast = units == text::UnitSystem::Us;
    window->setChoices(choices);
    speakPseudo();
    for (std::size_t i = 0; i < preparedLessons().size(); ++i) {
      place->lesson()->openAt(i);
      ASSERT_TRUE(isWorkedOut());
      QTest::qWait(20);
      SCOPED_TRACE(place->model().lesson().title);
      EXPECT_TRUE(place->lesson()->isVisible());
      checkTexts(kInColumn);
      checkDrawn(kLeastCut, kLeastCurves);
    }
    EXPECT_LE(window->width(), 1024);
  }
}

TEST_F(HeatReading, EveryLessonIsDrawnOnAProjector) {
  for (std::size_t i = 0; i < preparedLessons().size(); ++i) {
    place->lesson()->openAt(i);
    ASSERT_TRUE(isWorkedOut());
    QTest::qWait(20);
    SCOPED_TRACE(place->model().lesson().title);
    checkDrawn(kProjectedCut, kProjectedCurves);
  }
}

TEST_F(HeatReading, APreparedLessonIsInTheLanguageAndTheUnits) {
  const std::string title = place->model().lesson().title;
  speakPseudo();
  EXPECT_NE(place->model().lesson().title, title);
  EXPECT_EQ(place->lesson()->lessons()->currentText().toStdString(), place->model().lesson().title);
  place->lesson()->openAt(1);
  const std::string lamp = place->model().lesson().sides.at(2).name;
  EXPECT_NE(lamp.find("ft"), std::string::npos) << lamp;
  look::Choices metric = settings.choices();
  metric.units = text::UnitSystem::Metric;
  window->setChoices(metric);
  EXPECT_EQ(place->model().lesson().sides.at(2).name.find("ft"), std::string::npos);
  EXPECT_NE(place->model().lesson().sides.at(2).name.find("15"), std::string::npos);
  EXPECT_EQ(place->model().chosen(0).machine.name, place->model().lesson().sides.at(0).machine.name);
}

TEST(LessonWords, AQuantityInBracesFollowsTheUnitsAndNothingElseIsTouched) {
  const auto us = text::Phrasebook::load("en", text::UnitSystem::Us).value();
  const auto metric = text::Phrasebook::load("en", text::UnitSystem::Metric).value();
  const std::string text = "over {140 °F}, {50 ft} of it, {so} {<b>} 5 < 6 {";
  EXPECT_EQ(lessonText(us, text), "over 140\u202F°F, 50\u202Fft of it, {so} {<b>} 5 < 6 {");
  EXPECT_EQ(lessonText(metric, text), "over 60\u202F°C, 15\u202Fm of it, {so} {<b>} 5 < 6 {");
}

}  // namespace
}  // namespace cordreach::app
