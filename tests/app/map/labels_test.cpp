// SPDX-License-Identifier: GPL-3.0-or-later
// Words of the demo's floors: none on a symbol, a mark or another; what is faulty or chosen keeps its own.
#include "app/map/canvas_fixture.h"
#include "map/label_placer.h"
#include "map/map_labels.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;

class Labels : public test::MapTest {
 protected:
  void SetUp() override {
    MapTest::SetUp();
    judge.request(document.snapshot(), false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return canvas().content().fresh; }, 20000));
  }

  [[nodiscard]] MapWords words() const {
    const QRectF extent = canvas().content().extent;
    const QRectF plan(extent.topLeft() * canvas().scale(), extent.size() * canvas().scale());
    return wordsOf({canvas().content(), canvas().layout(), plan.adjusted(-99, -99, 99, 99), selection.chosen()});
  }

  // Everything drawn that words may not cover, with its name.
  [[nodiscard]] std::vector<std::pair<QRectF, std::string>> symbols() const {
    std::vector<std::pair<QRectF, std::string>> all;
    for (const ItemRef& item : canvas().itemsInOrder()) {
      if (item.kind == ItemKind::Room) continue;  // the ground that all stands on
      all.emplace_back(symbolBox(canvas().layout(), item), canvas().nameOf(item).toStdString());
    }
    return all;
  }

  void expectNothingCovered() const {
    const MapWords all = words();
    ASSERT_FALSE(all.labels.empty());
    for (std::size_t i = 0; i < all.labels.size(); ++i) {
      const std::string text = all.labels[i].lines.front().text.toStdString();
      for (const auto& [box, name] : symbols()) {
        EXPECT_FALSE(box.intersects(all.labels[i].box)) << text << " over " << name;
      }
      for (const MapMark& mark : all.marks) EXPECT_FALSE(mark.box.intersects(all.labels[i].box)) << text;
      for (std::size_t k = i + 1; k < all.labels.size(); ++k) {
        EXPECT_FALSE(all.labels[k].box.intersects(all.labels[i].box))
            << text << " and " << all.labels[k].lines.front().text.toStdString();
      }
    }
  }

  void expectKept() const {
    const MapWords all = words();
    const MapContent& content = canvas().content();
    const auto hasLabel = [&](ItemKind kind, std::size_t i) {
      return std::any_of(all.labels.begin(), all.labels.end(), [&](const MapLabel& label) {
        return label.owner == ItemRef{kind, static_cast<int>(i)};
      });
    };
    for (std::size_t i = 0; i < content.machines.size(); ++i) {
      if (content.machines[i].severity < rules::Severity::Caution) continue;
      EXPECT_TRUE(hasLabel(ItemKind::Machine, i)) << content.machines[i].name.toStdString();
    }
    for (std::size_t i = 0; i < content.outlets.size(); ++i) {
      EXPECT_TRUE(hasLabel(ItemKind::Outlet, i)) << content.outlets[i].label.toStdString();
    }
  }

  void showFloor(int index) {
    std::vector<site::FloorId> floors;
    for (const site::Floor& floor : document.site().all<site::Floor>()) floors.push_back(floor.id);
    view.showFloor(floors.at(static_cast<std::size_t>(index)));
    ASSERT_EQ(canvas().floor(), floors.at(static_cast<std::size_t>(index)));
  }
};

TEST_F(Labels, CoverNoSymbolMarkOrOtherLabelOnEitherFloor) {
  expectNothingCovered();
  showFloor(1);
  expectNothingCovered();
}

TEST_F(Labels, CoverNothingInASmallWindowEither) {
  view.resize(720, 500);
  expectNothingCovered();
  showFloor(1);
  expectNothingCovered();
}

TEST_F(Labels, OfFaultyThingsAndOfEveryOutletStay) {
  expectKept();
  view.resize(720, 500);
  expectKept();
}

