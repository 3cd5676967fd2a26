// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/machine_editor.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

#include "desk/cord_words.h"
#include "look/look.h"
#include "panels/field_text.h"
#include "panels/machine_types.h"
#include "panels/plain_controls.h"
#include "shell/say.h"
#include "site/file_words.h"

namespace cordreach::app {

namespace {

// What a row of the list stands for: a machine of the site with its inlet, or a type.
constexpr int kMachine = Qt::UserRole;
constexpr int kInlet = Qt::UserRole + 1;
constexpr int kType = Qt::UserRole + 2;
constexpr int kRowsShown = 8;

const std::vector<int>& ownSizes() {
  static const std::vector<int> sizes{18, 16, 14, 12, 10};
  return sizes;
}

QListWidgetItem* addHead(QListWidget* list, const QString& words) {
  auto* head = new QListWidgetItem(words, list);
  head->setFlags(Qt::NoItemFlags);
  head->setFont(look::font(look::Type::BodyBold));
  return head;
}

}  // namespace

MachineEditor::MachineEditor(CordModel& model, QWidget* parent)
    : InputEditor(model, parent), m_list(new QListWidget(this)), m_wet(nullptr) {
  auto* grid = new QGridLayout(this);
  grid->addWidget(m_list, 0, 0, 1, 2);
  addHeading(grid, "desk.machine.plate");
  m_amps = addLine(grid, "desk.machine.amps");
  m_class = addChoice(grid, "desk.machine.class");
  m_size = addChoice(grid, "desk.machine.own_size");
  m_length = addLine(grid, "desk.machine.own_length");
  m_wet = addTick(grid, "desk.machine.wet");
  m_fault = addNote(grid);
  showFault(m_fault, {});
  rename();
  connect(m_list, &QListWidget::currentRowChanged, this, &MachineEditor::chosen);
  connect(m_list, &QListWidget::itemClicked, this, [this] { chosen(m_list->currentRow()); });
  for (QLineEdit* line : {m_amps, m_length}) connect(line, &QLineEdit::textEdited, this, &MachineEditor::readPlate);
  for (ChoiceBox* box : {m_class, m_size}) connect(box, &QComboBox::activated, this, &MachineEditor::readPlate);
  connect(m_wet, &QCheckBox::clicked, this, &MachineEditor::readPlate);
}

void MachineEditor::rename() {
  InputEditor::rename();
  m_list->setAccessibleName(say(book(), "desk.ask.machine"));
  quietly([this] {
    m_class->clear();
    for (const auto& entry : site::kFileWords<tables::LoadClass>) {
      m_class->addItem(say(book(), "field.class." + std::string(entry.word)), QString::fromUtf8(entry.word.data()));
    }
    m_size->clear();
    for (const int gauge : ownSizes()) m_size->addItem(gaugeText(book(), units::WireSize::awg(gauge)), gauge);
  });
  fillList();
}

void MachineEditor::fillList() {
  quietly([this] {
    m_list->clear();
    const auto& machines = model().site().all<site::Machine>();
    if (!machines.empty()) addHead(m_list, say(book(), "desk.machine.of_site"));
    for (const site::Machine& machine : machines) {
      if (machine.outOfService) continue;
      for (const site::Inlet& inlet : machine.inlets) {
        base::Arguments arguments{{"machine", machine.name.empty() ? machine.id.text() : machine.name}};
        if (machine.inlets.size() > 1) arguments.push_back({"inlet", inlet.name});
        auto* item = new QListWidgetItem(say(book(), "desk.machine.row", arguments), m_list);
        item->setData(kMachine, QString::fromStdString(machine.id.text()));
        item->setData(kInlet, QString::fromStdString(inlet.name));
      }
    }
    addHead(m_list, say(book(), "desk.machine.kinds"));
    for (const MachineType& type : machineTypes()) {
      auto* item = new QListWidgetItem(say(book(), "machine_type." + type.id), m_list);
      item->setData(kType, QString::fromStdString(type.id));
    }
  });
  m_list->setMinimumHeight(kRowsShown * (QFontMetrics(m_list->font()).height() + 4));
}

void MachineEditor::begin(const QString& typed) {
  fillList();
  refresh();
  const bool number = !typed.isEmpty() && typed.front().isDigit();
  if (number) {
    m_amps->setFocus(Qt::OtherFocusReason);
    m_amps->setText(typed);
    readPlate();
    return;
  }
  m_list->setFocus(Qt::OtherFocusReason);
  if (!typed.isEmpty()) m_list->keyboardSearch(typed);
}

void MachineEditor::refresh() {
  const CordInputs& inputs = model().inputs();
  quietly([&] {
    for (int row = 0; row < m_list->count(); ++row) {
      const QListWidgetItem* item = m_list->item(row);
      const bool isMachine = inputs.machineBy == MachineBy::Site && inputs.machine &&
                             item->data(kMachine).toString().toStdString() == inputs.machine->text() &&
                             item->data(kInlet).toString().toStdString() == inputs.inletName;
      const bool isType =
          inputs.machineBy == MachineBy::Type && item->data(kType).toString().toStdString() == inputs.type;
      if (isMachine || isType) m_list->setCurrentRow(row);
    }
    if (inputs.machineBy == MachineBy::Plate) m_list->setCurrentRow(-1);
    const site::Inlet& plate = inputs.plate;
    put(m_amps, QString::fromStdString(knownText(book(), plate.plate)));
    put(m_length, QString::fromStdString(knownText(book(), plate.cord.length)));
    const std::string_view word = site::fileWord(plate.loadClass);
    m_class->setCurrentIndex(m_class->findData(QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()))));
    m_size->setCurrentIndex(m_size->findData(plate.cord.size->value.awgNumber().value_or(14)));
    m_wet->setChecked(inputs.plateWet);
  });
}

