// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a lesson: refused with a code, or read to sides that can all be worked out.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "io/lesson_file.h"

namespace io = cordreach::io;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto read = io::readLesson({reinterpret_cast<const char*>(data), size});
  if (!read) {
    if (read.error().code.empty()) std::abort();
    return 0;
  }
  if (read.value().sides.size() < 2) std::abort();
  for (const auto& side : read.value().sides) {
    const auto shown = cordreach::planning::demonstrateLesson(side, cordreach::units::minute);
    if (!(shown.points.back().current >= cordreach::units::Current{})) std::abort();  // NaN too
  }
  return 0;
}
