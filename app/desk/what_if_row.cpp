// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/what_if_row.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <array>

#include "desk/what_if_switch.h"
#include "look/look.h"
#include "panels/flow_row.h"
#include "shell/say.h"

namespace cordreach::app {

namespace {

struct WhatIf {
  const char* name;
  bool planning::CordWhatIf::*member;
};

constexpr std::array kWhatIfs = {WhatIf{"coiled", &planning::CordWhatIf::coiled},
                                 WhatIf{"hot_day", &planning::CordWhatIf::hotDay},
                                 WhatIf{"tired_breaker", &planning::CordWhatIf::tiredBreaker},
                                 WhatIf{"low_supply", &planning::CordWhatIf::lowSupply},
                                 WhatIf{"chained", &planning::CordWhatIf::chained},
                                 WhatIf{"second_machine", &planning::CordWhatIf::secondMachine}};

constexpr int kGap = 20;

}  // namespace

WhatIfRow::WhatIfRow(CordModel& model, QWidget* parent) : QWidget(parent), m_model(model), m_head(new QLabel(this)) {
  auto* line = new QHBoxLayout(this);
  line->setContentsMargins(0, 0, 0, 0);
  line->setSpacing(kGap);
  line->addWidget(m_head, 0, Qt::AlignTop);
  auto* switches = new QWidget(this);
  auto* row = new FlowRow(kGap);
  switches->setLayout(row);
  line->addWidget(switches, 1);
  for (const WhatIf& one : kWhatIfs) {
    auto* box = new WhatIfSwitch(switches);
    box->setObjectName(one.name);
    connect(box, &QCheckBox::toggled, this, [this, member = one.member](bool on) {
      if (m_model.inputs().whatIf.*member != on) {
        m_model.change([&](CordInputs& inputs) { inputs.whatIf.*member = on; });
      }
    });
    row->addWidget(box);
    m_switches.push_back(box);
  }
  connect(&model, &CordModel::inputsChanged, this, &WhatIfRow::refresh);
  rename();
  refresh();
}

WhatIfSwitch* WhatIfRow::of(const std::string& name) const {
  return findChild<WhatIfSwitch*>(QString::fromStdString(name));
}

void WhatIfRow::rename() {
  m_head->setFont(look::font(look::Type::HeadBold));
  m_head->setMinimumHeight(m_switches.front()->sizeHint().height());
  m_head->setText(say(m_model.book(), "desk.what_if"));
  for (std::size_t i = 0; i < m_switches.size(); ++i) {
    const std::string code = std::string("desk.what_if.") + kWhatIfs[i].name;
    m_switches[i]->setText(say(m_model.book(), code));
    m_switches[i]->setToolTip(say(m_model.book(), code + ".tip"));
    m_switches[i]->updateGeometry();
  }
}

void WhatIfRow::refresh() {
  for (std::size_t i = 0; i < m_switches.size(); ++i) {
    m_switches[i]->setChecked(m_model.inputs().whatIf.*kWhatIfs[i].member);
  }
}

void WhatIfRow::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) rename();
}

}  // namespace cordreach::app
