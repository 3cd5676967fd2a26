// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/side_view.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QResizeEvent>
#include <algorithm>
#include <cmath>

#include "heat/cut_paint.h"
#include "heat/heat_words.h"
#include "look/look.h"
#include "look/temperature_ramp.h"
#include "map/cord_curve.h"
#include "physics/cord_heat.h"
#include "shell/say.h"
#include "study/assumptions.h"

namespace cordreach::app {

namespace {

using look::scaled;

constexpr int kCutPx = 80;        // of the drawing, at least, whatever the text's size
constexpr double kRoomyPx = 100;  // with less it takes the room of the hand's words, which its labels say shorter
constexpr double kLabelPx = 112;  // beside it, at least
constexpr int kLabelGapPx = 14;
constexpr int kBetweenLabelsPx = 4;
constexpr double kFurthestC = 299.0;  // no figure is wider
constexpr double kFloorPx = 36;
constexpr double kPlugPx = 16;
constexpr double kTurnEdgePx = 1.2;
constexpr double kMostTurnPx = 4;

units::Temperature insideOf(const study::DemonstrationPoint& point) {
  return point.conductor ? point.conductor->likely : physics::beyondModelTemperature();
}

bool isWound(const site::LayingOfCord& laying) {
  return laying.laying == tables::Laying::Coiled || laying.laying == tables::Laying::Reel;
}

// From the plug to the socket; where it is wound straight, to be seen behind its turns.
QPainterPath floorLine(const QRectF& box, const site::LayingOfCord& laying) {
  QPainterPath line(QPointF(box.left(), box.center().y()));
  if (isWound(laying)) {
    line.lineTo(QPointF(box.right(), box.center().y()));
    return line;
  }
  const double third = box.width() / 3;
  line.cubicTo(QPointF(box.left() + third, box.top() + 4), QPointF(box.right() - third, box.bottom() - 4),
               QPointF(box.right(), box.center().y()));
  return line;
}

// Turns that lie over each other, each with an edge of ground around it so that they are told apart.
void paintTurns(QPainter& painter, const QRectF& box, const QPen& cord) {
  constexpr int kTurns = 5;
  const double high = box.height() / 2 - cord.widthF();
  const double wide = high * 0.75;
  const double apart = cord.widthF() + kTurnEdgePx;
  QPen edge = cord;
  edge.setColor(look::tokens().sheet);
  edge.setWidthF(cord.widthF() + 2 * kTurnEdgePx);
  for (int i = 0; i < kTurns; ++i) {
    const QPointF middle = box.center() + QPointF((i - (kTurns - 1) / 2.0) * apart, 0);
    for (const QPen& pen : {edge, cord}) {
      painter.setPen(pen);
      painter.drawEllipse(middle, wide, high);
    }
  }
}

}  // namespace

SideView::SideView(HeatModel& model, const text::Phrasebook& book, std::size_t side, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(book), m_side(side) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  connect(&model, &HeatModel::ticked, this, QOverload<>::of(&QWidget::update));
  connect(&model, &HeatModel::ticked, this, [this] {
    if (!m_model.isPlaying()) describe();
  });
  connect(&model, &HeatModel::playingChanged, this, &SideView::describe);
  connect(&model, &HeatModel::busyChanged, this, QOverload<>::of(&QWidget::update));
  measure();
  describe();
}

void SideView::measure() {
  const QFontMetrics bold(look::font(look::Type::BodyBold));
  const QFontMetrics caption(look::font(look::Type::Caption));
  const QStringList words = allFeelWords(m_book);
  QStringList figures;
  for (const char* place : {"inside", "outside"}) {
    const QString widest = degrees(m_book, units::Temperature::fromCelsius(kFurthestC));
    for (const QString& figure : {widest, say(m_book, "heat.beyond")}) {
      figures << say(m_book, "lesson.label", {{"place", place}, {"degrees", figure.toStdString()}});
    }
  }
  int widest = 0;
  for (const QString& one : words) widest = std::max(widest, bold.horizontalAdvance(one) + 2);
  for (const QString& one : figures) widest = std::max(widest, caption.horizontalAdvance(one) + 2);
  const int room = width() - kCutPx - kLabelGapPx;
  m_labelWidth = std::clamp(room, scaled(kLabelPx), std::max(widest, scaled(kLabelPx)));
  const auto tallest = [](const QFontMetrics& metrics, int width, const QStringList& texts) {
    int height = 0;
    for (const QString& one : texts) {
      height = std::max(height, metrics.boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, one).height());
    }
    return height;
  };
  m_wordHeight = tallest(QFontMetrics(look::font(look::Type::CaptionBold)), m_labelWidth, words);
  m_labelHeight = tallest(bold, m_labelWidth, words) + tallest(caption, m_labelWidth, figures);
  QStringList hands;
  for (const QString& hand : allHandWords(m_book)) {
    hands << say(m_book, "lesson.hand", {{"hand", hand.toStdString()}});
  }
  m_handHeight = tallest(QFontMetrics(look::font(look::Type::Body)), std::max(width(), 1), hands);
  updateGeometry();
}

