// SPDX-License-Identifier: GPL-3.0-or-later
// The map's symbols as ready pixels, drawn once a name, size, colour, turn and screen scale, then only copied.
#pragma once

#include <QColor>
#include <QHash>
#include <QPixmap>
#include <QString>

namespace cordreach::app {

struct StampWish {
  QString name;      // "receptacle-duplex"
  double size = 24;  // device-independent pixels
  QColor ink;
  QColor paper;
  int turnDegrees = 0;     // clockwise; at 0 the wall is at the bottom
  double screenScale = 1;  // device pixels per device-independent one
};

class SymbolStamps {
 public:
  SymbolStamps();
  ~SymbolStamps();

  [[nodiscard]] const QPixmap& pixmap(const StampWish& wish);
  // Whether a drawing of that name exists.
  [[nodiscard]] static bool has(const QString& name);
  // Drawings made so far.
  [[nodiscard]] int count() const { return static_cast<int>(m_pixmaps.size()); }
  void clear() { m_pixmaps.clear(); }

 private:
  QHash<QString, QPixmap> m_pixmaps;
};

}  // namespace cordreach::app
