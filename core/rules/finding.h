// SPDX-License-Identifier: GPL-3.0-or-later
// What an answer means: one finding, with its severity, what it is about, its numbers, its causes and its source.
// Facts for the words to be made of; no sentence stands here.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/error.h"
#include "site/ids.h"
#include "tables/source.h"
#include "units/quantity.h"

namespace cordreach::rules {

// By ANSI Z535 meaning, worst last.
enum class Severity { Ok, Notice, Caution, Warning, Danger };

// No rule speaks of a room; people choose one as they choose an outlet.
enum class SubjectKind { Hookup, Machine, Cord, Outlet, Circuit, Panel, Pad, FixedLoad, Room };

struct Subject {
  SubjectKind kind;
  std::string id;

  friend bool operator==(const Subject&, const Subject&) = default;
};

// One contributor, with its part of the whole (0 to 1; none where parts make no sense).
struct Reason {
  std::string code;  // "share.machine", "share.fixed_load", "cord.thin", ...
  base::Arguments arguments;
  std::optional<double> share;

  friend bool operator==(const Reason&, const Reason&) = default;
};

struct Finding {
  std::string code;  // "cord.over_tag": stable, never reused
  Severity severity = Severity::Notice;
  std::vector<Subject> subjects;          // what it is about first; then what else takes part
  std::vector<site::HookupId> hookups;    // those whose verdict it colours
  base::Arguments arguments;              // names and numbers for the words; number names end in their unit
  std::vector<Reason> why;                // never empty; largest first
  tables::Source source;                  // of the limit
  std::optional<units::Duration> moment;  // when it holds first
  bool accepted = false;                  // a CAUTION accepted for this site: listed, colours nothing
};

}  // namespace cordreach::rules
