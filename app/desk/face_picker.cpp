// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/face_picker.h"

#include <QButtonGroup>
#include <QPainter>
#include <QPainterPath>
#include <QRadioButton>
#include <array>

#include "look/look.h"
#include "panels/flow_row.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr int kSide = 46;
// Of 120 V receptacles those that are met in buildings; the drawings follow ANSI/NEMA WD 6, from memory.
constexpr std::array kFaces = {"", "5-15", "5-20", "1-15", "L5-20"};

void slot(QPainter& painter, double x, double y, double width, double height) {
  painter.drawRect(QRectF(x - width / 2, y - height / 2, width, height));
}

// On a face of 24 by 24, earth below.
void drawFace(QPainter& painter, std::string_view key, const QColor& ink) {
  painter.setPen(QPen(ink, 1.2));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(QPointF(12, 12), 11, 11);
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  if (key == "L5-20") {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 2));
    for (const int start : {20, 140, 260}) painter.drawArc(QRectF(5.5, 5.5, 13, 13), start * 16, 60 * 16);
    return;
  }
  // The neutral's slot, left, is the longer one; of a 20 A face it has a bar across.
  slot(painter, 8.2, 9, 1.8, 6.4);
  if (key == "5-20") slot(painter, 6.6, 9, 4.6, 1.8);
  slot(painter, 15.8, 9, 1.8, 5.2);
  if (key == "1-15") return;
  QPainterPath earth;
  earth.addEllipse(QPointF(12, 16.4), 2.1, 2.1);
  painter.drawPath(earth);
}

}  // namespace

class FaceButton : public QRadioButton {
 public:
  FaceButton(const char* key, QWidget* parent) : QRadioButton(parent), m_key(key) {}
  [[nodiscard]] const char* key() const { return m_key; }
  [[nodiscard]] QSize sizeHint() const override { return {look::scaled(kSide), look::scaled(kSide)}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

 protected:
  [[nodiscard]] bool hitButton(const QPoint& at) const override { return rect().contains(at); }
  void paintEvent(QPaintEvent* /*event*/) override {
    const look::Tokens& t = look::tokens();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(2, 2, -2, -2);
    painter.setBrush(isChecked() || underMouse() ? t.selbg : t.room);
    painter.setPen(QPen(isChecked() ? t.select : t.line, isChecked() ? 2.5 : 1.5));
    painter.drawRoundedRect(box, 4, 4);
    if (hasFocus()) {
      painter.setPen(QPen(t.ink, 1, Qt::DotLine));
      painter.drawRoundedRect(box.adjusted(3, 3, -3, -3), 3, 3);
    }
    if (*m_key == '\0') {
      painter.setPen(t.ink);
      painter.setFont(look::font(look::Type::HeadBold));
      painter.drawText(rect(), Qt::AlignCenter, QStringLiteral("?"));
      return;
    }
    const double scale = box.width() / 30;
    painter.translate(box.center());
    painter.scale(scale, scale);
    painter.translate(-12, -12);
    drawFace(painter, m_key, t.ink);
  }

 private:
  const char* m_key;
};

FacePicker::FacePicker(const text::Phrasebook& book, QWidget* parent) : QWidget(parent), m_book(book) {
  auto* row = new FlowRow(4);
  setLayout(row);
  auto* group = new QButtonGroup(this);
  for (const char* key : kFaces) {
    auto* button = new FaceButton(key, this);
    m_buttons.push_back(button);
    group->addButton(button);
    row->addWidget(button);
  }
  m_buttons.front()->setChecked(true);
  connect(group, &QButtonGroup::buttonToggled, this, [this](QAbstractButton*, bool on) {
    if (on) emit picked();
  });
  rename();
}

void FacePicker::rename() {
  for (FaceButton* button : m_buttons) {
    const std::string key = button->key();
    const QString words = say(m_book, key.empty() ? "desk.dont_know" : "desk.face." + key);
    button->setAccessibleName(words);
    button->setToolTip(words);
  }
}

std::string FacePicker::face() const {
  for (const FaceButton* button : m_buttons) {
    if (button->isChecked()) return button->key();
  }
  return {};
}

void FacePicker::setFace(const std::string& key) {
  for (FaceButton* button : m_buttons) {
    if (key == button->key()) button->setChecked(true);
  }
}

}  // namespace cordreach::app
