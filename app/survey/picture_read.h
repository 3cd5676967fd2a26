// SPDX-License-Identifier: GPL-3.0-or-later
// Reading plan pictures that anybody may have made: looked at before they are unpacked, large ones unpacked smaller.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QSize>

#include "base/result.h"
#include "site/place.h"
#include "survey/read_watch.h"

namespace cordreach::app {

// So many pixels are kept of a picture: a wall's worth at 0.5 mm a pixel, 96 MB in memory.
inline constexpr qint64 kMostKeptPixels = 24'000'000;
// And no picture of more is unpacked at all: 50,000 by 30,000. Beyond stands an error of whoever made it, or a trap.
inline constexpr qint64 kMostPixels = 1'500'000'000;
inline constexpr std::size_t kMostPictureBytes = 256U << 20U;

struct ReadPicture {
  QImage image;
  QSize sheet;                // its pixels as the file has them, which places on it are counted in
  std::string suffix{};       // "png", "jpg"
  bool turnedByNote = false;  // a camera's note in the file had turned it

  [[nodiscard]] bool isReduced() const { return image.size() != sheet; }
};

// A PNG or a JPEG, by its content. Errors: picture.not_one, picture.too_large {width, height, most}, picture.broken,
// which is also what a reader that was stopped answers.
[[nodiscard]] base::Result<ReadPicture> readPicture(const QByteArray& content, const ReadWatch& watch = {});

// That of a floor, from where it lies (picture_files.h). Errors: picture.missing, picture.elsewhere, picture.broken,
// whatever is wrong with its content.
[[nodiscard]] base::Result<ReadPicture> readPlacedPicture(const QString& sitePath, const site::Picture& picture,
                                                          const ReadWatch& watch = {});
// Its size in pixels, by the file's first bytes. The same errors.
[[nodiscard]] base::Result<QSize> sheetOfPlaced(const QString& sitePath, const site::Picture& picture);

}  // namespace cordreach::app
