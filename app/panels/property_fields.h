// SPDX-License-Identifier: GPL-3.0-or-later
// The properties of whatever is chosen, as fields.
#pragma once

#include <vector>

#include "panels/field.h"
#include "rules/finding.h"
#include "text/phrasebook.h"

namespace cordreach::app {

// Of one thing; nothing when it is not there. The book must outlive the fields.
[[nodiscard]] FieldGroups fieldsOf(const site::Site& site, const rules::Subject& subject, const text::Phrasebook& book);

// Those that several things of one kind have in common; each writes to all of them in one edit.
[[nodiscard]] FieldGroups commonFieldsOf(const site::Site& site, const std::vector<rules::Subject>& subjects,
                                         const text::Phrasebook& book);

// Of the site itself, for when nothing is chosen: its name, its air, its supplies, its floors.
[[nodiscard]] FieldGroups siteFields(const site::Site& site, const text::Phrasebook& book);

}  // namespace cordreach::app
