// SPDX-License-Identifier: GPL-3.0-or-later
// Outlets, a row each; what their contacts differ in stands as "1A-5 / 1A-7".
#include "listings/listing_of.h"

namespace cordreach::app {

namespace {

using site::Contact;
using site::Outlet;

CellCodec<Contact> breakerCodec() {
  CellCodec<Contact> codec;
  codec.mayBeUnknown = true;
  codec.choices = [](const ListingContext& in) { return in.circuitNames(); };
  codec.read = [](const ListingContext& in, const Contact& contact) -> std::string {
    const site::Circuit* circuit =
        contact.assignment ? in.site().find<site::Circuit>(contact.assignment->circuit) : nullptr;
    return circuit == nullptr ? std::string() : site::circuitNumberOf(in.site(), *circuit);
  };
  codec.write = [](const ListingContext& in, Contact& contact, std::string_view text) -> CellError {
    if (saysUnknown(in.book(), text)) {
      site::assign(contact, std::nullopt, in.found());
      return std::nullopt;
    }
    const auto circuit = in.circuitNamed(text);
    if (!circuit.ok()) return circuit.error();
    // The same again says nothing new about how it is known.
    if (contact.assignment && contact.assignment->circuit == circuit.value()) return std::nullopt;
    site::assign(contact, circuit.value(), in.found());
    return std::nullopt;
  };
  return codec;
}

// Of how a breaker is known: nothing where none is, and nothing to be written there.
template <class M, class Access>
CellCodec<Contact> knowledgeCodec(CellCodec<M> inner, Access access) {
  CellCodec<Contact> codec;
  codec.choices = inner.choices;
  codec.read = [read = inner.read, access](const ListingContext& in, const Contact& contact) {
    return contact.assignment ? read(in, access(*contact.assignment)) : std::string();
  };
  codec.write = [write = inner.write, access](const ListingContext& in, Contact& contact,
                                              std::string_view text) -> CellError {
    if (contact.assignment) return write(in, access(*contact.assignment), text);
    if (saysUnknown(in.book(), text)) return std::nullopt;
    return base::Error{"listing.not_assigned", tidied(text), {}};
  };
  return codec;
}

CellCodec<Contact> poweredCodec() {
  CellCodec<Contact> codec;
  codec.read = [](const ListingContext&, const Contact& contact) {
    return contact.poweredHours ? hoursText(*contact.poweredHours) : std::string();
  };
  codec.write = [](const ListingContext& in, Contact& contact, std::string_view text) -> CellError {
    if (saysUnknown(in.book(), text)) return contact.poweredHours.reset(), std::nullopt;
    const auto read = readHours(text);
    if (!read.ok()) return read.error();
    contact.poweredHours = read.value();
    return std::nullopt;
  };
  return codec;
}

CellCodec<Outlet> floorCodec() {
  return fact<Outlet>([](const ListingContext& in, const Outlet& outlet) {
    const site::Floor* floor = outlet.place ? in.site().find<site::Floor>(outlet.place->floor) : nullptr;
    return floor == nullptr ? std::string() : floor->name;
  });
}

CellCodec<Outlet> contactNamesCodec() {
  return fact<Outlet>([](const ListingContext& in, const Outlet& outlet) {
    std::string names;
    for (const Contact& contact : outlet.contacts) {
      const std::string code = "field.contact." + contact.name;
      names += (names.empty() ? "" : std::string(kBetweenParts)) +
               (in.book().has(code) ? in.book().say(code) : contact.name);
    }
    return names;
  });
}

constexpr auto kContacts = [](auto& outlet) -> auto& { return outlet.contacts; };

void addContactColumns(std::vector<ColumnOf<Outlet>>& all) {
  const auto add = [&](const char* key, CellCodec<Contact> codec) {
    all.push_back(partsColumn<Outlet, Contact>(key, std::move(codec), kContacts));
  };
  add("breaker", breakerCodec());
  add("how", knowledgeCodec(
                 choiceCodec<site::HowKnown>("how"), [](auto& a) -> auto& { return a.how; }));
  add("who", knowledgeCodec(
                 textCodec(), [](auto& a) -> auto& { return a.who; }));
  add("when", knowledgeCodec(
                  textCodec(), [](auto& a) -> auto& { return a.when; }));
  add("directory", within<Contact>(
                       textCodec(), [](auto& c) -> auto& { return c.directory; }));
  add("receptacle", within<Contact>(
                        receptacleCodec(), [](auto& c) -> auto& { return c.receptacle; }));
  add("use", within<Contact>(
                 choiceCodec<site::UseClass>("use"), [](auto& c) -> auto& { return c.use; }));
  add("colour", within<Contact>(
                    choiceCodec<site::FaceColour>("colour"), [](auto& c) -> auto& { return c.colour; }));
  add("powered", poweredCodec());
  add("switched", within<Contact>(
                      flagCodec(), [](auto& c) -> auto& { return c.switched; }));
  add("dead", within<Contact>(
                  flagCodec(), [](auto& c) -> auto& { return c.dead; }));
  add("loose", within<Contact>(
                   flagCodec(), [](auto& c) -> auto& { return c.loose; }));
  add("blocked", within<Contact>(
                     flagCodec(), [](auto& c) -> auto& { return c.blocked; }));
  add("locked_cover", within<Contact>(
                          flagCodec(), [](auto& c) -> auto& { return c.lockedCover; }));
  add("key_holder", within<Contact>(
                        textCodec(), [](auto& c) -> auto& { return c.keyHolder; }));
}

std::vector<ColumnOf<Outlet>> columns() {
  std::vector<ColumnOf<Outlet>> all;
  const auto add = [&](const char* key, auto codec, auto access) {
    all.push_back(memberColumn<Outlet>(key, std::move(codec), access));
  };
  add(
      "label", textCodec(), [](auto& o) -> auto& { return o.label; });
  all.push_back(columnOf<Outlet>("floor", floorCodec()));
  add(
      "room", textCodec(), [](auto& o) -> auto& { return o.room; });
  add(
      "wall", textCodec(), [](auto& o) -> auto& { return o.wall; });
  all.push_back(columnOf<Outlet>("contacts", contactNamesCodec()));
  addContactColumns(all);
  add(
      "height", knownCodec<units::Length>(), [](auto& o) -> auto& { return o.height; });
  add(
      "floor_box", flagCodec(), [](auto& o) -> auto& { return o.floorBox; });
  add(
      "ground_fault", flagCodec(), [](auto& o) -> auto& { return o.groundFaultDevice; });
  return all;
}

// A duplex, unless its row says otherwise; without a place on the plan.
std::variant<Outlet, io::RowFault> make(const ListingContext& in, site::OutletId id, const io::Cells& cells) {
  Outlet outlet{std::move(id), cellText(cells, "label")};
  const std::string said = smallLetters(cellText(cells, "contacts"));
  const bool single = said == "single" || said == "1" || said == smallLetters(in.book().say("field.contact.single"));
  std::size_t count = single ? 1 : 2;
  for (const char* key : {"breaker", "receptacle"}) count = std::max(count, partsOf(cellText(cells, key)).size());
  outlet.contacts.resize(count);
  const auto names = count == 1   ? std::vector<std::string>{"single"}
                     : count == 2 ? std::vector<std::string>{"upper", "lower"}
                                  : std::vector<std::string>();
  for (std::size_t i = 0; i < count; ++i) {
    outlet.contacts[i].name = names.empty() ? std::to_string(i + 1) : names[i];
  }
  return outlet;
}

}  // namespace

const Listing& outletListing() {
  static const ListingOf<Outlet> listing(
      {ListingKind::Outlets, rules::SubjectKind::Outlet, columns(),
       [](const site::Site&, const Outlet& outlet) { return outlet.label; },
       [](const ListingContext&, const io::Cells& cells) { return cellText(cells, "label"); }, make});
  return listing;
}

}  // namespace cordreach::app
