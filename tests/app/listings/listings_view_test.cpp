// SPDX-License-Identifier: GPL-3.0-or-later
// The lists as people use them: real widgets, keys and the clipboard.
#include "listings/listings_view.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "app/panels/support.h"
#include "io/table_csv.h"
#include "listings/import_dialog.h"
#include "listings/listing_model.h"
#include "listings/listing_table.h"
#include "panels/ask_dialog.h"
#include "panels/field_row.h"
#include "panels/found_fields.h"
#include "panels/plain_controls.h"
#include "support/test_files.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;

class Lists : public ::testing::Test {
 protected:
  Lists() {
    view.resize(900, 560);
    view.show(ListingKind::Outlets);
    view.show();
    QApplication::setActiveWindow(&view);
    EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
    table().setFocus();
  }

  [[nodiscard]] ListingTable& table() const { return *view.table(); }
  [[nodiscard]] int column(const std::string& key) const {
    const auto& columns = table().listing().listing().columns();
    return static_cast<int>(std::ranges::find(columns, key, &ListingColumn::key) - columns.begin());
  }
  [[nodiscard]] QModelIndex at(const std::string& id, const std::string& key) const {
    return table().listing().index(table().listing().rowOf(id), column(key));
  }
  [[nodiscard]] QString shown(const std::string& id, const std::string& key) const {
    return at(id, key).data(Qt::DisplayRole).toString();
  }
  [[nodiscard]] QLineEdit* editor() const {
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    return line != nullptr && table().isAncestorOf(line) ? line : nullptr;
  }
  void go(const std::string& id, const std::string& key) {
    table().selectionModel()->setCurrentIndex(at(id, key), QItemSelectionModel::ClearAndSelect);
  }
  // Where a key goes on a desktop: to the completions that are open, else to the focus.
  [[nodiscard]] static QWidget* target() {
    QWidget* popup = QApplication::activePopupWidget();
    return popup != nullptr ? popup : QApplication::focusWidget();
  }
  void type(const char* text) {
    for (const char* at = text; *at != '\0'; ++at) {
      QTest::keyClick(target(), *at);
      QApplication::processEvents();  // nobody types so fast that completions come when they are gone again
    }
  }
  void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(target(), key, modifiers);
    QApplication::processEvents();
  }
  void select(const std::string& first, const std::string& last, const std::string& key) {
    go(first, key);
    table().selectionModel()->select(QItemSelection(at(first, key), at(last, key)),
                                     QItemSelectionModel::ClearAndSelect);
  }

  testing::Desk desk{demoBuilding()};
  Surveyor surveyor;
  ListingsView view{desk.session, surveyor};
  QSignalSpy refused{&view, &ListingsView::refused};
};

TEST_F(Lists, TypingInACellAndReturnMakesOneUndoStepAndGoesOneDown) {
  view.show(ListingKind::Outlets);
  surveyor.set(site::HowKnown::Traced, "Ana");
  go("1-02", "breaker");
  type("1A-14");
  ASSERT_NE(editor(), nullptr);
  press(Qt::Key_Return);
  EXPECT_EQ(shown("1-02", "breaker"), "1A-14");
  EXPECT_EQ(shown("1-02", "how"), "traced");
  EXPECT_EQ(shown("1-02", "who"), "Ana");
  EXPECT_EQ(table().currentIndex(), at("1-03", "breaker"));
  EXPECT_EQ(editor(), nullptr);
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
  EXPECT_FALSE(desk.document.canUndo());
}

TEST_F(Lists, WidenAColumnForWhatCameLaterButNotOneThatWasSetByHand) {
  const int wall = column("wall");
  const int room = column("room");
  table().setColumnWidth(room, 30);
  const int before = table().columnWidth(wall);
  const std::string id = table().listing().subject(0).id;
  site::Site site = desk.document.site();
  const site::Outlet old = site.at<site::Outlet>(site::OutletId(id));
  site::Outlet outlet = old;
  outlet.wall = "the long wall beside the stairs";
  outlet.room = "the room with a long name";
  ASSERT_TRUE(desk.document.apply({"outlet.words", {site::Change<site::Outlet>{old, outlet}}}));
  EXPECT_GT(table().columnWidth(wall), before);
  EXPECT_EQ(table().columnWidth(room), 30);
}

