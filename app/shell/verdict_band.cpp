// SPDX-License-Identifier: GPL-3.0-or-later
#include "shell/verdict_band.h"

#include <QAccessible>
#include <QEvent>
#include <QFontMetrics>
#include <QLabel>
#include <QPainter>
#include <algorithm>

#include "look/look.h"
#include "look/severity_mark.h"
#include "panels/link_button.h"
#include "shell/remedy_button.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kMargin = 24;
constexpr int kMark = 52;
constexpr int kWordsLeft = 92;
constexpr int kMostWords = 850;  // no line of a sentence gets longer
constexpr int kStillMs = 400;    // a verdict is read out once it has been still for so long

int heightOf(const QFont& font, int width, const QString& text) {
  if (text.isEmpty()) return 0;
  return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, text).height();
}

}  // namespace

VerdictBand::VerdictBand(const text::Phrasebook& book, QWidget* parent)
    : QWidget(parent),
      m_book(book),
      m_button(new RemedyButton(this)),
      m_after(new QLabel(this)),
      m_more(new LinkButton({}, this)) {
  setAccessibleName(say(book, "window.verdict"));
  m_after->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  m_after->setWordWrap(true);
  m_after->setTextFormat(Qt::PlainText);  // it names cords as their owners do
  m_announceSoon.setSingleShot(true);
  m_announceSoon.setInterval(kStillMs);
  connect(&m_announceSoon, &QTimer::timeout, this, &VerdictBand::announce);
  connect(m_button, &QAbstractButton::clicked, this, &VerdictBand::pressRemedy);
  connect(m_more, &QAbstractButton::clicked, this, [this] {
    m_unfolded = !m_unfolded;
    freshen();
  });
  freshen();
}

void VerdictBand::setSource(VerdictSource* source) {
  if (m_source != nullptr) disconnect(m_source, nullptr, this, nullptr);
  m_source = source;
  connect(source, &VerdictSource::changed, this, &VerdictBand::take);
  take();
}

void VerdictBand::take() {
  m_words = m_source->words();
  const QString spoken = m_words.spoken();
  if (spoken != accessibleDescription()) {
    setAccessibleDescription(spoken);
    m_announceSoon.start();
  }
  freshen();
}

void VerdictBand::freshen() {
  const bool hasChange = !m_words.button.isEmpty();
  m_button->setText(m_words.button);
  m_button->setAccessibleDescription(m_words.after);
  m_button->setEnabled(hasChange && isFresh());
  m_button->setVisible(hasChange);
  QString under = hasChange ? m_words.after : m_words.order;
  if (m_words.seeking && isFresh()) under = say(m_book, "window.verdict.seeking");
  m_after->setText(under.isEmpty() || under.endsWith('.') ? under : under + '.');
  layOut();
  update();
}

void VerdictBand::setColumn(int width, bool narrow) {
  m_columnWidth = width;
  m_narrow = narrow;
  layOut();
}

void VerdictBand::setLow(bool low) {
  if (low == m_low) return;
  m_low = low;
  m_unfolded = false;
  freshen();
}

QFont VerdictBand::sentenceFont() const { return look::font(m_low ? look::Type::HeadBold : look::Type::Verdict); }

VerdictBand::Places VerdictBand::places() const {
  const int left = look::scaled(kWordsLeft);
  const int right = width() - kMargin - m_columnWidth - 28;
  const int wide = std::max(120, std::min(right - left, look::scaled(kMostWords)));
  Places at;
  const QFontMetrics plate(look::font(look::Type::BodyBold));
  at.plate =
      QRect(left, look::scaled(12), plate.horizontalAdvance(m_words.signal) + look::scaled(20), look::scaled(24));
  const int beside = at.plate.right() + look::scaled(12);
  const int lines = heightOf(look::font(look::Type::Small), left + wide - beside, m_words.concerns);
  at.concerns = QRect(beside, at.plate.top(), left + wide - beside, std::max(at.plate.height(), lines));
  const QFont font = sentenceFont();
  const int sentence = std::max(heightOf(font, wide, m_words.sentence), QFontMetrics(font).height());
  at.sentence = QRect(left, at.concerns.bottom() + look::scaled(5), wide, sentence);
  const QFont reasonFont = look::font(look::Type::Reason);
  const int reason = isFolded() && !m_words.reason.isEmpty() ? QFontMetrics(reasonFont).height()
                                                             : heightOf(reasonFont, wide, m_words.reason);
  at.reason = QRect(left, at.sentence.bottom() + look::scaled(4), wide, reason);
  return at;
}

// At the end of a folded reason, and below one that was unfolded.
void VerdictBand::placeMore() {
  const QRect reason = places().reason;
  const int whole = heightOf(look::font(look::Type::Reason), reason.width(), m_words.reason);
  m_more->setText(say(m_book, m_unfolded ? "window.verdict.less" : "window.verdict.more"));
  m_more->setVisible(m_low && whole > QFontMetrics(look::font(look::Type::Reason)).height() * 3 / 2);
  const QSize size = m_more->sizeHint();
  const int top = isFolded() ? reason.center().y() - size.height() / 2 : reason.bottom();
  m_more->setGeometry(QRect(QPoint(reason.right() - size.width(), top), size));
}

