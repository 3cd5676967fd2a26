// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/main_window.h"

#include <QAccessible>
#include <QCloseEvent>
#include <QLabel>
#include <QTabBar>

#include "app/shell/support.h"
#include "app/support/demo.h"
#include "look/look.h"
#include "map/map_canvas.h"
#include "map/map_view.h"
#include "shell/map_place.h"
#include "shell/remedy_button.h"
#include "shell/say.h"
#include "shell/verdict_choice.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;
using testing::renaming;

TEST_F(WindowTest, OpensOnAnUntitledCopyOfTheDemoBuilding) {
  EXPECT_EQ(document().site(), demoBuilding());
  EXPECT_TRUE(document().path().isEmpty());
  EXPECT_FALSE(document().isDirty());
  EXPECT_TRUE(window->windowTitle().startsWith("Tern Street Offices"));
}

TEST_F(WindowTest, RemembersWhoGoesRoundButNotHowTheyKnow) {
  Surveyor& surveyor = window->map()->view()->canvas().brush().surveyor;
  surveyor.set(site::HowKnown::Traced, "Ana");
  window = std::make_unique<MainWindow>(settings, folder.path() + "/recovery");
  const site::HowFound found = window->map()->view()->canvas().brush().surveyor.found();
  EXPECT_EQ(found.who, "Ana");
  EXPECT_EQ(found.how, site::HowKnown::Assumed);
}

TEST_F(WindowTest, SaysTheWorstFindingUnderTheNameVerdict) {
  ASSERT_TRUE(settles());
  EXPECT_FALSE(words().sentence.isEmpty());
  EXPECT_EQ(words().severity, window->session().judge.last()->findings.front().severity);
  const QAccessibleInterface* verdict = QAccessible::queryAccessibleInterface(window->band());
  EXPECT_EQ(verdict->text(QAccessible::Name), "Verdict");
  EXPECT_TRUE(verdict->text(QAccessible::Description).contains(words().sentence));
}

TEST_F(WindowTest, CtrlReturnMakesTheOneChangeAndUndoTakesItBack) {
  ASSERT_TRUE(settles());
  ASSERT_FALSE(words().button.isEmpty());
  const site::Site before = document().site();
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  QTest::keyClick(window.get(), Qt::Key_Return, Qt::ControlModifier);
  EXPECT_NE(document().site(), before);
  const site::Site after = document().site();
  QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document().site(), before);
  QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(document().site(), after);
}

TEST_F(WindowTest, SpeaksOfTheMachineWhosePlugIsBeingTried) {
  ASSERT_TRUE(settles());
  ASSERT_EQ(words().severity, rules::Severity::Danger);
  const site::Hookup before = document().site().at<site::Hookup>(site::HookupId("H05"));
  site::Hookup after = before;
  after.socket = site::OutletSocket{site::OutletId("1-31"), "upper"};
  document().suppose({"hookup.move", {site::Change<site::Hookup>{before, after}}});
  ASSERT_TRUE(settles());
  EXPECT_LE(words().severity, rules::Severity::Notice);
  document().dropSupposition();
  ASSERT_TRUE(settles());
  EXPECT_EQ(words().severity, rules::Severity::Danger);
}

TEST_F(WindowTest, PressingTheButtonAgainAndAgainMendsWhatCanBeMended) {
  ASSERT_TRUE(settles());
  int presses = 0;
  rules::Severity last = words().severity;
  while (!words().button.isEmpty() && presses < 40) {
    window->band()->button()->click();
    ++presses;
    ASSERT_TRUE(settles());
    EXPECT_LE(words().severity, last) << "after change " << presses;
    last = words().severity;
  }
  EXPECT_GT(presses, 3);
  EXPECT_LT(presses, 40);
  for (int i = 0; i < presses; ++i) document().undo();
  EXPECT_EQ(document().site(), demoBuilding());
}

TEST_F(WindowTest, AChangeFoundForAnOlderSiteIsNotMade) {
  ASSERT_TRUE(settles());
  ASSERT_FALSE(words().button.isEmpty());
  ASSERT_TRUE(document().apply(renaming(document().site(), "Other")));
  EXPECT_FALSE(window->band()->isFresh());
  EXPECT_FALSE(window->band()->button()->isEnabled());
  const site::Site before = document().site();
  window->band()->pressRemedy();
  EXPECT_EQ(document().site(), before);
  ASSERT_TRUE(settles());
  EXPECT_TRUE(window->band()->button()->isEnabled());
}

