// SPDX-License-Identifier: GPL-3.0-or-later
// A listing of one type of thing out of its columns.
#pragma once

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "listings/cell_codecs.h"
#include "panels/fresh_id.h"
#include "site/natural_order.h"

namespace cordreach::app {

template <class T>
struct ListingSpec {
  ListingKind kind;
  rules::SubjectKind subject;
  std::vector<ColumnOf<T>> columns;
  // What tells things apart for people, and orders them.
  std::function<std::string(const site::Site&, const T&)> name;
  // The name of what a row of another table is about; empty: the row does not say.
  std::function<std::string(const ListingContext&, const io::Cells&)> nameIn;
  // A thing that is not there yet, as far as its cells don't say more.
  std::function<std::variant<T, io::RowFault>(const ListingContext&, decltype(T::id), const io::Cells&)> make;
  // A column that tells apart those of one name, where a row has it; empty: none does.
  std::string tellsApart{};
};

template <class T>
class ListingOf : public Listing {
 public:
  using Id = decltype(T::id);

  explicit ListingOf(ListingSpec<T> spec) : m_spec(std::move(spec)) {
    for (const ColumnOf<T>& column : m_spec.columns) m_columns.push_back(column.info);
  }

  [[nodiscard]] ListingKind kind() const override { return m_spec.kind; }
  [[nodiscard]] rules::SubjectKind subjectKind() const override { return m_spec.subject; }
  [[nodiscard]] const std::vector<ListingColumn>& columns() const override { return m_columns; }

  [[nodiscard]] std::vector<std::string> ids(const site::Site& site) const override {
    std::vector<std::pair<std::string, std::string>> named;
    for (const T& thing : site.all<T>()) named.emplace_back(m_spec.name(site, thing), thing.id.text());
    std::ranges::stable_sort(named, [](const auto& a, const auto& b) { return site::comesBefore(a.first, b.first); });
    std::vector<std::string> ids;
    for (auto& [name, id] : named) ids.push_back(std::move(id));
    return ids;
  }

  [[nodiscard]] std::string text(const ListingContext& in, const std::string& id, std::size_t column) const override {
    const T* thing = in.site().template find<T>(Id(id));
    return thing == nullptr ? std::string() : m_spec.columns.at(column).codec.read(in, *thing);
  }

  [[nodiscard]] std::vector<std::string> choices(const ListingContext& in, std::size_t column) const override {
    const auto& codec = m_spec.columns.at(column).codec;
    return codec.choices ? codec.choices(in) : std::vector<std::string>();
  }

  [[nodiscard]] std::variant<site::Edit, CellFault> write(const ListingContext& in,
                                                          const std::vector<CellText>& cells) const override {
    std::map<Id, T> changed;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const T* now = in.site().template find<T>(Id(cells[i].id));
      if (now == nullptr) return CellFault{i, {"field.gone", cells[i].id, {}}};
      T& after = changed.try_emplace(now->id, *now).first->second;
      if (auto fault = put(in, after, cells[i].column, cells[i].text)) return CellFault{i, std::move(*fault)};
    }
    site::Edit edit{"listing.change", {}};
    for (auto& [id, after] : changed) {
      const T& before = in.site().template at<T>(id);
      if (!(after == before)) edit.changes.emplace_back(site::Change<T>{before, std::move(after)});
    }
    site::noteAssignments(edit, in.site(), in.found(), randomSource());
    return edit;
  }

  [[nodiscard]] io::RowReader rowReader(const ListingContext& in) const override {
    auto known = std::make_shared<std::multimap<std::string, Id>>();
    for (const T& thing : in.site().template all<T>())
      known->emplace(smallLetters(m_spec.name(in.site(), thing)), thing.id);
    return [this, &in, known, taken = std::make_shared<std::set<Id>>()](const io::Cells& cells) {
      return readRow(in, cells, *known, *taken);
    };
  }

