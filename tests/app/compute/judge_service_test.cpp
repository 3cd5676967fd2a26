// SPDX-License-Identifier: GPL-3.0-or-later
#include "compute/judge_service.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QTest>

#include "app/support/demo.h"
#include "rules/judge.h"
#include "study/assess.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;

class JudgeServiceTest : public ::testing::Test {
 protected:
  JudgeServiceTest() {
    QObject::connect(&service, &JudgeService::judged,
                     [this](const std::shared_ptr<const Verdict>& verdict) { heard.push_back(verdict); });
  }
  [[nodiscard]] bool settles() {
    return QTest::qWaitFor([this] { return !service.isBusy(); }, 60000);
  }

  JudgeService service;
  std::shared_ptr<const site::Site> demo = std::make_shared<const site::Site>(demoBuilding());
  std::vector<std::shared_ptr<const Verdict>> heard;
};

TEST_F(JudgeServiceTest, TellsFindingsFirstAndRemediesAfter) {
  const std::uint64_t number = service.request(demo, false);
  EXPECT_TRUE(service.isBusy());
  ASSERT_TRUE(settles());
  ASSERT_EQ(heard.size(), 2U);
  EXPECT_EQ(heard[0]->number, number);
  EXPECT_EQ(heard[1]->number, number);
  EXPECT_TRUE(heard[0]->remedies.empty());
  EXPECT_EQ(heard[1]->remedies.size(), heard[1]->findings.size());
  EXPECT_EQ(heard[1]->site, demo);
  EXPECT_EQ(service.last(), heard[1]);
}

TEST_F(JudgeServiceTest, SaysTheSameAsTheStudyAndTheRules) {
  service.request(demo, false);
  ASSERT_TRUE(settles());
  const std::vector<rules::Finding> expected = rules::judge(*demo, study::assess(*demo));
  ASSERT_FALSE(expected.empty());
  ASSERT_EQ(heard.back()->findings.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(heard.back()->findings[i].code, expected[i].code);
    EXPECT_EQ(heard.back()->findings[i].subjects, expected[i].subjects);
    EXPECT_EQ(heard.back()->findings[i].arguments, expected[i].arguments);
  }
}

TEST_F(JudgeServiceTest, TriesNoRemediesForWhatIsOnlySupposed) {
  service.request(demo, true);
  ASSERT_TRUE(settles());
  ASSERT_EQ(heard.size(), 1U);
  EXPECT_TRUE(heard[0]->supposed);
  EXPECT_TRUE(heard[0]->remedies.empty());
}

TEST_F(JudgeServiceTest, AnswersTheLastOfManyRequestsAndSkipsThoseBetween) {
  std::uint64_t last = 0;
  for (int i = 0; i < 50; ++i) last = service.request(demo, true);
  ASSERT_TRUE(settles());
  ASSERT_FALSE(heard.empty());
  EXPECT_EQ(heard.back()->number, last);
  EXPECT_EQ(service.latest(), last);
  EXPECT_LE(heard.size(), 3U);
  for (std::size_t i = 1; i < heard.size(); ++i) EXPECT_GT(heard[i]->number, heard[i - 1]->number);
}

TEST_F(JudgeServiceTest, ADragIsAnsweredWhileItGoesOn) {
  QElapsedTimer clock;
  clock.start();
  while (heard.size() < 3 && clock.elapsed() < 60000) {
    service.request(demo, true);
    QTest::qWait(10);
  }
  EXPECT_GE(heard.size(), 3U);
  ASSERT_TRUE(settles());
}

TEST_F(JudgeServiceTest, AnOldJobDoesNotHoldUpANewRequest) {
  service.request(demo, false);
  ASSERT_TRUE(QTest::qWaitFor([this] { return !heard.empty(); }, 60000));
  // Its remedies are being tried now; a new request must not wait for them for long.
  QElapsedTimer clock;
  clock.start();
  const std::uint64_t number = service.request(demo, true);
  ASSERT_TRUE(QTest::qWaitFor([&] { return heard.back()->number == number; }, 60000));
  EXPECT_LT(clock.elapsed(), 5000);
}

TEST(JudgeService, EndsSoonWhileItWorks) {
  QElapsedTimer clock;
  {
    JudgeService service;
    service.request(std::make_shared<const site::Site>(demoBuilding()), false);
    QTest::qWait(5);
    clock.start();
  }
  EXPECT_LT(clock.elapsed(), 3000);
}

}  // namespace
}  // namespace cordreach::app
