// SPDX-License-Identifier: GPL-3.0-or-later
// From nothing to a mapped floor by mouse and keys: new building, plan, scale, forty outlets, panel, breakers, save;
// and what goes wrong on the way.
#include <QClipboard>
#include <QDir>
#include <QGuiApplication>
#include <QLabel>
#include <QProgressDialog>
#include <QPushButton>
#include <QSpinBox>

#include "app/survey/mapping.h"
#include "io/site_file.h"
#include "map/row_bar.h"
#include "panels/add_menu.h"
#include "panels/property_form.h"
#include "panels/selection_panel.h"
#include "survey/picture_files.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;
using testing::encoded;
using testing::planImage;

TEST_F(MappingTest, FromAnEmptyWindowToASavedFloor) {
  begin();
  EXPECT_EQ(document().site().all<site::Floor>().size(), 2U);
  EXPECT_EQ(document().site().all<site::Panel>().size(), 2U);
  dropPlanAndScaleIt();

  takeTool("map.tool.row");
  RowBar& bar = window->map()->view()->rowBar();
  ASSERT_TRUE(bar.isVisible());
  bar.spacing()->setFocus();
  bar.spacing()->selectAll();
  QTest::keyClicks(bar.spacing(), "2 ft");
  QTest::keyClick(bar.spacing(), Qt::Key_Return);
  QCoreApplication::processEvents();
  canvas().fit();
  const geometry::Point from{3.0, 7.7};
  placeRow(from.xM, from.xM + 39 * 0.6096 + 0.3, from.yM);
  const auto outletCount = [&] { return document().site().all<site::Outlet>().size(); };
  ASSERT_EQ(outletCount(), 40U);
  EXPECT_EQ(window->session().selection.chosen().size(), 40U);
  std::set<std::string> labels;
  for (const site::Outlet& outlet : document().site().all<site::Outlet>()) labels.insert(outlet.label);
  EXPECT_EQ(*labels.begin(), "1-01");
  EXPECT_EQ(*labels.rbegin(), "1-40");
  document().undo();
  EXPECT_EQ(outletCount(), 0U) << "one gesture, one step";
  document().redo();

  takeTool("map.tool.panel");
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, onPlan(2, 9));
  EXPECT_EQ(document().site().all<site::Panel>().size(), 2U) << "the one that is known takes its place";
  addBy(window->map()->addMenu(), "panel.add.breakers", {{"count", "4"}, {"breaker_rating", "20 A"}});
  ASSERT_EQ(document().site().all<site::Circuit>().size(), 4U);

  canvas().setFocus();
  key(Qt::Key_Escape);
  drag(onPlan(1, 7), onPlan(9, 8.4));
  const auto chosen = window->session().selection.chosen();
  ASSERT_GE(chosen.size(), 5U);
  FieldRow* row = window->map()->selection()->form()->row("contact.upper.breaker");
  ASSERT_NE(row, nullptr);
  row->editor()->setFocus();
  QTest::keyClick(row->editor(), Qt::Key_Down);
  for (const rules::Subject& subject : chosen) {
    if (subject.kind != SubjectKind::Outlet) continue;
    const site::Outlet& outlet = document().site().at<site::Outlet>(site::OutletId(subject.id));
    EXPECT_TRUE(outlet.contacts.front().assignment.has_value()) << outlet.label;
  }

  pasteBreakersByMouse();
  ASSERT_TRUE(settles());
  showOverlayByMouse("map.overlay.trust");
  const auto saysHow = [](const MapOutlet& outlet) { return !outlet.figure.isEmpty(); };
  EXPECT_EQ(std::ranges::count_if(canvas().content().outlets, saysHow),
            std::ranges::count_if(canvas().content().outlets,
                                  [](const MapOutlet& outlet) { return outlet.look != OutletLook::Unknown; }));
  EXPECT_TRUE(std::ranges::any_of(canvas().content().outlets, saysHow));

  const site::Site whole = document().site();
  const QString path = folder.path() + "/elm/house.json";
  QDir(folder.path()).mkdir("elm");
  ASSERT_TRUE(window->files().saveTo(path));
  EXPECT_TRUE(QFile::exists(folder.path() + "/elm/" + pictureName(*floor().picture)));
  EXPECT_EQ(io::loadSite(path.toStdString()).value(), whole);
  while (document().canUndo()) document().undo();
  EXPECT_TRUE(document().site().all<site::Outlet>().empty());
  EXPECT_FALSE(floor().picture.has_value());
  while (document().canRedo()) document().redo();
  EXPECT_EQ(document().site(), whole);
}

