// SPDX-License-Identifier: GPL-3.0-or-later
// docs/site.schema.json against files that the program writes, by a general-purpose validator.
#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include "io/site_file.h"
#include "support/random_site.h"
#include "support/test_files.h"

namespace cordreach {
namespace {

using nlohmann::json;
using Adapter = valijson::adapters::NlohmannJsonAdapter;

json schemaJson() { return json::parse(testing::fileText(std::filesystem::absolute("docs/site.schema.json"))); }

// As written the schema lets unknown keys pass, as the program does; closed, it shows whether it knows them all.
void closeObjects(json& part) {
  if (part.is_object() && part.contains("properties")) part["additionalProperties"] = false;
  if (!part.is_structured()) return;
  for (auto& inner : part) closeObjects(inner);
}

// The first fault, empty when there is none.
std::string faultOf(const json& schemaSource, const json& document) {
  valijson::Schema schema;
  valijson::SchemaParser parser;
  parser.populateSchema(Adapter(schemaSource), schema);
  valijson::Validator validator;
  valijson::ValidationResults results;
  if (validator.validate(schema, Adapter(document), &results)) return {};
  std::string text = "not valid:";
  for (const auto& error : results) {
    for (const auto& step : error.context) text += step;
    text += " " + error.description + "\n";
  }
  return text;
}

TEST(SiteSchema, AcceptsWhatTheProgramWrites) {
  const json schema = schemaJson();
  for (std::uint64_t seed = 0; seed < 10; ++seed) {
    EXPECT_EQ(faultOf(schema, json::parse(io::writeSite(testing::randomSite(seed)))), "") << seed;
  }
}

TEST(SiteSchema, KnowsEveryKey) {
  json schema = schemaJson();
  closeObjects(schema);
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    const site::Site site = testing::randomSite(seed, {.strangeKeys = false});
    EXPECT_EQ(faultOf(schema, json::parse(io::writeSite(site))), "") << seed;
  }
}

TEST(SiteSchema, RefusesWhatTheProgramRefusesByForm) {
  const json schema = schemaJson();
  for (const char* name : {"newer-version", "missing-id", "empty-id", "negative-length", "absurd-amps", "absurd-gauge",
                           "unknown-load-class", "number-in-quotes", "guess-without-a-value", "point-of-three",
                           "half-a-socket", "socket-of-cord-and-outlet", "hours-without-an-end", "half-past-sixty",
                           "panel-fed-twice", "circuit-on-no-phase", "contact-without-a-name"}) {
    const json document = json::parse(testing::fileText("zoo/" + std::string(name) + ".json"));
    EXPECT_NE(faultOf(schema, document), "") << name;
  }
  EXPECT_EQ(faultOf(schema, json::parse(testing::fileText("zoo/good/base.json"))), "");
}

}  // namespace
}  // namespace cordreach
