// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/outlet_editor.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <algorithm>

#include "desk/cord_words.h"
#include "desk/face_picker.h"
#include "panels/field_kinds.h"
#include "panels/field_text.h"
#include "panels/plain_controls.h"
#include "shell/say.h"
#include "site/file_words.h"

namespace cordreach::app {

namespace {

constexpr int kRowsShown = 6;
constexpr int kDontKnow = 0;

const std::vector<int>& breakers() {
  static const std::vector<int> amps{15, 20, 30};
  return amps;
}
const std::vector<int>& runSizes() {
  static const std::vector<int> sizes{14, 12, 10};
  return sizes;
}

QString keyOf(const site::OutletSocket& socket) {
  return QString::fromStdString(socket.outlet.text() + "\n" + socket.contact);
}

}  // namespace

OutletEditor::OutletEditor(CordModel& model, QWidget* parent) : InputEditor(model, parent) {
  auto* grid = new QGridLayout(this);
  m_find = addLine(grid, "desk.outlet.find");
  m_list = new QListWidget(this);
  grid->addWidget(m_list, grid->rowCount(), 0, 1, 2);
  addHeading(grid, "desk.outlet.by_hand");
  m_breaker = addChoice(grid, "desk.outlet.breaker");
  m_face = new FacePicker(model.book(), this);
  addRow(grid, "desk.outlet.face", m_face);
  m_colour = addChoice(grid, "desk.outlet.colour");
  m_device = addTick(grid, "desk.outlet.device");
  m_run = addLine(grid, "desk.outlet.run");
  m_size = addChoice(grid, "desk.outlet.run_size");
  m_fault = addNote(grid);
  showFault(m_fault, {});
  rename();
  connect(m_find, &QLineEdit::textEdited, this, &OutletEditor::fillList);
  connect(m_find, &QLineEdit::returnPressed, this, [this] {
    if (!m_find->text().isEmpty() && m_list->currentRow() < 0) m_list->setCurrentRow(0);
  });
  m_find->installEventFilter(this);
  connect(m_list, &QListWidget::currentRowChanged, this, &OutletEditor::chosen);
  connect(m_list, &QListWidget::itemClicked, this, [this] { chosen(m_list->currentRow()); });
  for (ChoiceBox* box : {m_breaker, m_colour, m_size}) {
    connect(box, &QComboBox::activated, this, &OutletEditor::readHand);
  }
  connect(m_face, &FacePicker::picked, this, &OutletEditor::readHand);
  connect(m_device, &QCheckBox::clicked, this, &OutletEditor::readHand);
  connect(m_run, &QLineEdit::textEdited, this, &OutletEditor::readHand);
}

void OutletEditor::rename() {
  InputEditor::rename();
  m_list->setAccessibleName(say(book(), "desk.ask.outlet"));
  m_run->setPlaceholderText(say(book(), "desk.dont_know"));
  quietly([this] {
    m_breaker->clear();
    m_breaker->addItem(say(book(), "desk.dont_know"), kDontKnow);
    for (const int amps : breakers()) {
      m_breaker->addItem(say(book(), "desk.outlet.rating", {{"rating_a", static_cast<double>(amps)}}), amps);
    }
    m_size->clear();
    m_size->addItem(say(book(), "desk.dont_know"), kDontKnow);
    for (const int gauge : runSizes()) m_size->addItem(gaugeText(book(), units::WireSize::awg(gauge)), gauge);
    m_colour->clear();
    for (const auto& entry : site::kFileWords<site::FaceColour>) {
      const std::string word(entry.word);
      m_colour->addItem(say(book(), "desk.colour." + word), QString::fromStdString(word));
    }
  });
  m_face->rename();
  fillList();
}

void OutletEditor::fillList() {
  quietly([this] {
    m_list->clear();
    const QString wanted = m_find->text().trimmed();
    for (const FieldChoice& choice : outletChoices({model().site(), book()}, OffLimits::Hidden)) {
      const QString words = QString::fromStdString(choice.text);
      if (!wanted.isEmpty() && !words.contains(wanted, Qt::CaseInsensitive)) continue;
      auto* item = new QListWidgetItem(words, m_list);
      item->setData(Qt::UserRole, QString::fromStdString(choice.key));
    }
  });
  m_list->setMinimumHeight(kRowsShown * (QFontMetrics(m_list->font()).height() + 4));
  const bool any = !model().site().all<site::Outlet>().empty();
  m_list->setVisible(any);
}

void OutletEditor::begin(const QString& typed) {
  m_find->setText(typed);
  fillList();
  refresh();
  if (!typed.isEmpty()) {
    m_find->setFocus(Qt::OtherFocusReason);
  } else if (model().inputs().outletBy == OutletBy::Site) {
    m_list->setFocus(Qt::OtherFocusReason);
  } else {
    m_breaker->setFocus(Qt::OtherFocusReason);
  }
}

// Down from the line goes on in the list.
bool OutletEditor::eventFilter(QObject* watched, QEvent* event) {
  const bool down = event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down;
  if (watched != m_find || !down || m_list->count() == 0) return InputEditor::eventFilter(watched, event);
  m_list->setFocus(Qt::OtherFocusReason);
  m_list->setCurrentRow(std::max(0, m_list->currentRow()));
  return true;
}

void OutletEditor::refresh() {
  const CordInputs& inputs = model().inputs();
  quietly([&] {
    int wanted = -1;
    if (inputs.outletBy == OutletBy::Site && inputs.outlet) {
      const QString key = keyOf(*inputs.outlet);
      for (int row = 0; row < m_list->count(); ++row) {
        if (m_list->item(row)->data(Qt::UserRole).toString() == key) wanted = row;
      }
    }
    m_list->setCurrentRow(wanted);
    m_breaker->setCurrentIndex(
        m_breaker->findData(inputs.breaker ? static_cast<int>(inputs.breaker->in(units::ampere)) : kDontKnow));
    m_size->setCurrentIndex(
        m_size->findData(inputs.runSize ? inputs.runSize->value.awgNumber().value_or(kDontKnow) : kDontKnow));
    m_colour->setCurrentIndex(m_colour->findData(QString::fromStdString(std::string(site::fileWord(inputs.colour)))));
    m_face->setFace(inputs.receptacle);
    m_device->setChecked(inputs.groundFaultDevice);
    put(m_run, QString::fromStdString(knownText(book(), inputs.run)));
  });
}

void OutletEditor::chosen(int row) {
  const QListWidgetItem* item = m_list->item(row);
  if (isRefreshing() || item == nullptr) return;
  const QStringList key = item->data(Qt::UserRole).toString().split('\n');
  model().change([&](CordInputs& inputs) {
    inputs.outletBy = OutletBy::Site;
    inputs.outlet = site::OutletSocket{site::OutletId(key.at(0).toStdString()), key.at(1).toStdString()};
  });
}

void OutletEditor::readHand() {
  if (isRefreshing()) return;
  const std::string typed = tidied(m_run->text().toStdString());
  site::Known<units::Length> run;
  if (!typed.empty()) {
    const auto length = readText<units::Length>(book(), typed);
    if (!length) return showFault(m_fault, sentenceOf(book(), length.error()));
    if (length.value().si() <= 0.0) return showFault(m_fault, sentenceOf(book(), {"console.zero", typed, {}}));
    run = site::Stated<units::Length>{length.value(), {}, {}, typed, {}, {}, {}};
  }
  showFault(m_fault, {});
  const int breaker = m_breaker->currentData().toInt();
  const int size = m_size->currentData().toInt();
  model().change([&](CordInputs& inputs) {
    inputs.outletBy = OutletBy::Hand;
    inputs.breaker = breaker == kDontKnow ? std::nullopt : std::optional(breaker * units::ampere);
    inputs.run = run;
    inputs.runSize = size == kDontKnow ? std::nullopt : site::known(units::WireSize::awg(size));
    inputs.receptacle = m_face->face();
    inputs.colour = *site::fromFileWord<site::FaceColour>(m_colour->currentData().toString().toStdString());
    inputs.groundFaultDevice = m_device->isChecked();
  });
}

}  // namespace cordreach::app