TEST_F(MappingTest, WhatNobodyKnowsStaysOpen) {
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  whenAsked<StartDialog>([](StartDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
  key(Qt::Key_N, Qt::ControlModifier);
  EXPECT_TRUE(document().site().name.empty());
  EXPECT_EQ(document().site().all<site::Floor>().size(), 1U);
  EXPECT_TRUE(document().site().all<site::Panel>().empty());
  EXPECT_EQ(document().site().all<site::Supply>().begin()->name,
            window->session().book.say("survey.start.supply_unknown"));
}

TEST_F(MappingTest, ANumberOfFloorsThatIsNoneIsSaidAndNothingLost) {
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  const site::Site before = document().site();
  whenAsked<StartDialog>([](StartDialog& dialog) {
    type(dialog, "start_floors", "0");
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(dialog.row("start_floors")->typed(), "0");
    QTest::keyClick(&dialog, Qt::Key_Escape);
  });
  key(Qt::Key_N, Qt::ControlModifier);
  EXPECT_EQ(document().site(), before);
}

TEST_F(MappingTest, BadPlansAreSaidInOneSentenceAndChangeNothing) {
  begin();
  const site::Site before = document().site();
  const std::vector<std::pair<QByteArray, const char*>> plans{{"only words", "picture.not_one"},
                                                              {testing::bomb(60000, 60000), "picture.too_large"},
                                                              {encoded(planImage()).left(40), "picture.broken"},
                                                              {testing::lockedPdf(), "picture.pdf_locked"},
                                                              {"%PDF-1.7 cut off", "picture.pdf_broken"}};
  for (const auto& [content, code] : plans) {
    m_told.clear();
    drop(planFile(content, "bad.bin"));
    base::Error error{code, {}, {}};
    if (std::string(code) == "picture.too_large") error.arguments = {{"width", 60000.0}, {"height", 60000.0}};
    EXPECT_EQ(m_told, sentenceOf(window->session().book, error));
    EXPECT_EQ(document().site(), before) << code;
  }
  pictures().bringInFile(folder.path() + "/nowhere.png");
  EXPECT_FALSE(m_told.isEmpty());
  EXPECT_EQ(document().site(), before);
}

TEST_F(MappingTest, APageOfAThousandIsChosenAndScaledByPaces) {
  begin();
  whenAsked<PageDialog>([this](PageDialog& dialog) {
    whenAsked<ScaleDialog>([](ScaleDialog& scale) {
      type(scale, "plan_paces", "40");
      type(scale, "plan_pace", "2.5 ft");
      QTest::keyClick(&scale, Qt::Key_Return);
    });
    auto* page = dialog.findChild<QSpinBox*>();
    page->selectAll();
    QTest::keyClicks(page, "999");
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_EQ(dialog.page(), 998);
  });
  drop(planFile(testing::pdf(1000), "plans.pdf"));
  ASSERT_TRUE(floor().picture.has_value());
  // The two points stand half the sheet apart, 40 paces of 2.5 ft; A4 is 1,654 dots wide.
  EXPECT_NEAR(floor().picture->metresPerPixel, 30.48 / (1654 / 2.0), 1e-3);
}

TEST_F(MappingTest, APhotoIsSquaredByKeysAndUndone) {
  begin();
  dropPlanAndScaleIt();
  const site::Picture before = *floor().picture;
  whenAsked<CornersDialog>([](CornersDialog& dialog) {
    QWidget* view = dialog.view();
    view->setFocus();
    const QPointF was = dialog.view()->points()[2];
    QTest::keyClick(view, Qt::Key_3);
    QTest::keyClick(view, Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(view, Qt::Key_Down);
    EXPECT_LT(dialog.view()->points()[2].x(), was.x());
    EXPECT_GT(dialog.view()->points()[2].y(), was.y());
    QTest::keyClick(view, Qt::Key_Tab);
    EXPECT_EQ(dialog.view()->active(), 3);
    QTest::keyClick(&dialog, Qt::Key_Return);
  });
  pictures().square();
  EXPECT_NE(floor().picture->hash, before.hash);
  // The upper edge was taken in from the left by a twelfth or so.
  EXPECT_GT(floor().picture->origin.xM, before.origin.xM + 1);
  document().undo();
  EXPECT_EQ(*floor().picture, before);
}

// Squaring 24 million pixels takes longer than the moment after which the wait is shown.
TEST_F(MappingTest, SquaringThatIsCancelledSaysNothingAndChangesNothing) {
  begin();
  whenAsked<ScaleDialog>([](ScaleDialog& dialog) {
    type(dialog, "plan_distance", "100 ft");
    QTest::keyClick(&dialog, Qt::Key_Return);
  });
  drop(planFile(testing::encoded(testing::planImage({6000, 4000}))));
  ASSERT_TRUE(floor().picture.has_value());
  const site::Site before = document().site();
  whenAsked<CornersDialog>([this](CornersDialog& dialog) {
    whenAsked<QProgressDialog>([](QProgressDialog& wait) { wait.findChild<QPushButton*>()->click(); });
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_TRUE(dialog.isVisible());
    for (const QLabel* label : dialog.findChildren<QLabel*>()) {
      EXPECT_NE(label->text(), sentenceOf(window->session().book, {"picture.no_outline", {}, {}}));
    }
    QTest::keyClick(&dialog, Qt::Key_Escape);
  });
  pictures().square();
  EXPECT_EQ(document().site(), before);
}

TEST_F(MappingTest, ANewerIssueReplacesThePlanAndOutletsStay) {
  begin();
  dropPlanAndScaleIt();
  takeTool("map.tool.outlet");
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, onPlan(10, 8));
  const auto place = document().site().all<site::Outlet>().begin()->place;
  const site::Picture before = *floor().picture;
  whenAsked<ReplaceDialog>([](ReplaceDialog& dialog) {
    EXPECT_TRUE(dialog.isSameSheet());
    type(dialog, "plan_issue", "Rev C");
    QTest::keyClick(&dialog, Qt::Key_Return);
  });
  QGuiApplication::clipboard()->setImage(planImage({2400, 1200}));
  QTest::keyClick(&canvas(), Qt::Key_Escape);
  QTest::keyClick(&canvas(), Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(floor().picture->issue, "Rev C");
  EXPECT_NEAR(floor().picture->metresPerPixel, before.metresPerPixel / 2, 1e-9);
  EXPECT_EQ(document().site().all<site::Outlet>().begin()->place, place);
  document().undo();
  EXPECT_EQ(*floor().picture, before);
  QGuiApplication::clipboard()->clear();
}

TEST_F(MappingTest, APlanThatIsMissingIsSaidAndTheRestStands) {
  begin();
  dropPlanAndScaleIt();
  const QString path = folder.path() + "/house.json";
  ASSERT_TRUE(window->files().saveTo(path));
  const QString name = pictureName(*floor().picture);
  const std::string floorName = floor().name;
  QFile::remove(folder.path() + "/" + name);
  QFile::remove(unsavedPictures() + "/" + name);
  QString said;
  QObject::connect(window->map()->view(), &MapView::told, window.get(),
                   [&](const QString& sentence) { said = sentence; });
  ASSERT_TRUE(window->files().openPath(path));
  EXPECT_EQ(said, say(window->session().book, "map.picture.missing",
                      {{"picture", name.toStdString()}, {"floor", floorName}}));
  EXPECT_TRUE(floor().picture.has_value());
}

// Names are shown letter for letter wherever they stand.
TEST_F(MappingTest, MarkupInNamesIsNeverRendered) {
  site::Site site = demoSite();
  const std::string evil = "<b>bold</b><img src='file:///etc/hostname'>";
  site.name = evil;
  for (const auto& floor : std::vector<site::Floor>(site.all<site::Floor>().begin(), site.all<site::Floor>().end())) {
    site::Floor named = floor;
    named.name = evil;
    site.all<site::Floor>().put(named);
  }
  for (const auto& outlet :
       std::vector<site::Outlet>(site.all<site::Outlet>().begin(), site.all<site::Outlet>().end())) {
    site::Outlet named = outlet;
    named.label = evil + outlet.label;
    site.all<site::Outlet>().put(named);
  }
  for (const auto& one :
       std::vector<site::Machine>(site.all<site::Machine>().begin(), site.all<site::Machine>().end())) {
    site::Machine named = one;
    named.name = evil + one.name;
    site.all<site::Machine>().put(named);
  }
  document().replace(site, {});
  ASSERT_TRUE(settles());
  window->session().selection.choose({{SubjectKind::Outlet, site.all<site::Outlet>().begin()->id.text()}});
  int shown = 0;
  for (Place* place : window->places()) {
    window->showPlace(place);
    for (const QLabel* label : window->findChildren<QLabel*>()) {
      if (!label->text().contains("<img")) continue;
      ++shown;
      EXPECT_EQ(label->textFormat(), Qt::PlainText) << label->text().toStdString();
    }
  }
  EXPECT_GT(shown, 3);
}

}  // namespace
}  // namespace cordreach::app
