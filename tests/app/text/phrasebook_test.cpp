// SPDX-License-Identifier: GPL-3.0-or-later
// The books compiled in, and the pseudo language made of them.
#include "text/phrasebook.h"

#include <gtest/gtest.h>

#include "text/columns.h"
#include "text/pseudo_language.h"
#include "text/severity_text.h"

namespace cordreach::text {
namespace {

TEST(Phrasebook, EveryLanguageLoadsAndHasEveryEnglishCode) {
  const Phrasebook english = Phrasebook::load("en").value();
  for (const std::string& language : Phrasebook::languages()) {
    const auto book = Phrasebook::load(language);
    ASSERT_TRUE(book.ok()) << language;
    for (const auto& [code, phrase] : english.phrases()) {
      ASSERT_TRUE(book.value().has(code)) << language << " lacks " << code;
      EXPECT_EQ(book.value().phrases().at(code).argumentNames(), phrase.argumentNames()) << language << " " << code;
    }
  }
}

TEST(Phrasebook, RefusesALanguageItLacksAndNamesThoseItHas) {
  const auto book = Phrasebook::load("tlh");
  ASSERT_FALSE(book.ok());
  EXPECT_EQ(Phrasebook::load("en").value().say("error." + book.error().code, {{"place", "tlh"}, {"known", "en"}}),
            "there are no words for the language “tlh”; there are: en");
}

TEST(Phrasebook, RefusesWhatIsNoFlatObjectOfPhrases) {
  EXPECT_EQ(Phrasebook::parse("[1]").error().code, "text.not_words");
  EXPECT_EQ(Phrasebook::parse("{").error().code, "text.not_words");
  EXPECT_EQ(Phrasebook::parse(R"({"a": 1})").error().place, "a");
  EXPECT_EQ(Phrasebook::parse(R"({"a": "{"})").error().place, "a");
}

TEST(Phrasebook, SaysTheFiveSignalWords) {
  const Phrasebook book = Phrasebook::load("en").value();
  using rules::Severity;
  for (const Severity severity :
       {Severity::Ok, Severity::Notice, Severity::Caution, Severity::Warning, Severity::Danger}) {
    EXPECT_EQ(signalWord(book, severity), severityCode(severity));
  }
}

TEST(PseudoLanguage, IsAboutFortyPercentLongerAndKeepsArgumentsAndUnits) {
  const Phrasebook english = Phrasebook::load("en").value();
  const Phrasebook pseudo = pseudoLanguage(english);
  const std::string plain = english.say("trip.overloaded", {{"current_a", 20.0}, {"rating_a", 15.0}});
  const std::string longer = pseudo.say("trip.overloaded", {{"current_a", 20.0}, {"rating_a", 15.0}});
  EXPECT_GT(columnsOf(longer), columnsOf(plain) * 13 / 10);
  EXPECT_LT(columnsOf(longer), columnsOf(plain) * 3 / 2);
  EXPECT_NE(longer.find("20\u202FA"), std::string::npos);
  for (const auto& [code, phrase] : english.phrases()) {
    EXPECT_EQ(pseudo.phrases().at(code).argumentNames(), phrase.argumentNames()) << code;
  }
}

}  // namespace
}  // namespace cordreach::text
