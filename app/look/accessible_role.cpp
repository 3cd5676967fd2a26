// SPDX-License-Identifier: GPL-3.0-or-later
#include "look/accessible_role.h"

#include <QAccessibleWidget>
#include <QVariant>
#include <QWidget>

namespace cordreach::look {

namespace {

constexpr const char* kProperty = "accessibleRole";

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
  const QVariant role = object != nullptr ? object->property(kProperty) : QVariant();
  auto* widget = qobject_cast<QWidget*>(object);
  if (widget == nullptr || !role.isValid()) return nullptr;
  return new QAccessibleWidget(widget, static_cast<QAccessible::Role>(role.toInt()));
}

}  // namespace

void setRole(QWidget* widget, QAccessible::Role role) {
  static const bool once = [] {
    QAccessible::installFactory(makeInterface);
    return true;
  }();
  static_cast<void>(once);
  widget->setProperty(kProperty, static_cast<int>(role));
}

}  // namespace cordreach::look