TEST_F(WindowTest, SaysOfABuildingWhereNothingIsPluggedInThatNothingWasJudged) {
  document().replace(site::Site{demoBuilding().id}, {});
  ASSERT_TRUE(settles());
  EXPECT_EQ(words().severity, rules::Severity::Notice);
  EXPECT_EQ(words().sentence, say(window->session().book, "window.verdict.idle"));
  EXPECT_FALSE(words().reason.isEmpty());
  EXPECT_FALSE(window->band()->button()->isVisible());
}

TEST_F(WindowTest, SaysThatASoundBuildingIsSoundInWords) {
  Verdict verdict;
  verdict.site = std::make_shared<const site::Site>(demoBuilding());
  const VerdictWords sound = wordsOf(verdict, {}, window->session().book);
  EXPECT_EQ(sound.severity, rules::Severity::Ok);
  EXPECT_EQ(sound.signal, "OK");
  EXPECT_FALSE(sound.reason.isEmpty());
}

TEST_F(WindowTest, SavesAndOpensTheSame) {
  const QString path = folder.path() + "/a building.json";
  ASSERT_TRUE(document().apply(renaming(document().site(), "Other")));
  ASSERT_TRUE(window->files().saveTo(path));
  EXPECT_FALSE(document().isDirty());
  const site::Site saved = document().site();
  window->files().showDemo();
  ASSERT_TRUE(window->files().openPath(path));
  EXPECT_EQ(document().site(), saved);
  EXPECT_EQ(settings.recentFiles().first(), path);
}

TEST_F(WindowTest, AsksBeforeChangesAreGivenUp) {
  ASSERT_TRUE(document().apply(renaming(document().site(), "Other")));
  answerNext("window.answer.cancel");
  QCloseEvent close;
  QApplication::sendEvent(window.get(), &close);
  EXPECT_FALSE(close.isAccepted());
  EXPECT_TRUE(asked.contains("Other"));
  answerNext("window.leave.discard");
  QCloseEvent again;
  QApplication::sendEvent(window.get(), &again);
  EXPECT_TRUE(again.isAccepted());
}

TEST_F(WindowTest, ClosesUnaskedWhenNothingIsUnsaved) {
  QCloseEvent close;
  QApplication::sendEvent(window.get(), &close);
  EXPECT_TRUE(close.isAccepted());
}

TEST_F(WindowTest, NeverOverwritesSomebodyElsesChangeUnasked) {
  const QString path = folder.path() + "/site.json";
  ASSERT_TRUE(window->files().saveTo(path));
  site::Site theirs = demoBuilding();
  theirs.name = "Theirs, and longer";
  ASSERT_TRUE(io::saveSite(path.toStdString(), theirs));
  ASSERT_TRUE(document().apply(renaming(document().site(), "Mine")));
  answerNext("window.answer.cancel");
  EXPECT_FALSE(window->files().save());
  EXPECT_TRUE(asked.contains("site.json"));
  EXPECT_EQ(io::loadSite(path.toStdString()).value(), theirs);
  EXPECT_EQ(document().site().name, "Mine");
  answerNext("window.changed.reload");
  EXPECT_TRUE(window->files().save());
  EXPECT_EQ(document().site(), theirs);
}

TEST_F(WindowTest, SaysInOneSentenceWhyItCannotSaveAndKeepsTheBuilding) {
  ASSERT_TRUE(document().apply(renaming(document().site(), "Mine")));
  answerNext("window.answer.cancel");
  EXPECT_FALSE(window->files().saveTo(folder.path() + "/nowhere/site.json"));
  EXPECT_TRUE(asked.contains("site.json"));
  EXPECT_FALSE(told.isEmpty());
  EXPECT_TRUE(document().isDirty());
  EXPECT_EQ(document().site().name, "Mine");
}

TEST_F(WindowTest, SaysInOneSentenceWhyItCannotOpenAndKeepsTheBuilding) {
  const QString path = folder.path() + "/broken.json";
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("{\"version\": 1,");
  file.close();
  const site::Site before = document().site();
  answerNext("window.answer.close");
  EXPECT_FALSE(window->files().openPath(path));
  EXPECT_TRUE(asked.contains("broken.json"));
  EXPECT_FALSE(told.isEmpty());
  EXPECT_EQ(document().site(), before);
}

