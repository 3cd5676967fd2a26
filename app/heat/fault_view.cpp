// SPDX-License-Identifier: GPL-3.0-or-later
#include "heat/fault_view.h"

#include <QEvent>
#include <QFontMetrics>
#include <QPainter>
#include <QResizeEvent>
#include <algorithm>

#include "heat/heat_words.h"
#include "look/look.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

using look::scaled;

constexpr double kLoopPx = 58;
constexpr double kMachinePx = 88;
constexpr double kGapPx = 20;      // in the ground wire, where its pin is gone
constexpr double kGapShare = 0.3;  // of the way, at the plug
constexpr int kTallPx = 10000;

bool lacksEarth(const HeatSide& side) {
  const auto& findings = side.verdict.findings;
  return std::any_of(findings.begin(), findings.end(),
                     [](const rules::Finding& finding) { return finding.code == "earth.missing"; });
}

void paintCross(QPainter& painter, const QPointF& middle, double reach) {
  painter.setPen(QPen(look::tokens().ink, 2));
  painter.drawLine(middle + QPointF(-reach, -reach), middle + QPointF(reach, reach));
  painter.drawLine(middle + QPointF(-reach, reach), middle + QPointF(reach, -reach));
}

}  // namespace

// The boxes at both ends and the two wires between them.
struct FaultView::Loop {
  QRectF breaker;
  QRectF machine;
  double lineY;
  double earthY;
};

FaultView::FaultView(HeatModel& model, const text::Phrasebook& book, std::size_t side, QWidget* parent)
    : QWidget(parent), m_model(model), m_book(book), m_side(side) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  connect(&model, &HeatModel::sideChanged, this, &FaultView::describe);
  connect(&model, &HeatModel::busyChanged, this, QOverload<>::of(&QWidget::update));
  describe();
}

bool FaultView::isWanted(const HeatModel& model) {
  return model.isWorkedOut() && (lacksEarth(model.side(0)) || lacksEarth(model.side(1)));
}

bool FaultView::isBroken() const { return lacksEarth(m_model.side(m_side)); }

const study::FaultAnswer* FaultView::fault() const {
  if (!m_model.isWorkedOut()) return nullptr;
  const study::HookupAnswer* hookup = m_model.side(m_side).verdict.answer.find(planning::lessonHookup());
  if (hookup == nullptr || hookup->cords.empty() || !hookup->cords.back().fault) return nullptr;
  return &*hookup->cords.back().fault;
}

QString FaultView::words() const {
  const study::FaultAnswer* at = fault();
  if (at == nullptr) return {};
  const std::string letter = sideLetter(m_side).toStdString();
  if (isBroken()) {
    return say(m_book, "lesson.fault.broken", {{"side", letter}, {"touch_v", at->toEarth.likely.si()}});
  }
  base::Arguments arguments{{"side", letter}, {"touch_v", at->touch.likely.si()}};
  if (at->current) arguments.push_back({"fault_a", at->current->likely.si()});
  if (at->claimed && at->cleared.likely) arguments.push_back({"likely_s", at->cleared.likely->si()});
  if (at->claimed && at->cleared.latest) arguments.push_back({"latest_s", at->cleared.latest->si()});
  return say(m_book, "lesson.fault.whole", arguments);
}

void FaultView::describe() {
  setAccessibleName(say(m_book, "lesson.fault.name", {{"side", sideLetter(m_side).toStdString()}}));
  setAccessibleDescription(words());
  updateGeometry();
  update();
}

int FaultView::heightForWidth(int width) const {
  const QFontMetrics metrics(look::font(look::Type::Body));
  const QRect room(0, 0, std::max(width, 1), kTallPx);
  return scaled(kLoopPx) + metrics.boundingRect(room, Qt::TextWordWrap, words()).height() + scaled(4);
}

QSize FaultView::sizeHint() const { return {scaled(200), heightForWidth(width())}; }

void FaultView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) updateGeometry();
}

void FaultView::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) describe();
}

