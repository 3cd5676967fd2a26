// SPDX-License-Identifier: GPL-3.0-or-later
// The panels as people use them: typing, choosing, pressing links, all offscreen.
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <algorithm>
#include <memory>
#include <set>

#include "app/panels/support.h"
#include "panels/add_menu.h"
#include "panels/cart_panel.h"
#include "panels/field_row.h"
#include "panels/finding_groups.h"
#include "panels/finding_row.h"
#include "panels/findings_panel.h"
#include "panels/link_button.h"
#include "panels/property_form.h"
#include "panels/selection_panel.h"
#include "text/pseudo_language.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;
using testing::demoBuilding;
using testing::Desk;

QLineEdit* lineOf(const SelectionPanel& panel, const char* key) {
  auto* line = qobject_cast<QLineEdit*>(panel.form()->row(key)->editor());
  if (line == nullptr) throw std::runtime_error("no line");
  return line;
}

void typeInto(QLineEdit* line, const QString& text) {
  line->setFocus();
  line->selectAll();
  QTest::keyClicks(line, text);
  QTest::keyClick(line, Qt::Key_Return);
}

const site::Cord& cordOf(const Desk& desk, const char* id) {
  return desk.document.site().at<site::Cord>(site::CordId(id));
}

TEST(SelectionPanel, TakesATypedLengthAsOneUndoStepAndKeepsItAsTyped) {
  Desk desk(demoBuilding());
  SelectionPanel panel(desk.session);
  panel.show();
  desk.selection.choose({{SubjectKind::Cord, "C01"}});
  typeInto(lineOf(panel, "length"), "22 m");
  EXPECT_DOUBLE_EQ(cordOf(desk, "C01").make.length->value.si(), 22.0);
  EXPECT_EQ(lineOf(panel, "length")->text(), "22 m");
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
  EXPECT_FALSE(desk.document.canUndo());
  EXPECT_EQ(lineOf(panel, "length")->text(), "50 ft");
}

TEST(SelectionPanel, SaysOneSentenceAboutBadInputAndLosesNothing) {
  Desk desk(demoBuilding());
  SelectionPanel panel(desk.session);
  panel.show();
  desk.selection.choose({{SubjectKind::Cord, "C01"}});
  typeInto(lineOf(panel, "length"), "fifty feet");
  const FieldRow* row = panel.form()->row("length");
  EXPECT_TRUE(row->fault().contains("fifty feet")) << row->fault().toStdString();
  EXPECT_TRUE(row->fault().endsWith('.'));
  EXPECT_EQ(lineOf(panel, "length")->text(), "fifty feet");
  EXPECT_EQ(desk.document.site(), demoBuilding());
  // Another change arrives: what is being typed stays.
  ASSERT_TRUE(desk.document.apply(testing::renaming(desk.document.site(), "Other")).ok());
  EXPECT_EQ(lineOf(panel, "length")->text(), "fifty feet");
  QTest::keyClick(lineOf(panel, "length"), Qt::Key_Escape);
  EXPECT_EQ(lineOf(panel, "length")->text(), "50 ft");
  EXPECT_EQ(row->fault(), "");
}

TEST(SelectionPanel, SaysDontKnowByOneButton) {
  Desk desk(demoBuilding());
  SelectionPanel panel(desk.session);
  panel.show();
  desk.selection.choose({{SubjectKind::Cord, "C01"}});
  auto* unknown = panel.form()->row("length")->findChild<QToolButton*>();
  ASSERT_NE(unknown, nullptr);
  QTest::mouseClick(unknown, Qt::LeftButton);
  EXPECT_FALSE(cordOf(desk, "C01").make.length);
  EXPECT_EQ(lineOf(panel, "length")->placeholderText(), "don't know");
}

