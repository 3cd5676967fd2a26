// SPDX-License-Identifier: GPL-3.0-or-later
// What is written after --cord, --machine, --lay and --receptacle; docs/console.md has the grammar.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "site/equipment.h"
#include "tables/laying.h"
#include "units/temperature.h"

namespace cordreach::console {

// `SJTW 16/3 50ft`: what is printed on the jacket and, anywhere in it, the length. The size must be there; without a
// type it counts as a hard-service cord. Errors: console.no_cord_size, console.no_cord_length, console.unexpected_word,
// those of parseLength.
[[nodiscard]] base::Result<site::CordMake> parseCordArgument(const std::string& text);

// `15A induction 14AWG/50ft`: plate amps, class word, own cord, in any order.
// Errors: console.no_amps, console.no_class, console.no_machine_cord, console.unexpected_word, those of units.
[[nodiscard]] base::Result<site::Inlet> parseMachineArgument(const std::string& text);

// `48C at 13A in 25C coiled 10`: how warm the jacket was, at what amps, and where it differs from air of `air` and from
// lying on the floor, in what air and how it lay, with its turns or layers. Errors: console.reading_words,
// console.reading_not_warm, console.zero, those of units.
[[nodiscard]] base::Result<site::JacketReading> parseReadingArgument(const std::string& text, units::Temperature air);

// Error: console.no_such_laying.
[[nodiscard]] base::Result<tables::Laying> parseLaying(std::string_view text);

}  // namespace cordreach::console
