// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/severity_text.h"

#include <algorithm>
#include <cctype>

namespace cordreach::text {

std::string_view severityCode(rules::Severity severity) {
  switch (severity) {
    case rules::Severity::Danger:
      return "DANGER";
    case rules::Severity::Warning:
      return "WARNING";
    case rules::Severity::Caution:
      return "CAUTION";
    case rules::Severity::Notice:
      return "NOTICE";
    case rules::Severity::Ok:
      break;
  }
  return "OK";
}

std::string signalWord(const Phrasebook& book, rules::Severity severity) {
  std::string code(severityCode(severity));
  std::transform(code.begin(), code.end(), code.begin(), [](unsigned char c) { return std::tolower(c); });
  return book.say("severity." + code);
}

}  // namespace cordreach::text
