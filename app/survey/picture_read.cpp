// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_read.h"

#include <QBuffer>
#include <QImageReader>
#include <cmath>

#include "io/atomic_file.h"
#include "survey/picture_files.h"

namespace cordreach::app {
namespace {

// The reader's own guard: what is kept, twice over, because some pictures are unpacked with more bits.
constexpr int kReaderLimitMb = 256;

QSize keptSize(const QSize& sheet) {
  const double pixels = static_cast<double>(sheet.width()) * sheet.height();
  if (pixels <= static_cast<double>(kMostKeptPixels)) return sheet;
  const double part = std::sqrt(static_cast<double>(kMostKeptPixels) / pixels);
  return {std::max(1, static_cast<int>(sheet.width() * part)), std::max(1, static_cast<int>(sheet.height() * part))};
}

std::string suffixOf(const QByteArray& format) {
  if (format == "png") return "png";
  return format == "jpeg" || format == "jpg" ? "jpg" : "";
}

}  // namespace

base::Result<ReadPicture> readPicture(const QByteArray& content) {
  QBuffer buffer;
  buffer.setData(content);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer);
  reader.setDecideFormatFromContent(true);
  const std::string suffix = suffixOf(reader.format());
  const QSize sheet = reader.size();
  if (suffix.empty()) return base::Error{"picture.not_one", {}, {}};
  if (sheet.isEmpty()) return base::Error{"picture.broken", {}, {}};
  if (static_cast<qint64>(sheet.width()) * sheet.height() > kMostPixels) {
    return base::Error{
        "picture.too_large",
        {},
        {{"width", static_cast<double>(sheet.width())}, {"height", static_cast<double>(sheet.height())}}};
  }
  const QSize kept = keptSize(sheet);
  if (kept != sheet) reader.setScaledSize(kept);
  reader.setAutoTransform(true);
  QImageReader::setAllocationLimit(kReaderLimitMb);
  const bool turned = reader.transformation() != QImageIOHandler::TransformationNone;
  const bool onItsSide = reader.transformation() & QImageIOHandler::TransformationRotate90;
  QImage image = reader.read();
  if (image.isNull()) return base::Error{"picture.broken", {}, {}};
  return ReadPicture{std::move(image), onItsSide ? sheet.transposed() : sheet, suffix, turned};
}

base::Result<ReadPicture> readPlacedPicture(const QString& sitePath, const site::Picture& picture) {
  if (!isPictureName(picture)) return base::Error{"picture.elsewhere", {}, {}};
  const QString path = findPicture(sitePath, picture);
  if (path.isEmpty()) return base::Error{"picture.missing", {}, {}};
  const auto content = io::readWholeFile(path.toStdString(), kMostPictureBytes);
  if (!content) return base::Error{"picture.broken", path.toStdString(), {}};
  auto read = readPicture(QByteArray::fromStdString(content.value()));
  if (!read) return base::Error{"picture.broken", path.toStdString(), {}};
  return read;
}

}  // namespace cordreach::app
