// SPDX-License-Identifier: GPL-3.0-or-later
// Netlist, run and table of a transient.
#include "against/physics/spice_run.h"

#include <algorithm>
#include <sstream>

#include "support/spice_process.h"

namespace cordreach::testing {
namespace {

// Rows of time and value, once for each that was asked for.
std::vector<SpiceSeries> readTable(const std::string& text, std::size_t wanted) {
  std::vector<SpiceSeries> series(wanted);
  std::istringstream in(text);
  std::string line;
  while (std::getline(in, line)) {
    std::istringstream row(line);
    double timeS = 0;
    double value = 0;
    for (std::size_t i = 0; i < wanted && row >> timeS >> value; ++i) series[i].push_back({timeS, value});
  }
  if (series.front().size() < 2) return {};
  return series;
}

}  // namespace

std::vector<SpiceSeries> runSpice(const std::string& circuit, const std::vector<std::string>& wanted, double stepS,
                                  double endS) {
  std::ostringstream netlist;
  netlist << "start\n"
          << circuit << ".control\nset wr_singlescale=0\nset numdgt=10\ntran " << stepS << " " << endS << " 0 " << stepS
          << " uic\nwrdata table.txt";
  for (const std::string& name : wanted) netlist << " " << name;
  netlist << "\nquit\n.endc\n.end\n";
  return readTable(spiceOutput(netlist.str(), "table.txt"), wanted.size());
}

double at(const SpiceSeries& series, double timeS) {
  const auto after = std::lower_bound(series.begin(), series.end(), std::pair(timeS, -1e300));
  if (after == series.begin()) return series.front().second;
  if (after == series.end()) return series.back().second;
  const auto before = after - 1;
  return before->second + (after->second - before->second) * (timeS - before->first) / (after->first - before->first);
}

}  // namespace cordreach::testing
