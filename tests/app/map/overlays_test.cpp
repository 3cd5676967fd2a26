// SPDX-License-Identifier: GPL-3.0-or-later
// The overlays that are asked something: how far a cord gets, volts under a machine, what is warm, what is near its
// limit.
#include <QSignalSpy>

#include "app/map/canvas_fixture.h"
#include "map/list_bars.h"
#include "map/reach_bar.h"
#include "map/volts_bar.h"
#include "panels/link_button.h"
#include "panels/plain_controls.h"
#include "planning/outlet_choice.h"
#include "rules/hot_places.h"
#include "rules/near_limit.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;

constexpr int kLongMs = 120000;  // on a busy machine without an optimiser

QString plain(QString text) { return text.replace(QChar(0x202F), QChar(' ')); }

class Overlays : public test::MapTest {
 protected:
  void judgeNow() {
    QSignalSpy judged(&judge, &JudgeService::judged);
    judge.request(document.snapshot(), false);
    ASSERT_TRUE(judged.wait(kLongMs));
  }
  [[nodiscard]] const ReachArea& area() const { return canvas().state().area; }
  [[nodiscard]] const MapOutlet& outlet(const char* id) const {
    return canvas()
        .content()
        .outlets[static_cast<std::size_t>(itemOf(canvas().content(), {SubjectKind::Outlet, id})->index)];
  }
  // By the keys, as at a box that has the focus.
  static void choose(ChoiceBox& box, const QString& words) {
    box.setFocus();
    for (int i = 0; i < box.count() && !box.currentText().contains(words); ++i) QTest::keyClick(&box, Qt::Key_Down);
    ASSERT_TRUE(box.currentText().contains(words)) << words.toStdString();
  }
};

class Reaching : public Overlays {
 protected:
  void SetUp() override {
    MapTest::SetUp();
    selection.choose({{SubjectKind::Outlet, "1-05"}});
    view.showOverlay(Overlay::Reach);
    ASSERT_TRUE(view.reachBar().isVisible());
    walk();
  }
  void walk() { ASSERT_TRUE(walked.wait(kLongMs)); }

  QSignalSpy walked{&view.reachBar(), &ReachBar::walked};
};

TEST_F(Reaching, ShowsTheAreaWithAndWithoutSlackAndSaysBothAsFigures) {
  const QRectF kept = area().withSlack.boundingRect();
  const QRectF tight = area().stretched.boundingRect();
  EXPECT_TRUE(tight.contains(kept));
  const double slackM = planning::kSlack.in(units::metre);
  EXPECT_NEAR(tight.right() - kept.right(), slackM, 0.6);
  const QString said = plain(view.reachBar().said());
  for (const char* figure :
       {"outlet 1-05", "50 ft of its own", "42 ft along the floor", "8 ft of slack", "6 ft to 10 ft"}) {
    EXPECT_TRUE(said.contains(figure)) << figure << "\n" << said.toStdString();
  }
  EXPECT_EQ(view.reachBar().accessibleDescription(), view.reachBar().said());
}

TEST_F(Reaching, AnExtensionOfTheSiteGoesFartherAndIsNamed) {
  const double before = area().withSlack.boundingRect().width();
  choose(*view.reachBar().extension(), "C01");
  walk();
  EXPECT_GT(area().withSlack.boundingRect().width(), before + 3);
  EXPECT_TRUE(plain(view.reachBar().said()).contains("+ ")) << view.reachBar().said().toStdString();
}

TEST_F(Reaching, AStockLengthCanBeTriedAndWhatIsOutOfServiceIsNotOffered) {
  choose(*view.reachBar().extension(), "stock");
  walk();
  const ChoiceBox& box = *view.reachBar().extension();
  for (const site::Cord& cord : document.site().all<site::Cord>()) {
    EXPECT_EQ(box.findData(QString::fromStdString(cord.id.text())) >= 0, !cord.outOfService) << cord.label;
  }
}

TEST_F(Reaching, WithoutAnOutletItStartsFromAllThatAreFree) {
  const double before = area().withSlack.boundingRect().width();
  selection.clear();
  walk();
  EXPECT_GT(area().withSlack.boundingRect().width(), before + 5);
  EXPECT_TRUE(view.reachBar().said().startsWith("From the ")) << view.reachBar().said().toStdString();
}

TEST_F(Reaching, NothingStartsFromAnOutletThatIsOffLimits) {
  site::Outlet changed = document.site().at<site::Outlet>(site::OutletId("1-05"));
  const site::Outlet before = changed;
  for (site::Contact& contact : changed.contacts) contact.use = site::UseClass::Never;
  ASSERT_TRUE(document.apply({"outlet.change", {site::Change<site::Outlet>{before, changed}}}).ok());
  walk();
  EXPECT_TRUE(area().stretched.isEmpty());
  EXPECT_TRUE(view.reachBar().said().contains("off limits"));
}

