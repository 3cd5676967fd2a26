// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the cells of the demo building's lists, and what typing in them makes of it.
#include "listings/listing.h"

#include <gtest/gtest.h>

#include "app/panels/support.h"

namespace cordreach::app {
namespace {

using testing::demoBuilding;
using testing::english;

const site::HowFound kTraced{site::HowKnown::Traced, "Ana", "2026-03-01"};
constexpr std::array kKinds = {ListingKind::Circuits, ListingKind::Outlets, ListingKind::Machines, ListingKind::Cords,
                               ListingKind::Loads};

std::size_t columnOf(const Listing& listing, const std::string& key) {
  const auto at = std::ranges::find(listing.columns(), key, &ListingColumn::key);
  EXPECT_NE(at, listing.columns().end()) << key;
  return static_cast<std::size_t>(at - listing.columns().begin());
}

class Outlets : public ::testing::Test {
 protected:
  [[nodiscard]] std::string text(const std::string& id, const std::string& key) const {
    return listing.text({site, english()}, id, columnOf(listing, key));
  }
  [[nodiscard]] std::variant<site::Edit, CellFault> write(const std::string& id, const std::string& key,
                                                          const std::string& typed) const {
    return listing.write({site, english(), kTraced}, {{id, columnOf(listing, key), typed}});
  }
  void type(const std::string& id, const std::string& key, const std::string& typed) {
    const auto made = write(id, key, typed);
    ASSERT_TRUE(std::holds_alternative<site::Edit>(made)) << std::get<CellFault>(made).error.code;
    ASSERT_TRUE(site::apply(std::get<site::Edit>(made), site).ok());
  }
  [[nodiscard]] std::string faultOf(const std::string& id, const std::string& key, const std::string& typed) const {
    const auto made = write(id, key, typed);
    return std::holds_alternative<site::Edit>(made) ? "" : std::get<CellFault>(made).error.code;
  }

