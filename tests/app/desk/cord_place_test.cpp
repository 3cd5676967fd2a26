// SPDX-License-Identifier: GPL-3.0-or-later
// The place Cord with hands on it.
#include <QAccessible>
#include <QSlider>
#include <QTabBar>

#include "app/desk/cord_fixture.h"
#include "desk/what_if_row.h"
#include "desk/what_if_switch.h"
#include "shell/map_place.h"
#include "shell/remedy_button.h"
#include "text/pseudo_language.h"

namespace cordreach::app {
namespace {

TEST_F(CordPlaceTest, HasAnAnswerBeforeAnythingWasSaid) {
  EXPECT_FALSE(words().sentence.isEmpty());
  EXPECT_FALSE(words().signal.isEmpty());
  EXPECT_TRUE(window->band()->isFresh());
  for (const Ask ask : {Ask::Machine, Ask::Distance, Ask::Outlet, Ask::Cords}) {
    EXPECT_FALSE(input(ask)->text().isEmpty());
    EXPECT_FALSE(input(ask)->accessibleName().isEmpty());
  }
}

TEST_F(CordPlaceTest, AFirstTimeUserReachesACordInFourInputs) {
  QTest::mouseClick(input(Ask::Machine), Qt::LeftButton);
  ASSERT_TRUE(editor(Ask::Machine)->isVisible());
  ASSERT_NO_FATAL_FAILURE(pickRow(Ask::Machine, "Slow floor machine"));

  QTest::mouseClick(input(Ask::Outlet), Qt::LeftButton);
  EXPECT_FALSE(editor(Ask::Machine)->isVisible());
  ASSERT_NO_FATAL_FAILURE(pickRow(Ask::Outlet, "1-31"));
  EXPECT_EQ(inputs().outlet->outlet, site::OutletId("1-31"));

  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  auto* line = editor(Ask::Distance)->findChild<QLineEdit*>();
  EXPECT_TRUE(line->hasFocus());
  type("62");
  EXPECT_NEAR(inputs().distance.in(units::foot), 62.0, 1e-9);

  QTest::mouseClick(input(Ask::Cords), Qt::LeftButton);
  const auto choices = editor(Ask::Cords)->findChildren<QRadioButton*>();
  ASSERT_EQ(choices.size(), 3);
  QTest::mouseClick(choices.first(), Qt::LeftButton, {}, QPoint(8, choices.first()->height() / 2));
  EXPECT_EQ(inputs().cordsBy, CordsBy::Cart);

  ASSERT_TRUE(answers());
  ASSERT_TRUE(advice().choice.has_value()) << words().spoken().toStdString();
  const planning::CordCandidate& chosen = advice().candidates[*advice().choice];
  EXPECT_TRUE(words().sentence.contains(QString::fromStdString(chosen.label))) << words().sentence.toStdString();
  EXPECT_LT(words().severity, rules::Severity::Caution);
}

TEST_F(CordPlaceTest, KeysAloneDoTheSame) {
  ASSERT_EQ(QApplication::focusWidget(), input(Ask::Machine));
  key(Qt::Key_Down);
  ASSERT_TRUE(editor(Ask::Machine)->isVisible());
  type("Slow");
  key(Qt::Key_Return);
  EXPECT_FALSE(editor(Ask::Machine)->isVisible());
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Machine));
  EXPECT_TRUE(input(Ask::Machine)->text().contains("Slow")) << input(Ask::Machine)->text().toStdString();
  key(Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Distance));
  type("62");
  EXPECT_NEAR(inputs().distance.in(units::foot), 62.0, 1e-9);
  key(Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Distance));
  key(Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Outlet));
  type("1-31");
  key(Qt::Key_Down);
  EXPECT_EQ(inputs().outlet->outlet, site::OutletId("1-31"));
  key(Qt::Key_Return);
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Outlet));
  type("2-0");
  key(Qt::Key_Return);
  EXPECT_EQ(inputs().outlet->outlet, site::OutletId("2-01"));
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Outlet));
  key(Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget(), input(Ask::Cords));
  ASSERT_TRUE(answers());
  key(Qt::Key_Tab);
  EXPECT_EQ(QApplication::focusWidget(), place->field()) << QApplication::focusWidget()->metaObject()->className();
  key(Qt::Key_Right);
  const QModelIndex at = place->field()->currentIndex();
  ASSERT_TRUE(at.isValid());
  const QString before = place->cell()->spoken();
  key(at.row() > 0 ? Qt::Key_Up : Qt::Key_Down);
  EXPECT_NE(place->field()->currentIndex(), at);
  EXPECT_NE(place->cell()->spoken(), before);
  key(Qt::Key_1, Qt::ControlModifier);
  EXPECT_EQ(window->place(), window->map());
}

