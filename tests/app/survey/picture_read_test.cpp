// SPDX-License-Identifier: GPL-3.0-or-later
// Plans that are sound, large, broken or traps; where they lie; who may be read.
#include "survey/picture_read.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <atomic>

#include "app/survey/plans.h"
#include "panels/new_things.h"
#include "survey/pdf_pages.h"
#include "survey/picture_dialogs.h"
#include "survey/picture_files.h"

namespace cordreach::app {
namespace {

using testing::bomb;
using testing::encoded;
using testing::lockedPdf;
using testing::pdf;
using testing::planImage;

TEST(PictureRead, TakesPngAndJpegByTheirContent) {
  for (const auto& [format, suffix] : {std::pair("PNG", "png"), std::pair("JPG", "jpg")}) {
    const auto read = readPicture(encoded(planImage(), format));
    ASSERT_TRUE(read) << format;
    EXPECT_EQ(read.value().sheet, QSize(1200, 600));
    EXPECT_EQ(read.value().suffix, suffix);
    EXPECT_FALSE(read.value().isReduced());
  }
}

TEST(PictureRead, RefusesWhatIsNoPicture) {
  EXPECT_EQ(readPicture("just words").error().code, "picture.not_one");
  EXPECT_EQ(readPicture({}).error().code, "picture.not_one");
  EXPECT_EQ(readPicture(encoded(planImage(), "BMP")).error().code, "picture.not_one");
  const QByteArray whole = encoded(planImage());
  EXPECT_EQ(readPicture(whole.left(30)).error().code, "picture.broken");
}

TEST(PictureRead, NeverUnpacksWhatSaysItIsBeyondAnyPlan) {
  const auto read = readPicture(bomb(60000, 60000));
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().code, "picture.too_large");
  EXPECT_EQ(std::get<double>(read.error().arguments.front().value), 60000.0);
  // Within the limit, but the bytes are not there.
  EXPECT_EQ(readPicture(bomb(30000, 30000)).error().code, "picture.broken");
}

TEST(PictureRead, APlanOf50000PixelsIsUnpackedSmaller) {
  QImage wide(50000, 600, QImage::Format_Grayscale8);
  wide.fill(255);
  const auto read = readPicture(encoded(wide));
  ASSERT_TRUE(read) << read.error().code;
  EXPECT_TRUE(read.value().isReduced());
  EXPECT_EQ(read.value().sheet, QSize(50000, 600));
  EXPECT_LE(static_cast<qint64>(read.value().image.width()) * read.value().image.height(), kMostKeptPixels);
}

TEST(PictureRead, SaysHowFarItIsAndStopsWhenItIsTold) {
  QImage noisy(3000, 2000, QImage::Format_RGB32);
  for (int y = 0; y < noisy.height(); ++y) {
    for (int x = 0; x < noisy.width(); ++x) noisy.setPixel(x, y, static_cast<uint>((x * 7919) ^ (y * 104729)));
  }
  const QByteArray content = encoded(noisy);
  std::atomic<bool> stop = false;
  std::atomic<int> percent = 0;
  ASSERT_TRUE(readPicture(content, {&stop, &percent}));
  EXPECT_GE(percent, 99);
  stop = true;
  EXPECT_FALSE(readPicture(content, {&stop, &percent}));
}

TEST(PictureRead, TheSizeOfAPlacedPictureIsKnownByItsHead) {
  QTemporaryDir folder;
  const QString path = folder.path() + "/site.json";
  const auto stored = storePicture(path, encoded(planImage({640, 320})), "png");
  ASSERT_TRUE(stored);
  EXPECT_EQ(sheetOfPlaced(path, stored.value()).value(), QSize(640, 320));
  QFile file(folder.path() + "/" + pictureName(stored.value()));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("no picture any more");
  file.close();
  EXPECT_EQ(sheetOfPlaced(path, stored.value()).error().code, "picture.broken");
}

TEST(PictureFiles, NamesThatLeadElsewhereAreNeverOpened) {
  QTemporaryDir folder;
  QDir(folder.path()).mkdir("site");
  QFile secret(folder.path() + "/secret.png");
  ASSERT_TRUE(secret.open(QIODevice::WriteOnly));
  secret.write(encoded(planImage()));
  secret.close();
  for (const char* hash : {"../secret", "", "..", "0123456789abcdef/../../secret", "NOTAHASH"}) {
    site::Picture picture;
    picture.hash = hash;
    picture.suffix = "png";
    const auto read = readPlacedPicture(folder.path() + "/site/site.json", picture);
    ASSERT_FALSE(read) << hash;
    EXPECT_EQ(read.error().code, "picture.elsewhere") << hash;
  }
  site::Picture other{"0123456789abcdef", "svg"};
  EXPECT_EQ(readPlacedPicture(folder.path() + "/site/site.json", other).error().code, "picture.elsewhere");
  other.suffix = "png";
  EXPECT_EQ(readPlacedPicture(folder.path() + "/site/site.json", other).error().code, "picture.missing");
}

TEST(PictureFiles, PicturesOfAnUntitledSiteComeAlongWhenItIsSaved) {
  QTemporaryDir folder;
  const auto stored = storePicture({}, encoded(planImage({320, 160})), "png");
  ASSERT_TRUE(stored);
  site::Site site = newSite({"Elm House", "Supply", "Floor 1"});
  site::Floor floor = *site.all<site::Floor>().begin();
  floor.picture = stored.value();
  site.all<site::Floor>().put(floor);
  EXPECT_TRUE(readPlacedPicture({}, *floor.picture));
  const QString path = folder.path() + "/site.json";
  EXPECT_TRUE(carryPictures(site, {}, path).empty());
  EXPECT_TRUE(QFile::exists(folder.path() + "/" + pictureName(*floor.picture)));
  EXPECT_EQ(carryPictures(site, {}, "/nowhere/at/all/site.json"), std::vector<std::string>{"Floor 1"});
  QFile::remove(unsavedPictures() + "/" + pictureName(*floor.picture));
  EXPECT_TRUE(readPlacedPicture(path, *floor.picture));
}

TEST(PdfPages, DrawsThePageThatIsAskedForOfAThousand) {
  const auto pages = PdfPages::open(pdf(1000));
  ASSERT_TRUE(pages) << pages.error().code;
  EXPECT_EQ(pages.value()->count(), 1000);
  const QImage page = pages.value()->drawPlan(998);
  EXPECT_NEAR(page.height(), 2339, 3);  // A4 at 200 dots an inch
  EXPECT_TRUE(pages.value()->draw(1000, 200).isNull());
}

TEST(PdfPages, SaysWhyADocumentCannotBeUsed) {
  EXPECT_TRUE(PdfPages::isPdf(lockedPdf()));
  EXPECT_FALSE(PdfPages::isPdf(encoded(planImage({20, 20}))));
  EXPECT_EQ(PdfPages::open(lockedPdf()).error().code, "picture.pdf_locked");
  EXPECT_EQ(PdfPages::open("%PDF-1.4 and then nothing").error().code, "picture.pdf_broken");
}

// A plan photographed aslant: its corners, put right, are its corners again.
TEST(Squared, PutsTheCornersOfAPhotoRight) {
  const QImage plan = planImage({600, 300});
  const QPolygonF corners{QPointF(80, 60), QPointF(560, 20), QPointF(610, 380), QPointF(40, 330)};
  QTransform aslant;
  ASSERT_TRUE(QTransform::quadToQuad(QPolygonF{QPointF(0, 0), QPointF(600, 0), QPointF(600, 300), QPointF(0, 300)},
                                     corners, aslant));
  QImage photo(700, 450, QImage::Format_RGB32);
  photo.fill(Qt::darkGray);
  QPainter painter(&photo);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setTransform(aslant);
  painter.drawImage(0, 0, plan);
  painter.end();
  const auto put = squared(photo, {corners.begin(), corners.end()});
  ASSERT_TRUE(put);
  const auto shade = [&](double across, double down) {
    return qGray(put->pixel(static_cast<int>(put->width() * across), static_cast<int>(put->height() * down)));
  };
  EXPECT_LT(shade(0.5, 250.0 / 600), 140) << "the wall along the corridor";
  EXPECT_LT(shade(413.0 / 1200, 0.2), 140) << "the wall between two rooms";
  EXPECT_GT(shade(0.5, 0.5), 200) << "the corridor";
  EXPECT_GT(shade(0.02, 0.02), 200) << "the paper's edge, not what was behind it";
  EXPECT_FALSE(squared(photo, {{0, 0}, {10, 0}, {10, 1}, {0, 1}}));
}

}  // namespace
}  // namespace cordreach::app