  site::Site site = demoBuilding();
  const Listing& listing = listingOf(ListingKind::Outlets);
};

TEST_F(Outlets, ComeInTheOrderOfTheirNumbers) {
  const auto ids = listing.ids(site);
  EXPECT_EQ(ids.size(), site.all<site::Outlet>().size());
  EXPECT_EQ(ids.front(), "1-01");
  EXPECT_EQ(ids.back(), "2-36");
}

TEST_F(Outlets, SayWhatBothContactsShareOnceAndElseEach) {
  EXPECT_EQ(text("1-01", "breaker"), "1A-1");
  EXPECT_EQ(text("1-16", "breaker"), "1A-5 / 1A-7");
  EXPECT_EQ(text("1-01", "how"), "traced");
  EXPECT_EQ(text("gone", "breaker"), "");
}

TEST_F(Outlets, TakeABreakerWithHowItIsKnownAndNoteIt) {
  const std::size_t before = site.all<site::HistoryEntry>().size();
  type("2-24", "breaker", " 2a-8 ");
  EXPECT_EQ(text("2-24", "breaker"), "2A-8");
  EXPECT_EQ(text("2-24", "how"), "traced");
  EXPECT_EQ(text("2-24", "who"), "Ana");
  EXPECT_EQ(text("2-24", "when"), "2026-03-01");
  EXPECT_EQ(text("2-24", "directory"), "2A-8");
  EXPECT_EQ(site.all<site::HistoryEntry>().size(), before + 1);
}

TEST_F(Outlets, TakeEachContactItsOwn) {
  type("1-01", "breaker", "1A-5 / ?");
  EXPECT_EQ(text("1-01", "breaker"), "1A-5 / ?");
  const site::Outlet& outlet = site.at<site::Outlet>(site::OutletId("1-01"));
  EXPECT_EQ(outlet.contacts[0].assignment->circuit.text(), "1A-5");
  EXPECT_FALSE(outlet.contacts[1].assignment.has_value());
}

TEST_F(Outlets, AcceptNotKnowing) {
  for (const char* said : {"?", "", "unknown", "Don't know"}) {
    site = demoBuilding();
    type("1-01", "breaker", said);
    EXPECT_EQ(text("1-01", "breaker"), "") << said;
    EXPECT_EQ(text("1-01", "how"), "") << said;
  }
}

TEST_F(Outlets, RefuseWithACodeAndChangeNothing) {
  EXPECT_EQ(faultOf("1-01", "breaker", "9Z-1"), "listing.no_circuit");
  EXPECT_EQ(faultOf("1-01", "breaker", "1"), "listing.several_circuits");  // of 1A or 2A?
  EXPECT_EQ(faultOf("1-01", "breaker", "1A-1 / 1A-3 / 1A-5"), "listing.parts");
  EXPECT_EQ(faultOf("1-01", "receptacle", "7-99"), "listing.no_choice");
  EXPECT_EQ(faultOf("1-01", "dead", "perhaps"), "listing.no_choice");
  EXPECT_EQ(faultOf("1-01", "floor", "Roof"), "listing.not_editable");
  EXPECT_EQ(faultOf("1-01", "height", "high"), "units.not_a_number");
  EXPECT_EQ(faultOf("gone", "room", "x"), "field.gone");
  type("1-01", "breaker", "?");
  EXPECT_EQ(faultOf("1-01", "how", "traced"), "listing.not_assigned");
}

TEST_F(Outlets, AreWrittenTogetherOrNotAtAll) {
  const std::size_t room = columnOf(listing, "room");
  const std::size_t breaker = columnOf(listing, "breaker");
  const auto made =
      listing.write({site, english()}, {{"1-01", room, "Attic"}, {"1-02", breaker, "nonsense"}, {"1-03", room, "x"}});
  ASSERT_TRUE(std::holds_alternative<CellFault>(made));
  EXPECT_EQ(std::get<CellFault>(made).cell, 1U);
}

// What stands in a cell, typed again, changes nothing: in no kind, of no thing, in neither unit system.
TEST(Listings, GiveBackEveryCellTheyShow) {
  const site::Site site = demoBuilding();
  std::size_t cells = 0;
  for (const auto units : {text::UnitSystem::Us, text::UnitSystem::Metric}) {
    const ListingContext in(site, english(units), kTraced);
    for (const ListingKind kind : kKinds) {
      const Listing& listing = listingOf(kind);
      for (const std::string& id : listing.ids(site)) {
        for (std::size_t column = 0; column < listing.columns().size(); ++column) {
          const std::string shown = listing.text(in, id, column);
          const auto made = listing.write(in, {{id, column, shown}});
          ASSERT_TRUE(std::holds_alternative<site::Edit>(made)) << id << " " << listing.columns()[column].key;
          EXPECT_TRUE(std::get<site::Edit>(made).changes.empty()) << id << " " << listing.columns()[column].key;
          ++cells;
        }
      }
    }
  }
  EXPECT_GT(cells, 4000U);
}

TEST(Listings, HaveWordsForEveryHeadingAndEveryChoice) {
  const site::Site site = demoBuilding();
  const ListingContext in(site, english());
  for (const ListingKind kind : kKinds) {
    const Listing& listing = listingOf(kind);
    for (std::size_t column = 0; column < listing.columns().size(); ++column) {
      EXPECT_TRUE(english().has("field." + listing.columns()[column].key)) << listing.columns()[column].key;
      for (const std::string& choice : listing.choices(in, column)) {
        const std::string id = listing.ids(site).front();
        EXPECT_TRUE(std::holds_alternative<site::Edit>(listing.write(in, {{id, column, choice}})))
            << listing.columns()[column].key << ": " << choice;
      }
    }
  }
}

class Reading : public ::testing::Test {
 protected:
  [[nodiscard]] io::ImportPreview import(ListingKind kind, const io::Table& table) const {
    const Listing& listing = listingOf(kind);
    const ListingContext in(site, english(), kTraced);
    const auto columns = importColumns(listing, english());
    return io::previewImport(site, table, io::matchColumns(table.front(), columns), columns, listing.rowReader(in),
                             "listing.import");
  }
  void take(const io::ImportPreview& preview) { ASSERT_TRUE(site::apply(preview.edit, site).ok()); }

