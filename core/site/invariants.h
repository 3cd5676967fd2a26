// SPDX-License-Identifier: GPL-3.0-or-later
// What every site holds to, checked once at the edge: references lead somewhere, wiring and pluggings are trees, a plug
// is in one socket and a socket takes one plug at any moment, numbers are of this world.
#pragma once

#include "base/result.h"
#include "site/site.h"

namespace cordreach::site {

// The first thing that is wrong, with its place as a JSON pointer into the written file. Errors: site.dangling_id,
// site.wiring_loop, site.plug_in_two_sockets, site.socket_taken_twice, site.plugging_loop, site.out_of_range,
// site.no_contact, site.no_inlet, site.two_feeds, site.hours_reversed, site.event_about_nothing.
[[nodiscard]] base::Result<base::Done> checkInvariants(const Site& site);

}  // namespace cordreach::site
