// SPDX-License-Identifier: GPL-3.0-or-later
#include "against/physics/rosenbrock4.h"

#include <algorithm>
#include <boost/numeric/odeint.hpp>

namespace cordreach::testing {

namespace {

namespace odeint = boost::numeric::odeint;
namespace ublas = boost::numeric::ublas;

using State = ublas::vector<double>;

Three plain(const State& state) { return {state[0], state[1], state[2]}; }

}  // namespace

Three byRosenbrock4(const StiffSystem& system, const Three& start, double duration, double tolerance,
                    double firstStep) {
  const auto rates = [&](const State& at, State& out, double) {
    const Three found = system.rates(plain(at));
    std::copy(found.begin(), found.end(), out.begin());
  };
  const auto slopes = [&](const State& at, ublas::matrix<double>& out, double, State& byTime) {
    byTime = ublas::zero_vector<double>(3);
    const auto found = system.slopes(plain(at));
    for (std::size_t row = 0; row < 3; ++row) {
      for (std::size_t column = 0; column < 3; ++column) out(row, column) = found[row][column];
    }
  };
  State state(3);
  std::copy(start.begin(), start.end(), state.begin());
  odeint::integrate_adaptive(odeint::make_controlled<odeint::rosenbrock4<double>>(tolerance, 0.0),
                             std::make_pair(rates, slopes), state, 0.0, duration, firstStep);
  return plain(state);
}

}  // namespace cordreach::testing