  site::Site site = demoBuilding();
};

TEST_F(Reading, OfWhatWasWrittenChangesNothing) {
  const ListingContext in(site, english());
  for (const ListingKind kind : kKinds) {
    const Listing& listing = listingOf(kind);
    io::Table table(1);
    for (const ListingColumn& column : listing.columns()) table[0].push_back(headingOf(english(), column));
    for (const std::string& id : listing.ids(site)) {
      io::TableRow row;
      for (std::size_t i = 0; i < listing.columns().size(); ++i) row.push_back(listing.text(in, id, i));
      table.push_back(row);
    }
    const auto preview = import(kind, table);
    EXPECT_TRUE(preview.edit.changes.empty()) << static_cast<int>(kind);
    for (const io::ImportedRow& row : preview.rows) {
      EXPECT_EQ(row.fate, io::RowFate::Same)
          << static_cast<int>(kind) << " " << row.number << " " << (row.fault ? row.fault->error.code : "");
    }
  }
}

TEST_F(Reading, MakesCircuitsOnThePhaseOfTheirSpace) {
  const auto preview = import(ListingKind::Circuits, {{"Circuit", "Feeds", "Amps"},
                                                      {"1A-21", "New office", "20 A"},
                                                      {"2A-23", "Annex", "?"},
                                                      {"3Z-1", "nowhere", ""}});
  ASSERT_EQ(preview.rows.size(), 3U);
  EXPECT_EQ(preview.rows[0].fate, io::RowFate::Adds);
  EXPECT_EQ(preview.rows[1].fate, io::RowFate::Adds);
  EXPECT_EQ(preview.rows[2].fault->error.code, "listing.no_panel");
  take(preview);
  const ListingContext in(site, english());
  const site::Circuit& first = site.at<site::Circuit>(in.circuitNamed("1A-21").value());
  EXPECT_EQ(first.phases, std::vector<std::size_t>{0});
  EXPECT_EQ(first.purpose, "New office");
  EXPECT_EQ(first.rating->value, 20.0 * units::ampere);
  const site::Circuit& second = site.at<site::Circuit>(in.circuitNamed("2A-23").value());
  EXPECT_EQ(second.phases, std::vector<std::size_t>{2});
  EXPECT_FALSE(second.rating.has_value());
}

TEST_F(Reading, AddsAndChangesOutletsInOneEdit) {
  const site::Site before = site;
  const auto preview = import(ListingKind::Outlets, {{"Outlet", "Location", "Ckt", "Type", "Contacts"},
                                                     {"1-01", "Lobby", "", "", ""},
                                                     {"9-01", "Attic", "1A-14", "5-20R", "single"},
                                                     {"9-02", "Attic", "1A-14", "", ""},
                                                     {"9-03", "", "nonsense", "", ""}});
  EXPECT_EQ(preview.rows[0].fate, io::RowFate::Changes);
  EXPECT_EQ(preview.rows[1].fate, io::RowFate::Adds);
  EXPECT_EQ(preview.rows[3].fault->error.code, "listing.no_circuit");
  EXPECT_EQ(preview.rows[3].fault->column, "breaker");
  take(preview);
  EXPECT_EQ(site.at<site::Outlet>(site::OutletId("1-01")).room, "Lobby");
  std::size_t added = 0;
  for (const site::Outlet& outlet : site.all<site::Outlet>()) {
    if (outlet.label == "9-01") {
      ++added;
      ASSERT_EQ(outlet.contacts.size(), 1U);
      EXPECT_EQ(outlet.contacts[0].receptacle, "5-20");
      EXPECT_EQ(outlet.contacts[0].assignment->how, site::HowKnown::Traced);
    }
    if (outlet.label == "9-02") {
      ++added;
      EXPECT_EQ(outlet.contacts.size(), 2U);
    }
  }
  EXPECT_EQ(added, 2U);
  ASSERT_TRUE(site::apply(site::inverseOf(preview.edit), site).ok());
  EXPECT_EQ(site, before);
}

TEST_F(Reading, AddsMachinesCordsAndLoads) {
  take(import(ListingKind::Machines, {{"Machine", "Nameplate amps", "Kind"}, {"Carpet fan", "3 A", "air mover"}}));
  take(import(ListingKind::Cords, {{"Label", "Print on the jacket", "Length"}, {"C99", "SJTW 14/3 60C", "25 ft"}}));
  const auto loads =
      import(ListingKind::Loads,
             {{"Name", "Circuit", "Amps by its plate"}, {"Ice maker", "1A-2", "6 A"}, {"Mystery", "", "6 A"}});
  EXPECT_EQ(loads.rows[1].fault->error.code, "listing.no_circuit");
  take(loads);
  const auto hasName = [](const auto& things, const std::string& name) {
    return std::ranges::any_of(things, [&](const auto& thing) { return thing.name == name; });
  };
  EXPECT_TRUE(hasName(site.all<site::Machine>(), "Carpet fan"));
  EXPECT_TRUE(hasName(site.all<site::FixedLoad>(), "Ice maker"));
  for (const site::Cord& cord : site.all<site::Cord>()) {
    if (cord.label != "C99") continue;
    EXPECT_EQ(cord.make.size->value, units::WireSize::awg(14));
  }
}

}  // namespace
}  // namespace cordreach::app
