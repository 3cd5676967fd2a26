// SPDX-License-Identifier: GPL-3.0-or-later
// Things of one kind, sorted by id, each id once.
#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "base/contract.h"

namespace cordreach::site {

template <class T>
class Collection {
 public:
  using Key = decltype(T::id);

  [[nodiscard]] const T* find(const Key& id) const {
    const auto at = lower(id);
    return at != m_items.end() && at->id == id ? &*at : nullptr;
  }
  // The one of that id, which must be there.
  [[nodiscard]] const T& at(const Key& id) const {
    const T* item = find(id);
    CORDREACH_EXPECTS(item != nullptr);
    return *item;
  }
  // Adds it, or takes the place of the one with its id.
  void put(T item) {
    const auto at = lower(item.id);
    if (at != m_items.end() && at->id == item.id) {
      m_items[static_cast<std::size_t>(at - m_items.begin())] = std::move(item);
    } else {
      m_items.insert(at, std::move(item));
    }
  }
  void remove(const Key& id) {
    const auto at = lower(id);
    if (at != m_items.end() && at->id == id) m_items.erase(at);
  }
  [[nodiscard]] auto begin() const { return m_items.begin(); }
  [[nodiscard]] auto end() const { return m_items.end(); }
  [[nodiscard]] std::size_t size() const { return m_items.size(); }
  [[nodiscard]] bool empty() const { return m_items.empty(); }

  friend bool operator==(const Collection&, const Collection&) = default;

 private:
  [[nodiscard]] auto lower(const Key& id) const {
    return std::lower_bound(m_items.begin(), m_items.end(), id,
                            [](const T& item, const Key& key) { return item.id < key; });
  }
  std::vector<T> m_items;
};

}  // namespace cordreach::site