void MachineEditor::chosen(int row) {
  const QListWidgetItem* item = m_list->item(row);
  if (isRefreshing() || item == nullptr) return;
  const std::string machine = item->data(kMachine).toString().toStdString();
  const std::string type = item->data(kType).toString().toStdString();
  if (machine.empty() && type.empty()) return;
  showFault(m_fault, {});
  model().change([&](CordInputs& inputs) {
    inputs.machineBy = type.empty() ? MachineBy::Site : MachineBy::Type;
    if (type.empty()) {
      inputs.machine = site::MachineId(machine);
      inputs.inletName = item->data(kInlet).toString().toStdString();
    } else {
      inputs.type = type;
    }
  });
}

void MachineEditor::readPlate() {
  if (isRefreshing()) return;
  const std::string amps = tidied(m_amps->text().toStdString());
  const std::string length = tidied(m_length->text().toStdString());
  const auto plate = readText<units::Current>(book(), amps);
  if (!plate) return showFault(m_fault, sentenceOf(book(), plate.error()));
  const auto own = readText<units::Length>(book(), length);
  if (!own) return showFault(m_fault, sentenceOf(book(), own.error()));
  for (const auto& [value, typed] : {std::pair(plate.value().si(), amps), std::pair(own.value().si(), length)}) {
    if (value <= 0.0) return showFault(m_fault, sentenceOf(book(), {"console.zero", typed, {}}));
  }
  showFault(m_fault, {});
  model().change([&](CordInputs& inputs) {
    inputs.machineBy = MachineBy::Plate;
    inputs.plateWet = m_wet->isChecked();
    inputs.plate.plate = site::Stated<units::Current>{plate.value(), {}, {}, amps, "nameplate", {}, {}};
    inputs.plate.loadClass = *site::fromFileWord<tables::LoadClass>(m_class->currentData().toString().toStdString());
    inputs.plate.cord.size = site::known(units::WireSize::awg(m_size->currentData().toInt()));
    inputs.plate.cord.length = site::Stated<units::Length>{own.value(), {}, {}, length, {}, {}, {}};
  });
}

}  // namespace cordreach::app
