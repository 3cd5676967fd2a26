// SPDX-License-Identifier: GPL-3.0-or-later
// Every code that reading, checking, editing or saving a site can give, so that the words can be checked for
// completeness. The places are JSON pointers for file.* and site.*, paths for io.*, empty for edit.*.
#pragma once

#include <array>
#include <string_view>

namespace cordreach::io {

struct ErrorCode {
  std::string_view code;
  std::string_view arguments;  // names of those it always has, apart by a space
};

inline constexpr std::array kErrorCodes = {
    // The text is no site file.
    ErrorCode{"file.bad_point", ""},                // a point is a list of two numbers
    ErrorCode{"file.bad_size", "found"},            // a wire size is "14 AWG" or "2.5 mm2"
    ErrorCode{"file.bad_socket", ""},               // a socket names one of outlet, cord, machine
    ErrorCode{"file.bad_time", "found"},            // a time of day is "18:15"
    ErrorCode{"file.bad_version", ""},              // the version is a whole number from 1 on
    ErrorCode{"file.duplicate_key", "key"},         // a key stands twice in one object
    ErrorCode{"file.empty", ""},                    // nothing in it
    ErrorCode{"file.invalid_utf8", "line column"},  // bytes that are no text
    ErrorCode{"file.missing_key", "key"},           // a key that must be there
    ErrorCode{"file.newer_version", "version known_version"},
    ErrorCode{"file.no_version", "key"},  // JSON, but not a site file
    ErrorCode{"file.not_json", "line column"},
    ErrorCode{"file.not_whole", "found"},              // a count or index that is no whole number
    ErrorCode{"file.number_overflow", "line column"},  // larger than any number
    ErrorCode{"file.too_deep", "limit"},               // brackets within brackets
    ErrorCode{"file.too_large", "limit_mb"},
    ErrorCode{"file.too_many_values", "limit"},
    ErrorCode{"file.truncated", "line column"},        // ends in the middle
    ErrorCode{"file.unknown_key", "key"},              // only where nothing unknown can be kept: in edits
    ErrorCode{"file.unknown_kind", "found"},           // only in edits
    ErrorCode{"file.unknown_word", "found expected"},  // not one of the words that may stand there
    ErrorCode{"file.wrong_type", "expected"},          // a text where a number belongs
    // The site that it describes can't be.
    ErrorCode{"site.bad_band", ""},                    // low, value and high of a guess are not in this order
    ErrorCode{"site.bad_id", "longest_bytes"},         // empty, too long, or with control characters
    ErrorCode{"site.bad_phase", ""},                   // a phase that the panel or circuit does not have
    ErrorCode{"site.bad_shared_neutral", "id other"},  // with itself, or with a circuit of another panel
    ErrorCode{"site.bad_text", ""},                    // not UTF-8
    ErrorCode{"site.dangling_id", "id kind"},          // names something that is not in the site
    ErrorCode{"site.duplicate_id", "id first"},
    ErrorCode{"site.duplicate_name", "name"},  // two contacts of an outlet, two inlets of a machine
    ErrorCode{"site.event_about_nothing", ""},  // it names no thing, several, or one of another sort than its kind asks for
    ErrorCode{"site.hours_reversed", ""},      // ends when or before it begins
    ErrorCode{"site.missing_id", "key"},
    ErrorCode{"site.no_contact", "outlet contact"},
    ErrorCode{"site.no_inlet", "machine inlet"},
    ErrorCode{"site.no_name", ""},       // a contact or inlet without a name
    ErrorCode{"site.no_phase", "id"},    // a circuit on no phase
    ErrorCode{"site.no_socket", "id"},   // a cord or machine has fewer sockets
    ErrorCode{"site.no_supply", "id"},   // a panel fed from nowhere
    ErrorCode{"site.not_finite", ""},    // NaN or infinite
    ErrorCode{"site.out_of_range", ""},  // value_, lowest_ and highest_ in the unit of the key
    ErrorCode{"site.plug_in_two_sockets", "id"},
    ErrorCode{"site.plugging_loop", "id"},  // a cord plugged into itself through others
    ErrorCode{"site.plugging_too_deep", "id limit"},
    ErrorCode{"site.socket_taken_twice", "id other"},
    ErrorCode{"site.text_too_long", "limit_bytes"},
    ErrorCode{"site.too_many_things", "limit"},
    ErrorCode{"site.two_feeds", "id"},    // a panel, or an outlet on one circuit, fed twice
    ErrorCode{"site.wiring_loop", "id"},  // panels or outlets that feed themselves
    // The edit does not fit the site.
    ErrorCode{"edit.id_changed", "kind id"},
    ErrorCode{"edit.stale", "kind id"},
    // The file itself.
    ErrorCode{"io.cannot_read", "reason"},
    ErrorCode{"io.cannot_write", "reason"},
    ErrorCode{"io.disk_full", ""},
    ErrorCode{"io.is_folder", ""},
    ErrorCode{"io.no_permission", ""},
    ErrorCode{"io.not_a_file", ""},  // a device or pipe, to be written
    ErrorCode{"io.not_found", ""},
    ErrorCode{"io.too_large", "limit_mb"},
};

}  // namespace cordreach::io
