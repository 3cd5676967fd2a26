// SPDX-License-Identifier: GPL-3.0-or-later
// On a projector: words 40 % longer and half as large again, in a small window, and nothing that matters is cut.
#include <QLabel>
#include <QToolButton>

#include "app/shell/support.h"
#include "heat/breaker_bars.h"
#include "heat/figure_table.h"
#include "heat/heat_place.h"
#include "heat/lesson_panel.h"
#include "heat/side_view.h"
#include "panels/link_button.h"
#include "text/pseudo_language.h"

namespace cordreach::app {
namespace {

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
    QTest::qWait(50);  // layouts
  }
  void TearDown() override {
    window.reset();
    look::setPresent(*qApp, {});
  }
  void speakPseudo() {
    const_cast<text::Phrasebook&>(window->session().book) = text::pseudoLanguage(window->session().book);
    QEvent change(QEvent::LanguageChange);
    QApplication::sendEvent(window.get(), &change);
    QTest::qWait(50);
  }

  void checkTexts() {
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
    EXPECT_GT(seen, 4);
    for (QWidget* widget :
         {static_cast<QWidget*>(place->findChild<BreakerBars*>()), static_cast<QWidget*>(place->findChild<SideView*>()),
          static_cast<QWidget*>(place->chart())}) {
      if (!widget->isVisible()) continue;
      EXPECT_LE(widget->minimumSizeHint().height(), widget->height()) << widget->metaObject()->className();
      EXPECT_LE(widget->minimumSizeHint().width(), widget->width()) << widget->metaObject()->className();
    }
  }

  HeatPlace* place = nullptr;
};

TEST_F(HeatReading, ThePlaceFitsAProjectorWithLargeText) {
  checkTexts();
  EXPECT_LE(window->height(), 768);
  EXPECT_LE(window->width(), 1024);
  EXPECT_GE(place->chart()->height(), 100);
}

TEST_F(HeatReading, LongerWordsAreNotCut) {
  speakPseudo();
  checkTexts();
}

}  // namespace
}  // namespace cordreach::app