TEST_F(Reaching, SpeaksInTheUnitsThatAreChosen) {
  EXPECT_TRUE(plain(view.reachBar().said()).contains("8 ft of slack"));
  book = text::Phrasebook::load("en", text::UnitSystem::Metric).value();
  QEvent other(QEvent::LanguageChange);
  QApplication::sendEvent(&view.reachBar(), &other);
  walk();
  EXPECT_TRUE(plain(view.reachBar().said()).contains("2.4 m of slack")) << view.reachBar().said().toStdString();
}

TEST_F(Reaching, GoesWithItsOverlayAndIsAnotherOnAnotherFloor) {
  view.showFloor(site::FloorId("F2"));
  walk();
  EXPECT_TRUE(view.reachBar().said().startsWith("From the "));
  view.showOverlay(Overlay::Wiring);
  EXPECT_TRUE(area().stretched.isEmpty());
  EXPECT_FALSE(view.reachBar().isVisible());
}

TEST_F(Overlays, VoltsAreThoseOfTheMachineThatIsTried) {
  judgeNow();
  view.showOverlay(Overlay::Volts);
  const QString planned = outlet("1-22").figure;
  EXPECT_FALSE(planned.isEmpty());
  QSignalSpy tested(&view.voltsBar(), &VoltsBar::tested);
  choose(*view.voltsBar().machine(), "Burnisher, 1500");
  ASSERT_TRUE(tested.wait(kLongMs));
  std::optional<planning::TestedOutlet> expected;
  planning::testEverywhere(document.site(), site::MachineId("M2"), {}, {}, [&](const planning::TestedOutlet& one) {
    if (one.outlet.text() == "1-22") expected = one;
  });
  EXPECT_NE(outlet("1-22").figure, planned);
  EXPECT_NEAR(plain(outlet("1-22").figure).section(' ', 0, 0).toDouble(), expected->atOutlet->in(units::volt), 0.06);
  EXPECT_EQ(outlet("1-22").severity, rules::Severity::Caution);  // too few volts at its terminals
  EXPECT_EQ(outlet("1-13").severity, rules::Severity::Ok);       // the plan's finding there is not about this
  EXPECT_TRUE(view.voltsBar().said().contains("Burnisher, 1500")) << view.voltsBar().said().toStdString();
  choose(*view.voltsBar().machine(), "Burnisher, 1600");
  QTest::keyClick(view.voltsBar().machine(), Qt::Key_Home);
  EXPECT_EQ(outlet("1-22").figure, planned);
}

TEST_F(Overlays, HotShowsPlugsAndWallWiresAndNamesTheHottest) {
  judgeNow();
  view.showOverlay(Overlay::Hot);
  EXPECT_TRUE(outlet("1-13").heat);
  EXPECT_FALSE(outlet("1-13").figure.isEmpty());
  EXPECT_FALSE(outlet("1-27").heat);
  const auto& runs = canvas().content().runs;
  EXPECT_TRUE(std::any_of(runs.begin(), runs.end(), [](const MapRun& run) { return run.heat.has_value(); }));
  auto* bar = view.barOf(Overlay::Hot);
  const auto places = rules::hotPlaces(document.site(), judge.last()->answer);
  const QString hottest = QString::number(std::lround(places.front().temperature->fahrenheit()));
  EXPECT_TRUE(bar->said().contains(hottest)) << bar->said().toStdString();
  QSignalSpy wanted(&view, &MapView::hotWanted);
  QTest::mouseClick(bar->findChild<LinkButton*>(), Qt::LeftButton);
  EXPECT_EQ(wanted.count(), 1);
  view.showOverlay(Overlay::Wiring);
  EXPECT_FALSE(outlet("1-13").heat);
}

TEST_F(Overlays, AmpsLeftNamesTheCircuitsNearTheirLimit) {
  view.showOverlay(Overlay::AmpsLeft);
  auto* bar = view.barOf(Overlay::AmpsLeft);
  for (const auto& one : rules::nearLimit(document.site())) {
    EXPECT_TRUE(bar->said().contains(QString::fromStdString(one.circuit.text())));
  }
  QSignalSpy wanted(&view, &MapView::nearLimitWanted);
  QTest::keyClick(bar->findChild<LinkButton*>(), Qt::Key_Space);
  EXPECT_EQ(wanted.count(), 1);
}

}  // namespace
}  // namespace cordreach::app