TEST(SelectionPanel, ShowsAGuessAsOne) {
  Desk desk(demoBuilding());
  SelectionPanel panel(desk.session);
  panel.show();
  desk.selection.choose({{SubjectKind::Cord, "C01"}});
  typeInto(lineOf(panel, "length"), "98 ft +- 10");
  ASSERT_TRUE(cordOf(desk, "C01").make.length->isGuess());
  EXPECT_EQ(lineOf(panel, "length")->text(), "98 ft +- 10");
  bool isSaid = false;
  for (const QLabel* label : panel.form()->row("length")->findChildren<QLabel*>()) {
    isSaid = isSaid || (!label->isHidden() && label->text() == "guessed");
  }
  EXPECT_TRUE(isSaid);
}

TEST(SelectionPanel, EveryControlHasANameAndTheKeyboardReachesIt) {
  Desk desk(demoBuilding());
  SelectionPanel panel(desk.session);
  panel.show();
  for (const Subject& subject : {Subject{SubjectKind::Outlet, "1-01"}, Subject{SubjectKind::Machine, "M7"},
                                 Subject{SubjectKind::Circuit, "1A-1"}, Subject{SubjectKind::FixedLoad, "L01"},
                                 Subject{SubjectKind::Cord, "C01"}}) {
    desk.selection.choose({subject});
    for (const FieldRow* row : panel.form()->findChildren<FieldRow*>()) {
      if (row->isHidden()) continue;
      EXPECT_FALSE(row->editor()->accessibleName().isEmpty()) << row->field().key;
      EXPECT_TRUE(row->editor()->focusPolicy() & Qt::TabFocus) << row->field().key;
    }
  }
}

TEST(SelectionPanel, DeletesWhatIsChosenAndSaysFirstWhatGoesAlong) {
  Desk desk(demoBuilding());
  SelectionPanel panel(desk.session);
  panel.show();
  desk.selection.choose({{SubjectKind::Pad, "P1"}});
  panel.deleteChosen();  // nothing goes along: no question
  EXPECT_EQ(desk.document.site().find<site::Pad>(site::PadId("P1")), nullptr);
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST(SelectionPanel, WrapsAPseudoLanguageInsideANarrowColumn) {
  Desk desk(demoBuilding(), text::pseudoLanguage(testing::english()));
  SelectionPanel panel(desk.session);
  panel.resize(300, 600);
  panel.show();
  desk.selection.choose({{SubjectKind::Outlet, "1-01"}});
  const auto labels = panel.form()->findChildren<QLabel*>();
  const auto isCut = [&](const QLabel* label) {
    const bool isLow = label->height() + 1 < label->heightForWidth(label->width());
    return label->isVisible() && (isLow || label->mapTo(&panel, QPoint(label->width(), 0)).x() > panel.width());
  };
  static_cast<void>(QTest::qWaitFor([&] { return std::none_of(labels.begin(), labels.end(), isCut); }, 2000));
  for (const QLabel* label : labels) EXPECT_FALSE(isCut(label)) << label->text().toStdString();
}

class FindingsPanelTest : public ::testing::Test {
 protected:
  void judge() {
    desk.judge.request(desk.document.snapshot(), false);
    const auto number = desk.judge.latest();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
          const auto last = desk.judge.last();
          return last && last->number == number && !last->remedies.empty() && !desk.judge.isBusy();
        },
        60000));
  }
  FindingRow* firstWith(const char* link) {
    for (FindingRow* row : panel.rows()) {
      if (row->link(link) != nullptr) return row;
    }
    throw std::runtime_error(std::string("no row with ") + link);
  }

  Desk desk{demoBuilding()};
  FindingsPanel panel{desk.session};
};

TEST_F(FindingsPanelTest, ListsTheDemoWorstFirstWithItsCount) {
  judge();
  const auto& findings = desk.judge.last()->findings;
  ASSERT_EQ(panel.rows().size(), std::min<std::size_t>(findings.size(), 40U));
  EXPECT_TRUE(panel.head().contains(QString::number(findings.size()))) << panel.head().toStdString();
  EXPECT_TRUE(panel.rows().front()->accessibleName().startsWith("DANGER"));
  EXPECT_FALSE(panel.head().contains("being worked out"));
  for (const FindingRow* row : panel.rows()) EXPECT_FALSE(row->accessibleName().contains("finding."));
}

