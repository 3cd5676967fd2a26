// SPDX-License-Identifier: GPL-3.0-or-later
// Outlets in a row from press to release, at right angles unless Alt is held; spacing and numbers are the bar's.
#include <QPainter>

#include "map/drag_tool.h"
#include "map/polyline.h"
#include "map/row_edits.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

class RowTool : public DragTool {
 public:
  using DragTool::DragTool;

  void press(const ToolPointer& pointer) override {
    m_from = toTenths(pointer.metres);
    m_to = *m_from;
  }

  void move(const ToolPointer& pointer) override {
    m_to = endOf(pointer);
    canvas().update();
  }

  void release(const ToolPointer& pointer) override {
    if (!m_from || !canvas().floor()) return;
    m_to = endOf(pointer);
    const OutletRow row = rowNow();
    m_from.reset();
    const EditResult edit = addOutletRow(canvas().session().document.site(), row);
    if (!canvas().apply(edit)) return;
    canvas().row().label.clear();
    emit canvas().rowChanged();
    std::vector<rules::Subject> added;
    for (const site::AnyChange& change : edit.value().changes) {
      added.push_back({rules::SubjectKind::Outlet, std::get<site::Change<site::Outlet>>(change).after->id.text()});
    }
    canvas().session().selection.choose(std::move(added));
  }

  void paint(QPainter& painter) override {
    if (!m_from || !canvas().floor()) return;
    const OutletRow row = rowNow();
    const std::vector<geometry::Point> points = pointsOf(row);
    if (points.empty()) return;
    const double scale = canvas().scale();
    painter.setPen(QPen(look::tokens().select, 1.5, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawLine(*m_from * scale, m_to * scale);
    painter.setPen(QPen(look::tokens().select, 1.5));
    painter.setBrush(look::tokens().sheet);
    for (const geometry::Point& point : points) painter.drawEllipse(QPointF(point.xM, point.yM) * scale, 5, 5);
    paintCount(painter, row, points.size());
  }

  [[nodiscard]] QString progress() const override {
    if (!m_from || !canvas().floor()) return {};
    const OutletRow row = rowNow();
    const std::size_t count = pointsOf(row).size();
    return count == 0 ? QString() : countWords(row, count);
  }

  [[nodiscard]] std::string_view hint() const override { return "map.hint.row"; }

 private:
  [[nodiscard]] QPointF endOf(const ToolPointer& pointer) const {
    const QPointF to = toTenths(pointer.metres);
    return m_from && !pointer.modifiers.testFlag(Qt::AltModifier) ? squaredFrom(*m_from, to) : to;
  }

  [[nodiscard]] OutletRow rowNow() const {
    const RowSettings& wanted = canvas().row();
    const geometry::Point from{m_from->x(), m_from->y()};
    const site::Place start{*canvas().floor(), from};
    return {start.floor,
            from,
            {m_to.x(), m_to.y()},
            wanted.spacing,
            nextLabel(wanted, canvas().session().document.site(), start),
            wanted.receptacle};
  }

  [[nodiscard]] QString countWords(const OutletRow& row, std::size_t count) const {
    const auto labels = labelsFrom(canvas().session().document.site(), row.firstLabel, count);
    return say(canvas().session().book, "map.row.count",
               {{"n", static_cast<double>(count)}, {"first", labels.front()}, {"last", labels.back()}});
  }

  void paintCount(QPainter& painter, const OutletRow& row, std::size_t count) {
    const QString words = countWords(row, count);
    painter.setFont(look::font(look::Type::CaptionBold));
    const QFontMetricsF metrics(painter.font());
    QRectF box(QPointF(), metrics.size(0, words) + QSizeF(12, 6));
    box.moveCenter((*m_from + m_to) / 2 * canvas().scale() - QPointF(0, 22));
    painter.setPen(Qt::NoPen);
    painter.setBrush(look::tokens().sheet);
    painter.drawRect(box);
    painter.setPen(look::tokens().ink);
    painter.drawText(box, Qt::AlignCenter, words);
  }
};

}  // namespace

std::unique_ptr<MapTool> rowTool(MapCanvas& canvas) { return std::make_unique<RowTool>(canvas); }

}  // namespace cordreach::app
