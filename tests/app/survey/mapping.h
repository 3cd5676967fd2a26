// SPDX-License-Identifier: GPL-3.0-or-later
// The whole window with a plan brought into it: dialogs answered, points dragged, files dropped.
#pragma once

#include <QClipboard>
#include <QDropEvent>
#include <QFile>
#include <QGuiApplication>
#include <QMimeData>
#include <QTabBar>
#include <QTimer>
#include <QUrl>
#include <algorithm>
#include <functional>
#include <stdexcept>

#include "app/story/story.h"
#include "app/survey/plans.h"
#include "listings/listing_model.h"
#include "listings/listing_table.h"
#include "listings/listings_view.h"
#include "survey/floor_picture.h"
#include "survey/picture_desk.h"
#include "survey/picture_dialogs.h"
#include "survey/start_dialog.h"

namespace cordreach::app {

class MappingTest : public StoryTest {
 protected:
  void TearDown() override { EXPECT_EQ(m_asked, 0) << "a dialog that never came"; }

  // Does that to the dialog of this kind that comes up next; it may come only when something was read.
  template <class Dialog>
  void whenAsked(std::function<void(Dialog&)> act) {
    ++m_asked;
    auto* look = new QTimer(window.get());
    QObject::connect(look, &QTimer::timeout, window.get(), [this, look, act] {
      auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
      if (dialog == nullptr || !dialog->isActiveWindow()) return;
      look->stop();
      look->deleteLater();
      --m_asked;
      act(*dialog);
      if (!dialog->isVisible()) return;
      ADD_FAILURE() << "the dialog stays";
      dialog->reject();
    });
    look->start(2);
  }
  static void type(PlanDialog& dialog, const char* key, const QString& text) {
    auto* line = qobject_cast<QLineEdit*>(dialog.row(key)->editor());
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, text);
  }
  static void dragPoint(HandleView& view, std::size_t index, const QPointF& pixel) {
    const QPoint from = view.toWidget(view.points()[index]).toPoint();
    const QPoint to = view.toWidget(pixel).toPoint();
    QTest::mousePress(&view, Qt::LeftButton, {}, from);
    QTest::mouseMove(&view, (from + to) / 2);
    QTest::mouseMove(&view, to);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, to);
  }
  [[nodiscard]] const site::Floor& floor() { return document().site().at<site::Floor>(*canvas().floor()); }
  [[nodiscard]] PictureDesk& pictures() { return window->map()->view()->pictures(); }
  [[nodiscard]] bool pictureIsShown() {
    return QTest::qWaitFor([this] { return !window->map()->view()->picture().isReading(); });
  }
  [[nodiscard]] QPoint onPlan(double xM, double yM) {
    return canvas().toWidget(QPointF(xM, yM) * canvas().scale()).toPoint();
  }
  [[nodiscard]] QString lastTold() { return m_told; }
  void listen() {
    QObject::connect(&canvas(), &MapCanvas::told, window.get(), [this](const QString& said) { m_told = said; });
  }

  void begin(const QString& floors = "2") {
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    whenAsked<StartDialog>([&](StartDialog& dialog) {
      type(dialog, "name", "Elm House");
      type(dialog, "start_panels", "1A, 1B");
      type(dialog, "start_floors", floors);
      QTest::keyClick(&dialog, Qt::Key_Return);
    });
    key(Qt::Key_N, Qt::ControlModifier);
    ASSERT_EQ(document().site().name, "Elm House");
    listen();
  }
  void drop(const QString& path) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter(canvas().rect().center(), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&canvas(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent dropped(QPointF(canvas().rect().center()), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&canvas(), &dropped);
  }
  [[nodiscard]] QString planFile(const QByteArray& content, const QString& name = "plan.png") {
    QFile file(folder.path() + "/" + name);
    if (file.open(QIODevice::WriteOnly)) file.write(content);
    return file.fileName();
  }
  // The corridor's walls, 1,000 pixels of the plan, are 100 ft.
  void dropPlanAndScaleIt() {
    whenAsked<ScaleDialog>([](ScaleDialog& dialog) {
      dragPoint(*dialog.view(), 0, {100, 300});
      dragPoint(*dialog.view(), 1, {1100, 300});
      type(dialog, "plan_distance", "100 ft");
      QTest::keyClick(&dialog, Qt::Key_Return);
    });
    drop(planFile(testing::encoded(testing::planImage())));
    ASSERT_TRUE(floor().picture.has_value());
    EXPECT_NEAR(floor().picture->metresPerPixel, 0.03048, 0.0003);  // as near as a pointer gets
    EXPECT_TRUE(pictureIsShown());
  }
  // Of a row of tabs, as a pointer does.
  static void clickTab(QTabBar& tabs, const QString& words) {
    for (int i = 0; i < tabs.count(); ++i) {
      if (tabs.tabText(i) == words) return QTest::mouseClick(&tabs, Qt::LeftButton, {}, tabs.tabRect(i).center());
    }
    ADD_FAILURE() << words.toStdString();
  }
  [[nodiscard]] QTabBar& tabsNamed(const char* code) const {
    const QString name = say(window->session().book, code);
    for (QTabBar* tabs : window->findChildren<QTabBar*>()) {
      if (tabs->accessibleName() == name) return *tabs;
    }
    throw std::runtime_error(code);
  }
  void showOverlayByMouse(const char* code) { clickTab(tabsNamed("map.overlays"), say(window->session().book, code)); }
  [[nodiscard]] ListingTable& outletTable() const { return *window->map()->lists()->table(ListingKind::Outlets); }
  [[nodiscard]] QModelIndex breakerCell(int row) const {
    const auto& columns = outletTable().listing().listing().columns();
    const auto column = std::ranges::find(columns, "breaker", &ListingColumn::key) - columns.begin();
    return outletTable().listing().index(row, static_cast<int>(column));
  }
  // Ten outlets get the second breaker of whichever panel has breakers, pasted into the list.
  void pasteBreakersByMouse() {
    const text::Phrasebook& book = window->session().book;
    clickTab(tabsNamed("window.sides"), say(book, "window.side.lists"));
    clickTab(tabsNamed("listing.kinds"), say(book, "listing.outlets"));
    ASSERT_TRUE(outletTable().isVisible());
    outletTable().scrollTo(breakerCell(0));
    const QPoint cell = outletTable().visualRect(breakerCell(0)).center();
    QTest::mouseClick(outletTable().viewport(), Qt::LeftButton, {}, cell);
    QGuiApplication::clipboard()->setText(pastedBreakers());
    outletTable().paste();
    QGuiApplication::clipboard()->clear();
    checkPasted();
    clickTab(tabsNamed("window.sides"), say(book, "window.side.plan"));
  }
  [[nodiscard]] static QString pastedBreakers() { return QStringLiteral("2\n").repeated(10); }
  void checkPasted() const {
    for (int row = 0; row < 10; ++row) EXPECT_TRUE(breakerCell(row).data().toString().endsWith("-2")) << row;
  }
  void placeRow(double fromM, double toM, double atM) { drag(onPlan(fromM, atM), onPlan(toM, atM)); }

  QString m_told;
  int m_asked = 0;
};

}  // namespace cordreach::app
