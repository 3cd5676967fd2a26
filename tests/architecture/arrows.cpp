// SPDX-License-Identifier: GPL-3.0-or-later
#include "architecture/arrows.h"

#include <algorithm>
#include <cctype>
#include <string_view>

#include "architecture/include_scanner.h"

namespace cordreach::architecture {

namespace {

using Prefixes = std::vector<std::string_view>;

// Third-party headers by the beginning of their path, for .cpp files only.
const std::map<std::string, Prefixes>& thirdPartyOfRooms() {
  static const std::map<std::string, Prefixes> table{
      {"tables", {"csv.h"}},
      {"physics", {"Eigen/"}},
      {"network", {"Eigen/"}},
      {"planning", {"glpk.h"}},
      // The last are the operating system's: a file is whole on the disk only after it was synced there.
      {"io", {"nlohmann/", "csv.h", "xlsxwriter.h", "fcntl.h", "unistd.h", "sys/"}},
  };
  return table;
}

bool isHeader(std::string_view path) { return path.ends_with(".h"); }

std::string firstFolder(std::string_view path) {
  const auto slash = path.find('/');
  return slash == std::string_view::npos ? std::string() : std::string(path.substr(0, slash));
}

bool isQt(std::string_view path) {
  return path.size() > 1 && path[0] == 'Q' &&
         (std::isupper(static_cast<unsigned char>(path[1])) != 0 || path[1] == 't');
}

// The standard library's C++ headers have neither an ending nor a folder nor a capital.
bool isStandard(std::string_view path) {
  return std::all_of(path.begin(), path.end(), [](unsigned char letter) {
    return std::islower(letter) != 0 || std::isdigit(letter) != 0 || letter == '_';
  });
}

bool startsWithAny(std::string_view path, const Prefixes& prefixes) {
  return std::any_of(prefixes.begin(), prefixes.end(), [&](auto prefix) { return path.starts_with(prefix); });
}

std::string coreFault(const SourceFile& file, const std::string& room, const Include& include) {
  if (include.quoted) {
    const std::string target = firstFolder(include.path);
    if (reachedFrom(room).contains(target)) return {};
    return room + " may not use \"" + include.path + "\"";
  }
  if (isQt(include.path)) return "core knows no Qt: <" + include.path + ">";
  if (isStandard(include.path)) return {};
  if (isHeader(file.path))
    return "a core header includes nothing but core and the standard library: <" + include.path + ">";
  const auto allowed = thirdPartyOfRooms().find(room);
  if (allowed != thirdPartyOfRooms().end() && startsWithAny(include.path, allowed->second)) return {};
  return room + " may not use <" + include.path + ">";
}

bool withoutQt(const std::string& area) { return area == "console" || area == "text"; }

std::string appFault(const SourceFile& file, const std::string& area, const Include& include) {
  if (include.quoted) {
    if (include.path.find("/detail/") != std::string::npos)
      return "a room's details are its own: \"" + include.path + "\"";
    return include.path.find('/') == std::string::npos ? "name the folder too: \"" + include.path + "\""
                                                       : std::string();
  }
  if (isQt(include.path)) return withoutQt(area) ? area + " works without Qt: <" + include.path + ">" : std::string();
  if (include.path.starts_with("Eigen/") || include.path.starts_with("csv"))
    return "app leaves <" + include.path + "> to core";
  if (include.path.starts_with("nlohmann/") && isHeader(file.path))
    return "JSON stays out of headers: <" + include.path + ">";
  if (include.path.starts_with("CLI/") && !area.empty() && area != "console") return area + " reads no command line";
  return {};
}

}  // namespace

const std::map<std::string, std::set<std::string>>& arrows() {
  static const std::map<std::string, std::set<std::string>> table{
      {"base", {}},
      {"units", {"base"}},
      {"geometry", {"units"}},
      {"tables", {"units"}},
      {"site", {"geometry", "tables"}},
      {"physics", {"tables"}},
      {"network", {"physics"}},
      {"timeline", {"network"}},
      {"study", {"site", "timeline"}},
      {"rules", {"study"}},
      {"planning", {"rules"}},
      {"inference", {"rules"}},
      {"io", {"planning", "inference"}},
  };
  return table;
}

std::set<std::string> reachedFrom(const std::string& room) {
  std::set<std::string> reached;
  std::vector<std::string> open{room};
  while (!open.empty()) {
    const std::string next = open.back();
    open.pop_back();
    if (!arrows().contains(next) || !reached.insert(next).second) continue;
    open.insert(open.end(), arrows().at(next).begin(), arrows().at(next).end());
  }
  return reached;
}

std::vector<std::string> includeFaults(const SourceFile& file) {
  const std::string top = firstFolder(file.path);
  const std::string folder = firstFolder(std::string_view(file.path).substr(top.size() + 1));
  std::vector<std::string> faults;
  if (top == "core" && !arrows().contains(folder)) faults.push_back(file.path + ": no room of the table");
  for (const Include& include : includesOf(file.text)) {
    const std::string fault = top == "core" ? coreFault(file, folder, include) : appFault(file, folder, include);
    if (!fault.empty()) faults.push_back(file.path + ":" + std::to_string(include.line) + ": " + fault);
  }
  return faults;
}

}  // namespace cordreach::architecture
