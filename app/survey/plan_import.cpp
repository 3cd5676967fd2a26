// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/plan_import.h"

#include <QBuffer>
#include <utility>

namespace cordreach::app {

QByteArray asPng(const QImage& image) {
  QByteArray content;
  QBuffer buffer(&content);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return content;
}

base::Result<Plan> planOfPicture(const QByteArray& content, const ReadWatch& watch) {
  auto read = readPicture(content, watch);
  if (!read) return read.error();
  ReadPicture& picture = read.value();
  if (!picture.isReduced() && !picture.turnedByNote) {
    const std::string suffix = picture.suffix;
    return Plan{std::move(picture), content, suffix};
  }
  const QSize before = picture.isReduced() ? picture.sheet : QSize();
  picture.sheet = picture.image.size();
  QByteArray kept = asPng(picture.image);
  return Plan{std::move(picture), std::move(kept), "png", before};
}

base::Result<Plan> planOfPage(const PdfPages& pages, int page) {
  const QImage image = pages.drawPlan(page);
  if (image.isNull()) return base::Error{"picture.pdf_broken", {}, {}};
  return Plan{{image, image.size(), "png"}, asPng(image), "png"};
}

}  // namespace cordreach::app
