// SPDX-License-Identifier: GPL-3.0-or-later
// The wire from the panel to an outlet, as several verbs are given it.
#pragma once

#include <optional>
#include <string>
#include <utility>

#include "console/console.h"
#include "site/known.h"
#include "units/parse.h"

namespace cordreach::console {

template <class T>
site::Known<T> stated(T value, const std::string& typed) {
  return site::Stated<T>{std::move(value), {}, {}, typed, {}, {}, {}};
}

// Into a question's `run` and `runSize`; of an empty text nothing. Answers the exit of a refusal.
template <class Question>
std::optional<int> readRun(const std::string& text, const Console& console, Question& question) {
  if (text.empty()) return std::nullopt;
  const base::Result<units::WireRun> run = units::parseWireRun(text);
  if (!run) return console.refuse("--run", run.error());
  question.run = stated(run.value().length, text);
  question.runSize = stated(run.value().size, text);
  return std::nullopt;
}

}  // namespace cordreach::console
