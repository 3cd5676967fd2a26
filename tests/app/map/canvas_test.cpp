// SPDX-License-Identifier: GPL-3.0-or-later
// Pointing, walking, zooming and the accessible tree of the plan.
#include <QAccessible>
#include <cmath>

#include "app/map/canvas_fixture.h"
#include "look/settings.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;

class Canvas : public test::MapTest {};

TEST_F(Canvas, OpensWithTheWholeFloorInSight) {
  for (const QPointF& at : canvas().layout().outlets) {
    EXPECT_TRUE(canvas().rect().contains(canvas().toWidget(at).toPoint()));
  }
}

TEST_F(Canvas, AClickChoosesWhatIsUnderIt) {
  QTest::mouseClick(&canvas(), Qt::LeftButton, {}, at(SubjectKind::Outlet, "1-12"));
  EXPECT_EQ(selection.chosen(), (std::vector<Subject>{{SubjectKind::Outlet, "1-12"}}));
  QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::ShiftModifier, at(SubjectKind::Outlet, "1-17"));
  EXPECT_EQ(selection.chosen().size(), 2U);
  const auto circuits = chosenCircuits(document.site(), {{SubjectKind::Outlet, "1-12"}});
  EXPECT_EQ(circuits, std::vector<site::CircuitId>{site::CircuitId("1A-4")});
}

TEST_F(Canvas, ABoxChoosesWhatIsInIt) {
  const QPoint corner = canvas().toWidget(QPointF(33.3, -0.6) * canvas().scale()).toPoint();
  const QPoint other = canvas().toWidget(QPointF(38.6, 1.4) * canvas().scale()).toPoint();
  drag(corner, other);
  EXPECT_TRUE(selection.holds({SubjectKind::Outlet, "1-25"}));
  EXPECT_TRUE(selection.holds({SubjectKind::Outlet, "1-26"}));
  EXPECT_FALSE(selection.holds({SubjectKind::Outlet, "1-27"}));
}

TEST_F(Canvas, DraggingAnOutletMovesItByOneEdit) {
  const auto before = document.site().at<site::Outlet>(site::OutletId("1-12")).place->at;
  const QPoint from = at(SubjectKind::Outlet, "1-12");
  drag(from, from + QPoint(40, 0));
  const auto after = document.site().at<site::Outlet>(site::OutletId("1-12")).place->at;
  EXPECT_NEAR(after.xM - before.xM, 40 / canvas().scale(), 0.05);
  EXPECT_NEAR(after.yM, before.yM, 0.05);
  EXPECT_EQ(document.undoCode(), "things.move");
}

TEST_F(Canvas, ArrowsWalkToTheNearestThingThatWay) {
  canvas().focusItem(itemOf(canvas().content(), {SubjectKind::Outlet, "1-02"}));
  key(Qt::Key_Right);
  EXPECT_EQ(subjectOf(canvas().content(), *canvas().state().focus), (Subject{SubjectKind::Outlet, "1-01"}));
  key(Qt::Key_Return);
  EXPECT_TRUE(selection.holds({SubjectKind::Outlet, "1-01"}));
}

TEST_F(Canvas, ZoomKeepsThePointUnderThePointer) {
  const QPointF pointer(300, 200);
  const QPointF before = canvas().toPlan(pointer) / canvas().scale();
  canvas().zoomBy(1.7, pointer);
  const QPointF after = canvas().toPlan(pointer) / canvas().scale();
  EXPECT_NEAR(before.x(), after.x(), 1e-6);
  EXPECT_NEAR(before.y(), after.y(), 1e-6);
  key(Qt::Key_0);
  EXPECT_TRUE(canvas().rect().contains(at(SubjectKind::Outlet, "1-10")));
}

TEST_F(Canvas, ShowGoesToTheFloorAndPlaceAndRingsItOnce) {
  const auto upstairs = [&] {
    for (const site::Outlet& outlet : document.site().all<site::Outlet>()) {
      if (outlet.place && outlet.place->floor != *canvas().floor())
        return Subject{SubjectKind::Outlet, outlet.id.text()};
    }
    return Subject{};
  }();
  const double before = canvas().scale();
  selection.show(upstairs);
  ASSERT_TRUE(canvas().pointOf(upstairs));
  EXPECT_TRUE(canvas().state().ring);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !canvas().state().ring; }, 4000));
  EXPECT_GT(canvas().scale(), before);
  const QPointF off = canvas().pointOf(upstairs).value() - QPointF(canvas().rect().center());
  EXPECT_LT(std::hypot(off.x(), off.y()), 4);
}

TEST_F(Canvas, ShowOfACircuitGoesToItsPanel) {
  selection.show({SubjectKind::Circuit, "1A-4"});
  ASSERT_TRUE(canvas().state().focus);
  EXPECT_EQ(canvas().state().focus->kind, ItemKind::Panel);
}

