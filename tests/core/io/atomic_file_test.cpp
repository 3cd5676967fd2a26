// SPDX-License-Identifier: GPL-3.0-or-later
// A file that is written is whole or the old one stands; what can't be read or written says why.
#include "io/atomic_file.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <fstream>
#include <iterator>

#include "io/site_file.h"

namespace cordreach {
namespace {

namespace fs = std::filesystem;

class AtomicFile : public ::testing::Test {
 protected:
  void SetUp() override {
    const std::string name = ::testing::UnitTest::GetInstance()->current_test_info()->name();
    m_folder = fs::temp_directory_path() / ("atomic-" + std::to_string(::getpid()) + "-" + name);
    fs::create_directories(m_folder);
  }
  void TearDown() override {
    fs::permissions(m_folder, fs::perms::owner_all);
    fs::remove_all(m_folder);
  }
  static std::string contentOf(const fs::path& path) {
    std::ifstream stream(path, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(stream), {});
  }
  static std::string codeOf(const base::Result<base::Done>& result) { return result ? "" : result.error().code; }
  std::size_t filesInFolder() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(m_folder), fs::directory_iterator()));
  }

  fs::path m_folder;
};

TEST_F(AtomicFile, ReplacesTheOldAndLeavesNothingBeside) {
  const fs::path path = m_folder / "site.json";
  ASSERT_TRUE(io::replaceFile(path, "old").ok());
  ASSERT_TRUE(io::replaceFile(path, "new").ok());
  EXPECT_EQ(contentOf(path), "new");
  EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(AtomicFile, KeepsPermissionsOfTheOldFile) {
  const fs::path path = m_folder / "site.json";
  ASSERT_TRUE(io::replaceFile(path, "old").ok());
  fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_write);
  ASSERT_TRUE(io::replaceFile(path, "new").ok());
  EXPECT_EQ(fs::status(path).permissions(), fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_write);
}

TEST_F(AtomicFile, FollowsALinkToTheFileItNames) {
  fs::create_directory(m_folder / "real");
  fs::create_symlink("real/site.json", m_folder / "link.json");
  ASSERT_TRUE(io::replaceFile(m_folder / "link.json", "first").ok());
  ASSERT_TRUE(io::replaceFile(m_folder / "link.json", "second").ok());
  EXPECT_TRUE(fs::is_symlink(m_folder / "link.json"));
  EXPECT_EQ(contentOf(m_folder / "real" / "site.json"), "second");
}

TEST_F(AtomicFile, LeavesTheOldOneWhenTheNewOneDoesNotFit) {
  const fs::path path = m_folder / "site.json";
  ASSERT_TRUE(io::replaceFile(path, "old").ok());
  // A limit on file sizes stands in for a full disk: the write fails half-way.
  rlimit before{};
  getrlimit(RLIMIT_FSIZE, &before);
  const auto oldHandler = std::signal(SIGXFSZ, SIG_IGN);
  rlimit small = before;
  small.rlim_cur = 1000;
  setrlimit(RLIMIT_FSIZE, &small);
  const auto result = io::replaceFile(path, std::string(5000, 'x'));
  setrlimit(RLIMIT_FSIZE, &before);
  std::signal(SIGXFSZ, oldHandler);
  EXPECT_EQ(codeOf(result), "io.cannot_write");
  EXPECT_EQ(contentOf(path), "old");
  EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(AtomicFile, ReplacesNoDevice) { EXPECT_EQ(codeOf(io::replaceFile("/dev/full", "x")), "io.not_a_file"); }

TEST_F(AtomicFile, RefusesAFolderAndAMissingFolder) {
  EXPECT_EQ(codeOf(io::replaceFile(m_folder, "x")), "io.is_folder");
  EXPECT_EQ(codeOf(io::replaceFile(m_folder / "none" / "site.json", "x")), "io.not_found");
  const auto folder = io::readWholeFile(m_folder, 100);
  ASSERT_FALSE(folder.ok());
  EXPECT_EQ(folder.error().code, "io.is_folder");
  const auto missing = io::readWholeFile(m_folder / "none", 100);
  ASSERT_FALSE(missing.ok());
  EXPECT_EQ(missing.error().code, "io.not_found");
  EXPECT_EQ(missing.error().place, (m_folder / "none").string());
}

// Root may do everything, so this runs as another user where the tests are run by root.
TEST_F(AtomicFile, RefusesWithoutPermission) {
  const fs::path path = m_folder / "site.json";
  ASSERT_TRUE(io::replaceFile(path, "old").ok());
  fs::permissions(path, fs::perms::none);
  const bool isRoot = ::geteuid() == 0;
  if (isRoot) {
    fs::permissions(m_folder, fs::perms::all);
    ASSERT_EQ(::seteuid(65534), 0);
  }
  const auto read = io::readWholeFile(path, 100);
  const std::string written = codeOf(io::replaceFile(path, "new"));
  if (isRoot) {
    ASSERT_EQ(::seteuid(0), 0);
  }
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "io.no_permission");
  EXPECT_EQ(written, "io.no_permission");
}

TEST_F(AtomicFile, ReadsNoMoreThanTheLimit) {
  const fs::path path = m_folder / "site.json";
  ASSERT_TRUE(io::replaceFile(path, std::string(2000, 'x')).ok());
  EXPECT_TRUE(io::readWholeFile(path, 2000).ok());
  const auto read = io::readWholeFile(path, 1999);
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "io.too_large");
}

TEST_F(AtomicFile, SavesASiteThatLoadsAgain) {
  const site::Site site{.id = site::SiteId("x"), .name = "Saved"};
  ASSERT_TRUE(io::saveSite(m_folder / "site.json", site).ok());
  const auto loaded = io::loadSite(m_folder / "site.json");
  ASSERT_TRUE(loaded.ok());
  EXPECT_EQ(loaded.value(), site);
}

}  // namespace
}  // namespace cordreach
