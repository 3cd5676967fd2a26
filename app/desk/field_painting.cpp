// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/field_painting.h"

#include <QPainter>
#include <cmath>
#include <numbers>

#include "look/look.h"
#include "look/severity_mark.h"

namespace cordreach::app {

namespace {

using rules::Severity;

constexpr double kDiscPerMm = 7.4;  // px of diameter for a millimetre of copper
constexpr int kDiscRoom = 28;
constexpr int kMark = 14;
constexpr int kHatchPitch = 7;
constexpr int kHeadRoom = 8;

QColor groundOf(const CellWords& words, const look::Tokens& t) {
  if (words.tooShort || words.empty) return t.sheet;
  if (words.severity < Severity::Caution) return t.okbg;
  return words.severity == Severity::Caution ? t.sheet : t.well;
}

void hatch(QPainter& painter, const QRect& box, const look::Tokens& t) {
  painter.save();
  painter.setClipRect(box);
  QColor ink = t.line;
  ink.setAlphaF(0.45F);
  painter.setPen(QPen(ink, 2));
  const int pitch = look::scaled(kHatchPitch);
  for (int x = box.left() - box.height(); x < box.right(); x += pitch) {
    painter.drawLine(x, box.bottom(), x + box.height(), box.top());
  }
  painter.restore();
}

int widestWord(const QFont& font, const QString& words) {
  const QFontMetrics metrics(font);
  int widest = 0;
  for (const QString& word : words.split(' ')) widest = std::max(widest, metrics.horizontalAdvance(word));
  return widest;
}

QFont bold(QFont font) {
  font.setBold(true);
  return font;
}

}  // namespace

FieldPainting::FieldPainting(const FieldModel& cells, QObject* parent) : QStyledItemDelegate(parent), m_cells(cells) {}

void FieldPainting::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const look::Tokens& t = look::tokens();
  const CordModel& model = m_cells.cords();
  const CordCell cell = cellOf(index);
  const CellWords words = cellWords(model, cell);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  const QRect box = option.rect.adjusted(0, 0, -2, -2);
  painter->fillRect(box, groundOf(words, t));
  if (t.highContrast && !words.tooShort) {
    painter->setPen(QPen(t.ink, 1));
    painter->drawRect(box);
  }
  if (!words.tooShort && !words.empty && words.severity == Severity::Caution) hatch(*painter, box, t);
  if (!model.gridIsFresh()) painter->setOpacity(0.45);
  const bool tagged = !model.cartIn(cell).empty();
  const int tag = tagged ? QFontMetrics(bold(look::font(look::Type::Small))).height() : 0;
  paintWords(*painter, box.adjusted(0, tag, 0, 0), words);
  painter->setOpacity(1);
  paintCart(*painter, box, cell);
  const bool chosen = model.chosenCell() == cell;
  const bool current = (option.state & QStyle::State_HasFocus) != 0;
  if (chosen || current) {
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(t.select, chosen ? 2.5 : 2, chosen ? Qt::SolidLine : Qt::DashLine));
    painter->drawRoundedRect(QRectF(box).adjusted(3, 3, -2, -2), 4, 4);
  }
  if (chosen && current) {
    painter->setPen(QPen(t.select, 1.5, Qt::DashLine));
    painter->drawRoundedRect(QRectF(box).adjusted(7, 7, -6, -6), 3, 3);
  }
  painter->restore();
}

void FieldPainting::paintWords(QPainter& painter, const QRect& box, const CellWords& words) const {
  const look::Tokens& t = look::tokens();
  const QFont small = look::font(look::Type::Small);
  const bool marked = !words.tooShort && !words.empty;
  const int beside = marked ? look::scaled(kMark + 5) : 0;
  const int wideEnough = box.width() - look::scaled(10) - beside;
  const QFont usual = bold(look::font(look::Type::Caption));
  const QFont head = words.tooShort || widestWord(usual, words.head) > wideEnough ? small : usual;
  const QFontMetrics headMetrics(head);
  const QFontMetrics smallMetrics(small);
  const int side = marked ? look::scaled(kMark) : 0;
  const int gap = marked ? look::scaled(5) : 0;
  const QRect inner = box.adjusted(look::scaled(6), 2, -look::scaled(4), -2);
  const QRect room(0, 0, inner.width() - side - gap, inner.height());
  const int flags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
  const QRect headBox = headMetrics.boundingRect(room, flags, words.head);
  const int figure = words.figure.isEmpty() ? 0 : smallMetrics.height() + 2;
  const int high = std::max(headBox.height(), side) + figure;
  const int top = inner.top() + std::max(0, (inner.height() - high) / 2);
  const int left = words.tooShort ? inner.left() + (inner.width() - headBox.width()) / 2 : inner.left();
  if (marked && words.severity == Severity::Caution) {
    // A clear window behind the words.
    const int wide = std::max(side + gap + headBox.width(), smallMetrics.horizontalAdvance(words.figure));
    painter.fillRect(QRect(left - 3, top - 1, std::min(wide + 6, inner.width() + 3), high + 2), t.sheet);
  }
  if (marked) {
    look::paintSeverityMark(painter, QRectF(left, top + (headMetrics.height() - side) / 2.0, side, side),
                            words.severity, t.dark);
  }
  const QColor ink = !marked                              ? t.ink3
                     : words.severity < Severity::Caution ? look::severityColors(words.severity, t.dark).asText
                                                          : t.ink;
  painter.setPen(ink);
  painter.setFont(head);
  painter.drawText(QRect(left + side + gap, top, room.width(), inner.height()), flags, words.head);
  if (words.figure.isEmpty()) return;
  painter.setPen(t.ink2);
  painter.setFont(small);
  painter.drawText(QRect(left, top + std::max(headBox.height(), side) + 2, inner.width(), smallMetrics.height()),
                   Qt::AlignLeft | Qt::AlignVCenter, words.figure);
}

