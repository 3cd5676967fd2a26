// SPDX-License-Identifier: GPL-3.0-or-later
// What a person has chosen for this program, kept between starts.
#pragma once

#include <QByteArray>
#include <QSettings>
#include <QStringList>
#include <memory>
#include <string>

#include "look/look.h"
#include "text/phrasebook.h"

namespace cordreach::look {

enum class Ground { System, Light, Dark };

struct Choices {
  text::UnitSystem units = text::UnitSystem::Us;
  double textScale = 1;  // 1, 1.25, 1.5 or 2
  Ground ground = Ground::System;
  bool highContrast = false;
  bool reduceMotion = false;

  friend bool operator==(const Choices&, const Choices&) = default;
};

// The look of these choices; `systemIsDark` stands for what the desktop prefers.
[[nodiscard]] Look lookOf(const Choices& choices, bool systemIsDark);
// By the palette that the desktop gives an application before we set ours.
[[nodiscard]] bool systemIsDark();

class Settings {
 public:
  // One file in the folder of the user's settings.
  Settings();

  [[nodiscard]] Choices choices() const;
  void setChoices(const Choices& choices);

  [[nodiscard]] QStringList recentFiles() const;
  void addRecentFile(const QString& path);
  void removeRecentFile(const QString& path);

  // Code of the place that was in front last; empty: none yet.
  [[nodiscard]] std::string place() const;
  void setPlace(const std::string& code);

  // Who goes round and writes down what feeds what; empty: nobody has said.
  [[nodiscard]] std::string surveyor() const;
  void setSurveyor(const std::string& name);

  [[nodiscard]] QByteArray windowGeometry() const;
  void setWindowGeometry(const QByteArray& geometry);

 private:
  std::unique_ptr<QSettings> m_store;
};

}  // namespace cordreach::look