TEST_F(FindingsPanelTest, FoldsWhatIsAboutOneThingBehindItsWorstAndLosesNothing) {
  judge();
  panel.show();
  const auto& findings = desk.judge.last()->findings;
  const auto groups = groupsOf(findings, findings.size());
  std::set<std::size_t> listed;
  for (const FindingGroup& group : groups) {
    listed.insert(group.findings.begin(), group.findings.end());
    EXPECT_TRUE(panel.rows()[group.findings.front()]->isVisible());
    for (std::size_t i = 1; i < group.findings.size(); ++i) {
      EXPECT_LE(findings[group.findings[i]].severity, findings[group.findings.front()].severity);
      EXPECT_FALSE(panel.rows()[group.findings[i]]->isVisible());
    }
  }
  EXPECT_EQ(listed.size(), findings.size());
  ASSERT_LT(groups.size(), findings.size() / 2);
  const auto fold = std::find_if(panel.folds().begin(), panel.folds().end(),
                                 [](LinkButton* one) { return one->text().contains("Burnisher, 1500 rpm"); });
  ASSERT_NE(fold, panel.folds().end());
  EXPECT_TRUE((*fold)->text().contains("CAUTION")) << (*fold)->text().toStdString();
  QTest::keyClick(*fold, Qt::Key_Space);
  const auto shown = [this] {
    return std::count_if(panel.rows().begin(), panel.rows().end(),
                         [](const FindingRow* row) { return row->isVisible(); });
  };
  const auto before = shown();
  EXPECT_GT(static_cast<std::size_t>(before), groups.size() + 5);
  judge();  // and it stays unfolded
  EXPECT_TRUE(QTest::qWaitFor([&] { return shown() == before; }));
}

TEST_F(FindingsPanelTest, DoThisIsOneEditThatCanBeUndone) {
  judge();
  const site::Site before = desk.document.site();
  FindingRow* row = firstWith("do");
  panel.show();
  QTest::mouseClick(row->link("do"), Qt::LeftButton);
  EXPECT_FALSE(desk.document.site() == before);
  EXPECT_TRUE(panel.head().contains("being worked out"));
  EXPECT_FALSE(panel.rows().front()->link("do") != nullptr && panel.rows().front()->link("do")->isEnabled());
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), before);
  EXPECT_FALSE(desk.document.canUndo());
}

TEST_F(FindingsPanelTest, ShowGoesThere) {
  judge();
  std::optional<Subject> shown;
  QObject::connect(&desk.selection, &Selection::shown, [&](const Subject& subject) { shown = subject; });
  panel.showSubject(0);
  ASSERT_TRUE(shown);
  EXPECT_EQ(*shown, desk.judge.last()->findings.front().subjects.front());
}

TEST_F(FindingsPanelTest, AcceptsACautionByNameAndReasonOnly) {
  judge();
  panel.show();
  FindingRow* row = firstWith("accept");
  QTimer::singleShot(0, qApp, [&] {
    auto* dialog = qobject_cast<AskDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());  // without a name it stays
    QTest::keyClicks(dialog->row("accept_who")->editor(), "Ana");
    QTest::keyClicks(dialog->row("accept_reason")->editor(), "one night only");
    dialog->accept();
  });
  QTest::mouseClick(row->link("accept"), Qt::LeftButton);
  ASSERT_EQ(desk.document.site().all<site::Acceptance>().size(), 1U);
  EXPECT_EQ(desk.document.site().all<site::Acceptance>().begin()->reason, "one night only");
  judge();
  FindingRow* accepted = firstWith("take_back");
  EXPECT_EQ(accepted->link("accept"), nullptr);
  QTest::mouseClick(accepted->link("take_back"), Qt::LeftButton);
  EXPECT_TRUE(desk.document.site().all<site::Acceptance>().empty());
}

