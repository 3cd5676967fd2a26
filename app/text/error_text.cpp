// SPDX-License-Identifier: GPL-3.0-or-later
// Words of errors stand in the book under `error.` and the error's code.
#include "text/error_text.h"

namespace cordreach::text {

std::string errorSentence(const Phrasebook& book, const base::Error& error) {
  base::Arguments arguments = error.arguments;
  arguments.push_back({"place", error.place});
  return book.say("error." + error.code, arguments);
}

std::string errorSentenceIn(const Phrasebook& book, const std::string& file, const base::Error& error) {
  const std::string place =
      error.place.empty() || error.place == file ? file : file + " " + book.say("word.at") + " " + error.place;
  return place + ": " + errorSentence(book, error);
}

}  // namespace cordreach::text
