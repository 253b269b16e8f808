#pragma once
#include <QWidget>

#include "core/pattern/layout.h"

class QComboBox;
class QLineEdit;

namespace cw {

/// Where the fasteners of a quick joint sit: a shape and how many. Lengths only serve to draw it. An editor
/// that knows more may stand in its place: it needs `layout`, `isToScale` and `changed`, nothing else.
class LayoutInput final : public QWidget {
  Q_OBJECT

 public:
  explicit LayoutInput(QWidget* parent = nullptr);

  /// InvalidInput if a count is no whole number; the errors of `positions`.
  Result<Layout> layout() const;
  bool isToScale() const { return false; }
  void clear();

 signals:
  void changed();

 private:
  QLineEdit* addCount(const QString& name, const char* objectName);
  void showCounts();

  QComboBox* m_shape;
  QLineEdit *m_count, *m_columns;
};

}  // namespace cw
