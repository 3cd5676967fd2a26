// SPDX-License-Identifier: GPL-3.0-or-later
// Phrases: placeholders, branches, and what is refused.
#include "text/phrase.h"

#include <gtest/gtest.h>

#include "text/phrasebook.h"

namespace cordreach::text {
namespace {

Phrasebook bookOf(const std::string& phrase) {
  return Phrasebook::parse(R"({"p": ")" + phrase + R"(", "unit.amperes": "{n} A", "word.unknown": "unknown"})").value();
}

TEST(Phrase, PutsNamedArgumentsInPlace) {
  EXPECT_EQ(bookOf("{machine} draws {current_a}.").say("p", {{"current_a", 16.4}, {"machine", "M2"}}),
            "M2 draws 16 A.");
}

TEST(Phrase, ChoosesTheBranchThatTheArgumentNames) {
  const Phrasebook book = bookOf("It {class|dc:slows|induction:draws more|changes}.");
  EXPECT_EQ(book.say("p", {{"class", "dc"}}), "It slows.");
  EXPECT_EQ(book.say("p", {{"class", "induction"}}), "It draws more.");
  EXPECT_EQ(book.say("p", {{"class", "heat"}}), "It changes.");
  EXPECT_EQ(book.say("p"), "It changes.");
}

TEST(Phrase, SaysNothingForAClassWithoutBranchAndWithoutElse) {
  EXPECT_EQ(bookOf("It{class|dc: slows}.").say("p", {{"class", "heat"}}), "It.");
}

TEST(Phrase, ChoosesByPresenceAndNests) {
  const Phrasebook book = bookOf("Trips{late_a? at {late_a}{why?, {why}|}| never}.");
  EXPECT_EQ(book.say("p", {{"late_a", 20.0}, {"why", "it is old"}}), "Trips at 20 A, it is old.");
  EXPECT_EQ(book.say("p", {{"late_a", 20.0}}), "Trips at 20 A.");
  EXPECT_EQ(book.say("p", {{"late_a", std::numeric_limits<double>::infinity()}}), "Trips never.");
}

TEST(Phrase, KeepsColonsOfABranchWithoutKey) {
  EXPECT_EQ(bookOf("{x|a:one|note that: two}").say("p"), "note that: two");
}

TEST(Phrase, SaysUnknownForAnArgumentThatIsMissing) { EXPECT_EQ(bookOf("{current_a}").say("p"), "unknown"); }

TEST(Phrase, NamesEveryArgumentOfEveryBranch) {
  const auto names = Phrase::parse("{a} {b|x:{c}|{d?{e}|}}").value().argumentNames();
  EXPECT_EQ(names, (std::set<std::string>{"a", "b", "c", "d", "e"}));
}

TEST(Phrase, RefusesBracesThatDoNotMatch) {
  EXPECT_EQ(Phrase::parse("a {b").error().code, "phrase.unclosed");
  EXPECT_EQ(Phrase::parse("a {b|c").error().code, "phrase.unclosed");
  EXPECT_EQ(Phrase::parse("a } b").error().code, "phrase.unexpected_close");
  EXPECT_EQ(Phrase::parse("a {} b").error().code, "phrase.empty_name");
}

TEST(Phrase, KeepsBackNothingWhenACodeHasNoWords) {
  EXPECT_EQ(bookOf("x").say("no.such", {{"current_a", 2.5}, {"machine", "M2"}}), "no.such current_a=2.500 machine=M2");
}

}  // namespace
}  // namespace cordreach::text
