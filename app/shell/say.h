// SPDX-License-Identifier: GPL-3.0-or-later
// The book's words as Qt's strings.
#pragma once

#include <QString>

#include "base/error.h"
#include "text/error_text.h"
#include "text/phrasebook.h"

namespace cordreach::app {

[[nodiscard]] inline QString say(const text::Phrasebook& book, std::string_view code,
                                 const base::Arguments& arguments = {}) {
  return QString::fromStdString(book.say(code, arguments));
}

// An error as a whole sentence: capital, full stop.
[[nodiscard]] inline QString sentenceOf(const text::Phrasebook& book, const base::Error& error) {
  QString words = QString::fromStdString(text::errorSentence(book, error));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words + QStringLiteral(".");
}

}  // namespace cordreach::app
