// SPDX-License-Identifier: GPL-3.0-or-later
// Painting a circuit over outlets.
#include <QSignalSpy>

#include "app/map/canvas_fixture.h"
#include "map/circuit_bar.h"
#include "panels/found_fields.h"
#include "panels/plain_controls.h"

namespace cordreach::test {
namespace {

using rules::SubjectKind;

class CircuitTool : public MapTest {
 protected:
  void SetUp() override {
    MapTest::SetUp();
    canvas().use(app::ToolKind::Circuit);
    QApplication::processEvents();
  }
  void paintWith(const char* circuit) {
    canvas().brush().isChosen = true;
    canvas().brush().circuit = site::CircuitId(circuit);
  }
  [[nodiscard]] std::string circuitOf(const char* outlet) const {
    const auto& contacts = document.site().at<site::Outlet>(site::OutletId(outlet)).contacts;
    return contacts.front().assignment ? contacts.front().assignment->circuit.text() : "?";
  }
  [[nodiscard]] QPoint outlet(const char* id) const { return at(SubjectKind::Outlet, id); }
};

TEST_F(CircuitTool, PutsEveryOutletOfOneStrokeOnTheCircuitInOneStep) {
  const site::Site before = document.site();
  paintWith("1A-14");
  canvas().brush().surveyor.set(site::HowKnown::Traced, "Ana");
  drag(outlet("1-01"), outlet("1-02"));
  EXPECT_EQ(circuitOf("1-01"), "1A-14");
  EXPECT_EQ(circuitOf("1-02"), "1A-14");
  const auto& assignment = document.site().at<site::Outlet>(site::OutletId("1-01")).contacts.back().assignment;
  EXPECT_EQ(assignment->how, site::HowKnown::Traced);
  EXPECT_EQ(assignment->who, "Ana");
  EXPECT_FALSE(assignment->when.empty());
  EXPECT_GE(selection.chosen().size(), 2U);
  document.undo();
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.canUndo());
}

TEST_F(CircuitTool, LeavesNoTraceAfterEscape) {
  const site::Site before = document.site();
  paintWith("1A-14");
  drag(outlet("1-01"), outlet("1-02"), false);
  key(Qt::Key_Escape);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, outlet("1-02"));
  EXPECT_EQ(document.site(), before);
  EXPECT_FALSE(document.canUndo());
  EXPECT_EQ(canvas().tool(), app::ToolKind::Circuit);
  key(Qt::Key_Escape);
  EXPECT_EQ(canvas().tool(), app::ToolKind::Select);
}

TEST_F(CircuitTool, AsksForTheCircuitFirst) {
  QSignalSpy told(&canvas(), &app::MapCanvas::told);
  drag(outlet("1-01"), outlet("1-02"));
  ASSERT_GE(told.count(), 1);
  EXPECT_FALSE(document.canUndo());
}

TEST_F(CircuitTool, PaintsNotKnowingToo) {
  canvas().brush().isChosen = true;
  drag(outlet("1-01"), outlet("1-01"));
  EXPECT_EQ(circuitOf("1-01"), "?");
}

TEST_F(CircuitTool, HasItsBarWhileItIsInUse) {
  app::CircuitBar& bar = view.circuitBar();
  EXPECT_TRUE(bar.isVisible());
  EXPECT_EQ(bar.circuit()->count(), 2 + static_cast<int>(document.site().all<site::Circuit>().size()));
  bar.circuit()->setCurrentIndex(2);
  emit bar.circuit()->activated(2);
  EXPECT_TRUE(canvas().brush().isChosen);
  EXPECT_EQ(canvas().brush().circuit->text(), "1A-1");
  canvas().use(app::ToolKind::Select);
  EXPECT_FALSE(bar.isVisible());
}

TEST_F(CircuitTool, BeginsWithTheCircuitThatIsChosen) {
  canvas().use(app::ToolKind::Select);
  selection.choose({{SubjectKind::Circuit, "2A-6"}});
  canvas().use(app::ToolKind::Circuit);
  EXPECT_EQ(canvas().brush().circuit->text(), "2A-6");
}

}  // namespace
}  // namespace cordreach::test
