// SPDX-License-Identifier: GPL-3.0-or-later
#include "look/look.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QPalette>
#include <QPointer>
#include <QProxyStyle>
#include <QStyle>
#include <QStyleFactory>
#include <QWidget>
#include <cmath>

#include "look/style_sheet.h"

namespace cordreach::look {

namespace {

Look& presentLook() {
  static Look look;
  return look;
}

QPalette paletteOf(const Tokens& t) {
  QPalette palette(t.ink, t.sheet, t.room, t.rule, t.line, t.ink, t.ink, t.room, t.sheet);
  palette.setColor(QPalette::AlternateBase, t.well);
  palette.setColor(QPalette::Highlight, t.selbg);
  palette.setColor(QPalette::HighlightedText, t.highContrast ? QColor(t.dark ? Qt::white : Qt::black) : t.ink);
  palette.setColor(QPalette::ToolTipBase, t.room);
  palette.setColor(QPalette::ToolTipText, t.ink);
  palette.setColor(QPalette::PlaceholderText, t.ink3);
  palette.setColor(QPalette::Link, t.link);
  palette.setColor(QPalette::LinkVisited, t.link);
  palette.setColor(QPalette::Mid, t.line);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    palette.setColor(QPalette::Disabled, role, t.ink3);
  }
  return palette;
}

double pointsOf(Type type) {
  switch (type) {
    case Type::Verdict:
      return 18;
    case Type::Head:
    case Type::HeadBold:
      return 12;
    case Type::Reason:
      return 10.5;
    case Type::Body:
    case Type::BodyBold:
      return 10;
    case Type::Small:
      return 8.25;
    case Type::Caption:
    case Type::CaptionBold:
    case Type::RoomName:
      break;
  }
  return 9;
}

bool isBold(Type type) {
  return type == Type::Verdict || type == Type::HeadBold || type == Type::BodyBold || type == Type::CaptionBold;
}

// Names come from people and files: a label renders markup only where it asks for it, and a tool tip never does.
class PlainWordsStyle : public QProxyStyle {
 public:
  using QProxyStyle::polish;
  using QProxyStyle::QProxyStyle;

  void polish(QWidget* widget) override {
    auto* label = qobject_cast<QLabel*>(widget);
    if (label != nullptr && label->textFormat() == Qt::AutoText) label->setTextFormat(Qt::PlainText);
    QProxyStyle::polish(widget);
  }
};

}  // namespace

void setPresent(QApplication& application, const Look& look) {
  presentLook() = look;
  static bool isSet = false;
  if (!isSet) QApplication::setStyle(new PlainWordsStyle(QStyleFactory::create("Fusion")));  // which then owns it
  isSet = true;
  QApplication::setPalette(paletteOf(tokens()));
  QApplication::setFont(font(Type::Body));
  application.setStyleSheet(styleSheet(tokens(), look.textScale));
  // Qt tells only those whose own font or palette came out different; a widget that paints from here must know too.
  // One that does may make others anew, which are then gone.
  const QWidgetList all = QApplication::allWidgets();
  for (const QPointer<QWidget>& widget : QList<QPointer<QWidget>>(all.begin(), all.end())) {
    for (const QEvent::Type type : {QEvent::FontChange, QEvent::PaletteChange}) {
      QEvent change(type);
      if (widget) QApplication::sendEvent(widget, &change);
    }
  }
}

const Look& present() { return presentLook(); }

const Tokens& tokens() { return tokensOf(presentLook().theme); }

QFont font(Type type) {
  QFont font(QStringLiteral("DejaVu Sans"));
  // Pixels of 1/96 inch, so that a screen with odd physical dots keeps the proportions of the layout.
  font.setPixelSize(static_cast<int>(std::lround(pointsOf(type) * 96 / 72 * present().textScale)));
  font.setBold(isBold(type));
  if (type == Type::Verdict) font.setLetterSpacing(QFont::AbsoluteSpacing, -0.2);
  if (type == Type::RoomName) font.setLetterSpacing(QFont::AbsoluteSpacing, 1.1);
  return font;
}

int scaled(double px) { return static_cast<int>(std::lround(px * present().textScale)); }

int motionMs(int ms) { return present().motion ? ms : 0; }

}  // namespace cordreach::look
