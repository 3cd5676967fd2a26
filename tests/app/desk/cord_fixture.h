// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord in its window, with hands on it.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QRadioButton>

#include "app/shell/support.h"
#include "desk/cell_panel.h"
#include "desk/cord_place.h"
#include "desk/cord_words.h"
#include "desk/field_view.h"
#include "desk/input_editor.h"
#include "desk/question_input.h"
#include "desk/question_row.h"
#include "panels/plain_controls.h"

namespace cordreach::app {

class CordPlaceTest : public WindowTest {
 protected:
  CordPlaceTest() : place(static_cast<CordPlace*>(window->placeOf("cord"))) {}

  void SetUp() override {
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    key(Qt::Key_2, Qt::ControlModifier);
    ASSERT_EQ(window->place(), place);
    ASSERT_TRUE(answers());
  }
  [[nodiscard]] bool answers() {
    return QTest::qWaitFor([this] { return place->model().gridIsFresh(); }, 120000);
  }
  [[nodiscard]] bool advises() {
    return QTest::qWaitFor([this] { return place->model().isFresh(); }, 120000);
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QWidget* focused = QApplication::focusWidget();
    QTest::keyClick(focused != nullptr ? focused : window.get(), key, modifiers);
  }
  void type(const QString& text) {
    for (const QChar letter : text) QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
  }
  [[nodiscard]] QuestionInput* input(Ask ask) const { return place->question()->input(ask); }
  [[nodiscard]] InputEditor* editor(Ask ask) const { return place->question()->editor(ask); }
  [[nodiscard]] const CordInputs& inputs() const { return place->model().inputs(); }
  [[nodiscard]] const planning::CordAdvice& advice() const { return place->model().answer()->advice; }
  void pickRow(Ask ask, const QString& words) {
    auto* list = editor(ask)->findChild<QListWidget*>();
    ASSERT_NE(list, nullptr);
    for (int row = 0; row < list->count(); ++row) {
      if (!list->item(row)->text().contains(words) || list->item(row)->flags() == Qt::NoItemFlags) continue;
      list->scrollToItem(list->item(row));
      QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualItemRect(list->item(row)).center());
      return;
    }
    FAIL() << words.toStdString() << " is not in the list";
  }
  // A job that needs a cord: by hand, from a 20 A breaker, common stock.
  void askPlainly() {
    place->model().change([](CordInputs& said) {
      said.machineBy = MachineBy::Type;
      said.type = "slow_machine";
      said.distance = 70.0 * units::foot;
      said.outletBy = OutletBy::Hand;
      said.breaker = 20.0 * units::ampere;
      said.run = site::known(50.0 * units::foot);
      said.runSize = site::known(units::WireSize::awg(12));
      said.cordsBy = CordsBy::Stock;
    });
  }

  // A machine of the building that is planned from 18:00 to 19:00, at an outlet whose circuit is free then.
  void askOfThePlan(const char* outlet = "1-31") {
    place->model().change([outlet](CordInputs& said) {
      said.machineBy = MachineBy::Site;
      said.machine = site::MachineId("M3");
      said.inletName = "A";
      said.outletBy = OutletBy::Site;
      said.outlet = site::OutletSocket{site::OutletId(outlet), "upper"};
      said.measure = Measure::Length;
      said.distance = 62.0 * units::foot;
      said.cordsBy = CordsBy::Cart;
    });
  }

  CordPlace* place;
};

}  // namespace cordreach::app
