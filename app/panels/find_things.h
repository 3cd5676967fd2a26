// SPDX-License-Identifier: GPL-3.0-or-later
// Finding a thing of the building by its name, its number or its room, whatever part of it is typed.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "rules/finding.h"
#include "site/site.h"
#include "text/phrasebook.h"

namespace cordreach::app {

struct FoundThing {
  rules::Subject thing;
  QString name;   // "Outlet 1-13"
  QString where;  // "Office, First floor"; may be empty
};

// Made once of a site, asked at every key.
class ThingIndex {
 public:
  ThingIndex(const text::Phrasebook& book, const site::Site& site);

  // Each word that is typed must be part of it; what bears the very name comes first, then what begins with it, then by
  // number. Nothing typed: nothing.
  [[nodiscard]] std::vector<FoundThing> find(const QString& typed) const;

 private:
  struct Entry {
    FoundThing found;
    QString label;  // in small letters: what stands on it
    QString words;  // and all by which it is found
  };

  void add(FoundThing found, const std::string& label, const QStringList& more);
  void addPlaced(const text::Phrasebook& book, const site::Site& site);
  void addWiring(const text::Phrasebook& book, const site::Site& site);

  std::vector<Entry> m_entries;
};

}  // namespace cordreach::app