int SideView::drawingHeight(int label) { return std::max(kCutPx, 2 * label + kBetweenLabelsPx); }

QSize SideView::minimumSizeHint() const {
  return {kCutPx + kLabelGapPx + scaled(kLabelPx), drawingHeight(m_wordHeight)};
}

int SideView::labelledHeight() const { return drawingHeight(m_labelHeight); }

int SideView::comfortableHeight() const { return m_handHeight + std::max(labelledHeight(), scaled(kRoomyPx)); }

// What there is room for, the cut-through before all else.
SideView::Fit SideView::fit() const {
  Fit fit;
  fit.hand = height() >= comfortableHeight();
  fit.floor = height() >= comfortableHeight() + scaled(kFloorPx);
  const int top = fit.hand ? m_handHeight : 0;
  const int floor = fit.floor ? scaled(kFloorPx) : 0;
  fit.degrees = height() - top - floor >= labelledHeight();
  fit.cut = QRectF(0, top, std::max(kCutPx, width() - m_labelWidth - kLabelGapPx), height() - top - floor);
  return fit;
}

void SideView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) measure();
}

QSize SideView::sizeHint() const {
  return {minimumSizeHint().width(), comfortableHeight() + kCutPx + scaled(kFloorPx)};
}

// What a screen reader says of it, while the clock stands.
void SideView::describe() {
  setAccessibleName(say(m_book, "lesson.view.name", {{"side", sideLetter(m_side).toStdString()}}));
  if (!m_model.isWorkedOut()) return;
  const study::DemonstrationPoint point = m_model.now(m_side);
  setAccessibleDescription(
      say(m_book, "lesson.view.describe",
          {{"hand", handWords(m_book, point).toStdString()},
           {"inside", insideWords(m_book, point, m_model.side(m_side).demonstration.limit).toStdString()},
           {"inside_degrees", degrees(m_book, point.conductor).toStdString()},
           {"outside_degrees", degrees(m_book, point.surface).toStdString()},
           {"plug_degrees", degrees(m_book, point.plug).toStdString()}}));
}

void SideView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) describe();
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) measure();
}

