// SPDX-License-Identifier: GPL-3.0-or-later
// A value out of a published table, with where it comes from. The source lives as long as the program does.
#pragma once

#include "tables/source.h"

namespace cordreach::tables {

template <class T>
struct Sourced {
  T value;
  const Source* from;  // never null

  [[nodiscard]] const Source& source() const { return *from; }
};

}  // namespace cordreach::tables
