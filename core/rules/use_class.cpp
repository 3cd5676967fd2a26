// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/use_class.h"

#include "site/queries.h"

namespace cordreach::rules {

site::UseClass useOf(const HookupCase& hookup) {
  return hookup.contact == nullptr ? site::UseClass::Ordinary : site::useOf(*hookup.contact, hookup.circuit);
}

void whyKept(FindingBuilder& finding, const HookupCase& hookup) {
  const site::UseClass use = useOf(hookup);
  if (hookup.circuit != nullptr && hookup.circuit->use == use) {
    finding.why("circuit.serves", {text("purpose", hookup.circuit->purpose)});
  }
  if (hookup.contact != nullptr && hookup.contact->use == use) finding.why("contact.marked");
}

}  // namespace cordreach::rules