// Out over the line and back over the ground wire; without that the metal hangs on the line alone.
void FaultView::paintWires(QPainter& painter, const Loop& loop) const {
  const look::Tokens& tokens = look::tokens();
  const QColor live = look::severityColors(rules::Severity::Danger, tokens.dark).asText;
  const bool broken = isBroken();
  const double from = loop.breaker.center().x();
  const double to = loop.machine.left();
  const double gap = from + (to - from) * kGapShare;
  const double half = scaled(kGapPx) / 2.0;
  painter.setPen(QPen(live, 3));
  painter.drawLine(QLineF(loop.breaker.right(), loop.lineY, to, loop.lineY));
  painter.drawLine(QLineF(to, loop.earthY, broken ? gap + half : from, loop.earthY));
  if (broken) painter.setPen(QPen(tokens.line, 3));
  if (broken) painter.drawLine(QLineF(gap - half, loop.earthY, from, loop.earthY));
  painter.drawLine(QLineF(from, loop.earthY, from, loop.breaker.bottom()));
  if (broken) paintCross(painter, QPointF(gap, loop.earthY), half * 0.6);
  painter.setFont(look::font(look::Type::Caption));
  painter.setPen(tokens.ink);
  const study::FaultAnswer* at = fault();
  base::Arguments amps;
  if (!broken && at->current) amps.push_back({"fault_a", at->current->likely.si()});
  painter.drawText(QRectF(from + 4, loop.breaker.bottom(), to - from - 8, loop.earthY - loop.breaker.bottom()),
                   Qt::AlignCenter, say(m_book, broken ? "lesson.fault.no_flow" : "lesson.fault.flow", amps));
}

void FaultView::paintLoop(QPainter& painter, const QRectF& box) const {
  const look::Tokens& tokens = look::tokens();
  const study::FaultAnswer* at = fault();
  const double volts = (isBroken() ? at->toEarth : at->touch).likely.si();
  const QString breaker = say(m_book, "lesson.fault.breaker");
  const QString metal = say(m_book, "lesson.fault.metal", {{"touch_v", volts}});
  const QFontMetricsF caption(look::font(look::Type::Caption));
  const QFontMetricsF bold(look::font(look::Type::BodyBold));
  Loop loop{};
  const double line = caption.height() + 6;
  double wide = scaled(kMachinePx);
  for (const QString& word : metal.split(' ')) wide = std::max(wide, bold.horizontalAdvance(word) + 12);
  loop.breaker = QRectF(box.left() + 1, box.top() + 2, caption.horizontalAdvance(breaker) + 12, line);
  loop.machine = QRectF(box.right() - wide - 1, box.top() + 2, wide, box.height() - 4);
  loop.lineY = loop.breaker.center().y();
  loop.earthY = box.bottom() - scaled(8);
  paintWires(painter, loop);
  painter.setPen(QPen(tokens.ink2, 1.5));
  painter.setBrush(tokens.room);
  painter.drawRoundedRect(loop.breaker, 3, 3);
  const QColor live = look::severityColors(rules::Severity::Danger, tokens.dark).asText;
  painter.setPen(QPen(live, isBroken() ? 3 : 1.5));
  painter.drawRoundedRect(loop.machine, 3, 3);
  painter.setPen(tokens.ink);
  painter.setFont(look::font(look::Type::Caption));
  painter.drawText(loop.breaker, Qt::AlignCenter, breaker);
  painter.setFont(look::font(look::Type::BodyBold));
  painter.drawText(loop.machine, Qt::AlignCenter | Qt::TextWordWrap, metal);
}

void FaultView::paintEvent(QPaintEvent*) {
  if (fault() == nullptr) return;
  QPainter painter(this);
  if (m_model.isOld()) painter.setOpacity(kOldOpacity);
  painter.setRenderHint(QPainter::Antialiasing);
  paintLoop(painter, QRectF(0, 0, width(), scaled(kLoopPx)));
  painter.setFont(look::font(look::Type::Body));
  painter.setPen(look::tokens().ink2);
  const int top = scaled(kLoopPx) + scaled(2);
  painter.drawText(QRectF(0, top, width(), height() - top), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words());
}

}  // namespace cordreach::app
