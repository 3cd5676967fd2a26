// SPDX-License-Identifier: GPL-3.0-or-later
// Side by side with Boost.Odeint: its Rosenbrock method of fourth order at a tolerance of a microkelvin carries the
// ladder's equations, written out a second time, through random duties; our run stays within 0.2 K of it throughout.
#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "against/physics/rosenbrock4.h"
#include "against/physics/written_out_ladder.h"
#include "physics/cord_section.h"
#include "support/dice.h"

namespace cordreach {
namespace {

using physics::CordSection;
using units::WireSize;

constexpr double kToleranceK = 0.2;
constexpr double kReferenceToleranceK = 1e-6;

// The reference: slopes by central differences of the rates.
testing::StiffSystem systemOf(const testing::WrittenOutLadder& ladder) {
  const auto rates = [&ladder](const testing::Three& at) { return ladder.rates(at); };
  const auto slopes = [&ladder](const testing::Three& at) {
    constexpr double kSpanK = 1e-3;
    std::array<testing::Three, 3> found{};
    for (std::size_t column = 0; column < 3; ++column) {
      testing::Three above = at;
      testing::Three below = at;
      above[column] += kSpanK;
      below[column] -= kSpanK;
      const testing::Three more = ladder.rates(above);
      const testing::Three less = ladder.rates(below);
      for (std::size_t row = 0; row < 3; ++row) found[row][column] = (more[row] - less[row]) / (2 * kSpanK);
    }
    return found;
  };
  return {rates, slopes};
}

struct Case {
  const char* name;
  CordSection section;
  physics::Corner corner;
  double mostA;  // hot, but within the model
};

CordSection laid(int awg, tables::Laying laying, double turns = 0) {
  CordSection section{WireSize::awg(awg)};
  section.laying = laying;
  section.turns = turns;
  return section;
}

void PrintTo(const Case& one, std::ostream* out) { *out << one.name; }

class AgainstOdeint : public ::testing::TestWithParam<Case> {};

TEST_P(AgainstOdeint, StaysWithinAFifthOfAKelvinThroughRandomDuties) {
  const auto ladder = ladderOf(GetParam().section, GetParam().corner);
  double worstK = 0;
  double hottestC = 0;
  for (std::uint64_t seed = 1; seed <= 4; ++seed) {
    testing::Dice dice(seed);
    const double airC = dice.between(5, 40);
    physics::LadderRun ours(ladder, units::Temperature::fromCelsius(airC));
    testing::WrittenOutLadder written(ladder, airC);
    testing::Three theirs{airC, airC, airC};
    for (int stretch = 0; stretch < 12; ++stretch) {
      const double rmsA = dice.chance(0.25) ? 0.0 : dice.between(0.2, 1.0) * GetParam().mostA;
      const double durationS = std::pow(10.0, dice.between(0.5, 3.4));
      ours.advance(rmsA * units::ampere, durationS * units::second);
      written.setCurrent(rmsA);
      theirs = byRosenbrock4(systemOf(written), theirs, durationS, kReferenceToleranceK, 0.01);
      ASSERT_FALSE(ours.beyondModel());
      worstK = std::max(worstK, std::abs(ours.now().conductor.celsius() - theirs[0]));
      worstK = std::max(worstK, std::abs(ours.now().surface.celsius() - written.surfaceC(theirs[2])));
      hottestC = std::max(hottestC, theirs[0]);
    }
  }
  EXPECT_LE(worstK, kToleranceK);
  EXPECT_GT(hottestC, 60.0) << "a duty that hardly warms shows nothing";
  RecordProperty("worst_k", std::to_string(worstK));
}

INSTANTIATE_TEST_SUITE_P(
    Cords, AgainstOdeint,
    ::testing::Values(Case{"ThinInFreeAir", laid(18, tables::Laying::Straight), physics::Corner::Likely, 20},
                      Case{"OnTheFloor", laid(16, tables::Laying::Floor), physics::Corner::Likely, 25},
                      Case{"OnCarpetCautious", laid(14, tables::Laying::Carpet), physics::Corner::High, 28},
                      Case{"Covered", laid(14, tables::Laying::Covered), physics::Corner::Likely, 22},
                      Case{"CoveredCautious", laid(12, tables::Laying::Covered), physics::Corner::High, 24},
                      Case{"Coiled", laid(12, tables::Laying::Coiled, 10), physics::Corner::Likely, 20},
                      Case{"CoiledThinFavourable", laid(16, tables::Laying::Coiled, 6), physics::Corner::Low, 16},
                      Case{"OnAReel", laid(14, tables::Laying::Reel, 3), physics::Corner::Likely, 15}),
    [](const auto& one) { return std::string(one.param.name); });

}  // namespace
}  // namespace cordreach
