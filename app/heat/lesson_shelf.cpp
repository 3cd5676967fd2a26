// SPDX-License-Identifier: GPL-3.0-or-later
// The files' names begin with their number.
#include "heat/lesson_shelf.h"

#include <algorithm>

#include "heat/embedded_lessons.h"
#include "io/lesson_file.h"

namespace cordreach::app {

const std::vector<planning::Lesson>& preparedLessons() {
  static const std::vector<planning::Lesson> lessons = [] {
    const auto files = embeddedLessons();
    std::vector<std::pair<std::string_view, std::string_view>> sorted(files.begin(), files.end());
    std::sort(sorted.begin(), sorted.end());
    std::vector<planning::Lesson> read;
    for (const auto& [name, text] : sorted) read.push_back(io::readLesson(text).value());
    return read;
  }();
  return lessons;
}

}  // namespace cordreach::app
