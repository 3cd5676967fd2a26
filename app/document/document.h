// SPDX-License-Identifier: GPL-3.0-or-later
// The open site: its value, its file, its undo. Windows change it by edits only and learn of changes by one event.
// A supposed site (while something is dragged) leaves no trace: no undo step, not dirty, not journalled.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "base/result.h"
#include "site/edit.h"
#include "site/site.h"

namespace cordreach::app {

struct DocumentChange {
  bool reset = false;                    // another site altogether: rebuild everything
  std::vector<site::AnyChange> changes;  // else exactly these, already made
};

class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(site::Site site, QObject* parent = nullptr);
  ~Document() override;

  [[nodiscard]] const site::Site& site() const { return *m_site; }
  [[nodiscard]] std::shared_ptr<const site::Site> snapshot() const { return m_site; }
  // What is to be shown and judged right now: the supposed site while there is one.
  [[nodiscard]] std::shared_ptr<const site::Site> shown() const { return m_supposed ? m_supposed : m_site; }
  [[nodiscard]] bool isSupposing() const { return m_supposed != nullptr; }

  // One undo step. The site stays as it was on an error. Steps with the same non-empty `mergeKey` that follow each
  // other (typing in one field, nudging one thing) become one.
  [[nodiscard]] base::Result<base::Done> apply(const site::Edit& edit, const QString& mergeKey = {});
  void suppose(const site::Edit& edit);
  void dropSupposition();

  [[nodiscard]] bool canUndo() const;
  [[nodiscard]] bool canRedo() const;
  [[nodiscard]] std::string undoCode() const;  // the edit's code, for the words
  [[nodiscard]] std::string redoCode() const;
  void undo();
  void redo();

  [[nodiscard]] const QString& path() const { return m_path; }  // empty: untitled
  [[nodiscard]] bool isDirty() const;
  void markSaved(const QString& path);
  void markUnsaved();  // no state of the undo history is the saved one: recovered, or never saved
  // Another site takes its place, with an empty undo history.
  void replace(site::Site site, const QString& path);

 signals:
  void changed(const cordreach::app::DocumentChange& change);
  void committed(const cordreach::site::Edit& edit);  // applied, undone or done again: what a journal writes down
  void supposed();                                    // a supposition came, changed or went
  void stateChanged();                                // path, dirty, undo or redo

 private:
  struct Step;
  void commit(const site::Edit& edit);

  std::shared_ptr<const site::Site> m_site;
  std::shared_ptr<const site::Site> m_supposed;
  std::vector<Step> m_steps;
  std::size_t m_done = 0;                    // steps that are done; those behind can be done again
  std::optional<std::size_t> m_savedAt = 0;  // none: the saved state can't be reached by undo any more
  QString m_path;
};

}  // namespace cordreach::app
