// SPDX-License-Identifier: GPL-3.0-or-later
// Edits as JSON and back.
#include "io/edit_json.h"

#include <gtest/gtest.h>

#include "site/kinds.h"
#include "support/random_site.h"

namespace cordreach {
namespace {

// Every thing of a building removed, and its heading changed.
site::Edit clearing(const site::Site& site) {
  site::Edit edit{"site.clear", {}};
  site::forEachKind([&]<class T>() {
    for (const T& thing : site.all<T>()) edit.changes.push_back(site::Change<T>{thing, std::nullopt});
  });
  edit.changes.push_back(site::HeadingChange{{site.name, site.ambient}, {"Cleared", {}}});
  return edit;
}

std::string refusalOf(std::string_view json) {
  const auto read = io::readEdit(json);
  return read ? "" : read.error().code + " " + read.error().place;
}

TEST(EditJson, ReadsBackIdenticalForEveryKindOfThing) {
  for (std::uint64_t seed = 0; seed < 30; ++seed) {
    const site::Edit edit = clearing(testing::randomSite(seed));
    const std::string text = io::writeEdit(edit);
    EXPECT_EQ(text.find('\n'), std::string::npos);
    const auto read = io::readEdit(text);
    ASSERT_TRUE(read.ok()) << read.error().code << " at " << read.error().place;
    EXPECT_EQ(read.value(), edit);
  }
}

TEST(EditJson, WritesAnAdditionWithoutBefore) {
  const site::Pad pad{.id = site::PadId("P1"), .name = "Red"};
  EXPECT_EQ(io::writeChanges({site::Change<site::Pad>{std::nullopt, pad}}),
            R"([{"kind": "pads", "before": null, "after": {"id": "P1", "name": "Red"}}])");
}

TEST(EditJson, RefusesWhatIsNoEditWithItsPlace) {
  EXPECT_EQ(refusalOf("[]"), "file.wrong_type ");
  EXPECT_EQ(refusalOf("{\"code\": \"x\"}"), "file.missing_key ");
  EXPECT_EQ(refusalOf(R"({"code": "x", "changes": [{"kind": "wheels"}]})"), "file.unknown_kind /changes/0/kind");
  EXPECT_EQ(refusalOf(R"({"code": "x", "changes": [{"kind": "pads", "before": null}]})"),
            "file.missing_key /changes/0");
  EXPECT_EQ(refusalOf(R"({"code": "x", "changes": [{"kind": "pads", "before": {"id": 3}, "after": null}]})"),
            "file.wrong_type /changes/0/before/id");
  EXPECT_EQ(refusalOf(R"({"code": "x", "changes": [{"kind": "site", "before": {"name": "a"}, "after": null}]})"),
            "file.wrong_type /changes/0/after");
  EXPECT_EQ(refusalOf(R"({"code": "x", "changes": [], "more": 1})"), "file.unknown_key /more");
  EXPECT_EQ(
      refusalOf(R"({"code": "x", "changes": [{"kind": "site", "before": {"owner": 1}, "after": {"name": "b"}}]})"),
      "file.unknown_key /changes/0/before/owner");
}

}  // namespace
}  // namespace cordreach