void SideView::paintLabel(QPainter& painter, const QRectF& box, const QPointF& to, const QString& figure,
                          const QString& word) const {
  const look::Tokens& tokens = look::tokens();
  painter.setPen(QPen(tokens.ink, 1));
  painter.drawLine(QPointF(box.left() - 4, box.top() + 9), to);
  painter.setBrush(tokens.sheet);
  painter.drawEllipse(to, 2.5, 2.5);
  painter.setFont(look::font(figure.isEmpty() ? look::Type::CaptionBold : look::Type::BodyBold));
  QRectF used;
  painter.drawText(box, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, word, &used);
  painter.setFont(look::font(look::Type::Caption));
  painter.setPen(tokens.ink2);
  painter.drawText(box.adjusted(0, used.height(), 0, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, figure);
}

void SideView::paintFloor(QPainter& painter, const QRectF& box, const study::DemonstrationPoint& point) const {
  const look::Tokens& tokens = look::tokens();
  const HeatSide& side = m_model.side(m_side);
  const double unit = scaled(100) / 100.0;
  const double plug = kPlugPx * unit;
  const QString plugFigure = say(m_book, "lesson.plug", {{"plug", degrees(m_book, point.plug).toStdString()}});
  painter.setFont(look::font(look::Type::Caption));
  const double words = painter.fontMetrics().horizontalAdvance(plugFigure) + 8;
  const double y = box.center().y();
  painter.setPen(tokens.ink2);
  painter.drawText(QRectF(box.left(), box.top(), words, box.height()), Qt::AlignLeft | Qt::AlignVCenter, plugFigure);
  // The wall with its outlet, then the plug in the colour of its own heat.
  const double wall = box.left() + words + 4 * unit;
  painter.setPen(QPen(tokens.wall, 5 * unit));
  painter.drawLine(QPointF(wall, box.top() + 2), QPointF(wall, box.bottom() - 2));
  const QRectF block(wall + 3 * unit, y - plug / 3, plug, plug / 1.5);
  painter.setPen(QPen(tokens.ink, 1));
  painter.setBrush(look::temperatureColor(point.plug, tokens.dark));
  painter.drawRoundedRect(block, 2, 2);
  const QRectF socket(box.right() - plug, y - plug / 3, plug, plug / 1.5);
  const double width = cordWidth(study::sizeOf(side.setup.cord).area().si() * 1e6) * unit;
  painter.setBrush(Qt::NoBrush);
  const QRectF between(block.right(), box.top(), socket.left() - block.right(), box.height());
  const QPen cord(look::temperatureColor(insideOf(point), tokens.dark), width, Qt::SolidLine, Qt::RoundCap);
  painter.setPen(cord);
  painter.drawPath(floorLine(between, side.setup.laying));
  if (isWound(side.setup.laying)) {
    paintTurns(painter, between, QPen(cord.color(), std::min(width, kMostTurnPx * unit)));
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(tokens.ink);
  painter.drawRoundedRect(socket, 2, 2);
}

void SideView::paintEvent(QPaintEvent*) {
  if (!m_model.isWorkedOut()) return;
  QPainter painter(this);
  if (m_model.isOld()) painter.setOpacity(kOldOpacity);
  painter.setRenderHint(QPainter::Antialiasing);
  const HeatSide& side = m_model.side(m_side);
  const study::DemonstrationPoint point = m_model.now(m_side);
  const double line = QFontMetricsF(look::font(look::Type::Body)).height();
  const Fit fit = this->fit();
  // "Hand on the jacket: as long as you like"
  painter.setFont(look::font(look::Type::Body));
  painter.setPen(look::tokens().ink2);
  if (fit.hand) {
    painter.drawText(QRectF(0, 0, width(), m_handHeight), Qt::AlignLeft | Qt::TextWordWrap,
                     say(m_book, "lesson.hand", {{"hand", handWords(m_book, point).toStdString()}}));
  }
  const CutPlaces places = paintCut(painter, fit.cut, side.setup, point);
  painter.setFont(look::font(look::Type::Small));
  painter.setPen(look::tokens().ink2);
  if (!places.barRight.isNull()) {
    painter.drawText(QRectF(places.barRight.x() + 6, places.barRight.y() - line / 2 - 2, scaled(80), line),
                     Qt::AlignLeft | Qt::AlignVCenter, say(m_book, "lesson.bar"));
  }
  const double half = (fit.cut.height() + kBetweenLabelsPx) / 2;
  const double spare = std::clamp(half - m_labelHeight, 0.0, 6.0);
  const QRectF inside(fit.cut.right() + kLabelGapPx, fit.cut.top() + spare, m_labelWidth, half - spare);
  const auto figure = [&](const char* place, const std::optional<study::Band<units::Temperature>>& at) {
    if (!fit.degrees) return QString();
    return say(m_book, "lesson.label", {{"place", place}, {"degrees", degrees(m_book, at).toStdString()}});
  };
  paintLabel(painter, inside, places.inside, figure("inside", point.conductor),
             insideWords(m_book, point, side.demonstration.limit));
  paintLabel(painter, inside.translated(0, half), places.outside, figure("outside", point.surface),
             outsideWords(m_book, point));
  const double floor = height() - fit.cut.bottom();
  if (fit.floor) paintFloor(painter, QRectF(0, fit.cut.bottom(), width(), floor), point);
}

}  // namespace cordreach::app