QSize VerdictBand::sizeHint() const {
  const int always = QFontMetrics(look::font(look::Type::Small)).height();
  const int less = m_low && m_unfolded ? m_more->sizeHint().height() : 0;
  const int words = places().reason.bottom() + less + always + look::scaled(12);
  const int column = m_after->geometry().bottom() + look::scaled(4);
  return {look::scaled(900), std::max({words, column, look::scaled(m_narrow ? 92 : 112)})};
}

void VerdictBand::layOut() {
  const int left = width() - kMargin - m_columnWidth;
  // The button's ring stands outside its ground, which is what lines up with the column.
  m_button->setGeometry(left - 4, look::scaled(12), m_columnWidth + 8, m_button->heightForWidth(m_columnWidth + 8));
  m_after->setFont(look::font(m_button->isHidden() ? look::Type::Body : look::Type::Caption));
  m_after->setAlignment(m_button->isHidden() ? Qt::AlignLeft | Qt::AlignTop : Qt::AlignHCenter | Qt::AlignTop);
  QPalette palette = m_after->palette();
  palette.setColor(QPalette::WindowText, look::tokens().ink2);
  m_after->setPalette(palette);
  const int top = m_button->isHidden() ? look::scaled(18) : m_button->geometry().bottom() + look::scaled(4);
  m_after->setGeometry(left, top, m_columnWidth, m_after->heightForWidth(m_columnWidth));
  const int wanted = sizeHint().height();
  if (minimumHeight() != wanted) setFixedHeight(wanted);
  placeMore();
}

// Where both do not fit, that it is being worked out is said alone: what it concerns is then old.
QString VerdictBand::concernsLine(const QRect& place) const {
  if (isFresh()) return m_words.concerns;
  const QString working = say(m_book, "window.verdict.working");
  const QString both = m_words.concerns + QStringLiteral("  ·  ") + working;
  const bool fits = QFontMetrics(look::font(look::Type::Body)).horizontalAdvance(both) <= place.width();
  return m_words.concerns.isEmpty() || !fits ? working : both;
}

void VerdictBand::paintEvent(QPaintEvent* /*event*/) {
  const look::Tokens& t = look::tokens();
  const bool fresh = isFresh();
  QPainter painter(this);
  painter.setFont(look::font(look::Type::Small));
  painter.setPen(t.ink3);
  const Places at = places();
  const QRect always(at.reason.left(), height() - painter.fontMetrics().height() - look::scaled(6), at.reason.width(),
                     painter.fontMetrics().height());
  painter.drawText(always, Qt::AlignLeft | Qt::AlignVCenter, say(m_book, "always"));
  painter.setPen(t.ink2);
  painter.setFont(look::font(look::Type::Body));
  if (m_words.signal.isEmpty()) {
    painter.drawText(at.plate.adjusted(0, 0, 400, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     say(m_book, "window.verdict.working"));
    return;
  }
  // Dimmed as a whole: what is old must not look like an answer.
  painter.setOpacity(fresh ? 1 : 0.55);
  const bool dark = t.dark;
  look::paintSeverityMark(painter, QRectF(kMargin, look::scaled(15), look::scaled(kMark), look::scaled(kMark)),
                          m_words.severity, dark);
  painter.setFont(look::font(look::Type::BodyBold));
  look::paintSignalPlate(painter, at.plate, m_words.severity, m_words.signal, dark);
  painter.setFont(sentenceFont());
  painter.setPen(t.ink);
  painter.drawText(at.sentence, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_words.sentence);
  painter.setFont(look::font(look::Type::Reason));
  painter.setPen(t.ink2);
  if (isFolded() && !m_more->isHidden()) {
    const int room = m_more->geometry().left() - at.reason.left() - look::scaled(4);
    painter.drawText(at.reason, Qt::AlignLeft | Qt::AlignTop,
                     painter.fontMetrics().elidedText(m_words.reason, Qt::ElideRight, room));
  } else {
    painter.drawText(at.reason, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_words.reason);
  }
  painter.setOpacity(1);
  paintConcerns(painter, at.concerns);
}

void VerdictBand::paintConcerns(QPainter& painter, const QRect& place) const {
  const QString line = concernsLine(place);
  painter.setFont(look::font(look::Type::Body));
  const bool oneLine = painter.fontMetrics().horizontalAdvance(line) <= place.width();
  if (!oneLine) painter.setFont(look::font(look::Type::Small));
  painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter | (oneLine ? 0 : Qt::TextWordWrap), line);
}

void VerdictBand::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layOut();
}

void VerdictBand::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange) {
    setAccessibleName(say(m_book, "window.verdict"));
    freshen();
  }
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) freshen();
}

void VerdictBand::announce() {
  if (!isFresh()) return m_announceSoon.start();
  QAccessibleEvent alert(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void VerdictBand::pressRemedy() {
  if (m_source != nullptr && !m_words.button.isEmpty()) m_source->press();
}

}  // namespace cordreach::app
