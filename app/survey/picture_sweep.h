// SPDX-License-Identifier: GPL-3.0-or-later
// Puts away the plan pictures beside a site's file that nothing mentions any more. Only when a site is opened: until
// then undo could bring each of them back.
#pragma once

#include <QString>
#include <QStringList>
#include <functional>

namespace cordreach::app {

struct SweepWish {
  QString sitePath;                                     // of the site that was just opened
  QString recoveryFolder;                               // whose journals may bring a picture back
  std::function<bool(const QString&)> isHeldElsewhere;  // another window has that site open
};

// To the desktop's trash; where there is none they stay. A picture stays that any other site of the folder (or a copy
// of one, whatever its name) or any journal mentions, and all of them while another window has a site of the folder
// open, or one can't be read. Answers the names of what is gone.
QStringList sweepPictures(const SweepWish& wish);

}  // namespace cordreach::app
