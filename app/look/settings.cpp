// SPDX-License-Identifier: GPL-3.0-or-later
#include "look/settings.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <QStandardPaths>
#include <algorithm>
#include <array>
#include <cmath>

namespace cordreach::look {

namespace {

constexpr std::array kScales = {1.0, 1.25, 1.5, 2.0};
constexpr qsizetype kMostRecent = 8;
constexpr qsizetype kMostNameLetters = 200;

// A settings file is a text that anybody may have edited.
double nearestScale(double wanted) {
  return *std::min_element(kScales.begin(), kScales.end(),
                           [&](double a, double b) { return std::abs(a - wanted) < std::abs(b - wanted); });
}

Ground groundNamed(const QString& name) {
  if (name == "light") return Ground::Light;
  return name == "dark" ? Ground::Dark : Ground::System;
}

QString nameOf(Ground ground) {
  if (ground == Ground::Light) return "light";
  return ground == Ground::Dark ? "dark" : "system";
}

text::UnitSystem usualUnits() {
  return QLocale::system().measurementSystem() == QLocale::MetricSystem ? text::UnitSystem::Metric
                                                                        : text::UnitSystem::Us;
}

}  // namespace

Look lookOf(const Choices& choices, bool systemIsDark) {
  const bool dark = choices.ground == Ground::Dark || (choices.ground == Ground::System && systemIsDark);
  return {{dark, choices.highContrast}, choices.textScale, !choices.reduceMotion};
}

bool systemIsDark() {
  static const bool dark = QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
  return dark;
}

Settings::Settings()
    : m_store(std::make_unique<QSettings>(
          QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + "/cordreach/settings.ini",
          QSettings::IniFormat)) {}

Choices Settings::choices() const {
  Choices choices;
  const QString units = m_store->value("units").toString();
  choices.units = units == "metric" ? text::UnitSystem::Metric : units == "us" ? text::UnitSystem::Us : usualUnits();
  choices.textScale = nearestScale(m_store->value("text_scale", 1.0).toDouble());
  choices.ground = groundNamed(m_store->value("ground").toString());
  choices.highContrast = m_store->value("high_contrast", false).toBool();
  choices.reduceMotion = m_store->value("reduce_motion", false).toBool();
  return choices;
}

void Settings::setChoices(const Choices& choices) {
  m_store->setValue("units", choices.units == text::UnitSystem::Metric ? "metric" : "us");
  m_store->setValue("text_scale", choices.textScale);
  m_store->setValue("ground", nameOf(choices.ground));
  m_store->setValue("high_contrast", choices.highContrast);
  m_store->setValue("reduce_motion", choices.reduceMotion);
}

QStringList Settings::recentFiles() const { return m_store->value("recent_files").toStringList(); }

void Settings::addRecentFile(const QString& path) {
  const QString full = QFileInfo(path).absoluteFilePath();
  QStringList files = recentFiles();
  files.removeAll(full);
  files.prepend(full);
  while (files.size() > kMostRecent) files.removeLast();
  m_store->setValue("recent_files", files);
}

void Settings::removeRecentFile(const QString& path) {
  QStringList files = recentFiles();
  files.removeAll(path);
  m_store->setValue("recent_files", files);
}

std::string Settings::place() const { return m_store->value("place").toString().toStdString(); }

void Settings::setPlace(const std::string& code) { m_store->setValue("place", QString::fromStdString(code)); }

std::string Settings::surveyor() const {
  return m_store->value("surveyor").toString().left(kMostNameLetters).toStdString();
}

void Settings::setSurveyor(const std::string& name) { m_store->setValue("surveyor", QString::fromStdString(name)); }

QByteArray Settings::windowGeometry() const { return m_store->value("window_geometry").toByteArray(); }

void Settings::setWindowGeometry(const QByteArray& geometry) { m_store->setValue("window_geometry", geometry); }

}  // namespace cordreach::look
