// SPDX-License-Identifier: GPL-3.0-or-later
// A site file read and written: nothing is lost, nothing moves.
#include "io/site_file.h"

#include <gtest/gtest.h>

#include "support/test_files.h"

namespace cordreach {
namespace {

site::Site readGood(std::string_view text) {
  auto read = io::readSite(text);
  EXPECT_TRUE(read.ok()) << (read.ok() ? "" : read.error().code + " at " + read.error().place);
  return std::move(read).value();
}

TEST(SiteFile, IsWrittenAsItWasRead) {
  const std::string text = test::fileText("zoo/good/small.json");
  EXPECT_EQ(io::writeSite(readGood(text)), text);
}

}  // namespace
}  // namespace cordreach
