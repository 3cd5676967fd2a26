// SPDX-License-Identifier: GPL-3.0-or-later
// A new site has one supply and one panel on it: the least to which circuits can be added.
#include "console/verb_site.h"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <memory>
#include <random>

#include "console/console.h"
#include "io/site_file.h"
#include "text/columns.h"

namespace cordreach::console {

namespace {

struct SiteOptions {
  std::string file;
  std::vector<std::string> sites;
};

// Without letters and digits that are mistaken for each other.
std::string randomId(std::random_device& random) {
  constexpr std::string_view kLetters = "abcdefghjkmnpqrstuvwxyz23456789";
  constexpr std::size_t kLength = 8;
  std::uniform_int_distribution<std::size_t> any(0, kLetters.size() - 1);
  std::string id;
  while (id.size() < kLength) id += kLetters[any(random)];
  return id;
}

site::Site newSite(const std::string& name) {
  std::random_device random;
  site::Site site{site::SiteId(randomId(random)), name, {}, {}, {}};
  site::Supply supply{site::SupplyId(randomId(random)), {}, {}, {}, {}, {}, {}, {}};
  site::Panel panel{site::PanelId(randomId(random)), "A", {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}};
  panel.supply = supply.id;
  site.all<site::Supply>().put(supply);
  site.all<site::Panel>().put(panel);
  return site;
}

int runNew(const SiteOptions& options, const Console& console) {
  const std::filesystem::path path(options.file);
  std::error_code ignored;
  if (std::filesystem::symlink_status(path, ignored).type() != std::filesystem::file_type::not_found) {
    return console.refuseFile(options.file, {"console.file_exists", "", {}});
  }
  const base::Result<base::Done> saved = io::saveSite(path, newSite(path.stem().string()));
  if (!saved) return console.refuseFile(options.file, saved.error());
  return console.answer(text::forConsole(console.book.say("site.created", {{"file", options.file}}) + "\n"), kSound);
}

int runCheck(const SiteOptions& options, const Console& console) {
  bool anyBad = false;
  for (const std::string& file : options.sites) {
    const base::Result<site::Site> site = io::loadSite(file);
    if (site) continue;
    anyBad = true;
    (void)console.refuseFile(file, site.error());
  }
  if (anyBad) return kBadInput;
  const double count = static_cast<double>(options.sites.size());
  return console.answer(
      text::forConsole(
          console.book.say("site.checked", {{"file", options.sites.front()},
                                            {"count", count},
                                            {"number", options.sites.size() == 1 ? std::string("one") : "many"}}) +
          "\n"),
      kSound);
}

}  // namespace

Work declareSite(CLI::App& command, Work& work) {
  const auto options = std::make_shared<SiteOptions>();
  command.require_subcommand(1);
  CLI::App* begin = command.add_subcommand("new", "Writes a site file to begin with");
  begin->add_option("FILE", options->file, "A file that is not there yet")->required();
  begin->callback([&work, options] { work = [options](const Console& console) { return runNew(*options, console); }; });
  CLI::App* check = command.add_subcommand("check", "Says whether site files are in order");
  check->add_option("SITE", options->sites, "Site files")->required();
  check->callback(
      [&work, options] { work = [options](const Console& console) { return runCheck(*options, console); }; });
  return {};
}

}  // namespace cordreach::console