TEST_F(CordPlaceTest, CountsPacesAndTiles) {
  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  auto* measure = editor(Ask::Distance)->findChild<ChoiceBox*>();
  auto* line = editor(Ask::Distance)->findChild<QLineEdit*>();
  for (const auto& [index, feet] : std::vector<std::pair<int, double>>{{1, 75.0}, {2, 30.0}, {3, 60.0}}) {
    measure->setCurrentIndex(index);
    line->setFocus();
    line->selectAll();
    type("30");
    EXPECT_NEAR(inputs().distance.in(units::foot), feet, 1e-9);
  }
  line->selectAll();
  type("abc");
  EXPECT_NEAR(inputs().distance.in(units::foot), 60.0, 1e-9);
}

TEST_F(CordPlaceTest, AddsTheSlackInSight) {
  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  editor(Ask::Distance)->findChild<QLineEdit*>()->selectAll();
  type("90");
  QStringList said;
  for (const QLabel* label : editor(Ask::Distance)->findChildren<QLabel*>()) said << label->text();
  EXPECT_TRUE(said.join(' ').contains("98")) << said.join(' ').toStdString();
}

TEST_F(CordPlaceTest, TheFieldFollowsADragWithoutHoldingTheWindowUp) {
  askPlainly();
  ASSERT_TRUE(answers());
  QTest::mouseClick(input(Ask::Distance), Qt::LeftButton);
  auto* scale = editor(Ask::Distance)->findChild<QSlider*>();
  for (int feet = 60; feet <= 150; feet += 5) {
    scale->setValue(feet);
    // What is too short is known at once, of the present distance.
    for (std::size_t column = 0; column < place->model().grid().lengths.size(); ++column) {
      const double reach = 50.0 + place->model().grid().lengths[column].in(units::foot);
      EXPECT_EQ(place->model().isTooShort(column), reach < feet + 2.4 / 0.3048) << feet << " ft, column " << column;
    }
  }
  // The cells were judged before; only the distance moved.
  ASSERT_TRUE(answers());
  EXPECT_NEAR(place->model().answer()->asked.question.distance.in(units::foot), 150.0, 1e-9);
}

TEST_F(CordPlaceTest, EachSwitchAsksTheHarderQuestion) {
  askPlainly();
  ASSERT_TRUE(advises());
  ASSERT_TRUE(advice().choice.has_value());
  const rules::Severity plain = advice().verdict;
  for (const char* name : {"coiled", "hot_day", "tired_breaker", "low_supply", "chained", "second_machine"}) {
    WhatIfSwitch* one = place->whatIfs()->of(name);
    ASSERT_NE(one, nullptr) << name;
    QTest::mouseClick(one, Qt::LeftButton);
    EXPECT_TRUE(one->isChecked());
    ASSERT_TRUE(advises());
    EXPECT_GE(advice().verdict, plain) << name;
    if (std::string(name) == "chained") {
      EXPECT_FALSE(advice().choice.has_value());
      for (const planning::CordCandidate& candidate : advice().candidates) {
        EXPECT_GE(candidate.verdict, rules::Severity::Warning);
      }
    }
    QTest::mouseClick(one, Qt::LeftButton);
    EXPECT_FALSE(one->isChecked());
  }
  ASSERT_TRUE(advises());
  EXPECT_EQ(advice().verdict, plain);
}

TEST_F(CordPlaceTest, SaysWhatIsWorthFindingOutOfAnUnknownBreaker) {
  askPlainly();
  place->model().change([](CordInputs& said) {
    said.machineBy = MachineBy::Plate;
    said.plate.loadClass = tables::LoadClass::RectifiedDc;
    said.plate.plate = site::known(14.0 * units::ampere);
    said.breaker.reset();
  });
  ASSERT_TRUE(advises());
  EXPECT_EQ(advice().findOut, "find.breaker");
  EXPECT_GE(words().severity, rules::Severity::Caution);
  EXPECT_TRUE(words().reason.contains("breaker"));
}

TEST_F(CordPlaceTest, OfAFaceThatIsNeverUsedItOffersNothing) {
  askPlainly();
  place->model().change([](CordInputs& said) { said.colour = site::FaceColour::Red; });
  ASSERT_TRUE(advises());
  EXPECT_FALSE(advice().choice.has_value());
  EXPECT_GE(words().severity, rules::Severity::Warning);
}

TEST_F(CordPlaceTest, EveryCellHasItsWordsForTheReader) {
  askPlainly();
  ASSERT_TRUE(answers());
  QAccessibleInterface* face = QAccessible::queryAccessibleInterface(place->field());
  ASSERT_NE(face, nullptr);
  EXPECT_FALSE(face->text(QAccessible::Name).isEmpty());
  const QAbstractItemModel* cells = place->field()->model();
  QSet<QString> said;
  for (int row = 0; row < cells->rowCount(); ++row) {
    for (int column = 0; column < cells->columnCount(); ++column) {
      const QString words = cells->index(row, column).data(Qt::AccessibleTextRole).toString();
      EXPECT_TRUE(words.contains("AWG") && words.contains("ft")) << words.toStdString();
      said << words;
    }
  }
  EXPECT_EQ(said.size(), cells->rowCount() * cells->columnCount());
}

