// SPDX-License-Identifier: GPL-3.0-or-later
// Fields of every kind of thing: what they show can be written again, what is typed lands where it belongs.
#include "panels/property_fields.h"

#include <gtest/gtest.h>

#include <set>

#include "app/panels/support.h"
#include "site/queries.h"

namespace cordreach::app {
namespace {

using rules::Subject;
using rules::SubjectKind;
using testing::demoBuilding;
using testing::english;
using testing::errorOf;
using testing::fieldOf;
using testing::written;

std::vector<Subject> everything(const site::Site& site) {
  std::vector<Subject> all;
  const auto add = [&]<class T>(SubjectKind kind, const T& things) {
    for (const auto& thing : things) all.push_back({kind, thing.id.text()});
  };
  add(SubjectKind::Outlet, site.all<site::Outlet>());
  add(SubjectKind::Panel, site.all<site::Panel>());
  add(SubjectKind::Circuit, site.all<site::Circuit>());
  add(SubjectKind::FixedLoad, site.all<site::FixedLoad>());
  add(SubjectKind::Machine, site.all<site::Machine>());
  add(SubjectKind::Cord, site.all<site::Cord>());
  add(SubjectKind::Pad, site.all<site::Pad>());
  add(SubjectKind::Hookup, site.all<site::Hookup>());
  return all;
}

bool isCordBetween(const Field& field) { return field.key.ends_with(".through"); }

TEST(PropertyFields, EveryFieldOfTheDemoTakesBackWhatItShows) {
  const site::Site site = demoBuilding();
  std::size_t tried = 0;
  for (const Subject& subject : everything(site)) {
    const FieldGroups groups = fieldsOf(site, subject, english());
    EXPECT_FALSE(groups.empty()) << subject.id;
    for (const FieldGroup& group : groups) {
      for (const Field& field : group.fields) {
        if (!field.write || isCordBetween(field)) continue;  // the cord that is there already is told so
        const auto edit = field.write(site, field.text);
        ASSERT_TRUE(edit.ok()) << subject.id << " " << field.key << " '" << field.text << "' " << edit.error().code;
        site::Site after = site;
        const auto done = site::apply(edit.value(), after);
        ASSERT_TRUE(done.ok()) << subject.id << " " << field.key << " " << done.error().code;
        EXPECT_EQ(fieldOf(after, subject, field.key).text, field.text) << subject.id << " " << field.key;
        ++tried;
      }
    }
  }
  EXPECT_GT(tried, 1000U);
}

TEST(PropertyFields, EveryChoiceShownIsAmongItsChoicesAndEveryLabelIsWorded) {
  const site::Site site = demoBuilding();
  for (const Subject& subject : everything(site)) {
    std::set<std::string> keys;
    for (const FieldGroup& group : fieldsOf(site, subject, english())) {
      EXPECT_EQ(group.title.find("field."), std::string::npos) << group.title;
      for (const Field& field : group.fields) {
        EXPECT_TRUE(keys.insert(field.key).second) << field.key;
        EXPECT_EQ(field.label.find("field."), std::string::npos) << field.label;
        if (field.kind != FieldKind::Choice) continue;
        bool found = field.text.empty() && field.mayBeUnknown;
        for (const FieldChoice& choice : field.choices) {
          EXPECT_EQ(choice.text.find("field."), std::string::npos) << choice.text;
          found = found || choice.key == field.text;
        }
        EXPECT_TRUE(found) << subject.id << " " << field.key << " " << field.text;
      }
    }
  }
}

TEST(PropertyFields, EveryFieldThatMayBeUnknownCanBeMadeSo) {
  const site::Site site = demoBuilding();
  for (const Subject& subject : everything(site)) {
    for (const FieldGroup& group : fieldsOf(site, subject, english())) {
      for (const Field& field : group.fields) {
        if (!field.mayBeUnknown) continue;
        const site::Site after = written(site, field, "");
        for (const FieldGroup& later : fieldsOf(after, subject, english())) {
          for (const Field& same : later.fields) {
            if (same.key != field.key) continue;
            EXPECT_EQ(same.text, "") << subject.id << " " << field.key;
          }
        }
      }
    }
  }
}

TEST(PropertyFields, AssignsABreakerToOneContactAsAssumedUntilSaidBetter) {
  const Subject outlet{SubjectKind::Outlet, "1-01"};
  site::Site site = demoBuilding();
  site = written(site, fieldOf(site, outlet, "contact.upper.breaker"), "1A-3");
  const auto* contact = site::contactOf(site, {site::OutletId("1-01"), "upper"});
  ASSERT_TRUE(contact->assignment);
  EXPECT_EQ(contact->assignment->circuit.text(), "1A-3");
  EXPECT_EQ(contact->assignment->how, site::HowKnown::Assumed);
  EXPECT_EQ(contact->assignment->who, "");
  site = written(site, fieldOf(site, outlet, "contact.upper.how"), "traced");
  site = written(site, fieldOf(site, outlet, "contact.upper.who"), "Ana");
  contact = site::contactOf(site, {site::OutletId("1-01"), "upper"});
  EXPECT_EQ(contact->assignment->how, site::HowKnown::Traced);
  EXPECT_EQ(contact->assignment->who, "Ana");
  EXPECT_EQ(site::contactOf(site, {site::OutletId("1-01"), "lower"})->assignment->circuit.text(), "1A-1");
  const Field who = fieldOf(site, outlet, "contact.upper.who");
  site = written(site, fieldOf(site, outlet, "contact.upper.breaker"), "");
  EXPECT_FALSE(site::contactOf(site, {site::OutletId("1-01"), "upper"})->assignment);
  EXPECT_EQ(errorOf(site, who, "Ben"), "field.gone");
}

TEST(PropertyFields, SaysWhatIsWrongWithWhatWasTyped) {
  const site::Site site = demoBuilding();
  const Subject cord{SubjectKind::Cord, "C01"};
  EXPECT_EQ(errorOf(site, fieldOf(site, cord, "length"), "long"), "units.not_a_number");
  EXPECT_EQ(errorOf(site, fieldOf(site, cord, "length"), "75 kg"), "units.unknown_unit");
  EXPECT_EQ(errorOf(site, fieldOf(site, cord, "size"), "thick"), "units.not_a_number");
  EXPECT_EQ(errorOf(site, fieldOf(site, cord, "conductors"), "2.5"), "field.not_whole");
  EXPECT_EQ(errorOf(site, fieldOf(site, cord, "sockets"), "5-15, 9-99"), "field.no_receptacle");
  EXPECT_EQ(errorOf(site, fieldOf(site, {SubjectKind::Circuit, "1A-1"}, "phases"), "D"), "field.bad_phases");
  EXPECT_EQ(errorOf(site, fieldOf(site, {SubjectKind::FixedLoad, "L01"}, "cycle"), "often"), "field.bad_cycle");
}

TEST(PropertyFields, ThePrintOnAJacketFillsInWhatIsNotKnown) {
  site::Site site = demoBuilding();
  const Subject cord{SubjectKind::Cord, "C12"};
  EXPECT_EQ(fieldOf(site, cord, "size").text, "");
  site = written(site, fieldOf(site, cord, "legend"), "SJTW 14/3 60C 300V");
  EXPECT_EQ(fieldOf(site, cord, "type").text, "SJTW");
  EXPECT_EQ(site.at<site::Cord>(site::CordId("C12")).make.size->value, units::WireSize::awg(14));
  EXPECT_EQ(fieldOf(site, cord, "conductors").text, "3");
}

TEST(PropertyFields, PlugsAMachineThroughACordOfTheCartAndLaysIt) {
  site::Site site = demoBuilding();
  const Subject machine{SubjectKind::Machine, "M2"};
  site = written(site, fieldOf(site, machine, "hookup.H05.through"), "C01");
  EXPECT_EQ(fieldOf(site, machine, "hookup.H05.through").text, "C01");
  EXPECT_EQ(fieldOf(site, machine, "hookup.H05.plugged_into").text, "1-13\nupper");
  site = written(site, fieldOf(site, machine, "hookup.H05.plugged_into"), "1-31\nupper");
  EXPECT_EQ(fieldOf(site, machine, "hookup.H05.plugged_into").text, "1-31\nupper");
  EXPECT_EQ(fieldOf(site, machine, "hookup.H05.through").text, "C01");
  site = written(site, fieldOf(site, machine, "hookup.H05.laying"), "coiled");
  site = written(site, fieldOf(site, machine, "hookup.H05.turns"), "12");
  site = written(site, fieldOf(site, machine, "hookup.H05.affected"), "30 ft");
  site = written(site, fieldOf(site, machine, "hookup.H05.hours"), "19:00 to 20:00");
  const site::Hookup& hookup = site.at<site::Hookup>(site::HookupId("H05"));
  EXPECT_DOUBLE_EQ(hookup.hours->from.si(), 19.0 * 3600.0);
  for (const site::ExtensionUse& use : site.all<site::ExtensionUse>()) {
    if (use.cord.text() != "C01") continue;
    EXPECT_EQ(use.hours, hookup.hours);
    EXPECT_DOUBLE_EQ(use.laying.turns, 12.0);
    EXPECT_NEAR(use.laying.affected->in(units::foot), 30.0, 1e-9);
  }
  site = written(site, fieldOf(site, machine, "hookup.H05.through"), "");
  site = written(site, fieldOf(site, machine, "hookup.H05.plugged_into"), "");
  EXPECT_EQ(site.find<site::Hookup>(site::HookupId("H05")), nullptr);
  EXPECT_NO_THROW(static_cast<void>(fieldOf(site, machine, "plug.A.plugged_into")));
}

TEST(PropertyFields, ATypedLengthDrawsAWireThatNobodyDrew) {
  const site::Site demo = demoBuilding();
  site::Site site = demo;
  const site::OutletId id("1-01");
  for (const site::Run& run : demo.all<site::Run>()) {
    if (run.to == id) site.all<site::Run>().remove(run.id);
  }
  const Subject outlet{SubjectKind::Outlet, "1-01"};
  site = written(site, fieldOf(site, outlet, "run.new.1A-1.wire_length"), "60 ft");
  std::size_t runs = 0;
  for (const site::Run& run : site.all<site::Run>()) {
    if (run.to != id) continue;
    ++runs;
    EXPECT_FALSE(run.from);
    EXPECT_EQ(run.length->typed, "60 ft");
  }
  EXPECT_EQ(runs, 1U);
}

TEST(PropertyFields, OffLimitsCircuitsAreNeverOffered) {
  site::Site site = demoBuilding();
  site::Circuit circuit = site.at<site::Circuit>(site::CircuitId("1A-1"));
  circuit.use = site::UseClass::Never;
  site.all<site::Circuit>().put(circuit);
  for (const FieldChoice& choice : fieldOf(site, {SubjectKind::Machine, "M2"}, "hookup.H05.plugged_into").choices) {
    EXPECT_FALSE(choice.key.starts_with("1-01\n")) << choice.text;
  }
}

TEST(PropertyFields, SeveralThingsShareTheirFieldsAndOneEditWritesThemAll) {
  const site::Site site = demoBuilding();
  const std::vector<Subject> cords{{SubjectKind::Cord, "C01"}, {SubjectKind::Cord, "C08"}};
  const FieldGroups common = commonFieldsOf(site, cords, english());
  EXPECT_TRUE(fieldOf(common, "size").mixed);
  EXPECT_EQ(fieldOf(common, "size").text, "");
  EXPECT_FALSE(fieldOf(common, "plug").mixed);
  const site::Site after = written(site, fieldOf(common, "length"), "25 ft");
  for (const char* id : {"C01", "C08"}) {
    EXPECT_NEAR(after.at<site::Cord>(site::CordId(id)).make.length->value.in(units::foot), 25.0, 1e-9);
  }
  EXPECT_TRUE(commonFieldsOf(site, {cords[0], {SubjectKind::Pad, "P1"}}, english()).empty());
}

TEST(PropertyFields, TheSiteItselfTakesBackWhatItShows) {
  const site::Site site = demoBuilding();
  for (const FieldGroup& group : siteFields(site, english())) {
    for (const Field& field : group.fields) {
      const site::Site after = written(site, field, field.text);
      EXPECT_EQ(fieldOf(siteFields(after, english()), field.key).text, field.text) << field.key;
    }
  }
  const site::Site named = written(site, fieldOf(siteFields(site, english()), "name"), "Elm Street");
  EXPECT_EQ(named.name, "Elm Street");
  const site::Site warm = written(site, fieldOf(siteFields(site, english()), "room_air"), "86 \u00b0F");
  EXPECT_NEAR(warm.ambient.room->value.celsius(), 30.0, 1e-9);
}

}  // namespace
}  // namespace cordreach::app
