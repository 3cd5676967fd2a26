// SPDX-License-Identifier: GPL-3.0-or-later
// The listings, one kind a file: listing_<kind>.cpp.
#pragma once

#include <string>
#include <string_view>

namespace cordreach::app {

class Listing;

[[nodiscard]] const Listing& circuitListing();
[[nodiscard]] const Listing& outletListing();
[[nodiscard]] const Listing& machineListing();
[[nodiscard]] const Listing& cordListing();
[[nodiscard]] const Listing& loadListing();

// The capitals A to Z made small; for comparing what people type with what is known.
[[nodiscard]] inline std::string smallLetters(std::string_view text) {
  std::string small(text);
  for (char& c : small) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return small;
}

}  // namespace cordreach::app
