// SPDX-License-Identifier: GPL-3.0-or-later
// From nothing to a mapped, saved floor without a pointer: every key goes to wherever the focus is.
#include <QDir>
#include <QFileDialog>
#include <QMenuBar>
#include <QToolButton>

#include "app/survey/mapping.h"
#include "io/site_file.h"
#include "map/row_bar.h"
#include "survey/picture_files.h"

namespace cordreach::app {
namespace {

class MappingByKeys : public MappingTest {
 protected:
  // To the menu that is open, else to the focus.
  void send(Qt::Key what, Qt::KeyboardModifiers modifiers = {}) {
    QWidget* popup = QApplication::activePopupWidget();
    if (popup == nullptr) return key(what, modifiers);
    QTest::keyClick(popup, what, modifiers);
  }
  static void write(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
  // By Tab alone.
  void tabTo(const QWidget* wanted, Qt::Key way = Qt::Key_Tab) {
    for (int presses = 0; QApplication::focusWidget() != wanted; ++presses) {
      ASSERT_LT(presses, 150) << wanted->metaObject()->className();
      key(way);
    }
  }
  // In the menu that is open: down to that entry, and Return.
  static void pick(const QString& words) {
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    const auto isThere = [&] { return menu->activeAction() != nullptr && menu->activeAction()->text() == words; };
    for (int presses = 0; !isThere(); ++presses) {
      ASSERT_LT(presses, 40) << words.toStdString();
      QTest::keyClick(menu, Qt::Key_Down);
    }
    QTest::keyClick(menu, Qt::Key_Return);
  }
  // The button under the plan's row opens its menu and waits in it.
  void takeToolByKeys(const char* code) {
    auto* button = window->map()->view()->findChild<QToolButton*>();
    ASSERT_NE(button, nullptr);
    tabTo(button, Qt::Key_Backtab);
    QTimer::singleShot(0, window.get(), [this, code] { pick(say(window->session().book, code)); });
    key(Qt::Key_Space);
    ASSERT_EQ(QApplication::focusWidget(), &canvas()) << code;
  }
  void beginByKeys() {
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    whenAsked<StartDialog>([this](StartDialog& dialog) {
      write("Elm House");
      tabTo(dialog.row("start_panels")->editor());
      write("1A");
      key(Qt::Key_Return);
    });
    key(Qt::Key_N, Qt::ControlModifier);
    ASSERT_EQ(document().site().name, "Elm House");
  }
  void pastePlanAndScaleIt() {
    QGuiApplication::clipboard()->setImage(testing::planImage());
    whenAsked<ScaleDialog>([this](ScaleDialog& dialog) {
      tabTo(dialog.row("plan_distance")->editor());
      write("50 ft");
      key(Qt::Key_Return);
    });
    window->map()->work()->setFocus();
    key(Qt::Key_V, Qt::ControlModifier);
    QGuiApplication::clipboard()->clear();
    ASSERT_TRUE(floor().picture.has_value());
    ASSERT_TRUE(pictureIsShown());
  }
  void placeFortyOutlets() {
    ASSERT_NO_FATAL_FAILURE(takeToolByKeys("map.tool.row"));
    tabTo(window->map()->view()->rowBar().spacing(), Qt::Key_Backtab);
    key(Qt::Key_A, Qt::ControlModifier);
    write("2 ft");
    tabTo(&canvas());
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    const double from = canvas().pen().metres()->x();
    while (canvas().pen().metres()->x() < from + 39 * 0.6096) key(Qt::Key_Right);
    key(Qt::Key_Return);
    ASSERT_EQ(document().site().all<site::Outlet>().size(), 40U);
    key(Qt::Key_Escape);
  }
  void placePanelAndBreakers() {
    ASSERT_NO_FATAL_FAILURE(takeToolByKeys("map.tool.panel"));
    key(Qt::Key_Return);
    key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Return);
    ASSERT_TRUE(document().site().all<site::Panel>().begin()->place.has_value());
    key(Qt::Key_Escape);
    whenAsked<AskDialog>([this](AskDialog& dialog) {
      tabTo(dialog.row("count")->editor());
      key(Qt::Key_A, Qt::ControlModifier);
      write("4");
      tabTo(dialog.row("breaker_rating")->editor());
      key(Qt::Key_A, Qt::ControlModifier);
      write("20 A");
      key(Qt::Key_Return);
    });
    openMenu("window.menu.edit");
    const text::Phrasebook& book = window->session().book;
    pick(say(book, "panel.add"));
    pick(say(book, "panel.add.breakers"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return document().site().all<site::Circuit>().size() == 4; }));
  }
  void openMenu(const char* code) {
    const QKeySequence letter = QKeySequence::mnemonic(say(window->session().book, code));
    ASSERT_FALSE(letter.isEmpty());
    key(static_cast<Qt::Key>(letter[0].key()), Qt::AltModifier);
    ASSERT_NE(QApplication::activePopupWidget(), nullptr) << code;
  }
  void pasteBreakersByKeys() {
    key(Qt::Key_2, Qt::AltModifier);
    tabTo(&tabsNamed("listing.kinds"), Qt::Key_Backtab);
    while (window->map()->lists()->kind() != ListingKind::Outlets) key(Qt::Key_Right);
    tabTo(&outletTable());
    key(Qt::Key_Home, Qt::ControlModifier);
    for (int i = 0; outletTable().currentIndex() != breakerCell(0); ++i) {
      ASSERT_LT(i, 30);
      key(Qt::Key_Right);
    }
    QGuiApplication::clipboard()->setText(pastedBreakers());
    key(Qt::Key_V, Qt::ControlModifier);
    QGuiApplication::clipboard()->clear();
    checkPasted();
    key(Qt::Key_1, Qt::AltModifier);
    ASSERT_EQ(QApplication::focusWidget(), &canvas());
  }
  void showTrust() {
    QTabBar& overlays = tabsNamed("map.overlays");
    tabTo(&overlays, Qt::Key_Backtab);
    const QString words = say(window->session().book, "map.overlay.trust");
    for (int i = 0; overlays.tabText(overlays.currentIndex()) != words; ++i) {
      ASSERT_LT(i, 12);
      key(Qt::Key_Right);
    }
    EXPECT_FALSE(canvas().content().outlets.front().figure.isEmpty());
  }
  void saveByKeys(const QString& path) {
    whenAsked<QFileDialog>([this, path](QFileDialog&) {
      key(Qt::Key_A, Qt::ControlModifier);
      write(path);
      key(Qt::Key_Return);
    });
    key(Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(QFile::exists(path));
  }
};

TEST_F(MappingByKeys, FromAnEmptyWindowToASavedFloor) {
  ASSERT_NO_FATAL_FAILURE(beginByKeys());
  ASSERT_NO_FATAL_FAILURE(pastePlanAndScaleIt());
  ASSERT_NO_FATAL_FAILURE(placeFortyOutlets());
  ASSERT_NO_FATAL_FAILURE(placePanelAndBreakers());
  ASSERT_NO_FATAL_FAILURE(pasteBreakersByKeys());
  ASSERT_TRUE(settles());
  ASSERT_NO_FATAL_FAILURE(showTrust());
  const QString path = folder.path() + "/house.json";
  ASSERT_NO_FATAL_FAILURE(saveByKeys(path));
  EXPECT_TRUE(QFile::exists(folder.path() + "/" + pictureName(*floor().picture)));
  EXPECT_EQ(io::loadSite(path.toStdString()).value(), document().site());
}

}  // namespace
}  // namespace cordreach::app
