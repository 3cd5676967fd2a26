// SPDX-License-Identifier: GPL-3.0-or-later
// What the place Heat shows on demand and gives away: more curves, pictures, tables, sources.
#include <QAction>
#include <QBuffer>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QSvgGenerator>
#include <QToolButton>
#include <QVBoxLayout>

#include "heat/heat_place.h"
#include "heat/heat_sheet.h"
#include "heat/heat_words.h"
#include "io/atomic_file.h"
#include "io/demonstration_csv.h"
#include "look/look.h"
#include "physics/contact.h"
#include "physics/touch_limits.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

constexpr double kPictureScale = 2.0;
constexpr double kEdgePx = 24;  // of a saved picture
constexpr double kTitlePx = 16;

base::Result<base::Done> write(const QString& path, const QByteArray& bytes) {
  return io::replaceFile(path.toStdString(),
                         std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

struct SourceLine {
  const char* code;
  physics::TemperatureLimit limit;
};

std::vector<SourceLine> sourceLines() {
  return {{"lesson.limit.warm", physics::jacketWarm()},
          {"lesson.limit.hold", physics::jacketTooHotToHold()},
          {"lesson.limit.touch", physics::jacketTooHotToTouch()},
          {"lesson.limit.printed", physics::unmarkedCordRating()},
          {"lesson.limit.damage", physics::conductorDamage()}};
}

}  // namespace

void HeatPlace::makeMenus() {
  const text::Phrasebook& book = m_session.book;
  for (const QToolButton* button : {m_more, m_save}) {
    if (button->menu() != nullptr) button->menu()->deleteLater();
  }
  m_more->setText(say(book, "lesson.more"));
  m_save->setText(say(book, "lesson.save"));
  auto* more = new QMenu(m_more);
  const auto wish = [&](const char* code, bool PlotWishes::*which) {
    QAction* action = more->addAction(say(book, code));
    action->setCheckable(true);
    action->setChecked(chart()->wishes().*which);
    connect(action, &QAction::toggled, this, [this, which](bool on) {
      PlotWishes wishes = chart()->wishes();
      wishes.*which = on;
      chart()->setWishes(wishes);
    });
  };
  wish("lesson.more.outside", &PlotWishes::outside);
  wish("lesson.more.plug", &PlotWishes::plug);
  wish("lesson.more.bands", &PlotWishes::bands);
  wish("lesson.more.hand", &PlotWishes::hand);
  more->addSeparator();
  wish("lesson.strip.volts", &PlotWishes::volts);
  wish("lesson.strip.speed", &PlotWishes::speed);
  wish("lesson.strip.watts", &PlotWishes::watts);
  more->addSeparator();
  connect(more->addAction(say(book, "lesson.sources")), &QAction::triggered, this, &HeatPlace::showSources);
  m_more->setMenu(more);
  auto* save = new QMenu(m_save);
  const auto kind = [&](const char* code, const char* kindCode, const char* ending,
                        base::Result<base::Done> (HeatPlace::*how)(const QString&)) {
    connect(save->addAction(say(book, code)), &QAction::triggered, this,
            [=, this] { saveAs(code, kindCode, ending, how); });
  };
  kind("lesson.save.picture", "lesson.kind.png", "png", &HeatPlace::savePicture);
  kind("lesson.save.drawing", "lesson.kind.svg", "svg", &HeatPlace::saveDrawing);
  kind("lesson.save.table", "lesson.kind.csv", "csv", &HeatPlace::saveTable);
  m_save->setMenu(save);
}

void HeatPlace::saveAs(const char* titleCode, const char* kindCode, const char* ending,
                       base::Result<base::Done> (HeatPlace::*save)(const QString&)) {
  const text::Phrasebook& book = m_session.book;
  QString path = QFileDialog::getSaveFileName(
      this, say(book, titleCode), QString::fromStdString(m_model.lesson().title) + '.' + ending, say(book, kindCode));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".") + ending;
  const base::Result<base::Done> saved = (this->*save)(path);
  if (!saved) emit refused(sentenceOf(book, saved.error()));
}