 private:
  using Outcome = std::variant<io::RowChange, io::RowFault>;

  [[nodiscard]] CellError put(const ListingContext& in, T& thing, std::size_t column, std::string_view text) const {
    const auto& codec = m_spec.columns.at(column).codec;
    if (!codec.write) {
      if (smallLetters(codec.read(in, thing)) == smallLetters(tidied(text))) return std::nullopt;
      return base::Error{"listing.not_editable", headingOf(in.book(), m_columns.at(column)), {}};
    }
    // Written anew, a rounded figure would lose what it was rounded from.
    if (codec.read(in, thing) == tidied(text)) return std::nullopt;
    return codec.write(in, thing, text);
  }

  [[nodiscard]] Outcome readRow(const ListingContext& in, const io::Cells& cells,
                                const std::multimap<std::string, Id>& known, std::set<Id>& taken) const {
    const std::string name = smallLetters(m_spec.nameIn(in, cells));
    if (name.empty()) return io::RowFault{{"listing.no_name", "", {}}, {}};
    const std::vector<Id> meant = candidates(in, cells, name, known);
    if (meant.size() > 1) return io::RowFault{{"listing.several", name, {}}, {}};
    if (!meant.empty()) {
      const T& before = in.site().template at<T>(meant.front());
      T after = before;
      if (auto fault = fill(in, after, cells, false)) return *fault;
      io::RowChange change{before.id.text(), {}, false};
      if (!(after == before)) change.change = site::Change<T>{before, std::move(after)};
      return change;
    }
    Id id = freshId<T>(in.site());
    while (!taken.insert(id).second) id = freshId<T>(in.site());
    auto made = m_spec.make(in, id, cells);
    if (auto* fault = std::get_if<io::RowFault>(&made)) return *fault;
    T thing = std::get<T>(std::move(made));
    if (auto fault = fill(in, thing, cells, true)) return *fault;
    return io::RowChange{"new " + name, site::Change<T>{std::nullopt, std::move(thing)}, true};
  }

  // Those of that name; of several, the ones that the row's further cell is about.
  [[nodiscard]] std::vector<Id> candidates(const ListingContext& in, const io::Cells& cells, const std::string& name,
                                           const std::multimap<std::string, Id>& known) const {
    std::vector<Id> named;
    const auto [first, last] = known.equal_range(name);
    for (auto at = first; at != last; ++at) named.push_back(at->second);
    const auto further = cells.find(m_spec.tellsApart);
    if (named.size() < 2 || further == cells.end()) return named;
    const auto column = std::ranges::find(m_columns, m_spec.tellsApart, &ListingColumn::key) - m_columns.begin();
    const auto& read = m_spec.columns.at(static_cast<std::size_t>(column)).codec.read;
    std::erase_if(named, [&](const Id& id) {
      return smallLetters(read(in, in.site().template at<T>(id))) != smallLetters(tidied(further->second));
    });
    return named;
  }

  // Column by column in our order, not in the file's: how a breaker is known comes after which it is.
  [[nodiscard]] std::optional<io::RowFault> fill(const ListingContext& in, T& thing, const io::Cells& cells,
                                                 bool isNew) const {
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
      const auto cell = cells.find(m_columns[i].key);
      if (cell == cells.end() || tidied(cell->second).empty()) continue;
      if (isNew && !m_columns[i].editable) continue;  // made of other cells
      if (auto fault = put(in, thing, i, cell->second)) return io::RowFault{std::move(*fault), m_columns[i].key};
    }
    return std::nullopt;
  }

  ListingSpec<T> m_spec;
  std::vector<ListingColumn> m_columns;
};

// The cell of that column, tidied; empty where there is none.
[[nodiscard]] inline std::string cellText(const io::Cells& cells, const std::string& key) {
  const auto at = cells.find(key);
  return at == cells.end() ? std::string() : tidied(at->second);
}

}  // namespace cordreach::app
