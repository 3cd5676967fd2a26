// SPDX-License-Identifier: GPL-3.0-or-later
// A building made from nothing by what the window offers, and what is then said of it.
#include "app/story/story.h"
#include "io/site_file.h"
#include "map/map_menu.h"
#include "panels/add_menu.h"
#include "panels/property_form.h"
#include "panels/selection_panel.h"
#include "survey/start_dialog.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;

class BuildingFromNothing : public StoryTest {
 protected:
  template <class T>
  [[nodiscard]] std::vector<T> all() {
    return {document().site().all<T>().begin(), document().site().all<T>().end()};
  }
  void click(double across, double down) {
    QTest::mouseClick(&canvas(), Qt::LeftButton, {},
                      QPoint(static_cast<int>(canvas().width() * across), static_cast<int>(canvas().height() * down)));
  }
  void begin() {
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTimer::singleShot(0, window.get(), [] {
      auto* dialog = qobject_cast<StartDialog*>(QApplication::activeModalWidget());
      ASSERT_NE(dialog, nullptr);
      dialog->findChild<QPushButton*>("survey.start.empty")->click();
    });
    key(Qt::Key_N, Qt::ControlModifier);
    ASSERT_TRUE(all<site::Outlet>().empty());
    ASSERT_TRUE(canvas().floor().has_value()) << "nothing can be placed";
  }
  void addPanelAndBreakers() {
    takeTool("map.tool.panel");
    click(0.1, 0.5);
    ASSERT_EQ(all<site::Panel>().size(), 1U);
    addBy(window->map()->addMenu(), "panel.add.breakers", {{"count", "6"}, {"breaker_rating", "20 A"}});
    ASSERT_EQ(all<site::Circuit>().size(), 6U);
  }
  // Three along the wall, one of them given its breaker by its properties.
  void addOutlets() {
    takeTool("map.tool.outlet");
    for (const double across : {0.3, 0.5, 0.7}) click(across, 0.3);
    ASSERT_EQ(all<site::Outlet>().size(), 3U);
    const site::Outlet chosen = all<site::Outlet>().at(1);
    key(Qt::Key_Escape);
    QTest::mouseClick(&canvas(), Qt::LeftButton, {}, at(SubjectKind::Outlet, chosen.id.text()));
    ASSERT_TRUE(window->session().selection.holds({SubjectKind::Outlet, chosen.id.text()}));
    const std::string contact = chosen.contacts.front().name;
    FieldRow* row = window->map()->selection()->form()->row("contact." + contact + ".breaker");
    ASSERT_NE(row, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([row] { return row->editor()->isVisible(); }));
    row->editor()->setFocus();
    QTest::keyClick(row->editor(), Qt::Key_Down);
    ASSERT_TRUE(document().site().at<site::Outlet>(chosen.id).contacts.front().assignment.has_value());
  }
  void addMachineAndPlugItIn() {
    takeTool("map.tool.machine");
    click(0.5, 0.7);
    ASSERT_EQ(all<site::Machine>().size(), 1U);
    key(Qt::Key_Escape);
    ASSERT_EQ(canvas().content().idlePlugs.size(), 1U);
    const QPointF plug = canvas().pointOfPlug(canvas().content().idlePlugs.front()).value();
    drag(plug.toPoint(), at(SubjectKind::Outlet, all<site::Outlet>().at(1).id.text()) - QPoint(0, 3));
    ASSERT_EQ(all<site::Hookup>().size(), 1U);
  }
  // By the menu that a right click on the machine opens.
  void putTheCordBetween() {
    addBy(window->map()->addMenu(), "panel.add.cord", {{"length", "50 ft"}});
    ASSERT_EQ(all<site::Cord>().size(), 1U);
    QMenu menu;
    fillMenu(menu, canvas(), {SubjectKind::Machine, all<site::Machine>().front().id.text()});
    const QString label = QString::fromStdString(all<site::Cord>().front().label);
    for (QMenu* below : menu.findChildren<QMenu*>()) {
      for (QAction* action : below->actions()) {
        if (action->text().startsWith(label)) return action->trigger();
      }
    }
    FAIL() << "the cord is not offered";
  }
};

TEST_F(BuildingFromNothing, IsAnsweredAndSavedAndReadTheSame) {
  ASSERT_NO_FATAL_FAILURE(begin());
  ASSERT_NO_FATAL_FAILURE(addPanelAndBreakers());
  ASSERT_NO_FATAL_FAILURE(addOutlets());
  ASSERT_NO_FATAL_FAILURE(addMachineAndPlugItIn());
  ASSERT_NO_FATAL_FAILURE(putTheCordBetween());
  EXPECT_EQ(all<site::ExtensionUse>().size(), 1U);

  ASSERT_TRUE(settles());
  ASSERT_EQ(verdict()->answer.hookups.size(), 1U);
  const study::HookupAnswer& answer = verdict()->answer.hookups.front();
  const site::Contact& wired = document().site().at<site::Outlet>(*answer.outlet).contacts.front();
  EXPECT_EQ(answer.contact, wired.name);
  EXPECT_EQ(answer.circuit, wired.assignment->circuit);
  EXPECT_EQ(answer.cords.size(), 2U);
  EXPECT_GT(answer.voltage.likely, 90.0 * units::volt);
  EXPECT_LT(answer.voltage.likely, 120.0 * units::volt);
  EXPECT_EQ(findings().rows().size(), verdict()->findings.size());
  EXPECT_FALSE(words().sentence.isEmpty());

  const QString path = folder.path() + "/new.json";
  ASSERT_TRUE(window->files().saveTo(path));
  EXPECT_EQ(io::loadSite(path.toStdString()).value(), document().site());
}

TEST_F(BuildingFromNothing, EveryStepCanBeTakenBack) {
  ASSERT_NO_FATAL_FAILURE(begin());
  const site::Site blank = document().site();
  ASSERT_NO_FATAL_FAILURE(addPanelAndBreakers());
  ASSERT_NO_FATAL_FAILURE(addOutlets());
  ASSERT_NO_FATAL_FAILURE(addMachineAndPlugItIn());
  const site::Site built = document().site();
  while (document().canUndo()) document().undo();
  EXPECT_EQ(document().site(), blank);
  while (document().canRedo()) document().redo();
  EXPECT_EQ(document().site(), built);
}

}  // namespace
}  // namespace cordreach::app
