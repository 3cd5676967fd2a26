// SPDX-License-Identifier: GPL-3.0-or-later
// Where plan pictures lie: beside the site's file under the hash of their content, and while a site has no file in a
// folder of the program's own, from which saving takes them along.
#pragma once

#include <QByteArray>
#include <QString>
#include <string>
#include <vector>

#include "base/result.h"
#include "site/site.h"

namespace cordreach::app {

// Of its file: "<hash>.png".
[[nodiscard]] QString pictureName(const site::Picture& picture);
// A name that leads out of the folder, or is no hash, is never opened.
[[nodiscard]] bool isPictureName(const site::Picture& picture);

// For sites without a file, made if need be.
[[nodiscard]] QString unsavedPictures();

// Its path, beside the site or in the program's own folder; empty: it is in neither.
[[nodiscard]] QString findPicture(const QString& sitePath, const site::Picture& picture);

// Writes it where it belongs; what is there already is left. The picture has hash and suffix only. Errors: those of
// io::replaceFile.
[[nodiscard]] base::Result<site::Picture> storePicture(const QString& sitePath, const QByteArray& content,
                                                       const std::string& suffix);

// Copies what the site shows from beside the one file to beside the other. Answers what could not be copied; a picture
// that was missing before is not among them.
[[nodiscard]] std::vector<std::string> carryPictures(const site::Site& site, const QString& fromSite,
                                                     const QString& toSite);

}  // namespace cordreach::app
