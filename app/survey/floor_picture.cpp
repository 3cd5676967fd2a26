// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/floor_picture.h"

#include <QMetaObject>
#include <QPixmap>

#include "compute/latest_job.h"
#include "map/map_canvas.h"
#include "shell/say.h"
#include "survey/picture_files.h"
#include "survey/picture_read.h"

namespace cordreach::app {
namespace {

struct Request {
  std::uint64_t number;
  QString sitePath;
  site::Picture picture;
};

}  // namespace

struct FloorPicture::Reader {
  explicit Reader(LatestJob<Request>::Work work) : job(std::move(work)) {}
  LatestJob<Request> job;
};

FloorPicture::FloorPicture(Session& session, MapCanvas& canvas, QObject* parent)
    : QObject(parent),
      m_session(session),
      m_canvas(canvas),
      m_reader(std::make_unique<Reader>([this](const Request& request, const std::atomic<bool>& stop) {
        const auto read = readPlacedPicture(request.sitePath, request.picture, {&stop, nullptr});
        const QImage image = read ? read.value().image : QImage();
        const std::string error = read ? std::string() : read.error().code;
        QMetaObject::invokeMethod(
            this, [this, number = request.number, image, error] { take(number, image, error); }, Qt::QueuedConnection);
      })) {}

FloorPicture::~FloorPicture() { m_reader.reset(); }

void FloorPicture::forget() { m_shown.reset(); }

bool FloorPicture::isReading() const { return m_wanted != 0; }

void FloorPicture::follow() {
  const auto& floorId = m_canvas.floor();
  const site::Floor* floor = floorId ? m_session.document.site().find<site::Floor>(*floorId) : nullptr;
  const QString& sitePath = m_session.document.path();
  const bool any = floor != nullptr && floor->picture;
  const QString shown = !any ? QString()
                             : pictureName(*floor->picture) + QLatin1Char('\n') +
                                   QString::fromStdString(floorId->text()) + QLatin1Char('\n') + sitePath;
  if (shown == m_shown) return;
  m_shown = shown;
  m_wanted = 0;
  if (!any) return m_canvas.setPicture({}, {});
  const auto sheet = sheetOfPlaced(sitePath, *floor->picture);
  if (!sheet) return refuse(sheet.error().code);
  m_sheet = sheet.value();
  m_canvas.setPicture({}, m_sheet);
  m_wanted = m_reader->job.put([&](std::uint64_t number) { return Request{number, sitePath, *floor->picture}; });
}

void FloorPicture::refuse(const std::string& code) {
  m_canvas.setPicture({}, {});
  const site::Floor* floor = m_session.document.site().find<site::Floor>(*m_canvas.floor());
  if (floor == nullptr || !floor->picture) return;
  const std::string name = pictureName(*floor->picture).toStdString();
  emit told(say(m_session.book, "map." + code, {{"picture", name}, {"floor", floor->name}}));
}

void FloorPicture::take(std::uint64_t number, const QImage& image, const std::string& error) {
  if (number != m_wanted) return;
  m_wanted = 0;
  if (!error.empty()) return refuse(error);
  m_canvas.setPicture(QPixmap::fromImage(image), m_sheet);
}

}  // namespace cordreach::app
