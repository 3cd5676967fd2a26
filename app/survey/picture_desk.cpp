// SPDX-License-Identifier: GPL-3.0-or-later
#include "survey/picture_desk.h"

#include <QClipboard>
#include <QDropEvent>
#include <QFileDialog>
#include <QGuiApplication>
#include <QMenu>
#include <QMimeData>
#include <QUrl>
#include <array>
#include <utility>

#include "io/atomic_file.h"
#include "map/map_canvas.h"
#include "panels/ask_dialog.h"
#include "panels/field_text.h"
#include "shell/say.h"
#include "survey/picture_dialogs.h"
#include "survey/picture_files.h"
#include "survey/wait_dialog.h"

namespace cordreach::app {
namespace {

constexpr double kUnscaledWidthM = 30.0;  // a plan whose scale nobody has said yet is shown that wide
constexpr double kFirstDim = 0.5;         // what is drawn over it must be read
const std::array<std::pair<double, const char*>, 4> kDims{
    {{0.0, "survey.dim.none"}, {0.25, "survey.dim.little"}, {0.5, "survey.dim.half"}, {0.75, "survey.dim.much"}}};

QString localFile(const QMimeData& data) {
  const QList<QUrl> urls = data.urls();
  return urls.size() == 1 ? urls.front().toLocalFile() : QString();
}

}  // namespace

PictureDesk::PictureDesk(Session& session, MapCanvas& canvas, QWidget* parent)
    : QObject(parent), m_session(session), m_canvas(canvas), m_parent(parent), m_menu(new QMenu(parent)) {
  buildMenu();
}

QAction* PictureDesk::add(QMenu* menu, const char* code, const std::function<void()>& act) {
  QAction* action = menu->addAction(QString());
  action->setProperty("code", code);
  action->setObjectName(code);
  connect(action, &QAction::triggered, this, act);
  return action;
}

void PictureDesk::buildMenu() {
  m_menu->menuAction()->setProperty("code", "survey.picture");
  add(m_menu, "survey.picture.file", [this] { chooseFile(); });
  add(m_menu, "survey.picture.paste", [this] { paste(); });
  m_menu->addSeparator();
  const auto addFor = [this](QMenu* menu, const char* code, const std::function<void()>& act) {
    m_ofPicture.push_back(add(menu, code, act));
  };
  addFor(m_menu, "survey.picture.scale", [this] { scale(); });
  addFor(m_menu, "survey.picture.square", [this] { square(); });
  QMenu* turn = m_menu->addMenu(QString());
  turn->menuAction()->setProperty("code", "survey.turn");
  addFor(turn, "survey.turn.right", [this] { turnBy(90); });
  addFor(turn, "survey.turn.left", [this] { turnBy(-90); });
  addFor(turn, "survey.turn.by", [this] { askTurn(); });
  QMenu* dimMenu = m_menu->addMenu(QString());
  dimMenu->menuAction()->setProperty("code", "survey.dim");
  for (const auto& [part, code] : kDims) addFor(dimMenu, code, [this, part = part] { dim(part); });
  addFor(m_menu, "survey.picture.replace", [this] { chooseFile(); });
  addFor(m_menu, "survey.picture.remove", [this] { remove(); });
  connect(m_menu, &QMenu::aboutToShow, this, &PictureDesk::refreshMenu);
  reword();
}

void PictureDesk::reword() {
  QList<QAction*> actions = m_menu->findChildren<QAction*>();
  actions << m_menu->menuAction();
  for (QAction* action : actions) {
    const QString code = action->property("code").toString();
    if (!code.isEmpty()) action->setText(app::say(m_session.book, code.toStdString()));
  }
}

void PictureDesk::refreshMenu() {
  const bool any = floor() != nullptr && floor()->picture.has_value();
  for (QAction* action : m_ofPicture) action->setEnabled(any);
}

const site::Floor* PictureDesk::floor() const {
  return m_canvas.floor() ? m_session.document.site().find<site::Floor>(*m_canvas.floor()) : nullptr;
}

void PictureDesk::say(const base::Error& error) { emit m_canvas.told(sentenceOf(m_session.book, error)); }

bool PictureDesk::apply(const PictureEdit& edit) { return m_canvas.apply(edit); }

void PictureDesk::chooseFile() {
  const text::Phrasebook& book = m_session.book;
  const QString path = QFileDialog::getOpenFileName(m_parent, app::say(book, "survey.picture.choose"), QString(),
                                                    app::say(book, "survey.picture.kinds"));
  if (!path.isEmpty()) bringInFile(path);
}

void PictureDesk::paste() {
  const QMimeData* data = QGuiApplication::clipboard()->mimeData();
  if (data == nullptr || !bringInMime(*data)) say({"picture.nothing_to_paste", {}, {}});
}

bool PictureDesk::takeDrop(QDropEvent& event) {
  const QMimeData& data = *event.mimeData();
  if (!data.hasImage() && localFile(data).isEmpty()) return false;
  event.acceptProposedAction();
  return event.type() != QEvent::Drop || bringInMime(data);
}

bool PictureDesk::bringInMime(const QMimeData& data) {
  const QString path = localFile(data);
  if (!path.isEmpty()) {
    bringInFile(path);
  } else if (data.hasImage()) {
    bringIn(asPng(data.imageData().value<QImage>()));
  } else {
    return false;
  }
  return true;
}

void PictureDesk::bringInFile(const QString& path) {
  const auto content = io::readWholeFile(QFile::encodeName(path).toStdString(), kMostPictureBytes);
  if (!content) return say(content.error());
  bringIn(QByteArray::fromStdString(content.value()));
}

void PictureDesk::bringIn(const QByteArray& content) {
  if (floor() == nullptr) return say({"picture.no_floor", {}, {}});
  const auto plan = planOf(content);
  if (!plan) return;
  if (!*plan) return say(plan->error());
  sayReduced(plan->value());
  if (floor() == nullptr) return;
  if (floor()->picture) {
    replace(plan->value());
  } else {
    place(plan->value());
  }
}

// Nothing: no page was chosen, or whoever waited had enough.
std::optional<base::Result<Plan>> PictureDesk::planOf(const QByteArray& content) {
  if (!PdfPages::isPdf(content)) {
    return watched(m_parent, m_session.book,
                   [content](const ReadWatch& watch) { return planOfPicture(content, watch); });
  }
  auto opened = PdfPages::open(content);
  if (!opened) return base::Result<Plan>(opened.error());
  // Whoever lets it go last: it is of this thread.
  const std::shared_ptr<PdfPages> pages(std::move(opened).value().release(), [](PdfPages* last) {
    QMetaObject::invokeMethod(qApp, [last] { delete last; });
  });
  int page = 0;
  if (pages->count() > 1) {
    PageDialog dialog(m_session.book, *pages, m_parent);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    page = dialog.page();
  }
  return watched(m_parent, m_session.book, [pages, page](const ReadWatch&) { return planOfPage(*pages, page); });
}

void PictureDesk::sayReduced(const Plan& plan) {
  const QSize now = plan.picture.sheet;
  if (plan.before.isEmpty()) return;
  emit m_canvas.told(app::say(m_session.book, "survey.picture.reduced",
                              {{"wide", static_cast<double>(plan.before.width())},
                               {"high", static_cast<double>(plan.before.height())},
                               {"now_wide", static_cast<double>(now.width())},
                               {"now_high", static_cast<double>(now.height())}}));
}

std::optional<site::Picture> PictureDesk::store(const Plan& plan) {
  const auto stored = storePicture(m_session.document.path(), plan.content, plan.suffix);
  if (stored) return stored.value();
  say(stored.error());
  return std::nullopt;
}

void PictureDesk::place(const Plan& plan) {
  auto stored = store(plan);
  if (!stored) return;
  stored->metresPerPixel = kUnscaledWidthM / plan.picture.sheet.width();
  stored->dim = kFirstDim;
  if (apply(placePicture(m_session.document.site(), floor()->id, *stored))) scale();
}

void PictureDesk::replace(const Plan& plan) {
  const auto older = present();
  if (!older) return;
  ReplaceDialog dialog(m_session.book, *older, plan.picture, m_parent);
  dialog.setDeed([&]() -> base::Result<DeedEnd> {
    const auto stored = storePicture(m_session.document.path(), plan.content, plan.suffix);
    if (!stored) return stored.error();
    site::Picture newer = stored.value();
    newer.issue = dialog.issue();
    const site::Site& site = m_session.document.site();
    const PictureEdit edit =
        dialog.isSameSheet()
            ? replaceSameSheet(site, floor()->id, newer, older->sheet.width(), plan.picture.sheet.width())
            : replaceByPoints(site, floor()->id, newer, dialog.oldPoints(), dialog.newPoints());
    if (!edit) return edit.error();
    apply(edit);
    return DeedEnd::Done;
  });
  dialog.exec();
}

std::optional<ReadPicture> PictureDesk::present() {
  if (floor() == nullptr || !floor()->picture) {
    say({"picture.none", {}, {}});
    return std::nullopt;
  }
  auto read = watched(m_parent, m_session.book,
                      [path = m_session.document.path(), picture = *floor()->picture](const ReadWatch& watch) {
                        return readPlacedPicture(path, picture, watch);
                      });
  if (!read) return std::nullopt;
  if (*read) return std::move(*read).value();
  const std::string name = pictureName(*floor()->picture).toStdString();
  emit m_canvas.told(
      app::say(m_session.book, "map." + read->error().code, {{"picture", name}, {"floor", floor()->name}}));
  return std::nullopt;
}

void PictureDesk::square() {
  const auto picture = present();
  if (!picture) return;
  CornersDialog dialog(m_session.book, *picture, m_parent);
  dialog.setDeed([&]() -> base::Result<DeedEnd> {
    const double perSheet = static_cast<double>(picture->image.width()) / picture->sheet.width();
    std::vector<QPointF> corners = dialog.view()->points();
    const PointPair oldEdge{{corners[0].x(), corners[0].y()}, {corners[1].x(), corners[1].y()}};
    for (QPointF& corner : corners) corner *= perSheet;
    const auto made = watched(&dialog, m_session.book, [image = picture->image, corners](const ReadWatch&) {
      const auto put = squared(image, corners);
      return put ? std::optional(std::pair(put->width(), asPng(*put))) : std::nullopt;
    });
    if (!made) return DeedEnd::GivenUp;
    if (!*made) return base::Error{"picture.no_outline", {}, {}};
    const auto& [wide, content] = **made;
    const auto stored = storePicture(m_session.document.path(), content, "png");
    if (!stored) return stored.error();
    site::Picture newer = stored.value();
    newer.issue = floor()->picture->issue;
    const PointPair newEdge{{0, 0}, {static_cast<double>(wide), 0}};
    const PictureEdit edit = replaceSquared(m_session.document.site(), floor()->id, newer, oldEdge, newEdge);
    if (!edit) return edit.error();
    apply(edit);
    return DeedEnd::Done;
  });
  dialog.exec();
}

void PictureDesk::scale() {
  const auto picture = present();
  if (!picture) return;
  ScaleDialog dialog(m_session.book, *picture, m_parent);
  dialog.setDeed([&]() -> base::Result<DeedEnd> {
    const auto distance = dialog.distance();
    if (!distance) return distance.error();
    const auto& points = dialog.view()->points();
    const PictureEdit edit = scalePicture(m_session.document.site(), floor()->id, {points[0].x(), points[0].y()},
                                          {points[1].x(), points[1].y()}, distance.value());
    if (!edit) return edit.error();
    apply(edit);
    return DeedEnd::Done;
  });
  dialog.exec();
}

// Round its middle.
void PictureDesk::turnBy(double degrees) {
  const auto picture = present();
  if (!picture) return;
  const geometry::Point middle{picture->sheet.width() / 2.0, picture->sheet.height() / 2.0};
  apply(turnPicture(m_session.document.site(), floor()->id, degrees, middle));
}

void PictureDesk::askTurn() {
  const text::Phrasebook& book = m_session.book;
  AskDialog dialog(
      book, {book.say("survey.turn.title"), {}, book.say("survey.turn.deed")},
      {Field{.key = "plan_turn", .label = book.say("field.plan_turn")}},
      [&](const Answers& said) -> std::optional<base::Error> {
        const auto degrees = readText<double>(book, said.at("plan_turn"));
        if (!degrees.ok()) return degrees.error();
        turnBy(degrees.value());
        return std::nullopt;
      },
      m_parent);
  dialog.exec();
}

void PictureDesk::dim(double part) {
  if (floor() != nullptr) apply(dimPicture(m_session.document.site(), floor()->id, part));
}

void PictureDesk::remove() {
  if (floor() != nullptr) apply(removePicture(m_session.document.site(), floor()->id));
}

}  // namespace cordreach::app
