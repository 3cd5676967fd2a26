// SPDX-License-Identifier: GPL-3.0-or-later
// Work on a thread of its own while the window stays alive: once it takes longer than a moment, a dialog says how far
// it is and can stop it.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include "survey/read_watch.h"
#include "text/phrasebook.h"

class QWidget;

namespace cordreach::app {

// The work keeps what it needs alive by itself: when it was stopped nobody waits for it. False: it was stopped.
[[nodiscard]] bool runWatched(QWidget* parent, const text::Phrasebook& book,
                              std::function<void(const ReadWatch&)> work);

// What the work answers; nothing when it was stopped.
template <class Work>
[[nodiscard]] auto watched(QWidget* parent, const text::Phrasebook& book, Work work) {
  using Answer = decltype(work(ReadWatch{}));
  auto answer = std::make_shared<std::optional<Answer>>();
  const bool ended = runWatched(
      parent, book, [answer, work = std::move(work)](const ReadWatch& watch) { answer->emplace(work(watch)); });
  return ended ? std::move(*answer) : std::optional<Answer>();
}

}  // namespace cordreach::app
