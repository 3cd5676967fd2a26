// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever can be pressed, typed in or chosen from has a name in the accessible tree and a way to it by keyboard.
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAccessible>
#include <QComboBox>
#include <QMenuBar>
#include <QScrollBar>
#include <QTabBar>
#include <QToolButton>
#include <algorithm>

#include "app/story/story.h"
#include "app/survey/plans.h"
#include "listings/listing_table.h"
#include "listings/listings_view.h"
#include "panels/add_menu.h"
#include "survey/picture_desk.h"
#include "survey/picture_dialogs.h"
#include "survey/start_dialog.h"

namespace cordreach::app {
namespace {

using rules::SubjectKind;

class NothingWithoutAName : public StoryTest {
 protected:
  // Scroll bars are left out: what they scroll follows the focus by itself.
  [[nodiscard]] static bool isInteractive(const QWidget* widget) {
    return qobject_cast<const QAbstractButton*>(widget) != nullptr ||
           qobject_cast<const QLineEdit*>(widget) != nullptr || qobject_cast<const QComboBox*>(widget) != nullptr ||
           qobject_cast<const QTabBar*>(widget) != nullptr || qobject_cast<const MapCanvas*>(widget) != nullptr ||
           qobject_cast<const QAbstractItemView*>(widget) != nullptr ||
           (qobject_cast<const QAbstractSlider*>(widget) != nullptr &&
            qobject_cast<const QScrollBar*>(widget) == nullptr);
  }
  [[nodiscard]] std::vector<QWidget*> interactive() const {
    std::vector<QWidget*> all;
    for (QWidget* widget : window->findChildren<QWidget*>()) {
      if (widget->isVisible() && isInteractive(widget)) all.push_back(widget);
    }
    return all;
  }
  [[nodiscard]] static std::string about(const QWidget* widget) {
    std::string path;
    for (; widget != nullptr; widget = widget->parentWidget()) {
      path += std::string(widget->metaObject()->className()) + " < ";
    }
    return path;
  }
  // By Tab, or by keys of its own.
  [[nodiscard]] static bool isReachable(const QWidget* widget) {
    if ((widget->focusPolicy() & Qt::TabFocus) != 0) return true;
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    return button != nullptr && !button->shortcut().isEmpty();
  }
  void checkAll(const char* when) {
    const std::vector<QWidget*> all = interactive();
    EXPECT_GT(all.size(), 8U) << when;
    for (QWidget* widget : all) {
      QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
      ASSERT_NE(face, nullptr) << when << ": " << about(widget);
      EXPECT_FALSE(face->text(QAccessible::Name).trimmed().isEmpty()) << when << ": " << about(widget);
      EXPECT_TRUE(isReachable(widget)) << when << ": " << about(widget);
      if (qobject_cast<QAbstractButton*>(widget) == nullptr) continue;
      EXPECT_FALSE(face->state().invisible);
      EXPECT_NE(face->role(), QAccessible::Client) << when << ": " << about(widget);
    }
  }
};

// What takes the focus, in the tree as a screen reader walks it. A table's cells are named by their texts.
class TreeTest : public StoryTest {
 protected:
  void check(QAccessibleInterface* face, const std::string& above) {
    if (face == nullptr || face->state().invisible) return;
    const QString name = face->text(QAccessible::Name);
    const std::string here = above + " > " + name.toStdString();
    if (face->state().focusable && !face->state().disabled) {
      ++m_checked;
      EXPECT_FALSE(name.trimmed().isEmpty()) << here << ", role " << face->role();
      EXPECT_NE(face->role(), QAccessible::NoRole) << here;
      EXPECT_NE(face->role(), QAccessible::Client) << here;
    }
    if (face->role() == QAccessible::Table) return;
    for (int i = 0; i < face->childCount(); ++i) check(face->child(i), here);
  }
  void checkWindow(const char* when) {
    QCoreApplication::processEvents();
    const int before = m_checked;
    check(QAccessible::queryAccessibleInterface(window.get()), when);
    EXPECT_GT(m_checked, before + 8) << when;
  }
  void checkDialog(QDialog& dialog, const char* when) {
    dialog.show();
    const int before = m_checked;
    check(QAccessible::queryAccessibleInterface(&dialog), when);
    EXPECT_GT(m_checked, before + 1) << when;
  }