// The cart's cords of that cell, at its corner.
void FieldPainting::paintCart(QPainter& painter, const QRect& box, const CordCell& cell) const {
  const std::vector<std::string> labels = m_cells.cords().cartIn(cell);
  if (labels.empty()) return;
  const look::Tokens& t = look::tokens();
  QString words = QString::fromStdString(labels.front());
  if (labels.size() > 1) words += QStringLiteral(" +%1").arg(labels.size() - 1);
  painter.setFont(bold(look::font(look::Type::Small)));
  painter.setPen(m_cells.cords().isTooShort(cell.column) ? t.ink3 : t.ink);
  painter.drawText(box.adjusted(0, look::scaled(3), -look::scaled(6), 0), Qt::AlignRight | Qt::AlignTop, words);
}

LengthHeader::LengthHeader(const FieldModel& cells, QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent), m_cells(cells) {}

QSize LengthHeader::sizeHint() const {
  return {0, QFontMetrics(look::font(look::Type::BodyBold)).height() + look::scaled(kHeadRoom)};
}

void LengthHeader::paintSection(QPainter* painter, const QRect& box, int section) const {
  const look::Tokens& t = look::tokens();
  const CordModel& model = m_cells.cords();
  const auto column = static_cast<std::size_t>(section);
  const auto chosen = model.chosenCell();
  const bool isChosen = chosen && chosen->column == column;
  painter->fillRect(box, t.sheet);
  painter->setPen(model.isTooShort(column) ? t.ink3 : t.ink);
  painter->setFont(look::font(isChosen ? look::Type::BodyBold : look::Type::Body));
  painter->drawText(box, Qt::AlignCenter, m_cells.headerData(section, Qt::Horizontal, Qt::DisplayRole).toString());
}

GaugeHeader::GaugeHeader(const FieldModel& cells, QWidget* parent)
    : QHeaderView(Qt::Vertical, parent), m_cells(cells) {}

QSize GaugeHeader::sizeHint() const {
  const QFontMetrics metrics(look::font(look::Type::BodyBold));
  int widest = 0;
  for (int row = 0; row < m_cells.rowCount(); ++row) {
    widest =
        std::max(widest, metrics.horizontalAdvance(m_cells.headerData(row, Qt::Vertical, Qt::DisplayRole).toString()));
  }
  return {look::scaled(kDiscRoom + 14) + widest, 0};
}

void GaugeHeader::paintSection(QPainter* painter, const QRect& box, int section) const {
  const look::Tokens& t = look::tokens();
  const CordModel& model = m_cells.cords();
  const auto row = static_cast<std::size_t>(section);
  const auto chosen = model.chosenCell();
  const bool isChosen = chosen && chosen->row == row;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->fillRect(box, t.sheet);
  const double areaMm2 = model.grid().sizes.at(row).area().si() * 1e6;
  const double radius = std::sqrt(areaMm2 / std::numbers::pi) * look::scaled(kDiscPerMm);
  painter->setPen(Qt::NoPen);
  painter->setBrush(isChosen ? t.ink : t.ink2);
  painter->drawEllipse(QPointF(box.left() + look::scaled(kDiscRoom) / 2.0, box.center().y()), radius, radius);
  painter->setPen(t.ink);
  painter->setFont(look::font(isChosen ? look::Type::BodyBold : look::Type::Body));
  painter->drawText(box.adjusted(look::scaled(kDiscRoom + 6), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                    m_cells.headerData(section, Qt::Vertical, Qt::DisplayRole).toString());
  painter->restore();
}

}  // namespace cordreach::app
