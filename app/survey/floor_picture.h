// SPDX-License-Identifier: GPL-3.0-or-later
// The plan picture of the floor that the map shows: its size is known at once, itself is read on a thread of its own,
// once and not at every edit.
#pragma once

#include <QImage>
#include <QObject>
#include <memory>
#include <optional>

#include "document/session.h"

namespace cordreach::app {

class MapCanvas;

class FloorPicture : public QObject {
  Q_OBJECT

 public:
  FloorPicture(Session& session, MapCanvas& canvas, QObject* parent = nullptr);
  ~FloorPicture() override;

  // The floor or its picture may be another.
  void follow();
  // Whatever is shown is read anew at the next.
  void forget();
  [[nodiscard]] bool isReading() const;

 signals:
  // It is gone or broken; the plan is without it.
  void told(const QString& sentence);

 private:
  struct Reader;
  void refuse(const std::string& code);
  void take(std::uint64_t number, const QImage& image, const std::string& error);

  Session& m_session;
  MapCanvas& m_canvas;
  std::optional<QString> m_shown;  // its file, and of which floor; none: to be read anew
  QSize m_sheet;
  std::uint64_t m_wanted = 0;
  std::unique_ptr<Reader> m_reader;
};

}  // namespace cordreach::app
