// SPDX-License-Identifier: GPL-3.0-or-later
// An evening with the demo building: what a lead does with it from opening to saving, by mouse.
#include "app/story/story.h"
#include "app/support/demo.h"
#include "panels/finding_row.h"
#include "panels/link_button.h"

namespace cordreach::app {
namespace {

using rules::Severity;
using rules::SubjectKind;

const site::HookupId kOfM2("H05");
const site::Socket kColumn = site::OutletSocket{site::OutletId("1-31"), "upper"};

class StoryOfTheEvening : public StoryTest {
 protected:
  void plugM2IntoTheColumn() {
    const QPointF plug = canvas().pointOfPlug(MachinePlug{site::MachineId("M2"), "A", kOfM2}).value();
    drag(plug.toPoint(), at(SubjectKind::Outlet, "1-31") - QPoint(0, 3));
  }

  // What is left above a NOTICE and nobody has accepted.
  [[nodiscard]] std::size_t faults() const {
    std::size_t count = 0;
    for (const rules::Finding& finding : verdict()->findings) {
      if (finding.severity > Severity::Notice && !finding.accepted) ++count;
    }
    return count;
  }

  // The first "do this" of the list that is about something above a NOTICE.
  [[nodiscard]] LinkButton* nextDoThis() const {
    const auto& rows = findings().rows();
    for (std::size_t i = 0; i < rows.size(); ++i) {
      if (verdict()->findings[i].severity <= Severity::Notice) continue;
      if (LinkButton* link = rows[i]->link("do"); link != nullptr && link->isEnabled()) return link;
    }
    return nullptr;
  }
};

TEST_F(StoryOfTheEvening, ADraggedPlugChangesWhatIsSaidOfItAndUndoAndRedoFollow) {
  ASSERT_TRUE(settles());
  const Severity before = severityOf("H05");
  const QString figureBefore = machineOnMap("M2")->figure;
  ASSERT_EQ(before, Severity::Warning);
  plugM2IntoTheColumn();
  EXPECT_EQ(document().site().at<site::Hookup>(kOfM2).socket, kColumn);
  ASSERT_TRUE(settles());
  EXPECT_LT(severityOf("H05"), Severity::Caution);
  const QString figureAfter = machineOnMap("M2")->figure;
  EXPECT_NE(figureAfter, figureBefore);
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  key(Qt::Key_Z, Qt::ControlModifier);
  ASSERT_TRUE(settles());
  EXPECT_EQ(severityOf("H05"), before);
  EXPECT_EQ(machineOnMap("M2")->figure, figureBefore);
  EXPECT_EQ(document().site(), testing::demoBuilding());
  key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(settles());
  EXPECT_LT(severityOf("H05"), Severity::Caution);
  EXPECT_EQ(machineOnMap("M2")->figure, figureAfter);
}

TEST_F(StoryOfTheEvening, EveryPlantedFaultIsMendedByDoingWhatIsSaidAndTheFileHoldsIt) {
  plugM2IntoTheColumn();
  ASSERT_TRUE(settles());
  ASSERT_GT(faults(), 4U);
  for (int presses = 0; faults() > 0; ++presses) {
    ASSERT_LT(presses, 40);
    LinkButton* link = nextDoThis();
    ASSERT_NE(link, nullptr) << verdict()->findings.front().code << " has no change that mends it";
    const site::Site before = document().site();
    QTest::mouseClick(link, Qt::LeftButton);
    ASSERT_NE(document().site(), before) << link->text().toStdString();
    ASSERT_TRUE(settles());
  }
  EXPECT_LE(words().severity, Severity::Notice);

  const QString path = folder.path() + "/evening.json";
  ASSERT_TRUE(window->files().saveTo(path));
  EXPECT_FALSE(document().isDirty());
  const site::Site saved = document().site();
  ASSERT_NE(saved, testing::demoBuilding());
  ASSERT_TRUE(window->close());
  window = std::make_unique<MainWindow>(settings, folder.path() + "/recovery");
  ASSERT_TRUE(window->files().openPath(path));
  EXPECT_EQ(document().site(), saved);
  ASSERT_TRUE(settles());
  EXPECT_EQ(faults(), 0U);
}

TEST_F(StoryOfTheEvening, TheVerdictsButtonMendsThemAllAsWell) {
  ASSERT_TRUE(settles());
  for (int presses = 0; words().severity > Severity::Notice; ++presses) {
    ASSERT_LT(presses, 40);
    auto* button = window->band()->findChild<QAbstractButton*>();
    ASSERT_TRUE(button->isVisible() && button->isEnabled()) << words().sentence.toStdString();
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(settles());
  }
  EXPECT_EQ(faults(), 0U);
}

}  // namespace
}  // namespace cordreach::app
