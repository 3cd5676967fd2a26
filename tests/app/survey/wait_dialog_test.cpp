// SPDX-License-Identifier: GPL-3.0-or-later
// Slow work off the window's thread: it is waited for, shown, and stopped.
#include "survey/wait_dialog.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QProgressBar>
#include <QProgressDialog>
#include <QPushButton>
#include <QTest>
#include <QThread>
#include <QTimer>

namespace cordreach::app {
namespace {

class WaitTest : public ::testing::Test {
 protected:
  // Does that with the dialog once it is there.
  template <class Act>
  void whenShown(Act act) {
    QObject::connect(&m_look, &QTimer::timeout, [this, act] {
      auto* dialog = qobject_cast<QProgressDialog*>(QApplication::activeModalWidget());
      if (dialog == nullptr) return;
      m_look.stop();
      m_shown = true;
      act(*dialog);
    });
    m_look.start(5);
  }

  text::Phrasebook book = text::Phrasebook::load("en").value();
  QWidget parent;
  QTimer m_look;
  bool m_shown = false;
};

TEST_F(WaitTest, QuickWorkIsAnsweredWithoutADialog) {
  whenShown([](QProgressDialog&) {});
  const QThread* here = QThread::currentThread();
  const auto answer = watched(&parent, book, [here](const ReadWatch&) { return here != QThread::currentThread(); });
  ASSERT_TRUE(answer.has_value());
  EXPECT_TRUE(*answer);
  EXPECT_FALSE(m_shown);
}

TEST_F(WaitTest, SlowWorkIsShownWithItsProgressWhileTheWindowLives) {
  int beats = 0;
  QTimer heart;
  QObject::connect(&heart, &QTimer::timeout, [&] { ++beats; });
  heart.start(20);
  std::atomic<int> seen = 0;
  whenShown([&](QProgressDialog& dialog) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.value() == 70; }));
    seen = dialog.value();
  });
  const auto answer = watched(&parent, book, [&seen](const ReadWatch& watch) {
    *watch.percent = 70;
    while (seen == 0) QThread::msleep(5);
    return 7;
  });
  EXPECT_EQ(answer, std::optional(7));
  EXPECT_TRUE(m_shown);
  EXPECT_GT(beats, 5);
}

TEST_F(WaitTest, CancelEndsTheWaitThoughTheWorkGoesOn) {
  whenShown([](QProgressDialog& dialog) { dialog.findChild<QPushButton*>()->click(); });
  auto ended = std::make_shared<std::atomic<bool>>(false);
  const auto answer = watched(&parent, book, [ended](const ReadWatch& watch) {
    while (!watch.isStopped()) QThread::msleep(5);
    QThread::msleep(100);
    *ended = true;
    return 1;
  });
  EXPECT_FALSE(answer.has_value());
  EXPECT_FALSE(*ended);
  EXPECT_TRUE(QTest::qWaitFor([&] { return ended->load(); }));
}

}  // namespace
}  // namespace cordreach::app