TEST_F(Labels, OfAChosenThingStays) {
  for (const site::FixedLoad& load : document.site().all<site::FixedLoad>()) {
    const Subject subject{SubjectKind::FixedLoad, load.id.text()};
    const auto item = itemOf(canvas().content(), subject);
    if (!item) continue;
    selection.choose({subject});
    const MapWords all = words();
    EXPECT_TRUE(std::any_of(all.labels.begin(), all.labels.end(), [&](const MapLabel& one) {
      return one.owner == item;
    })) << load.name;
    expectNothingCovered();
  }
}

TEST_F(Labels, StayOnTheSheetAroundThePlan) {
  const QRectF extent = canvas().content().extent;
  const QRectF sheet = QRectF(extent.topLeft() * canvas().scale(), extent.size() * canvas().scale())
                           .adjusted(-planMargin(), -planMargin(), planMargin(), planMargin());
  for (const MapLabel& label : words().labels) {
    EXPECT_TRUE(sheet.contains(label.box)) << label.lines.front().text.toStdString();
    EXPECT_TRUE(QRectF(canvas().rect()).contains(label.box.translated(canvas().toWidget({}))));
  }
}

// A row of outlets on a plan picture: nothing else is drawn, and the picture is sheet to write on.
TEST_F(Labels, MayStandAnywhereOnAPicture) {
  MapContent content = canvas().content();
  content.walls.clear();
  content.rooms.clear();
  for (MapOutlet& outlet : content.outlets) outlet.figure = QStringLiteral("20 A");
  QRectF outlets(content.outlets.front().at, QSizeF(0.01, 0.01));
  for (const MapOutlet& outlet : content.outlets) outlets = outlets.united(QRectF(outlet.at, QSizeF(0.01, 0.01)));
  content.extent = outlets;
  const QRectF everywhere(-1e4, -1e4, 2e4, 2e4);
  const auto isOutside = [&](const MapLabel& label) {
    const QRectF sheet(outlets.topLeft() * canvas().scale(), outlets.size() * canvas().scale());
    return !sheet.adjusted(-planMargin(), -planMargin(), planMargin(), planMargin()).contains(label.box);
  };
  const MapWords narrow = wordsOf({content, canvas().layout(), everywhere, {}});
  EXPECT_TRUE(std::ranges::none_of(narrow.labels, isOutside));
  const MapWords wide = wordsOf({content, canvas().layout(), everywhere, {}, outlets.adjusted(-9, -9, 9, 9)});
  EXPECT_TRUE(std::ranges::any_of(wide.labels, isOutside));
}

TEST_F(Labels, AFixedLoadStandsBesideItsOutlet) {
  for (std::size_t i = 0; i < canvas().content().loads.size(); ++i) {
    const QRectF load = symbolBox(canvas().layout(), {ItemKind::Load, static_cast<int>(i)});
    for (std::size_t k = 0; k < canvas().content().outlets.size(); ++k) {
      EXPECT_FALSE(load.intersects(symbolBox(canvas().layout(), {ItemKind::Outlet, static_cast<int>(k)})))
          << canvas().content().loads[i].name.toStdString() << " on "
          << canvas().content().outlets[k].label.toStdString();
    }
  }
}

TEST(LabelPlacer, GoesFartherBeforeItShortensAndSaysSo) {
  LabelPlacer placer;
  LabelWish wish{{100, 100}, {60, 20}, 10};
  wish.shorter = {20, 10};
  wish.secondRing = 40;
  placer.block(QRectF(85, 60, 30, 80));
  placer.block(QRectF(60, 85, 80, 30));
  const auto away = placer.place(wish);
  ASSERT_TRUE(away);
  EXPECT_TRUE(away->isAway);
  EXPECT_FALSE(away->isShort);
}

TEST(LabelPlacer, ShortensWhereOnlyFewWordsFit) {
  LabelPlacer placer;
  placer.confine(QRectF(80, 80, 60, 40));
  LabelWish wish{{100, 100}, {60, 20}, 10};
  wish.shorter = {20, 10};
  const auto placed = placer.place(wish);
  ASSERT_TRUE(placed);
  EXPECT_TRUE(placed->isShort);
  EXPECT_FALSE(placed->isAway);
}

}  // namespace
}  // namespace cordreach::app
