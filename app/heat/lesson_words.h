// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson's texts as they are read. Those of a prepared lesson are codes of the words, so that it is in every
// language; a trainer's own are plain text, in which a length or a temperature in braces ("over {140 °F}") is written
// in the reader's units.
#pragma once

#include <string>

#include "planning/lesson.h"
#include "text/phrasebook.h"

namespace cordreach::app {

[[nodiscard]] std::string lessonText(const text::Phrasebook& book, const std::string& text,
                                     const base::Arguments& arguments = {});
// All of its texts and names in words.
[[nodiscard]] planning::Lesson wordedLesson(const text::Phrasebook& book, const planning::Lesson& lesson);

}  // namespace cordreach::app