TEST_F(Lists, CompletesCircuitsByWhatStandsAnywhereInThem) {
  go("1-02", "breaker");
  type("A-14");
  ASSERT_NE(editor(), nullptr);
  ASSERT_NE(editor()->completer(), nullptr);
  ASSERT_EQ(editor()->completer()->completionCount(), 1);
  EXPECT_EQ(editor()->completer()->currentCompletion(), "1A-14");
  press(Qt::Key_Escape);
  press(Qt::Key_Escape);
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST_F(Lists, WhatIsRefusedComesBackToBeMended) {
  go("1-02", "breaker");
  type("9Z-9");
  press(Qt::Key_Return);
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().contains("9Z-9"));
  EXPECT_EQ(table().currentIndex(), at("1-02", "breaker"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return editor() != nullptr; }));
  EXPECT_EQ(editor()->text(), "9Z-9");
  EXPECT_EQ(QApplication::activePopupWidget(), nullptr) << "completions nobody asked for lie over the list";
  for (int i = 0; i < 4; ++i) press(Qt::Key_Backspace);
  type("1A-14");
  press(Qt::Key_Return);
  EXPECT_EQ(shown("1-02", "breaker"), "1A-14");
  EXPECT_EQ(refused.count(), 1);
}

// Several circuits hold these letters, so that the completions are open while Return is pressed.
TEST_F(Lists, WhatIsRefusedWithCompletionsOpenComesBackWithThemShut) {
  go("1-02", "breaker");
  type("1A");
  ASSERT_NE(QApplication::activePopupWidget(), nullptr);
  press(Qt::Key_Return);
  ASSERT_EQ(refused.count(), 1);
  ASSERT_TRUE(QTest::qWaitFor([this] { return editor() != nullptr; }));
  EXPECT_EQ(editor()->text(), "1A");
  EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
  type("-14");
  press(Qt::Key_Return);
  EXPECT_EQ(shown("1-02", "breaker"), "1A-14");
}

TEST_F(Lists, EscapeGivesRefusedTextUp) {
  go("1-02", "breaker");
  const QString before = shown("1-02", "breaker");
  type("9Z-9");
  press(Qt::Key_Return);
  ASSERT_TRUE(QTest::qWaitFor([this] { return editor() != nullptr; }));
  press(Qt::Key_Escape);
  EXPECT_EQ(editor(), nullptr);
  EXPECT_EQ(shown("1-02", "breaker"), before);
  table().edit(at("1-02", "breaker"));
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(editor()->text(), before) << "what was given up does not come back";
}

