// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing but keys, sent to wherever the focus is.
#include "app/story/story.h"
#include "app/support/demo.h"
#include "shell/remedy_button.h"

namespace cordreach::app {
namespace {

class KeyboardOnly : public StoryTest {
 protected:
  void SetUp() override {
    ASSERT_TRUE(settles());
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    window->band()->button()->setFocus();
  }
  // By F6 from the verdict's button.
  void goToTheMap() {
    for (int presses = 0; QApplication::focusWidget() != &canvas(); ++presses) {
      ASSERT_LT(presses, 4);
      key(Qt::Key_F6);
    }
  }
  void walkTo(const rules::Subject& subject) {
    const auto wanted = itemOf(canvas().content(), subject);
    ASSERT_TRUE(wanted.has_value());
    for (int presses = 0; canvas().state().focus != wanted; ++presses) {
      ASSERT_LT(presses, 200);
      key(Qt::Key_Tab);
      ASSERT_EQ(QApplication::focusWidget(), &canvas());
    }
  }
  // With a plug in hand: along the arrows until it is over another outlet.
  void carryAway() {
    for (const Qt::Key arrow : {Qt::Key_Right, Qt::Key_Up, Qt::Key_Left, Qt::Key_Down, Qt::Key_Right}) {
      key(arrow);
      if (document().isSupposing()) return;
    }
    FAIL() << "no outlet in reach of the arrows";
  }

  const rules::Subject m_burnisher{rules::SubjectKind::Machine, "M2"};
};

TEST_F(KeyboardOnly, APlugIsCarriedToAnotherOutletAndIsOneEdit) {
  ASSERT_NO_FATAL_FAILURE(goToTheMap());
  ASSERT_NO_FATAL_FAILURE(walkTo(m_burnisher));
  key(Qt::Key_P);
  ASSERT_TRUE(canvas().plugs().isHolding());
  ASSERT_NO_FATAL_FAILURE(carryAway());
  const site::Site supposed = *document().shown();
  key(Qt::Key_Return);
  EXPECT_FALSE(canvas().plugs().isHolding());
  EXPECT_EQ(document().site(), supposed);
  EXPECT_EQ(document().undoCode(), "hookup.move");
  key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document().site(), testing::demoBuilding());
  EXPECT_FALSE(document().canUndo());
}

TEST_F(KeyboardOnly, EscapeLeavesNoTrace) {
  const std::shared_ptr<const Verdict> before = verdict();
  ASSERT_NO_FATAL_FAILURE(goToTheMap());
  ASSERT_NO_FATAL_FAILURE(walkTo(m_burnisher));
  key(Qt::Key_P);
  ASSERT_NO_FATAL_FAILURE(carryAway());
  key(Qt::Key_Escape);
  EXPECT_FALSE(canvas().plugs().isHolding());
  EXPECT_FALSE(document().isSupposing());
  EXPECT_EQ(document().site(), testing::demoBuilding());
  EXPECT_FALSE(document().canUndo());
  EXPECT_FALSE(document().isDirty());
  ASSERT_TRUE(settles());
  EXPECT_FALSE(verdict()->supposed);
  EXPECT_EQ(verdict()->findings.size(), before->findings.size());
}

TEST_F(KeyboardOnly, ArrowsGoToWhatLiesInTheirDirection) {
  ASSERT_NO_FATAL_FAILURE(goToTheMap());
  ASSERT_NO_FATAL_FAILURE(walkTo(m_burnisher));
  const auto placeOfFocus = [&] { return canvas().layout().at(*canvas().state().focus); };
  const QPointF start = placeOfFocus();
  key(Qt::Key_Left);
  const QPointF left = placeOfFocus();
  EXPECT_LT(left.x(), start.x());
  key(Qt::Key_Right);
  EXPECT_GT(placeOfFocus().x(), left.x());
  const QPointF before = placeOfFocus();
  key(Qt::Key_Up);
  EXPECT_LT(placeOfFocus().y(), before.y());
}

TEST_F(KeyboardOnly, CtrlReturnMendsFromTheMap) {
  ASSERT_NO_FATAL_FAILURE(goToTheMap());
  ASSERT_FALSE(words().button.isEmpty());
  const planning::Remedy offered = verdict()->remedies.at(*words().finding).front();
  site::Site mended = document().site();
  ASSERT_TRUE(site::apply(offered.edit, mended));
  key(Qt::Key_Return, Qt::ControlModifier);
  EXPECT_EQ(document().site(), mended);
  EXPECT_NE(document().site(), testing::demoBuilding());
}

TEST_F(KeyboardOnly, TabLeavesTheMapAtItsLastThing) {
  ASSERT_NO_FATAL_FAILURE(goToTheMap());
  const std::size_t things = canvas().itemsInOrder().size();
  ASSERT_GT(things, 20U);
  for (std::size_t i = 0; i <= things && QApplication::focusWidget() == &canvas(); ++i) key(Qt::Key_Tab);
  EXPECT_NE(QApplication::focusWidget(), &canvas());
  EXPECT_NE(QApplication::focusWidget(), nullptr);
}

}  // namespace
}  // namespace cordreach::app
