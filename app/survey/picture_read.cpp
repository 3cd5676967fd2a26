// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_read.h"

#include <QFile>
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

// A camera's note may turn what its bytes hold.
QSize uprightSize(const QImageReader& reader, const QSize& sheet) {
  return reader.transformation() & QImageIOHandler::TransformationRotate90 ? sheet.transposed() : sheet;
}

base::Result<QString> pathOf(const QString& sitePath, const site::Picture& picture) {
  if (!isPictureName(picture)) return base::Error{"picture.elsewhere", {}, {}};
  const QString path = findPicture(sitePath, picture);
  if (path.isEmpty()) return base::Error{"picture.missing", {}, {}};
  return path;
}

}  // namespace

base::Result<ReadPicture> readPicture(const QByteArray& content, const ReadWatch& watch) {
  WatchedBytes bytes(content, watch);
  QImageReader reader(&bytes);
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
  QImage image = reader.read();
  if (image.isNull() || watch.isStopped()) return base::Error{"picture.broken", {}, {}};
  return ReadPicture{std::move(image), uprightSize(reader, sheet), suffix, turned};
}

base::Result<ReadPicture> readPlacedPicture(const QString& sitePath, const site::Picture& picture,
                                            const ReadWatch& watch) {
  const auto path = pathOf(sitePath, picture);
  if (!path) return path.error();
  const std::string native = QFile::encodeName(path.value()).toStdString();
  const auto content = io::readWholeFile(native, kMostPictureBytes);
  if (!content) return base::Error{"picture.broken", native, {}};
  auto read = readPicture(QByteArray::fromStdString(content.value()), watch);
  if (!read) return base::Error{"picture.broken", native, {}};
  return read;
}

base::Result<QSize> sheetOfPlaced(const QString& sitePath, const site::Picture& picture) {
  const auto path = pathOf(sitePath, picture);
  if (!path) return path.error();
  QImageReader reader(path.value());
  reader.setDecideFormatFromContent(true);
  const QSize sheet = reader.size();
  if (sheet.isEmpty()) return base::Error{"picture.broken", path.value().toStdString(), {}};
  return uprightSize(reader, sheet);
}

}  // namespace cordreach::app
