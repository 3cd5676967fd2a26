// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_dialogs.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QSpinBox>
#include <QTransform>
#include <cmath>

#include "compute/latest_job.h"
#include "look/look.h"
#include "panels/field_row.h"
#include "panels/field_text.h"
#include "panels/plain_controls.h"
#include "shell/say.h"

namespace cordreach::app {
namespace {

constexpr double kInset = 0.08;            // of the picture: where points begin
constexpr double kPreviewPx = 520;         // longest edge of a page that is looked at
constexpr double kLeastCornerArea = 0.01;  // of the picture
// A long step on a level floor. Source: the military pace of 30 inches. Status: common.
constexpr const char* kPaceText = "2.5 ft";

Field textField(const text::Phrasebook& book, const std::string& key, std::string value = {}) {
  return {.key = key, .label = book.say("field." + key), .text = std::move(value)};
}

std::vector<QPointF> cornersOf(const QSize& sheet) {
  const double x = sheet.width() * kInset;
  const double y = sheet.height() * kInset;
  return {{x, y}, {sheet.width() - x, y}, {sheet.width() - x, sheet.height() - y}, {x, sheet.height() - y}};
}

std::vector<QPointF> endsOf(const QSize& sheet) {
  return {{sheet.width() * 0.25, sheet.height() * 0.5}, {sheet.width() * 0.75, sheet.height() * 0.5}};
}

geometry::Point pixelOf(const QPointF& point) { return {point.x(), point.y()}; }

PointPair pairOf(const HandleView& view) { return {pixelOf(view.points()[0]), pixelOf(view.points()[1])}; }

HandleView* viewOf(const text::Phrasebook& book, const ReadPicture& picture, HandleView::Joined joined,
                   const char* name, QWidget* parent) {
  auto* view = new HandleView(picture.image, picture.sheet, joined, parent);
  view->setAccessibleName(say(book, name));
  return view;
}

QStringList pointNames(const text::Phrasebook& book) {
  return {say(book, "survey.point.first"), say(book, "survey.point.second")};
}

double doubleArea(const QPolygonF& outline) {
  double sum = 0;
  for (qsizetype i = 0; i < outline.size(); ++i) {
    const QPointF& a = outline[i];
    const QPointF& b = outline[(i + 1) % outline.size()];
    sum += a.x() * b.y() - b.x() * a.y();
  }
  return std::abs(sum);
}

}  // namespace

CornersDialog::CornersDialog(const text::Phrasebook& book, const ReadPicture& picture, QWidget* parent)
    : PlanDialog(book, "survey.corners", parent),
      m_view(viewOf(book, picture, HandleView::Joined::Outline, "survey.corners.title", this)) {
  m_view->setPoints(cornersOf(picture.sheet),
                    {say(book, "survey.corner.upper_left"), say(book, "survey.corner.upper_right"),
                     say(book, "survey.corner.lower_right"), say(book, "survey.corner.lower_left")});
  add(m_view, 1);
  m_view->setFocus();
}

std::optional<QImage> squared(const QImage& image, const std::vector<QPointF>& corners) {
  const QPolygonF from(QVector<QPointF>(corners.begin(), corners.end()));
  if (from.size() != 4 || doubleArea(from) < 2 * kLeastCornerArea * image.width() * image.height()) return std::nullopt;
  const auto edge = [&](int a, int b) { return QLineF(from[a], from[b]).length(); };
  const QSize size(static_cast<int>(std::round((edge(0, 1) + edge(3, 2)) / 2)),
                   static_cast<int>(std::round((edge(0, 3) + edge(1, 2)) / 2)));
  if (size.isEmpty()) return std::nullopt;
  const QPolygonF to{QPointF(0, 0), QPointF(size.width(), 0), QPointF(size.width(), size.height()),
                     QPointF(0, size.height())};
  QTransform square;
  if (!QTransform::quadToQuad(from, to, square)) return std::nullopt;
  QImage result(size, QImage::Format_RGB32);
  result.fill(Qt::white);
  QPainter painter(&result);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setTransform(square);
  painter.drawImage(0, 0, image);
  return result;
}

ScaleDialog::ScaleDialog(const text::Phrasebook& book, const ReadPicture& picture, QWidget* parent)
    : PlanDialog(book, "survey.scale", parent),
      m_view(viewOf(book, picture, HandleView::Joined::Line, "survey.scale.title", this)) {
  m_view->setPoints(endsOf(picture.sheet), pointNames(book));
  add(m_view, 1);
  add(textField(book, "plan_distance"));
  add(textField(book, "plan_paces"));
  const auto pace = readText<units::Length>(book, kPaceText);
  add(textField(book, "plan_pace", pace.ok() ? exactText(book, pace.value()) : std::string()));
  m_view->setFocus();
}

base::Result<units::Length> ScaleDialog::distance() const {
  const std::string typed = tidied(row("plan_distance")->typed());
  if (!typed.empty()) return readText<units::Length>(book(), typed);
  const std::string paces = tidied(row("plan_paces")->typed());
  if (paces.empty()) return base::Error{"picture.bad_distance", {}, {}};
  const auto count = readText<double>(book(), paces);
  if (!count.ok()) return count.error();
  const auto pace = readText<units::Length>(book(), row("plan_pace")->typed());
  if (!pace.ok()) return pace.error();
  return pace.value() * count.value();
}

ReplaceDialog::ReplaceDialog(const text::Phrasebook& book, const ReadPicture& older, const ReadPicture& newer,
                             QWidget* parent)
    : PlanDialog(book, "survey.replace", parent),
      m_old(viewOf(book, older, HandleView::Joined::Line, "survey.replace.old", this)),
      m_new(viewOf(book, newer, HandleView::Joined::Line, "survey.replace.new", this)) {
  m_old->setPoints(endsOf(older.sheet), pointNames(book));
  m_new->setPoints(endsOf(newer.sheet), pointNames(book));
  auto* both = new QWidget(this);
  auto* grid = new QGridLayout(both);
  grid->setContentsMargins(0, 0, 0, 0);
  int column = 0;
  for (HandleView* view : {m_old, m_new}) {
    auto* name = new QLabel(view->accessibleName(), both);
    name->setTextFormat(Qt::PlainText);
    grid->addWidget(name, 0, column);
    grid->addWidget(view, 1, column++);
  }
  grid->setRowStretch(1, 1);
  add(both, 1);
  add(textField(book, "plan_issue"));
  Field same = textField(book, "plan_same_sheet");
  same.kind = FieldKind::Flag;
  // Of another shape it can't be the same sheet.
  const double oldShape = static_cast<double>(older.sheet.width()) / older.sheet.height();
  const double newShape = static_cast<double>(newer.sheet.width()) / newer.sheet.height();
  constexpr double kSameShape = 0.01;
  same.text = std::abs(oldShape / newShape - 1) < kSameShape ? std::string(kYes) : "";
  auto* tick = qobject_cast<TickBox*>(add(same)->editor());
  const auto follow = [both, tick] { both->setEnabled(!tick->isChecked()); };
  connect(tick, &TickBox::toggled, both, follow);
  follow();
}

bool ReplaceDialog::isSameSheet() const { return row("plan_same_sheet")->typed() == kYes; }

std::string ReplaceDialog::issue() const { return tidied(row("plan_issue")->typed()); }

PointPair ReplaceDialog::oldPoints() const { return pairOf(*m_old); }

PointPair ReplaceDialog::newPoints() const { return pairOf(*m_new); }

struct PageDialog::Preview {
  explicit Preview(LatestJob<int>::Work work) : job(std::move(work)) {}
  LatestJob<int> job;
};

PageDialog::PageDialog(const text::Phrasebook& book, PdfPages& pages, QWidget* parent)
    : PlanDialog(book, "survey.page", parent), m_page(new QSpinBox(this)) {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  auto* word = new QLabel(say(book, "survey.page.of", {{"n", static_cast<double>(pages.count())}}), row);
  word->setBuddy(m_page);
  line->addWidget(word);
  line->addWidget(m_page);
  line->addStretch(1);
  m_page->setRange(1, pages.count());
  m_page->setAccessibleName(word->text());
  m_shown = new QLabel(this);
  m_shown->setAlignment(Qt::AlignCenter);
  const int longest = look::scaled(kPreviewPx);
  m_shown->setMinimumSize(longest, longest * 3 / 4);
  m_preview = std::make_unique<Preview>([&pages, longest, this](const int& page, const std::atomic<bool>&) {
    const QImage drawn = pages.draw(page, longest);
    QMetaObject::invokeMethod(
        this, [this, page, drawn] { showPage(page, drawn); }, Qt::QueuedConnection);
  });
  const auto draw = [this] { m_preview->job.put([this](std::uint64_t) { return page(); }); };
  connect(m_page, &QSpinBox::valueChanged, this, draw);
  add(row);
  add(m_shown, 1);
  draw();
  m_page->setFocus();
  m_page->selectAll();
}

PageDialog::~PageDialog() { m_preview.reset(); }

void PageDialog::showPage(int page, const QImage& drawn) {
  if (page == this->page()) m_shown->setPixmap(QPixmap::fromImage(drawn));
}

int PageDialog::page() const { return m_page->value() - 1; }

}  // namespace cordreach::app