TEST_F(Lists, DeleteSaysThatNobodyKnows) {
  select("1-01", "1-03", "breaker");
  press(Qt::Key_Delete);
  EXPECT_EQ(shown("1-01", "breaker"), "?");
  EXPECT_EQ(shown("1-03", "breaker"), "?");
  const auto cell = at("1-01", "breaker");
  EXPECT_EQ(cell.data(Qt::AccessibleTextRole).toString(), "unknown");
  EXPECT_TRUE(cell.data(ListingModel::kIsUnknown).toBool());
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST_F(Lists, CopiesARectangleAndPastesOne) {
  select("1-01", "1-02", "room");
  table().selectionModel()->select(QItemSelection(at("1-01", "room"), at("1-02", "wall")),
                                   QItemSelectionModel::ClearAndSelect);
  table().copy();
  EXPECT_EQ(io::readTableTsv(QApplication::clipboard()->text().toStdString()).value(),
            (io::Table{{"Corridor E", shown("1-01", "wall").toStdString()},
                       {"Corridor E", shown("1-02", "wall").toStdString()}}));
  QApplication::clipboard()->setText("Hall\tnorth\nAttic\tsouth\n");
  go("1-03", "room");
  press(Qt::Key_V, Qt::ControlModifier);
  EXPECT_EQ(shown("1-03", "room"), "Hall");
  EXPECT_EQ(shown("1-04", "wall"), "south");
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST_F(Lists, PastesOneCellIntoAllThatAreSelected) {
  select("1-01", "1-05", "room");
  QApplication::clipboard()->setText("Hall");
  table().paste();
  EXPECT_EQ(shown("1-01", "room"), "Hall");
  EXPECT_EQ(shown("1-05", "room"), "Hall");
}

TEST_F(Lists, RefusesWholeWhatDoesNotFit) {
  go("1-01", "breaker");
  QApplication::clipboard()->setText("1A-3\nnonsense\n");
  table().paste();
  ASSERT_EQ(refused.count(), 1);
  EXPECT_TRUE(refused[0][0].toString().contains("1-02"));
  go("2-36", "room");
  QApplication::clipboard()->setText("a\nb\n");
  table().paste();
  EXPECT_EQ(refused.count(), 2);
  QApplication::clipboard()->setText("\"a\tb");
  table().paste();
  EXPECT_EQ(refused.count(), 3);
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST_F(Lists, SetsAColumnForAllThatIsChosenInOneStep) {
  select("1-01", "1-04", "receptacle");
  const std::unique_ptr<AskDialog> dialog(view.bulkDialog());
  ASSERT_NE(dialog, nullptr);
  EXPECT_EQ(table().setForChosen(column("receptacle"), "5-15R"), std::nullopt);
  EXPECT_EQ(shown("1-04", "receptacle"), "5-15");
  EXPECT_EQ(table().setForChosen(column("receptacle"), "nonsense")->code, "listing.no_choice");
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

TEST_F(Lists, ShareTheSelectionBothWays) {
  desk.selection.choose({{rules::SubjectKind::Outlet, "1-05"}, {rules::SubjectKind::Outlet, "1-07"}});
  EXPECT_EQ(table().chosenRows(), (std::vector{table().listing().rowOf("1-05"), table().listing().rowOf("1-07")}));
  go("2-10", "room");
  ASSERT_EQ(desk.selection.chosen().size(), 1U);
  EXPECT_EQ(desk.selection.single()->id, "2-10");
  EXPECT_EQ(desk.selection.single()->kind, rules::SubjectKind::Outlet);
}

TEST_F(Lists, KeepRowsWhereTheyAreWhileTheyAreChanged) {
  view.table()->sortByColumn(column("room"), Qt::AscendingOrder);
  const std::string first = table().listing().id(0);
  go(first, "room");
  type("zzz");
  press(Qt::Key_Return);
  EXPECT_EQ(table().listing().id(0), first);
  table().sortByColumn(column("room"), Qt::DescendingOrder);
  EXPECT_EQ(table().listing().id(0), first);
}

TEST_F(Lists, FindRowsByWordsAnywhereInThem) {
  view.filter()->setText("corridor 1A-1");
  EXPECT_GE(table().listing().rowCount(), 5);
  EXPECT_LT(table().listing().rowCount(), table().listing().total());
  view.filter()->setText("no such words");
  EXPECT_EQ(table().listing().rowCount(), 0);
  view.filter()->clear();
  EXPECT_EQ(table().listing().rowCount(), table().listing().total());
}

TEST_F(Lists, InWalkingOrderReturnGoesOnTypingAtTheNextOutlet) {
  view.walk(true);
  ASSERT_TRUE(table().listing().isWalking());
  const std::string first = table().listing().id(0);
  const std::string second = table().listing().id(1);
  const std::string third = table().listing().id(2);
  go(first, "breaker");
  type("1A-14");
  press(Qt::Key_Return);
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(table().currentIndex(), at(second, "breaker"));
  type("?");
  press(Qt::Key_Return);
  ASSERT_NE(editor(), nullptr);
  EXPECT_EQ(table().currentIndex(), at(third, "breaker"));
  EXPECT_EQ(shown(first, "breaker"), "1A-14");
  EXPECT_EQ(shown(second, "breaker"), "?");
}

TEST_F(Lists, NewThingsComeLastAndGoneOnesGo) {
  const int before = table().listing().rowCount();
  site::Outlet added{site::OutletId("zz"), "0-00"};
  ASSERT_TRUE(desk.document.apply({"outlet.add", {site::Change<site::Outlet>{std::nullopt, added}}}).ok());
  EXPECT_EQ(table().listing().rowCount(), before + 1);
  EXPECT_EQ(table().listing().id(before), "zz");
  desk.document.undo();
  EXPECT_EQ(table().listing().rowCount(), before);
}

TEST_F(Lists, NeverTakeANameForMarkup) {
  const QString name = "<b>bold</b><img src=x>";
  go("1-01", "label");
  QApplication::clipboard()->setText(name);
  table().paste();
  EXPECT_EQ(shown("1-01", "label"), name);
  for (const QLabel* label : view.findChildren<QLabel*>()) {
    EXPECT_TRUE(label->textFormat() == Qt::PlainText || !label->text().contains("<b>"));
  }
}

class Files : public Lists {
 protected:
  [[nodiscard]] QString file(const char* name, const std::string& content) {
    const QString path = folder.filePath(name);
    QFile out(path);
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(content.data(), static_cast<qint64>(content.size()));
    return path;
  }
  QTemporaryDir folder;
};

TEST_F(Files, AreSavedAndImportedAgainWithoutAChange) {
  const QString path = folder.filePath("outlets.csv");
  ASSERT_TRUE(view.save(path).ok());
  const std::unique_ptr<ImportDialog> dialog(view.importDialog(path));
  ASSERT_NE(dialog, nullptr);
  EXPECT_TRUE(dialog->preview().edit.changes.empty());
  EXPECT_FALSE(dialog->deed()->isEnabled());
  ASSERT_TRUE(view.save(folder.filePath("outlets.xlsx")).ok());
}

TEST_F(Files, AreImportedAsOneUndoStepWithTheColumnsThatPeopleSay) {
  const std::unique_ptr<ImportDialog> dialog(
      view.importDialog(file("other.csv", "Tag;Spot\n1-01;Lobby\n<i>new</i>;Attic\n;nameless\n")));
  ASSERT_NE(dialog, nullptr);
  EXPECT_EQ(dialog->choices()[1]->currentIndex(), 0);  // nothing to go by: left out
  dialog->choices()[1]->setCurrentIndex(1 + column("room"));
  emit dialog->choices()[1]->activated(1 + column("room"));
  ASSERT_EQ(dialog->preview().rows.size(), 3U);
  EXPECT_EQ(dialog->preview().rows[2].fate, io::RowFate::Refused);
  for (const QLabel* label : dialog->findChildren<QLabel*>()) {
    EXPECT_TRUE(!label->text().contains('<') || label->textFormat() == Qt::PlainText);
  }
  dialog->accept();
  EXPECT_EQ(shown("1-01", "room"), "Lobby");
  desk.document.undo();
  EXPECT_EQ(desk.document.site(), demoBuilding());
  EXPECT_FALSE(desk.document.canUndo());
}

TEST_F(Files, ThatAreNoTablesAreRefusedInOneSentence) {
  const std::pair<const char*, std::string> bad[]{{"picture.csv", std::string("\x89PNG\r\n\x1a\n\0\0", 10)},
                                                  {"quotes.csv", "a,b\nc,\"d\n"},
                                                  {"empty.csv", ""},
                                                  {"half.csv", std::string("\xFF\xFE\x41", 3)}};
  int said = 0;
  for (const auto& [name, content] : bad) {
    EXPECT_EQ(view.importDialog(file(name, content)), nullptr) << name;
    ASSERT_EQ(refused.count(), ++said) << name;
    const QString sentence = refused.last()[0].toString();
    EXPECT_TRUE(sentence.contains(name)) << sentence.toStdString();
    EXPECT_TRUE(sentence.endsWith('.')) << sentence.toStdString();
    EXPECT_FALSE(sentence.contains('\n'));
  }
  EXPECT_EQ(view.importDialog(folder.filePath("gone.csv")), nullptr);
  EXPECT_EQ(refused.count(), said + 1);
  EXPECT_EQ(desk.document.site(), demoBuilding());
}

}  // namespace
}  // namespace cordreach::app
