// SPDX-License-Identifier: GPL-3.0-or-later
#include "map/symbol_stamps.h"

#include <QByteArray>
#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>
#include <cmath>

#include "base/contract.h"
#include "map/embedded_symbols.h"

namespace cordreach::app {
namespace {

constexpr std::size_t kMostPixmaps = 2000;

QByteArray svgOf(const QString& name) {
  const std::string wanted = name.toStdString();
  const auto all = embeddedSymbols();
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == wanted; });
  if (found == all.end()) return {};
  return QByteArray(found->second.data(), static_cast<int>(found->second.size()));
}

QString keyOf(const StampWish& wish) {
  return wish.name + u'/' + QString::number(std::lround(wish.size * 4)) + u'/' + wish.ink.name(QColor::HexArgb) +
         wish.paper.name(QColor::HexArgb) + QString::number(wish.turnDegrees) + u'/' +
         QString::number(std::lround(wish.screenScale * 100));
}

QPixmap drawn(const StampWish& wish) {
  QByteArray svg = svgOf(wish.name);
  CORDREACH_EXPECTS(!svg.isEmpty());
  svg.replace("#15211F", wish.ink.name().toLatin1()).replace("#FAFBFA", wish.paper.name().toLatin1());
  QSvgRenderer renderer(svg);
  const int pixels = static_cast<int>(std::ceil(wish.size * wish.screenScale));
  QPixmap pixmap(pixels, pixels);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  const double middle = pixels / 2.0;
  painter.translate(middle, middle);
  painter.rotate(wish.turnDegrees);
  renderer.render(&painter, QRectF(-middle, -middle, pixels, pixels));
  painter.end();
  pixmap.setDevicePixelRatio(wish.screenScale);
  return pixmap;
}

}  // namespace

SymbolStamps::SymbolStamps() = default;
SymbolStamps::~SymbolStamps() = default;

const QPixmap& SymbolStamps::pixmap(const StampWish& wish) {
  const QString key = keyOf(wish);
  const auto found = m_pixmaps.constFind(key);
  if (found != m_pixmaps.constEnd()) return *found;
  if (static_cast<std::size_t>(m_pixmaps.size()) >= kMostPixmaps) m_pixmaps.clear();
  return *m_pixmaps.insert(key, drawn(wish));
}

bool SymbolStamps::has(const QString& name) { return !svgOf(name).isEmpty(); }

}  // namespace cordreach::app
