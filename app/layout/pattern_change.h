#pragma once
#include <QUndoCommand>
#include <functional>

#include "core/pattern/pattern.h"

namespace cw {

/// From one pattern to another; changes of one gesture (a drag; not 0) are one.
class PatternChange final : public QUndoCommand {
 public:
  using Apply = std::function<void(const Pattern&)>;

  PatternChange(Pattern from, Pattern to, Apply apply, const QString& what, int gesture)
      : QUndoCommand(what),
        m_from(std::move(from)),
        m_to(std::move(to)),
        m_apply(std::move(apply)),
        m_gesture(gesture) {}

  void undo() override { m_apply(m_from); }
  void redo() override { m_apply(m_to); }
  int id() const override { return m_gesture == 0 ? -1 : 1; }
  bool mergeWith(const QUndoCommand* next) override {
    const auto* change = static_cast<const PatternChange*>(next);
    if (change->m_gesture != m_gesture) return false;
    m_to = change->m_to;
    return true;
  }

 private:
  Pattern m_from, m_to;
  Apply m_apply;
  int m_gesture;
};

}  // namespace cw
