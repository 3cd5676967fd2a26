// SPDX-License-Identifier: GPL-3.0-or-later
#include "listings/walk_sheet_dialog.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "io/atomic_file.h"
#include "look/look.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

// Paper is white whatever the colours of the window.
class PageView : public QWidget {
 public:
  PageView(const std::unique_ptr<WalkSheet>& sheet, const int& page, QWidget* parent)
      : QWidget(parent), m_sheet(sheet), m_page(page) {
    setMinimumSize(look::scaled(360), look::scaled(420));
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.fillRect(rect(), look::tokens().desk);
    const QSizeF paper = m_sheet->pageSize().size(QPageSize::Point);
    const double scale = std::min((width() - 16) / paper.width(), (height() - 16) / paper.height());
    painter.translate((width() - paper.width() * scale) / 2, (height() - paper.height() * scale) / 2);
    painter.scale(scale, scale);
    painter.fillRect(QRectF(QPointF(), paper), Qt::white);
    m_sheet->paint(painter, m_page);
  }

 private:
  const std::unique_ptr<WalkSheet>& m_sheet;
  const int& m_page;
};

}  // namespace

WalkSheetDialog::WalkSheetDialog(Session& session, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_floors(new ChoiceBox(this)),
      m_view(new PageView(m_sheet, m_page, this)),
      m_where(new QLabel(this)),
      m_back(new QPushButton(say(session.book, "walk.back"), this)),
      m_on(new QPushButton(say(session.book, "walk.on"), this)),
      m_fault(new QLabel(this)) {
  const text::Phrasebook& book = session.book;
  setWindowTitle(say(book, "walk.sheet"));
  resize(look::scaled(640), look::scaled(760));
  m_floors->addItem(say(book, "walk.all_floors"), QString());
  for (const site::Floor& floor : session.document.site().all<site::Floor>()) {
    m_floors->addItem(QString::fromStdString(floor.name), QString::fromStdString(floor.id.text()));
  }
  m_floors->setAccessibleName(say(book, "field.floor"));
  m_fault->setTextFormat(Qt::PlainText);
  m_fault->setWordWrap(true);
  m_fault->hide();
  auto* top = new QHBoxLayout;
  auto* word = new QLabel(say(book, "field.floor"), this);
  word->setBuddy(m_floors);
  top->addWidget(word);
  top->addWidget(m_floors);
  top->addStretch(1);
  for (QWidget* part : std::initializer_list<QWidget*>{m_back, m_where, m_on}) top->addWidget(part);
  auto* foot = new QHBoxLayout;
  auto* save = new QPushButton(say(book, "walk.save"), this);
  auto* close = new QPushButton(say(book, "panel.close"), this);
  save->setDefault(true);
  foot->addWidget(m_fault, 1);
  foot->addStretch();
  foot->addWidget(save);
  foot->addWidget(close);
  auto* layout = new QVBoxLayout(this);
  layout->addLayout(top);
  layout->addWidget(m_view, 1);
  layout->addLayout(foot);
  connect(m_floors, &QComboBox::activated, this, &WalkSheetDialog::make);
  connect(m_back, &QPushButton::clicked, this, [this] { turn(-1); });
  connect(m_on, &QPushButton::clicked, this, [this] { turn(1); });
  connect(save, &QPushButton::clicked, this, &WalkSheetDialog::chooseAndSave);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
  make();
}

void WalkSheetDialog::make() {
  const std::string floor = m_floors->currentData().toString().toStdString();
  m_sheet = std::make_unique<WalkSheet>(m_session.document.site(), m_session.book,
                                        floor.empty() ? std::nullopt : std::optional(site::FloorId(floor)));
  turnTo(0);
}

void WalkSheetDialog::turn(int pages) { turnTo(std::clamp(m_page + pages, 0, m_sheet->pageCount() - 1)); }

void WalkSheetDialog::turnTo(int page) {
  m_page = page;
  const double count = m_sheet->pageCount();
  m_where->setText(say(m_session.book, "walk.page", {{"n", page + 1.0}, {"of", count}}));
  m_view->setAccessibleName(m_where->text());
  m_view->setAccessibleDescription(m_sheet->outlets().join(QStringLiteral(", ")));
  m_back->setEnabled(page > 0);
  m_on->setEnabled(page + 1 < m_sheet->pageCount());
  m_view->update();
}

void WalkSheetDialog::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_PageDown) return turn(1);
  if (event->key() == Qt::Key_PageUp) return turn(-1);
  QDialog::keyPressEvent(event);
}

base::Result<base::Done> WalkSheetDialog::save(const QString& path) {
  const QByteArray bytes = m_sheet->pdf();
  return io::replaceFile(path.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

void WalkSheetDialog::chooseAndSave() {
  const QString path = QFileDialog::getSaveFileName(this, say(m_session.book, "walk.save"),
                                                    say(m_session.book, "walk.file") + QStringLiteral(".pdf"),
                                                    say(m_session.book, "walk.file_kind"));
  if (path.isEmpty()) return;
  const auto done = save(path);
  m_fault->setText(done ? say(m_session.book, "walk.saved") : sentenceOf(m_session.book, done.error()));
  m_fault->setAccessibleName(m_fault->text());
  m_fault->show();
}

}  // namespace cordreach::app
