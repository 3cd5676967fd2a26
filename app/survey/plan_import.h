// SPDX-License-Identifier: GPL-3.0-or-later
// A plan as it will be kept, out of what was brought in. Slow for large ones: for a thread of its own.
#pragma once

#include <QByteArray>
#include <optional>
#include <string>

#include "survey/pdf_pages.h"
#include "survey/picture_read.h"

namespace cordreach::app {

struct Plan {
  ReadPicture picture;
  QByteArray content;
  std::string suffix;
  QSize before{};  // its size as it came, where it was made smaller
};

// A picture that is sound as it is stays as it is, to the byte; what is made smaller or turned is written anew. Errors:
// those of readPicture.
[[nodiscard]] base::Result<Plan> planOfPicture(const QByteArray& content, const ReadWatch& watch = {});
// Error: picture.pdf_broken.
[[nodiscard]] base::Result<Plan> planOfPage(const PdfPages& pages, int page);

[[nodiscard]] QByteArray asPng(const QImage& image);

}  // namespace cordreach::app
