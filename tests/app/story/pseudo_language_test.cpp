// SPDX-License-Identifier: GPL-3.0-or-later
// Words 40 % longer and type half as large again: no text that matters is cut.
#include "text/pseudo_language.h"

#include <QComboBox>
#include <QLabel>
#include <QTabBar>
#include <QToolButton>
#include <algorithm>

#include "app/story/story.h"
#include "look/look.h"
#include "panels/finding_row.h"
#include "panels/link_button.h"
#include "shell/remedy_button.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;

class PseudoLanguage : public StoryTest {
 protected:
  void SetUp() override {
    look::Choices large = settings.choices();
    large.textScale = 1.5;
    window->setChoices(large);
    speakIn(text::pseudoLanguage(window->session().book));
    ASSERT_TRUE(settles());
    QTest::qWait(50);  // layouts
  }
  void TearDown() override {
    window.reset();
    look::setPresent(*qApp, {});
  }
  // The session's book is swapped in place, as for another language.
  void speakIn(text::Phrasebook book) {
    const_cast<text::Phrasebook&>(window->session().book) = std::move(book);
    QEvent change(QEvent::LanguageChange);
    QApplication::sendEvent(window.get(), &change);
  }

  void checkLabel(const QLabel& label) {
    if (label.text().isEmpty()) return;
    const std::string text = label.text().toStdString();
    if (label.wordWrap()) {
      EXPECT_LE(label.heightForWidth(label.width()), label.height()) << text;
      EXPECT_LE(label.minimumSizeHint().width(), label.width()) << "a word is wider: " << text;
    } else {
      EXPECT_LE(label.sizeHint().width(), label.width()) << text;
      EXPECT_LE(label.sizeHint().height(), label.height()) << text;
    }
  }
  void checkButton(const QAbstractButton& button) {
    const std::string text = button.text().toStdString();
    if (button.hasHeightForWidth()) {
      EXPECT_LE(button.heightForWidth(button.width()), button.height()) << text;
      EXPECT_LE(button.minimumSizeHint().width(), button.width()) << "a word is wider: " << text;
    } else {
      EXPECT_LE(button.sizeHint().width(), button.width()) << text;
      EXPECT_LE(button.sizeHint().height(), button.height()) << text;
    }
  }
  [[nodiscard]] static bool canScroll(const QTabBar& tabs) {
    const auto arrows = tabs.findChildren<QToolButton*>();
    return std::any_of(arrows.begin(), arrows.end(), [](const auto* one) { return one->isVisible(); });
  }
  // Sideways nothing may stick out of what holds it; downwards a list scrolls.
  void checkInside(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    EXPECT_LE(widget.geometry().right(), parent->rect().right() + 1)
        << widget.metaObject()->className() << " in " << parent->metaObject()->className();
    EXPECT_GE(widget.geometry().left(), -1) << widget.metaObject()->className();
  }
  void checkBelow(const QWidget& root) {
    for (const QLabel* label : root.findChildren<QLabel*>()) {
      if (!label->isVisible()) continue;
      checkLabel(*label);
      checkInside(*label);
    }
    for (const QAbstractButton* button : root.findChildren<QAbstractButton*>()) {
      if (!button->isVisible() || qobject_cast<QTabBar*>(button->parentWidget()) != nullptr) continue;
      checkButton(*button);
      checkInside(*button);
    }
  }
};

TEST_F(PseudoLanguage, IsWhatTheWindowSpeaks) {
  const QString plain = QString::fromStdString(text::Phrasebook::load("en").value().say("panel.numbers"));
  ASSERT_FALSE(findings().rows().empty());
  const QString link = findings().rows().front()->link("numbers")->text();
  EXPECT_NE(link, plain);
  EXPECT_GT(link.size(), plain.size());
  EXPECT_EQ(look::present().textScale, 1.5);
}

TEST_F(PseudoLanguage, TheVerdictStandsInItsBandWhole) {
  VerdictBand& band = *window->band();
  EXPECT_LE(band.sizeHint().height(), band.height());
  ASSERT_TRUE(band.button()->isVisible());
  checkBelow(band);
  for (const QObject* child : band.children()) {
    const auto* widget = qobject_cast<const QWidget*>(child);
    if (widget != nullptr && widget->isVisible()) {
      EXPECT_LE(widget->geometry().bottom(), band.height()) << widget->metaObject()->className();
    }
  }
}

TEST_F(PseudoLanguage, FindingsAndTheirLinksAreWhole) {
  ASSERT_GT(findings().rows().size(), 5U);
  checkBelow(findings());
}

TEST_F(PseudoLanguage, PropertiesOfWhateverIsChosenAreWhole) {
  const std::vector<rules::Subject> subjects{{SubjectKind::Outlet, "1-13"}, {SubjectKind::Machine, "M2"}};
  for (const rules::Subject& subject : subjects) {
    window->session().selection.choose({subject});
    QTest::qWait(50);
    const ::testing::ScopedTrace trace(__FILE__, __LINE__, subject.id);
    checkBelow(*window->map());
  }
}

// A row of tabs that is too long for its place gets arrows to scroll it by.
TEST_F(PseudoLanguage, TabsAreWideEnoughForTheirWordsAndAllCanBeBroughtIntoSight) {
  for (const QTabBar* tabs : window->findChildren<QTabBar*>()) {
    if (!tabs->isVisible()) continue;
    for (int i = 0; i < tabs->count(); ++i) {
      const std::string text = tabs->tabText(i).toStdString();
      const bool across = tabs->shape() == QTabBar::RoundedNorth;  // those on an edge are written along it
      const int along = across ? tabs->tabRect(i).width() : tabs->tabRect(i).height();
      EXPECT_GE(along, tabs->fontMetrics().horizontalAdvance(tabs->tabText(i))) << text;
      EXPECT_TRUE(tabs->rect().contains(tabs->tabRect(i)) || canScroll(*tabs)) << text << " is out of sight";
    }
  }
}

}  // namespace
}  // namespace cordreach::app