TEST(CartPanel, PutsACordAsideWithAReasonAndBack) {
  Desk desk(demoBuilding());
  CartPanel cart(desk.session);
  EXPECT_EQ(cart.table()->rowCount(), 12);
  const std::unique_ptr<AskDialog> dialog(cart.serviceDialog(site::CordId("C01")));
  dialog->show();
  dialog->accept();
  EXPECT_TRUE(dialog->isVisible());
  QTest::keyClicks(dialog->row("out_reason")->editor(), "Cut jacket");
  dialog->accept();
  ASSERT_TRUE(cordOf(desk, "C01").outOfService);
  EXPECT_EQ(cordOf(desk, "C01").outOfService->reason, "Cut jacket");
  EXPECT_TRUE(cart.table()->item(0, 4)->text().contains("Cut jacket"));
  cart.putBack(site::CordId("C01"));
  EXPECT_FALSE(cordOf(desk, "C01").outOfService);
  desk.document.undo();
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST(AddMenu, AddsAnOutletWhereTheMapLooksAndChoosesIt) {
  Desk desk(demoBuilding());
  const site::Place at{site::FloorId("F1"), {12.0, 9.0}};
  AddMenu menu(desk.session, [&] { return std::optional(at); });
  const std::size_t before = desk.document.site().all<site::Outlet>().size();
  const std::unique_ptr<AskDialog> dialog(menu.outletDialog(nullptr));
  dialog->show();
  dialog->accept();
  EXPECT_FALSE(dialog->isVisible());
  EXPECT_EQ(desk.document.site().all<site::Outlet>().size(), before + 1);
  ASSERT_TRUE(desk.selection.single());
  const site::Outlet& outlet = desk.document.site().at<site::Outlet>(site::OutletId(desk.selection.single()->id));
  EXPECT_EQ(outlet.place, at);
  EXPECT_FALSE(outlet.contacts.front().assignment);
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST(AddMenu, SaysWhatIsWrongAndStaysOpen) {
  Desk desk(demoBuilding());
  AddMenu menu(desk.session, {});
  const std::unique_ptr<AskDialog> dialog(menu.breakersDialog(nullptr));
  dialog->show();
  auto* count = qobject_cast<QLineEdit*>(dialog->row("count")->editor());
  count->setText("400");
  dialog->accept();
  EXPECT_TRUE(dialog->isVisible());
  EXPECT_EQ(desk.document.site(), demoBuilding());
  count->setText("2");
  dialog->accept();
  EXPECT_FALSE(dialog->isVisible());
}

TEST(AddMenu, AsksOfPanelsInTheOrderOfTheirNamesAndMeansTheOneThatIsChosen) {
  site::Site site = demoBuilding();
  const site::SupplyId supply = site.all<site::Supply>().begin()->id;
  site.all<site::Panel>().put(site::Panel{.id = site::PanelId("0"), .name = "12A", .supply = supply});
  Desk desk(site);
  AddMenu menu(desk.session, {});
  const auto asked = [&] {
    const std::unique_ptr<AskDialog> dialog(menu.breakersDialog(nullptr));
    EXPECT_FALSE(dialog->windowTitle().contains(u'…')) << dialog->windowTitle().toStdString();
    return std::pair(dialog->row("panel")->field().choices, dialog->row("panel")->typed());
  };
  const auto [choices, typed] = asked();
  EXPECT_EQ(choices.front().text, "1A");
  EXPECT_EQ(choices.back().text, "12A");
  EXPECT_EQ(typed, choices.front().key);
  desk.selection.choose({{rules::SubjectKind::Panel, "0"}});
  EXPECT_EQ(asked().second, "0");
}

TEST(AddMenu, OffersEveryKindOfThing) {
  Desk desk(demoBuilding());
  AddMenu menu(desk.session, {});
  for (const char* name : {"panel.add.panel", "panel.add.breakers", "panel.add.outlet", "panel.add.load",
                           "panel.add.cord", "panel.add.pad", "machine_type.extractor"}) {
    EXPECT_NE(menu.findChild<QAction*>(name), nullptr) << name;
  }
}

}  // namespace
}  // namespace cordreach::app
