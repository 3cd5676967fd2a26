// SPDX-License-Identifier: GPL-3.0-or-later
// Trying an edit: applied to a copy of the site, studied on the panels it touches, judged.
#pragma once

#include <optional>
#include <vector>

#include "base/progress.h"
#include "planning/candidate.h"
#include "planning/remedy.h"
#include "study/answer.h"

namespace cordreach::planning {

struct Trial {
  study::Answer answer;
  std::vector<rules::Finding> findings;
};

// Remembers what it tried: findings of one hookup mostly share their candidates.
class Trials {
 public:
  explicit Trials(const site::Site& site, base::Progress progress = {}) : m_site(site), m_progress(progress) {}

  // By moments. None: the edit does not apply, or would break the site.
  [[nodiscard]] const std::optional<Trial>& of(const Candidate& candidate) { return tried(candidate, false); }
  // Through the planned day, too, which takes longer: to be asked of what has passed the other.
  [[nodiscard]] const std::optional<Trial>& inTime(const Candidate& candidate) { return tried(candidate, true); }
  [[nodiscard]] bool stopped() const { return m_progress.stopRequested(); }
  [[nodiscard]] const site::Site& site() const { return m_site; }

 private:
  struct Tried {
    site::Edit edit;
    bool inTime = false;
    std::optional<Trial> trial;
  };
  const std::optional<Trial>& tried(const Candidate& candidate, bool inTime);

  const site::Site& m_site;
  base::Progress m_progress;
  std::vector<Tried> m_tried;
};

// Whether the finding is gone, the changed hookups are below CAUTION and nothing of CAUTION or above is new.
[[nodiscard]] bool mends(const Candidate& candidate, const Trial& trial, const rules::Finding& finding,
                         const std::vector<rules::Finding>& present);

// current_a, voltage_v, conductor_c (the hottest of its cords), trip_likely_s (absent: never), verdict.
[[nodiscard]] base::Arguments numbersAfter(const Candidate& candidate, const Trial& trial);

}  // namespace cordreach::planning
