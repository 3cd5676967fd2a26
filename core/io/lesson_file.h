// SPDX-License-Identifier: GPL-3.0-or-later
// A lesson as a trainer writes it: JSON text of version 1, described in docs/lessons.md. Small by intent: at most 256
// kB, 8 sides, 12 steps, 6 answers, 400 characters a text. Errors, the place a JSON pointer: those of parseJson;
// lesson.no_version, lesson.newer_version {known_version}, lesson.too_large {limit_kb}, lesson.missing_key {key},
// lesson.unknown_key {key}, lesson.wrong_type {expected}, lesson.unknown_word {found, expected}, lesson.bad_value
// {found, expected}, lesson.out_of_range {found, least, most}, lesson.text_too_long {limit}, lesson.bad_count {key,
// least, most}, lesson.no_cord_size {found}, lesson.unread_print {found}.
#pragma once

#include <filesystem>
#include <string_view>

#include "base/result.h"
#include "planning/lesson.h"

namespace cordreach::io {

inline constexpr int kLessonVersion = 1;

[[nodiscard]] base::Result<planning::Lesson> readLesson(std::string_view json);
// Errors also: those of readWholeFile (io/atomic_file.h).
[[nodiscard]] base::Result<planning::Lesson> loadLesson(const std::filesystem::path& path);

}  // namespace cordreach::io
