// SPDX-License-Identifier: GPL-3.0-or-later
// Of the overlays that are told at once: what is hot, and what is near its limit, each with the way to its whole list.
#pragma once

#include <memory>

#include "compute/verdict.h"
#include "map/overlay_bar.h"

namespace cordreach::app {

class HotBar : public OverlayBar {
  Q_OBJECT

 public:
  HotBar(MapCanvas& canvas, QWidget* parent);
  void refresh() override;

 signals:
  void listWanted();

 private:
  void withdraw() override;
  void forget() override { m_shown.reset(); }

  std::shared_ptr<const Verdict> m_shown;
};

class NearBar : public OverlayBar {
  Q_OBJECT

 public:
  NearBar(MapCanvas& canvas, QWidget* parent);
  void refresh() override;

 signals:
  void listWanted();
};

}  // namespace cordreach::app
