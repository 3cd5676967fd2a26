// SPDX-License-Identifier: GPL-3.0-or-later
// Kept small: everything with a shape of its own paints itself. Names in braces stand for tokens. Fields take their
// text colour from the palette: a colour set here would halve that of their placeholders.
#include "look/style_sheet.h"

#include <cmath>

namespace cordreach::look {

namespace {

constexpr const char* kSheet = R"(
QToolTip { background: {room}; color: {ink}; border: 1px solid {line}; padding: 4px; }
QMenuBar { background: transparent; }
QMenuBar::item { background: transparent; color: {ink2}; padding: 6px 10px; border-radius: 4px; }
QMenuBar::item:selected { background: {selbg}; color: {ink}; }
QMenu { background: {room}; color: {ink}; border: 1px solid {line}; padding: 4px; }
QMenu::item { padding: 6px 28px 6px 24px; border-radius: 4px; }
QMenu::item:selected { background: {selbg}; color: {ink}; }
QMenu::item:disabled { color: {ink3}; background: transparent; }
QMenu::separator { height: 1px; background: {rule}; margin: 4px 8px; }
QPushButton { background: {room}; color: {ink}; border: 1.5px solid {line}; border-radius: 6px;
  min-height: {button}px; padding: 0 16px; outline: none; }
QPushButton:hover { background: {selbg}; }
QPushButton:pressed { background: {rule}; }
QPushButton:focus { border: 2px solid {select}; }
QPushButton:default { border-color: {ink}; }
QPushButton:default:focus { border: 2px solid {select}; }
QPushButton:disabled { background: transparent; color: {ink3}; border-color: {rule}; }
QLineEdit, QComboBox, QSpinBox, QDoubleSpinBox, QPlainTextEdit, QTextEdit, QTextBrowser {
  background: {room}; border: 1.5px solid {line}; border-radius: 4px;
  selection-background-color: {select}; selection-color: {sheet}; }
QLineEdit, QComboBox, QSpinBox, QDoubleSpinBox { min-height: {field}px; padding: 0 6px; }
QLineEdit:focus, QComboBox:focus, QSpinBox:focus, QDoubleSpinBox:focus, QPlainTextEdit:focus, QTextEdit:focus,
QTextBrowser:focus { border: 2px solid {select}; }
QLineEdit:disabled, QComboBox:disabled { color: {ink3}; border-color: {rule}; background: transparent; }
QComboBox::drop-down { border: none; width: 22px; }
QComboBox QAbstractItemView { background: {room}; color: {ink}; border: 1px solid {line};
  selection-background-color: {selbg}; selection-color: {ink}; }
QTabBar::tab { background: transparent; color: {ink2}; border: none; border-bottom: 2px solid transparent;
  padding: 5px 1px; margin-right: 20px; }
QTabBar::tab:hover { color: {ink}; }
QTabBar::tab:selected { color: {ink}; font-weight: bold; border-bottom: 2px solid {ink}; }
QTabBar::tab:selected:focus { border: 2px solid {select}; border-radius: 4px; padding: 3px 0px; }
QToolButton { background: transparent; color: {ink}; border: 1.5px solid {line}; border-radius: 6px;
  padding: 3px 6px; }
QToolButton[autoRaise="true"] { border-color: transparent; }
QToolButton:hover { background: {selbg}; }
QToolButton:focus { border: 2px solid {select}; }
QToolButton::menu-indicator { image: none; }
QCheckBox::indicator:focus, QRadioButton::indicator:focus { border: 2px solid {select}; border-radius: 3px; }
QTableCornerButton::section { background: transparent; border: none; }
QScrollArea { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: {line}; border: 3px solid {sheet}; border-radius: 6px; min-height: 28px;
  min-width: 28px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
)";

}  // namespace

QString styleSheet(const Tokens& t, double textScale) {
  QString sheet = QString::fromLatin1(kSheet);
  const auto put = [&sheet](const char* name, const QString& value) {
    sheet.replace(QLatin1Char('{') + QLatin1String(name) + QLatin1Char('}'), value);
  };
  put("room", t.room.name());
  put("ink", t.ink.name());
  put("ink2", t.ink2.name());
  put("ink3", t.ink3.name());
  put("line", t.line.name());
  put("rule", t.rule.name());
  put("select", t.select.name());
  put("selbg", t.selbg.name());
  put("sheet", t.sheet.name());
  put("button", QString::number(std::lround(33 * textScale)));
  put("field", QString::number(std::lround(28 * textScale)));
  return sheet;
}

}  // namespace cordreach::look