TEST_F(WindowTest, SpeaksInTheUnitsThatWereChosen) {
  ASSERT_TRUE(settles());
  look::Choices metric = settings.choices();
  metric.units = text::UnitSystem::Metric;
  window->setChoices(metric);
  EXPECT_EQ(window->session().book.locale().units, text::UnitSystem::Metric);
}

TEST_F(WindowTest, GrowsWithTheTextSizeAndBack) {
  const auto labels = window->menuWidget()->findChildren<QLabel*>();
  ASSERT_FALSE(labels.isEmpty());
  const int before = labels.first()->font().pixelSize();
  look::Choices large = settings.choices();
  large.textScale = 2;
  window->setChoices(large);
  EXPECT_NEAR(labels.first()->font().pixelSize(), 2 * before, 1);
  EXPECT_EQ(window->map()->column()->width(), 496);
  large.textScale = 1;
  window->setChoices(large);
  EXPECT_EQ(labels.first()->font().pixelSize(), before);
}

TEST_F(WindowTest, KeepsTheColumnAtItsWidths) {
  EXPECT_EQ(window->map()->column()->width(), 300);
  window->resize(1024, 700);
  EXPECT_EQ(window->map()->column()->width(), 248);
  window->resize(900, 700);
  EXPECT_TRUE(window->map()->column()->isHidden());
}

TEST_F(WindowTest, SaysWhichPlanPictureIsGoneOrBroken) {
  ASSERT_TRUE(settles());
  const site::Floor before = document().site().at<site::Floor>(site::FloorId("F1"));
  site::Floor after = before;
  after.picture = site::Picture{"0123abcd", "png", 0.05, {}, 0.0};
  ASSERT_TRUE(document().apply({"floor.change", {site::Change<site::Floor>{before, after}}}).ok());
  auto* map = window->findChild<MapView*>();
  QString said;
  QObject::connect(map, &MapView::told, map, [&](const QString& sentence) { said = sentence; });
  document().markSaved(folder.path() + "/building.json");
  map->showFloor(site::FloorId("F2"));
  map->showFloor(site::FloorId("F1"));
  EXPECT_TRUE(said.contains("0123abcd.png") && said.contains("not beside")) << said.toStdString();
  QFile broken(folder.path() + "/0123abcd.png");
  ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
  broken.write("no picture");
  broken.close();
  map->showFloor(site::FloorId("F2"));
  map->showFloor(site::FloorId("F1"));
  EXPECT_TRUE(said.contains("can't be read")) << said.toStdString();
}

TEST_F(WindowTest, HidesNoTabInANarrowWindow) {
  window->resize(1024, 700);
  for (const QTabBar* bar : window->findChildren<QTabBar*>()) {
    if (!bar->isVisible()) continue;
    const auto showsAll = [bar] { return bar->tabRect(bar->count() - 1).right() <= bar->width(); };
    EXPECT_TRUE(QTest::qWaitFor(showsAll, 2000)) << bar->accessibleName().toStdString();
  }
}

TEST_F(WindowTest, F6GoesRoundThePartsOfTheWindow) {
  ASSERT_TRUE(settles());
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  QSet<QWidget*> reached;
  for (int i = 0; i < 4; ++i) {
    QTest::keyClick(QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : window.get(), Qt::Key_F6);
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    reached << QApplication::focusWidget();
  }
  EXPECT_TRUE(reached.contains(window->band()->button()));
  EXPECT_GE(reached.size(), 2);
}

TEST_F(WindowTest, RecoversWhatAKilledProcessLeft) {
  const QString left = folder.path() + "/left";
  QByteArray journal;
  {
    Document lost(demoBuilding());
    const Journal writing(lost, left);
    ASSERT_TRUE(lost.apply(renaming(lost.site(), "Lost and found")));
    QFile file(writing.path());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    journal = file.readAll();
  }
  QFile file(left + "/dead.journal");
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(journal);
  file.close();
  answerNext("window.recover.take");
  EXPECT_TRUE(window->files().offerRecovery(left));
  EXPECT_EQ(document().site().name, "Lost and found");
  EXPECT_TRUE(document().isDirty());
  EXPECT_FALSE(QFile::exists(left + "/dead.journal"));
}

}  // namespace
}  // namespace cordreach::app