TEST_F(Canvas, ShowOfNothingOnAPlanChangesNothing) {
  const auto floor = canvas().floor();
  selection.show({SubjectKind::Outlet, "no-such"});
  EXPECT_EQ(canvas().floor(), floor);
  EXPECT_FALSE(canvas().state().ring);
}

TEST_F(Canvas, TheNearestOfTwoIsHit) {
  HitIndex index;
  index.build(
      {{{10, 10}, {ItemKind::Outlet, 0}}, {{20, 10}, {ItemKind::Outlet, 1}}, {{500, 900}, {ItemKind::Panel, 0}}});
  EXPECT_EQ(index.nearest({14, 10}, 14), (ItemRef{ItemKind::Outlet, 0}));
  EXPECT_EQ(index.nearest({16, 10}, 14), (ItemRef{ItemKind::Outlet, 1}));
  EXPECT_EQ(index.nearest({16, 40}, 14), std::nullopt);
  EXPECT_EQ(index.nearest({505, 905}, 14), (ItemRef{ItemKind::Panel, 0}));
}

TEST_F(Canvas, StampsAreMadeForTheScreenTheyAreShownOn) {
  SymbolStamps stamps;
  const StampWish wish{QStringLiteral("receptacle-duplex"), 24, Qt::black, Qt::white, 90, 2.0};
  const QPixmap& stamp = stamps.pixmap(wish);
  EXPECT_EQ(stamp.size(), QSize(48, 48));
  EXPECT_EQ(stamp.devicePixelRatio(), 2.0);
  EXPECT_EQ(stamps.pixmap(wish).cacheKey(), stamp.cacheKey());
  const QImage image = stamp.toImage();
  EXPECT_GT(image.pixelColor(4 + 3, 20).alpha(), 0);  // turned: the two lines run across
  EXPECT_EQ(image.pixelColor(20, 6).alpha(), 0);
}

TEST_F(Canvas, EveryThingHasANameInTheAccessibleTree) {
  QAccessibleInterface* plan = QAccessible::queryAccessibleInterface(&canvas());
  ASSERT_NE(plan, nullptr);
  const auto items = canvas().itemsInOrder();
  ASSERT_EQ(plan->childCount(), static_cast<int>(items.size()));
  QStringList names;
  for (int i = 0; i < plan->childCount(); ++i) {
    names << plan->child(i)->text(QAccessible::Name);
    EXPECT_FALSE(names.back().isEmpty());
  }
  EXPECT_TRUE(names.contains(QStringLiteral("Outlet 1-12, breaker 1A-4, traced"))) << names.join('\n').toStdString();
  plan->child(0)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
  EXPECT_TRUE(selection.holds({SubjectKind::Outlet, "1-01"}));
}

TEST_F(Canvas, AChosenMomentShowsTheHookupsOfThen) {
  const auto isPlugged = [&](const char* machine) {
    const auto& cords = canvas().content().cords;
    return std::any_of(cords.begin(), cords.end(),
                       [&](const MapCord& cord) { return cord.plug.machine.text() == machine; });
  };
  EXPECT_TRUE(isPlugged("M2"));
  EXPECT_TRUE(isPlugged("M8"));
  view.moment().choose(18.5 * units::hour);
  EXPECT_TRUE(isPlugged("M2"));
  EXPECT_FALSE(isPlugged("M8"));
}

TEST_F(Canvas, OnADarkSheetAPlansPaperIsDark) {
  const site::Floor old = document.site().at<site::Floor>(*canvas().floor());
  site::Floor floor = old;
  floor.picture = site::Picture{};
  floor.picture->origin = {-8.0, -8.0};
  floor.picture->metresPerPixel = 0.1;
  ASSERT_TRUE(document.apply({"plan.place", {site::Change<site::Floor>{old, floor}}}));
  QPixmap paper(40, 40);
  paper.fill(Qt::white);
  const auto lightness = [&](look::Ground ground) {
    look::Choices choices;
    choices.ground = ground;
    look::setPresent(*qApp, look::lookOf(choices, false));
    canvas().setPicture(paper, paper.size());
    const QPoint middle = canvas().toWidget(QPointF(-6.0, -6.0) * canvas().scale()).toPoint();
    return canvas().grab().toImage().pixelColor(middle).lightness();
  };
  EXPECT_GT(lightness(look::Ground::Light), 200);
  EXPECT_LT(lightness(look::Ground::Dark), 60);
  EXPECT_GT(lightness(look::Ground::Light), 200);
}

TEST_F(Canvas, FiguresFadeUntilTheVerdictIsOfThisSite) {
  EXPECT_FALSE(canvas().content().fresh);
  judge.request(document.snapshot(), false);
  EXPECT_TRUE(QTest::qWaitFor([&] { return canvas().content().fresh; }, 20000));
  const auto machine = itemOf(canvas().content(), {SubjectKind::Machine, "M2"});
  EXPECT_FALSE(canvas().content().machines[static_cast<std::size_t>(machine->index)].figure.isEmpty());
}

}  // namespace
}  // namespace cordreach::app
