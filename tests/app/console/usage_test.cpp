// SPDX-License-Identifier: GPL-3.0-or-later
// What any command line gets: exit codes, and where words go.
#include <gtest/gtest.h>

#include "app/console/support.h"
#include "text/columns.h"
#include "text/pseudo_language.h"

namespace cordreach::console {
namespace {

class TakesNothing : public Output {
 public:
  bool write(std::string_view /*text*/) override { return false; }
  [[nodiscard]] std::string fault() const override { return "No space left on device"; }
};

TEST(Usage, BadLinesAreOneSentenceOnStandardErrorAndExitTwo) {
  const std::vector<std::vector<std::string>> lines{
      {"frob"},
      {"--frob"},
      {"trip"},
      {"trip", "--breaker", "20A"},
      {"trip", "--breaker", "20A", "--amps"},
      {"trip", "--breaker", "20A", "--amps", "27A", "--amps", "28A"},
      {"trip", "--breaker", "20A", "--amps", "27A", "--frob"},
      {"trip", "--breaker", "20A", "--amps", "27A", "frob"},
      {"trip", "--breaker", "20A", "--amps", "27"},
      {"trip", "--breaker", "20A", "--amps", "27X"},
      {"trip", "--breaker", "20A", "--amps", "-27A"},
      {"trip", "--breaker", "20A", "--amps", "nan A"},
      {"trip", "--breaker", "20A", "--amps", "1,500 A"},
      {"trip", "--breaker", "Q20", "--amps", "27A"},
      {"trip", "--breaker", "500A", "--amps", "27A"},
      {"trip", "--breaker", "", "--amps", "27A"},
      {"trip", "--breaker", "20A", "--amps", "27A", "--ambient", "warm"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A"},
      {"heat", "--cord", "SJTW 16/3", "--amps", "15A", "--for", "2h"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "0s"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "9000h"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "2h", "--json", "--csv"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "2h", "--lay", "hammock"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "2h", "--lay", "floor", "--turns", "9"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "2h", "--turns", "0"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "2h", "--coiled", "60ft"},
      {"heat", "--cord", "SJTW 16/3 50ft", "--amps", "15A", "--for", "2h", "--ambient", "400C"},
      {"assess"},
      {"assess", "no-such-file.json"},
      {"assess", "no-such-file.json", "--json"},
      {"assess", "no-such-file.json", "--language", "tlh"},
      {"site"},
      {"site", "frob"},
      {"site", "check"},
      {"site", "check", "no-such-file.json"},
      {"site", "new", "no-such-folder/a.json"},
      {"help", "frob"},
  };
  for (const auto& line : lines) {
    const Ran result = ran(line);
    std::string shown;
    for (const std::string& word : line) shown += word + " ";
    EXPECT_EQ(result.exit, 2) << shown;
    EXPECT_EQ(result.out, "") << shown;
    EXPECT_TRUE(isOneSentence(result.error)) << shown << "\n" << result.error;
  }
}

TEST(Usage, SaysExactlyWhatIsWrong) {
  EXPECT_EQ(ran({"trip", "--breaker", "20A", "--amps", "27"}).error, "cordreach: --amps: “27” lacks its unit.\n");
  EXPECT_EQ(ran({"trip", "--breaker", "20A"}).error,
            "cordreach: trip needs --amps; “cordreach trip --help” shows how it is written.\n");
  EXPECT_EQ(ran({"assess", "no-such-file.json"}).error,
            "cordreach: no-such-file.json: there is no such file or folder.\n");
}

TEST(Usage, AnswersVersionAndHelpOnStandardOutput) {
  for (const auto& line : std::vector<std::vector<std::string>>{{"--version"},
                                                                {"--help"},
                                                                {"help"},
                                                                {"trip", "--help"},
                                                                {"heat", "-h"},
                                                                {"assess", "--help"},
                                                                {"site", "--help"},
                                                                {"site", "new", "--help"}}) {
    const Ran result = ran(line);
    EXPECT_EQ(result.exit, 0) << line.front();
    EXPECT_EQ(result.error, "") << line.front();
    EXPECT_FALSE(result.out.empty()) << line.front();
    for (std::size_t at = 0; at < result.out.size();) {
      const std::size_t end = result.out.find('\n', at);
      EXPECT_LE(text::columnsOf(result.out.substr(at, end - at)), text::kPageWidth) << result.out;
      at = end == std::string::npos ? result.out.size() : end + 1;
    }
  }
  EXPECT_EQ(ran({"--version"}).out.rfind("cordreach ", 0), 0U);
}

TEST(Usage, LeavesALineWithoutVerbToTheWindow) { EXPECT_EQ(ran({}).exit, -1); }

TEST(Usage, SaysWhenTheAnswerCannotBeWritten) {
  TakesNothing out;
  StringOutput error;
  const Console console{out, error, false, text::Phrasebook::load("en").value(), {}};
  EXPECT_EQ(run({"trip", "--breaker", "20A", "--amps", "27A"}, console), 2);
  EXPECT_EQ(error.text(), "cordreach: the answer could not be written: No space left on device.\n");
}

}  // namespace
}  // namespace cordreach::console