TEST_F(CordPlaceTest, PointingAtACellExplainsIt) {
  askPlainly();
  ASSERT_TRUE(answers());
  FieldView& field = *place->field();
  const QModelIndex far = field.model()->index(1, field.model()->columnCount() - 1);
  field.scrollTo(far);
  QTest::mouseMove(field.viewport(), field.visualRect(far).center());
  ASSERT_TRUE(QTest::qWaitFor([&] { return field.explained() == cellOf(far); }, 2000));
  EXPECT_TRUE(place->cell()->spoken().contains("16")) << place->cell()->spoken().toStdString();
}

TEST_F(CordPlaceTest, TheButtonPutsTheCordOnThePlanAsOneStep) {
  askOfThePlan();
  ASSERT_TRUE(advises());
  ASSERT_TRUE(advice().choice.has_value()) << words().spoken().toStdString();
  const site::CordId cord = *advice().candidates[*advice().choice].cord;
  const site::Site before = document().site();
  ASSERT_FALSE(words().button.isEmpty());
  QTest::mouseClick(window->band()->button(), Qt::LeftButton);
  bool used = false;
  for (const site::ExtensionUse& use : document().site().all<site::ExtensionUse>()) {
    const auto* socket = std::get_if<site::OutletSocket>(&use.socket);
    used = used || (use.cord == cord && socket != nullptr && socket->outlet == site::OutletId("1-31"));
  }
  EXPECT_TRUE(used);
  document().undo();
  EXPECT_EQ(document().site(), before);
}

TEST_F(CordPlaceTest, SpeaksInMetres) {
  look::Choices metric = settings.choices();
  metric.units = text::UnitSystem::Metric;
  window->setChoices(metric);
  ASSERT_TRUE(answers());
  EXPECT_TRUE(input(Ask::Distance)->text().contains(QString::fromUtf8("\u202fm + 2.4\u202fm")))
      << input(Ask::Distance)->text().toStdString();
  EXPECT_FALSE(words().reason.contains(QString::fromUtf8("\u202fft"))) << words().reason.toStdString();
}

TEST_F(CordPlaceTest, IsRememberedAsTheLastPlace) {
  EXPECT_EQ(settings.place(), "cord");
  auto* tabs = window->menuWidget()->findChild<QTabBar*>();
  EXPECT_EQ(tabs->tabText(tabs->currentIndex()), "Cord");
  MainWindow another(settings, folder.path() + "/other");
  EXPECT_EQ(another.place()->code(), "cord");
}

class LongWords : public CordPlaceTest,
                  public ::testing::WithParamInterface<std::tuple<double, look::Ground, text::UnitSystem>> {
 protected:
  void TearDown() override {
    window.reset();
    look::setPresent(*static_cast<QApplication*>(QApplication::instance()), {});
  }
};

TEST_P(LongWords, StandWholeOnAProjector) {
  const auto& [scale, ground, units] = GetParam();
  look::Choices choices = settings.choices();
  choices.textScale = scale;
  choices.ground = ground;
  choices.units = units;
  window->setChoices(choices);
  window->resize(1024, 768);
  auto& book = const_cast<text::Phrasebook&>(window->session().book);
  book = text::pseudoLanguage(book);
  QEvent change(QEvent::LanguageChange);
  QApplication::sendEvent(window.get(), &change);
  askPlainly();
  ASSERT_TRUE(answers());
  QTest::qWait(50);
  for (const QLabel* label : place->findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().isEmpty()) continue;
    const std::string text = label->text().toStdString();
    if (label->wordWrap()) {
      EXPECT_LE(label->heightForWidth(label->width()), label->height()) << text;
    } else {
      EXPECT_LE(label->sizeHint().width(), label->width()) << text;
    }
  }
  for (const QAbstractButton* button : place->findChildren<QAbstractButton*>()) {
    if (!button->isVisible() || qobject_cast<const WhatIfSwitch*>(button) == nullptr) continue;
    EXPECT_LE(button->sizeHint().width(), button->width()) << button->text().toStdString();
    EXPECT_LE(button->geometry().right(), button->parentWidget()->width()) << button->text().toStdString();
  }
  EXPECT_GE(place->field()->rowHeight(0) * 5, 200);
}

INSTANTIATE_TEST_SUITE_P(Looks, LongWords,
                         ::testing::Combine(::testing::Values(1.0, 1.5),
                                            ::testing::Values(look::Ground::Light, look::Ground::Dark),
                                            ::testing::Values(text::UnitSystem::Us, text::UnitSystem::Metric)));

}  // namespace
}  // namespace cordreach::app
