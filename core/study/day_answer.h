// SPDX-License-Identifier: GPL-3.0-or-later
// The answer by moments and the course of the planned day, put together: whichever is the stricter stands, and where
// the course says when something happens, that time.
// By moments everything that cycles is on together and each moment is at rest; in the course heat and breakers
// remember, and events happen. Neither sees all: the first forgets what a cord or breaker was through before, the
// second lets an early trip spare what comes later and knows one of many cycles only.
#pragma once

#include "site/site.h"
#include "study/answer.h"
#include "study/day_course.h"

namespace cordreach::study {

// Hookups that do not change in time are left as they are: the course runs them for longer than they are judged for.
// Of a run that was stopped nothing is taken.
void addCourse(const site::Site& site, const DayRun& run, Answer& answer);

}  // namespace cordreach::study