// A sheet without room for the caution has it below.
QSize HeatPlace::pageSize() const {
  const int edge = look::scaled(kEdgePx);
  return m_sheet->size() + QSize(2 * edge, 2 * edge + look::scaled(kTitlePx) + m_sheet->cautionBelow());
}

// The lesson's title, and below it what is seen of the two sides.
void HeatPlace::paintPage(QPainter& painter) {
  const QRect page(QPoint(), pageSize());
  const int edge = look::scaled(kEdgePx);
  painter.fillRect(page, look::tokens().sheet);
  painter.setFont(look::font(look::Type::HeadBold));
  painter.setPen(look::tokens().ink);
  painter.drawText(page.adjusted(edge, edge / 2, -edge, 0), Qt::AlignLeft | Qt::AlignTop,
                   QString::fromStdString(m_model.lesson().title));
  painter.setFont(look::font(look::Type::Caption));
  if (m_sheet->cautionBelow() > 0) {
    painter.drawText(page.adjusted(edge, 0, -edge, -edge), Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap,
                     say(m_session.book, "lesson.caution"));
  }
  chart()->setVector(true);
  m_sheet->render(&painter, {edge, edge + look::scaled(kTitlePx)}, {}, QWidget::DrawChildren);
  chart()->setVector(false);
}

base::Result<base::Done> HeatPlace::savePicture(const QString& path) {
  QImage image((QSizeF(pageSize()) * kPictureScale).toSize(), QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(kPictureScale);
  {
    QPainter painter(&image);
    paintPage(painter);
  }
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return write(path, bytes);
}

base::Result<base::Done> HeatPlace::saveDrawing(const QString& path) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setSize(pageSize());
  generator.setViewBox(QRect(QPoint(), pageSize()));
  generator.setTitle(QString::fromStdString(m_model.lesson().title));
  generator.setDescription(say(m_session.book, "lesson.caution"));
  {
    QPainter painter(&generator);
    paintPage(painter);
  }
  return write(path, bytes);
}

base::Result<base::Done> HeatPlace::saveTable(const QString& path) {
  return io::replaceFile(path.toStdString(),
                         io::demonstrationCsv(m_model.side(0).demonstration, m_model.side(1).demonstration));
}

void HeatPlace::showSources() {
  const text::Phrasebook& book = m_session.book;
  QDialog dialog(this);
  dialog.setWindowTitle(say(book, "lesson.sources.title"));
  auto* rows = new QVBoxLayout(&dialog);
  rows->setContentsMargins(24, 24, 24, 24);
  rows->setSpacing(10);
  const auto put = [&](const QString& words) {
    auto* label = new QLabel(words, &dialog);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setMinimumWidth(look::scaled(480));
    label->setTextInteractionFlags(Qt::TextSelectableByKeyboard | Qt::TextSelectableByMouse);
    rows->addWidget(label);
  };
  for (const SourceLine& line : sourceLines()) {
    constexpr std::array kStatuses = {"seen", "memory", "common", "own", "computed"};
    put(say(book, "lesson.source",
            {{"limit", book.say(line.code)},
             {"value_c", line.limit.value.celsius()},
             {"source", line.limit.source.text},
             {"status", kStatuses.at(static_cast<std::size_t>(line.limit.source.status))}}));
  }
  put(say(book, "lesson.source.plug", {{"rise_k", physics::plugRiseLimit().si()}}));
  put(say(book, "lesson.source.bands"));
  put(say(book, "lesson.source.breaker"));
  put(say(book, "lesson.caution"));
  auto* buttons = new QDialogButtonBox(&dialog);
  buttons->addButton(say(book, "window.answer.close"), QDialogButtonBox::AcceptRole);
  connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  rows->addWidget(buttons);
  dialog.exec();
}

}  // namespace cordreach::app