  int m_checked = 0;
};

TEST_F(TreeTest, EveryPlaceAndSideOfTheWindow) {
  ASSERT_TRUE(settles());
  for (Place* place : window->places()) {
    window->showPlace(place);
    checkWindow(place->code().c_str());
  }
  window->showPlace(window->map());
  for (const char* tool : {"map.tool.row", "map.tool.circuit"}) {
    takeTool(tool);
    checkWindow(tool);
  }
  window->map()->showSide(MapSide::Lists);
  for (std::size_t kind = 0; kind < kListingKinds; ++kind) {
    window->map()->lists()->show(static_cast<ListingKind>(kind));
    checkWindow("lists");
  }
  window->map()->showSide(MapSide::Panels);
  checkWindow("panels");
}

TEST_F(TreeTest, EveryDialogAboutAPlan) {
  const text::Phrasebook& book = window->session().book;
  const ReadPicture plan{testing::planImage(), {1200, 600}, "png"};
  StartDialog start(book);
  checkDialog(start, "start");
  ScaleDialog scale(book, plan, nullptr);
  checkDialog(scale, "scale");
  CornersDialog corners(book, plan, nullptr);
  checkDialog(corners, "corners");
  ReplaceDialog replace(book, plan, plan, nullptr);
  checkDialog(replace, "replace");
  const auto pages = PdfPages::open(testing::pdf(3));
  ASSERT_TRUE(pages);
  PageDialog page(book, *pages.value(), nullptr);
  checkDialog(page, "page");
}

TEST_F(NothingWithoutAName, WhateverIsChosen) {
  ASSERT_TRUE(settles());
  checkAll("nothing chosen");
  const std::vector<rules::Subject> subjects{{SubjectKind::Outlet, "1-13"},
                                             {SubjectKind::Machine, "M2"},
                                             {SubjectKind::Cord, "C08"},
                                             {SubjectKind::Panel, "1A"},
                                             {SubjectKind::Circuit, "1A-4"}};
  for (const rules::Subject& subject : subjects) {
    window->session().selection.choose({subject});
    QTest::qWait(0);
    checkAll(subject.id.c_str());
  }
}

TEST_F(NothingWithoutAName, TabGoesToAllThatItIsSaidToReach) {
  ASSERT_TRUE(settles());
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  window->session().selection.choose({{SubjectKind::Outlet, "1-13"}});
  QTest::qWait(0);
  canvas().setFocus();
  QSet<QWidget*> reached;
  const std::size_t most = canvas().itemsInOrder().size() + 300;
  for (std::size_t i = 0; i < most; ++i) {
    reached << QApplication::focusWidget();
    key(Qt::Key_Tab);
    ASSERT_NE(QApplication::focusWidget(), nullptr);
  }
  for (QWidget* widget : interactive()) {
    if (!widget->isEnabled() || (widget->focusPolicy() & Qt::TabFocus) == 0) continue;
    EXPECT_TRUE(reached.contains(widget)) << about(widget);
  }
}

TEST_F(NothingWithoutAName, EveryMenuOpensByALetterOfItsOwn) {
  auto* menus = window->findChild<QMenuBar*>();
  ASSERT_NE(menus, nullptr);
  QSet<QString> letters;
  ASSERT_GT(menus->actions().size(), 3);
  for (const QAction* menu : menus->actions()) {
    const QKeySequence letter = QKeySequence::mnemonic(menu->text());
    EXPECT_FALSE(letter.isEmpty()) << menu->text().toStdString();
    EXPECT_FALSE(letters.contains(letter.toString())) << menu->text().toStdString();
    letters << letter.toString();
    QSet<QString> within;
    for (const QAction* action : menu->menu()->actions()) {
      EXPECT_TRUE(action->isSeparator() || !action->text().trimmed().isEmpty()) << menu->text().toStdString();
      const QString own = QKeySequence::mnemonic(action->text()).toString();
      EXPECT_FALSE(!own.isEmpty() && within.contains(own)) << action->text().toStdString();
      within << own;
    }
  }
}

TEST_F(NothingWithoutAName, NoTwoLinesOfAnAddMenuShareALetter) {
  const auto check = [](const QMenu& menu) {
    QSet<QString> letters;
    for (const QAction* action : menu.actions()) {
      if (action->isSeparator()) continue;
      const QString letter = QKeySequence::mnemonic(action->text()).toString();
      EXPECT_FALSE(letter.isEmpty()) << action->text().toStdString();
      EXPECT_FALSE(letters.contains(letter)) << action->text().toStdString();
      letters << letter;
    }
    EXPECT_GT(letters.size(), 4);
  };
  check(*window->map()->addMenu());
  check(*window->map()->view()->pictures().menu());
  const auto buttons = window->map()->view()->findChildren<QToolButton*>();
  const auto add = std::ranges::find_if(buttons, [](const QToolButton* one) { return one->menu() != nullptr; });
  ASSERT_NE(add, buttons.end());
  check(*(*add)->menu());
}

TEST_F(NothingWithoutAName, CtrlAndPageDownGoToTheNextOverlayAndTheNextList) {
  ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  canvas().setFocus();
  const auto shown = [&] { return canvas().overlay(); };
  ASSERT_EQ(shown(), Overlay::Wiring);
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(shown(), Overlay::AmpsLeft);
  key(Qt::Key_PageUp, Qt::ControlModifier);
  key(Qt::Key_PageUp, Qt::ControlModifier);
  EXPECT_EQ(shown(), Overlay::Wiring);
  key(Qt::Key_2, Qt::AltModifier);
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(window->map()->lists()->kind(), ListingKind::Outlets);
  EXPECT_EQ(QApplication::focusWidget(), window->map()->lists()->table());
}

TEST_F(NothingWithoutAName, EveryThingOfThePlanIsInTheTree) {
  ASSERT_TRUE(settles());
  QAccessibleInterface* plan = QAccessible::queryAccessibleInterface(&canvas());
  ASSERT_NE(plan, nullptr);
  ASSERT_EQ(static_cast<std::size_t>(plan->childCount()), canvas().itemsInOrder().size());
  for (int i = 0; i < plan->childCount(); ++i) {
    EXPECT_FALSE(plan->child(i)->text(QAccessible::Name).trimmed().isEmpty()) << i;
  }
}

}  // namespace
}  // namespace cordreach::app
