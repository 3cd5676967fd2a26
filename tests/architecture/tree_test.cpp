// SPDX-License-Identifier: GPL-3.0-or-later
// The checks on the tree as it stands.
#include <gtest/gtest.h>

#include <filesystem>
#include <iterator>
#include <regex>
#include <sstream>

#include "architecture/arrows.h"
#include "architecture/habits.h"

namespace cordreach::architecture {
namespace {

using Check = std::vector<std::string> (*)(const SourceFile&);

void expectClean(const std::vector<SourceFile>& files, Check check) {
  ASSERT_FALSE(files.empty());
  for (const SourceFile& file : files) {
    for (const std::string& fault : check(file)) ADD_FAILURE() << fault;
  }
}

std::vector<SourceFile> filesIn(const std::vector<std::string>& folders, const std::vector<std::string>& endings) {
  std::vector<SourceFile> all;
  for (const std::string& folder : folders) {
    const std::vector<SourceFile> files = filesBelow(folder, endings);
    all.insert(all.end(), files.begin(), files.end());
  }
  return all;
}

const std::vector<std::string> kCode{".h", ".cpp"};
const std::vector<std::string> kWritten{".h", ".cpp", ".cmake", "CMakeLists.txt", ".sh", "/run", "/deep", ".py"};

TEST(Tree, CoreIncludesFollowTheArrows) { expectClean(filesIn({"core"}, kCode), includeFaults); }

TEST(Tree, AppIncludesKeepTheirRules) { expectClean(filesIn({"app"}, kCode), includeFaults); }

TEST(Tree, NoFileHasOutgrownItself) { expectClean(filesIn({"core", "app", "tests"}, kCode), sizeFaults); }

TEST(Tree, EverySourceNamesItsLicence) {
  expectClean(filesIn({"core", "app", "tests", "cmake", ".ci"}, kWritten), licenceFaults);
}

TEST(Tree, NothingIsUnfinishedByItsOwnWords) {
  expectClean(filesIn({"core", "app", "tests", "cmake", ".ci"}, kWritten), unfinishedFaults);
}

TEST(Tree, NothingNamesAPathOfOneMachine) {
  std::vector<std::string> endings = kWritten;
  endings.insert(endings.end(), {".md", ".csv", ".json"});
  expectClean(filesIn({"core", "app", "tests", "cmake", ".ci", "docs", "resources"}, endings), machinePathFaults);
}

// The build's links and the table say the same thing twice, on purpose: a change of either alone is an error.
TEST(Tree, TheBuildLinksExactlyTheArrows) {
  const std::string text = readFile("core/CMakeLists.txt").text;
  const std::regex room(R"(cordreach_room\((\w+)(?: ROOMS((?: [a-z]+)+))?(?: PRIVATE[^)]*)?\))");
  std::map<std::string, std::set<std::string>> built;
  for (std::sregex_iterator found(text.begin(), text.end(), room), end; found != end; ++found) {
    std::istringstream names((*found)[2].str());
    built[(*found)[1]] = {std::istream_iterator<std::string>(names), std::istream_iterator<std::string>()};
  }
  EXPECT_EQ(built, arrows());
}

TEST(Tree, EveryFolderOfCoreIsARoom) {
  for (const auto& entry : std::filesystem::directory_iterator("core")) {
    if (!entry.is_directory()) continue;
    EXPECT_TRUE(arrows().contains(entry.path().filename().string())) << entry.path();
  }
}

}  // namespace
}  // namespace cordreach::architecture
