// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet to carry round: what is drawn on its pages, seen by a painter that writes down every word.
#include "listings/walk_sheet.h"

#include <gtest/gtest.h>

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QTemporaryDir>

#include "app/panels/support.h"
#include "listings/walk_sheet_dialog.h"
#include "site/walking_order.h"
#include "support/test_files.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;
using testing::english;

struct Seen {
  QString text;
  int smallest = 1000;
  double lowest = 0;
};

struct Words : QPaintEngine {
  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  void updateState(const QPaintEngineState&) override {}
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawPath(const QPainterPath&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  Type type() const override { return User; }
  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    seen.text += item.text() + ' ';
    seen.smallest = std::min(seen.smallest, item.font().pixelSize());
    seen.lowest = std::max(seen.lowest, at.y());
  }
  Seen seen;
};

struct Paper : QPaintDevice {
  mutable Words words;
  QPaintEngine* paintEngine() const override { return &words; }
  int metric(PaintDeviceMetric metric) const override {
    if (metric == PdmWidth) return 612;
    if (metric == PdmHeight) return 792;
    if (metric == PdmDevicePixelRatio) return 1;
    if (metric == PdmDevicePixelRatioScaled) return static_cast<int>(devicePixelRatioFScale());
    return 72;
  }
};

Seen drawn(const WalkSheet& sheet, int page) {
  Paper paper;
  QPainter painter(&paper);
  sheet.paint(painter, page);
  painter.end();
  Seen seen = paper.words.seen;
  seen.text = seen.text.simplified();
  return seen;
}

TEST(WalkSheet, NamesEveryOutletInWalkingOrder) {
  const site::Site site = demoBuilding();
  const WalkSheet sheet(site, english(), std::nullopt);
  QStringList wanted;
  for (const site::OutletId& id : site::walkingOrder(site)) {
    wanted << QString::fromStdString(site.at<site::Outlet>(id).label);
  }
  EXPECT_EQ(sheet.outlets(), wanted);
  const WalkSheet upstairs(site, english(), site::FloorId("F2"));
  EXPECT_GT(upstairs.outlets().size(), 20);
  for (const QString& outlet : upstairs.outlets()) EXPECT_TRUE(outlet.startsWith("2-")) << outlet.toStdString();
}

TEST(WalkSheet, CarriesItsHeadAndItsCautionsOnEveryPage) {
  const WalkSheet sheet(demoBuilding(), english(), std::nullopt);
  ASSERT_GT(sheet.pageCount(), 1);
  for (int page = 0; page < sheet.pageCount(); ++page) {
    const Seen words = drawn(sheet, page);
    EXPECT_TRUE(words.text.contains("Not a substitute for an electrician. Local code decides.")) << page;
    EXPECT_TRUE(words.text.contains("Do not open panels")) << page;
    EXPECT_TRUE(words.text.contains("Breaker found")) << page;
    EXPECT_GE(words.smallest, 8) << page;
    EXPECT_LE(words.lowest, 792 - 36) << page;
  }
}

TEST(WalkSheet, BreaksLongWordsIntoLinesAndKeepsMarkupAsLetters) {
  site::Site site = demoBuilding();
  site::Outlet outlet = *site.all<site::Outlet>().begin();
  outlet.room = "<b>" + std::string(300, 'w') + "</b>";
  site.all<site::Outlet>().put(outlet);
  const WalkSheet sheet(site, english(), std::nullopt);
  QString all;
  for (int page = 0; page < sheet.pageCount(); ++page) all += drawn(sheet, page).text;
  EXPECT_TRUE(all.remove(' ').contains("<b>www"));
}

TEST(WalkSheet, IsAPdfOfAsManyPages) {
  const WalkSheet sheet(demoBuilding(), english(), std::nullopt);
  const QByteArray pdf = sheet.pdf();
  EXPECT_TRUE(pdf.startsWith("%PDF-"));
  EXPECT_EQ(pdf.count("/Type /Page\n") + pdf.count("/Type /Page "), sheet.pageCount());
}

TEST(WalkSheet, OfNoOutletsIsOnePage) {
  const WalkSheet sheet(site::Site{site::SiteId("s")}, english(), std::nullopt);
  EXPECT_EQ(sheet.pageCount(), 1);
  EXPECT_TRUE(drawn(sheet, 0).text.contains("Local code decides."));
}

TEST(WalkSheetDialog, TurnsPagesAndSaves) {
  testing::Desk desk{demoBuilding()};
  WalkSheetDialog dialog(desk.session);
  dialog.turn(1);
  EXPECT_EQ(dialog.page(), 1);
  dialog.turn(-5);
  EXPECT_EQ(dialog.page(), 0);
  dialog.turn(1000);
  EXPECT_EQ(dialog.page(), dialog.sheet().pageCount() - 1);
  const QTemporaryDir folder;
  ASSERT_TRUE(dialog.save(folder.filePath("walk.pdf")).ok());
  EXPECT_EQ(testing::fileText(folder.filePath("walk.pdf").toStdString()).substr(0, 5), "%PDF-");
  EXPECT_FALSE(dialog.save(folder.filePath("none/walk.pdf")).ok());
}

}  // namespace
}  // namespace cordreach::app
