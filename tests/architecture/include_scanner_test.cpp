// SPDX-License-Identifier: GPL-3.0-or-later
// The checks on small texts: each must be able to fail.
#include "architecture/include_scanner.h"

#include <gtest/gtest.h>

#include "architecture/arrows.h"
#include "architecture/habits.h"

namespace cordreach::architecture {
namespace {

bool faulty(const std::string& path, const std::string& text) { return !includeFaults({path, text}).empty(); }

TEST(IncludeScanner, FindsBothKindsWithTheirLine) {
  const std::vector<Include> expected{{1, "base/id.h", true}, {3, "vector", false}};
  EXPECT_EQ(includesOf("#include \"base/id.h\"\n\n#include <vector>\n"), expected);
}

TEST(IncludeScanner, FindsAnIncludeHoweverItIsSpaced) {
  EXPECT_EQ(includesOf("  #  include\t\"a/b.h\"  // why").size(), 1U);
  EXPECT_EQ(includesOf("#include\"a/b.h\"").size(), 1U);
  EXPECT_EQ(includesOf("/* note */ #include <a>").size(), 1U);
  EXPECT_EQ(includesOf("#if 0\r\n#include <a>\r\n#endif\r\n").size(), 1U);
}

TEST(IncludeScanner, IgnoresWhatIsNoInclude) {
  EXPECT_TRUE(includesOf("// #include \"a/b.h\"\nint include;\n#define X \"a\"\n#include\n#include <a\n").empty());
}

TEST(Arrows, FollowTheChainButNotBackwards) {
  EXPECT_FALSE(
      faulty("core/network/a.cpp", "#include \"physics/wire.h\"\n#include \"base/id.h\"\n#include \"network/a.h\"\n"));
  EXPECT_TRUE(faulty("core/physics/a.cpp", "#include \"network/a.h\"\n"));
  EXPECT_TRUE(faulty("core/physics/a.cpp", "#include \"site/site.h\"\n"));
  EXPECT_TRUE(faulty("core/planning/a.cpp", "#include \"inference/a.h\"\n"));
  EXPECT_TRUE(faulty("core/base/a.h", "#include \"units/quantity.h\"\n"));
}

TEST(Arrows, KnowNoRoomOutsideTheTable) {
  EXPECT_TRUE(faulty("core/helpers/a.h", ""));
  EXPECT_TRUE(faulty("core/io/a.cpp", "#include \"console/verbs.h\"\n"));
  EXPECT_TRUE(faulty("core/io/a.cpp", "#include \"a.h\"\n"));
  EXPECT_TRUE(faulty("core/io/a.cpp", "#include \"../rules/finding.h\"\n"));
}

TEST(Arrows, KeepQtOutOfCoreConsoleAndText) {
  EXPECT_TRUE(faulty("core/io/a.cpp", "#include <QString>\n"));
  EXPECT_TRUE(faulty("core/io/a.cpp", "#include <QtCore/qstring.h>\n"));
  EXPECT_TRUE(faulty("app/console/a.cpp", "#include <QString>\n"));
  EXPECT_TRUE(faulty("app/text/a.cpp", "#include <QString>\n"));
  EXPECT_FALSE(faulty("app/map/a.cpp", "#include <QString>\n"));
}

TEST(Arrows, KeepLibrariesInTheirRoomsAndOutOfHeaders) {
  EXPECT_FALSE(faulty("core/network/a.cpp", "#include <Eigen/Dense>\n"));
  EXPECT_TRUE(faulty("core/network/a.h", "#include <Eigen/Dense>\n"));
  EXPECT_TRUE(faulty("core/study/a.cpp", "#include <Eigen/Dense>\n"));
  EXPECT_FALSE(faulty("core/io/a.cpp", "#include <nlohmann/json.hpp>\n"));
  EXPECT_TRUE(faulty("core/io/a.h", "#include <nlohmann/json.hpp>\n"));
  EXPECT_TRUE(faulty("core/site/a.cpp", "#include <nlohmann/json.hpp>\n"));
  EXPECT_FALSE(faulty("core/tables/a.cpp", "#include <csv.h>\n"));
  EXPECT_TRUE(faulty("core/units/a.cpp", "#include <csv.h>\n"));
  EXPECT_TRUE(faulty("core/units/a.cpp", "#include <fmt/format.h>\n"));
}

TEST(Arrows, HoldInTheAppToo) {
  EXPECT_FALSE(faulty("app/console/a.cpp", "#include <CLI/CLI.hpp>\n#include \"study/answer.h\"\n"));
  EXPECT_TRUE(faulty("app/map/a.cpp", "#include <CLI/CLI.hpp>\n"));
  EXPECT_TRUE(faulty("app/map/a.cpp", "#include <Eigen/Dense>\n"));
  EXPECT_TRUE(faulty("app/map/a.h", "#include <nlohmann/json.hpp>\n"));
  EXPECT_TRUE(faulty("app/map/a.cpp", "#include \"network/detail/solver.h\"\n"));
}

TEST(Habits, ALongFileIsSeen) {
  EXPECT_TRUE(sizeFaults({"a.h", std::string(kMostLines, '\n')}).empty());
  EXPECT_EQ(sizeFaults({"a.h", std::string(kMostLines + 1, '\n')}).size(), 1U);
}

TEST(Habits, AMissingLicenceLineIsSeen) {
  EXPECT_TRUE(licenceFaults({"a.h", "// SPDX-License-Identifier: GPL-3.0-or-later\n"}).empty());
  EXPECT_TRUE(licenceFaults({"run", "#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n"}).empty());
  EXPECT_EQ(licenceFaults({"a.h", "#pragma once\n// SPDX-License-Identifier: GPL-3.0-or-later\n"}).size(), 1U);
  EXPECT_EQ(licenceFaults({"a.h", "// SPDX-License-Identifier: MIT\n"}).size(), 1U);
}

TEST(Habits, UnfinishedWorkIsSeen) {
  const std::string word = std::string("TO") + "DO";
  const std::string off = std::string("TEST(A, DIS") + "ABLED_B)";
  EXPECT_EQ(unfinishedFaults({"a.h", "int a;\n// " + word + ": more\n" + off}).size(), 2U);
  EXPECT_TRUE(unfinishedFaults({"a.h", "int " + word + "List;  // mastodon"}).empty());
}

TEST(Habits, APathOfOneMachineIsSeen) {
  const std::string path = std::string("/ho") + "me/somebody/a";
  EXPECT_EQ(machinePathFaults({"a.h", "open(\"" + path + "\")"}).size(), 1U);
  EXPECT_EQ(machinePathFaults({"a.h", path}).size(), 1U);
  EXPECT_TRUE(machinePathFaults({"a.h", "network/solve.h and docs" + path}).empty());
}

}  // namespace
}  // namespace cordreach::architecture
