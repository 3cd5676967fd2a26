// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a site file: refused with a code, or read, written and read again to the same site.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "io/site_file.h"

namespace io = cordreach::io;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = io::readSite({reinterpret_cast<const char*>(data), size});
  if (!read) {
    if (read.error().code.empty()) std::abort();
    return 0;
  }
  const std::string text = io::writeSite(read.value());
  const auto again = io::readSite(text);
  // Turning speeds are written in turns a minute, so the first reading may move one by its last binary digit; from
  // then on nothing moves.
  if (!again || io::writeSite(again.value()) != text) std::abort();
  return 0;
}
